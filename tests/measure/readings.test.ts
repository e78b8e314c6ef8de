import { describe, expect, it } from 'vitest';
import { readReadings } from '../../src/lib/measure/readings.ts';

const sixteenth = 25.4 / 16;

describe('readings of one place', () => {
	it('alike within 1/8″ are offered as their average, edge included', () => {
		const read = readReadings({ rightA: 4 * sixteenth, rightB: 6 * sixteenth }, 'in');
		expect(read.likeness).toBe('alike');
		expect(read.average).toBeCloseTo(5 * sixteenth, 12);
		expect(read.sentence).toBe('The readings are alike within 1/8″: take the average, 5/16″?');
	});

	it('more than 1/4″ apart are asked about', () => {
		const read = readReadings({ rightA: 4 * sixteenth, leftA: 9 * sixteenth }, 'in');
		expect(read.likeness).toBe('far apart');
		expect(read.sentence).toBe('The readings are 5/16″ apart. Uneven wearer, or uneven pins?');
	});

	it('between the two leave it open', () => {
		expect(readReadings({ rightA: 0, leftA: 4 * sixteenth }, 'in').likeness).toBe('apart');
		expect(readReadings({ rightA: 0, leftA: 3 * sixteenth }, 'in').likeness).toBe('apart');
	});

	it('average by side and by layer, of what was read', () => {
		const read = readReadings({ rightA: 4, rightB: 6, leftA: 8 }, 'cm');
		expect(read).toMatchObject({ count: 3, average: 6, right: 5, left: 8, a: 6, b: 6, spread: 4 });
	});

	it('of one or none ask nothing', () => {
		expect(readReadings({}, 'in')).toMatchObject({
			count: 0,
			likeness: 'none',
			average: undefined,
			sentence: undefined
		});
		expect(readReadings({ leftB: 3 }, 'in')).toMatchObject({
			count: 1,
			likeness: 'one',
			average: 3,
			sentence: undefined
		});
	});
});
