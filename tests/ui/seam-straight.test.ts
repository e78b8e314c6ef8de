import { describe, expect, it } from 'vitest';
import { laidStraight } from '../../src/lib/ui/laid-straight.ts';
import { seamStraight } from '../../src/lib/ui/seam-straight.ts';
import { ruleStep } from '../../src/lib/ui/eighths-rule.ts';
import { cornersOf, partsOf } from './drawing/read-path.ts';

const q = 3.175;
/** How far each line lies from the basting at a height, px. */
const offAt = (lines: string, y: number) =>
	partsOf(lines, 0.5).map((line) =>
		Math.abs(line.reduce((a, b) => (Math.abs(a[1] - y) < Math.abs(b[1] - y) ? a : b))[0] - 52)
	);

describe('a seam laid straight', () => {
	const places = [
		{ a: -q, b: -q },
		{ a: -2 * q, b: -2 * q, chosen: true },
		{ a: 0, b: 0 }
	];
	const seam = seamStraight(places, 44);

	it('has a row of 44 px to each place, its pin in the middle', () => {
		expect(seam.height).toBe(132);
		expect(seam.pins.map(({ y }) => y)).toEqual([22, 66, 110]);
	});

	it('lies twice as far from the basting where twice as much was pinned, on both sides alike', () => {
		const [at, twice] = [offAt(seam.lines, 22), offAt(seam.lines, 66)];
		expect(twice[0] / at[0]).toBeCloseTo(2, 1);
		expect(twice[1]).toBeCloseTo(twice[0], 1);
		for (const off of offAt(seam.lines, 110)) expect(off).toBeCloseTo(0, 0);
	});

	it('never swings past a pin', () => {
		const widest = Math.max(
			...partsOf(seam.lines, 0.5)
				.flat()
				.map(([x]) => Math.abs(x - 52))
		);
		expect(widest).toBeCloseTo(offAt(seam.lines, 66)[0], 1);
	});

	it('is hatched where cloth goes and caught where it comes, never both', () => {
		expect(seam.hatch).not.toBe('');
		expect(seam.zigzag).toBe('');
		const out = seamStraight(
			places.map(({ a, b }) => ({ a: -a, b: -b })),
			44
		);
		expect(out.hatch).toBe('');
		expect(out.zigzag).not.toBe('');
	});

	it('has a pin across only where something was pinned', () => {
		expect(seam.pins.map(({ across }) => across)).toEqual([true, true, false]);
	});

	it('has side a on the left, so that a seam moved to one side shows it', () => {
		const moved = seamStraight(
			[
				{ a: 2 * q, b: 0 },
				{ a: 2 * q, b: 0 }
			],
			44
		);
		const [a, b] = partsOf(moved.lines, 1);
		expect(a[5][0]).toBeLessThan(52 - 5);
		expect(b[5][0]).toBeCloseTo(52, 6);
	});
});

describe('one line laid straight', () => {
	it('rises where cloth was added, sinks where it was taken away, and comes back level', () => {
		const ys = cornersOf(
			laidStraight([
				{ at: 0, move: 0 },
				{ at: 0.25, move: 6.35 },
				{ at: 0.5, move: 0 },
				{ at: 0.75, move: -6.35 },
				{ at: 1, move: 0 }
			]).after
		).map(([, y]) => y);
		expect(Math.min(...ys)).toBeCloseTo(3, 0);
		expect(Math.max(...ys)).toBeCloseTo(21, 0);
		expect([ys[0], ys[15], ys[30]]).toEqual([12, 12, 12]);
	});
});

describe('the rule', () => {
	it('is an inch in eighths, or 25 mm by fives', () => {
		const last = (unit: 'in' | 'cm') => (ruleStep(unit).count - 1) * ruleStep(unit).mm;
		expect(last('in')).toBeCloseTo(25.4, 9);
		expect(last('cm')).toBe(25);
		expect(ruleStep('cm').mm).toBe(5);
	});
});
