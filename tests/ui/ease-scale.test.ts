import { describe, expect, it } from 'vitest';
import { easeScale, easeSentence } from '../../src/lib/ui/ease-scale.ts';

const waist = { name: 'Waist', body: 654.05, ease: 25.4, before: 50.8, wanted: [19.05, 38.1] as const };

describe('the scale of ease', () => {
	it('has room for the greatest of all rows, and one step more', () => {
		const scale = easeScale([waist, { name: 'Hip', ease: 88.9 }], 'in');
		expect(scale.at(88.9)).toBeLessThan(100);
		expect(scale.end).toBeGreaterThanOrEqual(88.9 + 6.35 - 1e-9);
	});

	it('has a tick for each quarter inch, the whole inches tallest', () => {
		const { ticks, at } = easeScale([waist], 'in');
		for (const [inches, tallest] of [
			[1, true],
			[1.25, false],
			[2, true]
		] as const) {
			const tick = ticks.find((one) => Math.abs(one.at - at(inches * 25.4)) < 1e-9);
			expect(tick?.height === Math.max(...ticks.map(({ height }) => height))).toBe(tallest);
		}
	});

	it('is even: an inch is as wide anywhere, on either side of the body', () => {
		const { at } = easeScale([waist], 'in');
		expect(at(50.8) - at(25.4)).toBeCloseTo(at(25.4) - at(0), 9);
		expect(at(0) - at(-12.7)).toBeCloseTo((at(25.4) - at(0)) / 2, 9);
	});
});

describe('the sentence of a row', () => {
	it('says body, ease, what is wanted and what was before', () => {
		expect(easeSentence(waist, 'in', 'version 1')).toBe(
			'Waist: body 25 3/4″, ease 1″, wanted 3/4″ to 1 1/2″, version 1 2″'
		);
	});

	it('says by how much a garment is smaller than the body', () => {
		expect(easeSentence({ name: 'Bust', body: 939.8, ease: -12.7 }, 'in')).toBe('Bust: body 37″, short by 1/2″');
	});

	it('says when nothing was measured', () => {
		expect(easeSentence({ name: 'Hip' }, 'in')).toBe('Hip: not measured');
	});
});
