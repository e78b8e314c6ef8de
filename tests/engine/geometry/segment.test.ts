import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	cubic,
	curvatureOn,
	derivativeOn,
	line,
	pointOn,
	reversedSegment,
	secondDerivativeOn,
	segmentBox,
	segmentPortion,
	splitSegment,
	tangentOn
} from '../../../src/lib/engine/geometry/segment.ts';
import type { Cubic, Point } from '../../../src/lib/engine/geometry/types.ts';
import { casteljau, cubics, evenly, nastyCurves, raised } from '../../support/curves.ts';

const unitInterval = evenly(0, 1);
const bezier = ({ from, control1, control2, to }: Cubic) => new Bezier(...from, ...control1, ...control2, ...to);

test('points are those of de Casteljau, derivatives those of bezier-js (seed 11)', () => {
	fc.assert(
		fc.property(cubics, unitInterval, (curve, t) => {
			const point = pointOn(curve, t);
			const construction = casteljau(curve, t);
			expect(Math.hypot(point[0] - construction[0], point[1] - construction[1])).toBeLessThan(1e-12 * 600);
			const first = bezier(curve).derivative(t);
			const ours = derivativeOn(curve, t);
			expect(Math.hypot(ours[0] - first.x, ours[1] - first.y)).toBeLessThan(1e-9);
		}),
		{ seed: 11 }
	);
});

test('second derivatives are the differences of the first (seed 12)', () => {
	fc.assert(
		fc.property(cubics, evenly(0.01, 0.99), (curve, t) => {
			// The first derivative is a quadratic, so that a central difference is exact but for rounding.
			const h = 1 / 128;
			const ahead = derivativeOn(curve, t + h);
			const behind = derivativeOn(curve, t - h);
			const second = secondDerivativeOn(curve, t);
			expect(Math.abs((ahead[0] - behind[0]) / (2 * h) - second[0])).toBeLessThan(1e-8);
			expect(Math.abs((ahead[1] - behind[1]) / (2 * h) - second[1])).toBeLessThan(1e-8);
		}),
		{ seed: 12 }
	);
});

test('ends are kept to the bit when cut, turned round or taken in part (seed 13)', () => {
	fc.assert(
		fc.property(cubics, unitInterval, unitInterval, (curve, t, u) => {
			fc.pre(t < u);
			expect(pointOn(curve, 0)).toBe(curve.from);
			expect(pointOn(curve, 1)).toBe(curve.to);
			const [first, second] = splitSegment(curve, t);
			expect(first.to).toEqual(second.from);
			const part = segmentPortion(curve, t, u);
			expect(part.from).toEqual(pointOn(curve, t));
			expect(part.to).toEqual(pointOn(curve, u));
			expect(reversedSegment(reversedSegment(curve))).toEqual(curve);
		}),
		{ seed: 13 }
	);
});

test('a portion runs over the same points (seed 14)', () => {
	fc.assert(
		fc.property(cubics, unitInterval, unitInterval, unitInterval, (curve, t, u, v) => {
			fc.pre(t < u);
			const part = pointOn(segmentPortion(curve, t, u), v);
			const whole = casteljau(curve, t + v * (u - t));
			expect(Math.hypot(part[0] - whole[0], part[1] - whole[1])).toBeLessThan(1e-9);
			const [first, second] = splitSegment(curve, t);
			const before = casteljau(curve, t * v);
			const after = casteljau(curve, t + (1 - t) * v);
			const inFirst = pointOn(first, v);
			const inSecond = pointOn(second, v);
			expect(Math.hypot(inFirst[0] - before[0], inFirst[1] - before[1])).toBeLessThan(1e-9);
			expect(Math.hypot(inSecond[0] - after[0], inSecond[1] - after[1])).toBeLessThan(1e-9);
		}),
		{ seed: 14 }
	);
});

describe('tangents', () => {
	test.each(nastyCurves)('have length 1 and are the limit of nearby chords: $remark', ({ curve }) => {
		for (const t of [0, 0.25, 0.5, 0.75, 1]) {
			const tangent = tangentOn(curve, t);
			expect(Math.hypot(...tangent)).toBeCloseTo(1, 12);
			// Leaving, or at the end arriving; second-order near an end whose derivative vanishes.
			const h = t === 1 ? -1e-5 : 1e-5;
			const a = casteljau(curve, t);
			const b = casteljau(curve, t + h);
			const chord = Math.hypot(b[0] - a[0], b[1] - a[1]);
			// Within rounding of a stationary point, or too near a cusp, a chord says nothing.
			if (chord < 1e-6) continue;
			const along = (Math.sign(h) * (tangent[0] * (b[0] - a[0]) + tangent[1] * (b[1] - a[1]))) / chord;
			expect(along).toBeGreaterThan(0.999);
		}
	});

	test('where control points coincide come from the next derivative', () => {
		expect(tangentOn(cubic([0, 0], [0, 0], [0, 50], [90, 90]), 0)).toEqual([0, 1]);
		expect(tangentOn(cubic([0, 0], [60, 50], [90, 90], [90, 90]), 1)).toEqual([0.6, 0.8]);
		expect(tangentOn(cubic([0, 0], [0, 0], [0, 0], [30, 40]), 0)).toEqual([0.6, 0.8]);
		expect(tangentOn(cubic([0, 0], [30, 40], [30, 40], [30, 40]), 1)).toEqual([0.6, 0.8]);
	});

	test('at a cusp leave it', () => {
		// The curve comes down to (50, 75) and turns back; derived: after the cusp it runs along −y.
		const [x, y] = tangentOn(cubic([0, 0], [100, 100], [0, 100], [100, 0]), 0.5);
		expect(x).toBeCloseTo(0, 12);
		expect(y).toBeCloseTo(-1, 12);
	});

	test('of a segment of no length are none', () => {
		expect(tangentOn(line([3, 4], [3, 4]), 0.5)).toEqual([0, 0]);
		expect(tangentOn(cubic([3, 4], [3, 4], [3, 4], [3, 4]), 0.5)).toEqual([0, 0]);
	});
});

describe('curvature', () => {
	test('of the parabola y = x²/100 is 0.02/(1 + (x/50)²)^1.5', () => {
		// Any calculus text: κ = y″/(1 + y′²)^1.5.
		const curve = raised([-50, 25], [0, -25], [50, 25]);
		for (const t of [0, 0.2, 0.5, 0.9, 1]) {
			const x = -50 + 100 * t;
			expect(Math.abs(curvatureOn(curve, t))).toBeCloseTo(0.02 / (1 + (x / 50) ** 2) ** 1.5, 12);
		}
	});

	test('is positive where the path bends clockwise as seen', () => {
		// To the right, then down: with y down that is clockwise.
		expect(curvatureOn(cubic([0, 0], [60, 0], [100, 40], [100, 100]), 0.5)).toBeGreaterThan(0);
		expect(curvatureOn(reversedSegment(cubic([0, 0], [60, 0], [100, 40], [100, 100])), 0.5)).toBeLessThan(0);
		expect(curvatureOn(line([0, 0], [5, 5]), 0.3)).toBe(0);
	});
});

test('a quarter circle drawn as one cubic is never inside the circle, and at most 0.02725 % outside', () => {
	// The usual k = 0.5522847498 (from memory), excess derived.
	const k = 0.5522847498;
	const quarter = cubic([1, 0], [1, k], [k, 1], [0, 1]);
	const radii = Array.from({ length: 2001 }, (_, i) => Math.hypot(...pointOn(quarter, i / 2000)));
	expect(Math.min(...radii)).toBeGreaterThan(1 - 1e-9);
	expect(Math.max(...radii) - 1).toBeCloseTo(0.0002725, 6);
});

test('a cubic with speed 1 + t² turns by a right angle', () => {
	// R. T. Farouki, Pythagorean-Hodograph Curves, 2008 (from memory): its direction at t is 2 arctan t.
	const curve = cubic([0, 0], [1 / 3, 0], [2 / 3, 1 / 3], [2 / 3, 1]);
	for (const t of [0, 0.3, 0.5, 1]) {
		expect(Math.atan2(tangentOn(curve, t)[1], tangentOn(curve, t)[0])).toBeCloseTo(2 * Math.atan(t), 12);
		expect(Math.hypot(...derivativeOn(curve, t))).toBeCloseTo(1 + t * t, 12);
	}
});

test('the box is that of bezier-js on whole millimetres (seed 15)', () => {
	fc.assert(
		fc.property(cubics, (curve) => {
			const whole = ([x, y]: Point): Point => [Math.round(x), Math.round(y)];
			const onGrid = cubic(whole(curve.from), whole(curve.control1), whole(curve.control2), whole(curve.to));
			const box = segmentBox(onGrid);
			const { x, y } = bezier(onGrid).bbox();
			expect(Math.abs(box.left - x.min)).toBeLessThan(1e-6);
			expect(Math.abs(box.right - x.max)).toBeLessThan(1e-6);
			expect(Math.abs(box.top - y.min)).toBeLessThan(1e-6);
			expect(Math.abs(box.bottom - y.max)).toBeLessThan(1e-6);
		}),
		{ seed: 15 }
	);
});

test('the box holds every point and is touched on all four sides (seed 16)', () => {
	fc.assert(
		fc.property(fc.oneof(cubics, fc.constantFrom(...nastyCurves.map(({ curve }) => curve))), (curve) => {
			const box = segmentBox(curve);
			const samples = Array.from({ length: 1025 }, (_, i) => casteljau(curve, i / 1024));
			const xs = samples.map(([x]) => x);
			const ys = samples.map(([, y]) => y);
			// Between samples a coordinate can pass the sampled extreme by h²/8 of its greatest second derivative, h = 1/1024.
			const most = (6 * 4 * 3000) / (8 * 1024 ** 2) + 1e-9;
			for (const [least, side] of [
				[Math.min(...xs), box.left],
				[-Math.max(...xs), -box.right],
				[Math.min(...ys), box.top],
				[-Math.max(...ys), -box.bottom]
			]) {
				expect(side).toBeLessThanOrEqual(least + 1e-9);
				expect(side).toBeGreaterThan(least - most);
			}
		}),
		{ seed: 16 }
	);
});
