import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monotoneCubic as interpolant } from '../../../src/lib/engine/geometry/interpolate.ts';
import { evenly } from '../../support/curves.ts';

/** Value and slope together at each place asked. */
function monotoneCubic(...given: Parameters<typeof interpolant>) {
	const curve = interpolant(...given);
	return (x: number) => ({ value: curve.value(x), slope: curve.slope(x) });
}

describe('values in closed form', () => {
	test('two places: the level-ended cubic 3t² − 2t³', () => {
		const at = monotoneCubic([100, 300], [0, 6.35]);
		for (const t of [0, 0.1, 0.25, 0.5, 0.8, 1]) {
			expect(at(100 + 200 * t).value).toBeCloseTo(6.35 * (3 * t * t - 2 * t * t * t), 12);
			expect(at(100 + 200 * t).slope).toBeCloseTo((6.35 * (6 * t - 6 * t * t)) / 200, 12);
		}
	});

	test('an inner slope is the mean of the two secants, where no scaling is needed', () => {
		// Secants 1 and 2, slopes 0, 1.5, 0: Hermite by hand at the two middles gives 0.3125 and 2.1875.
		const at = monotoneCubic([0, 1, 2], [0, 1, 3]);
		expect(at(1).slope).toBeCloseTo(1.5, 12);
		expect(at(0.5).value).toBeCloseTo(0.5 - 0.125 * 1.5, 12);
		expect(at(1.5).value).toBeCloseTo(2 + 0.125 * 1.5, 12);
	});

	test('slopes too steep are scaled into the circle of radius 3', () => {
		// Secants 1 and 10: the mean 5.5 is 5.5 times the first, so it comes down to 3.
		expect(monotoneCubic([0, 1, 2], [0, 1, 11])(1).slope).toBeCloseTo(3, 12);
		// Four places, secants 1, 10, 1: both inner slopes 5.5, first scaled by the outer runs to 3 each.
		const at = monotoneCubic([0, 1, 2, 3], [0, 1, 11, 12]);
		expect(at(1).slope).toBeCloseTo(3, 12);
		expect(at(2).slope).toBeCloseTo(3, 12);
	});

	test('level where two secants differ in sign or one is level', () => {
		const at = monotoneCubic([0, 10, 20, 30, 40], [0, 5, 5, 2, 4]);
		for (const x of [0, 10, 20, 30, 40]) expect(at(x).slope).toBeCloseTo(0, 15);
		for (const x of [10, 12.3, 17, 20]) expect(at(x).value).toBe(5);
	});

	test('one place is the same everywhere', () => {
		const at = monotoneCubic([50], [-3]);
		for (const x of [-1e9, 0, 50, 51, 1e9]) expect(at(x)).toEqual({ value: -3, slope: 0 });
	});

	test('straight runs bend at the places', () => {
		const at = monotoneCubic([0, 10, 30], [0, 5, 1], { shape: 'straight' });
		expect(at(4)).toEqual({ value: 2, slope: 0.5 });
		expect(at(10)).toEqual({ value: 5, slope: -0.2 });
		expect(at(20)).toEqual({ value: 3, slope: -0.2 });
		expect(at(31)).toEqual({ value: 1, slope: 0 });
	});
});

test('the data that overshoot a common spline stay monotone', () => {
	// Fritsch & Carlson 1980, data set RPN 15A (from memory).
	const xs = [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20];
	const ys = [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.94374, 0.998636, 0.999919, 0.999994];
	const at = monotoneCubic(xs, ys);
	let before = -Infinity;
	for (let x = 7.9; x <= 20.1; x += 0.001) {
		const { value, slope } = at(x);
		expect(value).toBeGreaterThanOrEqual(before - 1e-15);
		expect(slope).toBeGreaterThanOrEqual(-1e-12);
		expect(value).toBeLessThanOrEqual(0.999994 + 1e-15);
		before = value;
	}
});

const knots = fc
	.array(fc.tuple(evenly(0.5, 200), evenly(-30, 30)), {
		minLength: 1,
		maxLength: 8
	})
	.map((steps) => {
		let x = 0;
		return { xs: steps.map(([step]) => (x += step)), ys: steps.map(([, y]) => y) };
	});

test('never leaves the range of two neighbouring values, goes through them to the bit, and is level beyond (seed 51)', () => {
	fc.assert(
		fc.property(knots, fc.constantFrom('smooth' as const, 'straight' as const), ({ xs, ys }, shape) => {
			const at = monotoneCubic(xs, ys, { shape });
			xs.forEach((x, i) => expect(at(x).value).toBe(ys[i]));
			for (let i = 0; i + 1 < xs.length; i++) {
				const [low, high] = [Math.min(ys[i], ys[i + 1]), Math.max(ys[i], ys[i + 1])];
				for (let k = 1; k < 20; k++) {
					const { value } = at(xs[i] + (k / 20) * (xs[i + 1] - xs[i]));
					expect(value >= low - 1e-13 && value <= high + 1e-13).toBe(true);
				}
			}
			expect(at(xs[0] - 1)).toEqual({ value: ys[0], slope: 0 });
			expect(at(xs[xs.length - 1] + 1)).toEqual({ value: ys[ys.length - 1], slope: 0 });
		}),
		{ seed: 51 }
	);
});

test('the slope is the derivative of the value (seed 52)', () => {
	fc.assert(
		fc.property(knots, evenly(0, 1), ({ xs, ys }, share) => {
			const x = xs[0] + share * (xs[xs.length - 1] - xs[0]);
			const h = 1e-5;
			fc.pre(xs.every((knot) => Math.abs(knot - x) > 2 * h));
			const at = monotoneCubic(xs, ys);
			expect(Math.abs((at(x + h).value - at(x - h).value) / (2 * h) - at(x).slope)).toBeLessThan(1e-5);
		}),
		{ seed: 52 }
	);
});

test('halving every amount halves the curve, turning it round turns it round (seed 53)', () => {
	fc.assert(
		fc.property(knots, evenly(-10, 900), ({ xs, ys }, x) => {
			const at = monotoneCubic(xs, ys)(x).value;
			const half = monotoneCubic(
				xs,
				ys.map((y) => y / 2)
			);
			expect(half(x).value).toBeCloseTo(at / 2, 12);
			const turned = monotoneCubic(
				[...xs].reverse().map((knot) => -knot),
				[...ys].reverse()
			);
			expect(turned(-x).value).toBeCloseTo(at, 9);
		}),
		{ seed: 53 }
	);
});

test('places that do not rise, and what is not a number, are refused', () => {
	expect(() => monotoneCubic([], [])).toThrow(RangeError);
	expect(() => monotoneCubic([0, 1], [1])).toThrow(RangeError);
	expect(() => monotoneCubic([0, 0], [1, 2])).toThrow(RangeError);
	expect(() => monotoneCubic([1, 0], [1, 2])).toThrow(RangeError);
	expect(() => monotoneCubic([0, NaN], [1, 2])).toThrow(RangeError);
	expect(() => monotoneCubic([0, 1], [1, Infinity])).toThrow(RangeError);
});
