import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measured } from '../../../src/lib/engine/geometry/accuracy.ts';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import { cornersOf } from '../../../src/lib/engine/geometry/joints.ts';
import {
	curvatureAt,
	endTangent,
	joinedPaths,
	locate,
	pathBox,
	pathEnd,
	pathLength,
	pathStart,
	pointAt,
	portion,
	reversedPath,
	segmentStarts,
	startTangent,
	straight,
	tangentAt
} from '../../../src/lib/engine/geometry/path.ts';
import { cubic, line } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { evenly, nastyCurves, paths, sampled } from '../../support/curves.ts';

/** An ellipse arc by cubics of equal steps with the ellipse's own tangents and the usual control length; error falls as step⁶. */
function ellipse(a: number, b: number, from: number, to: number, cubics: number): Path {
	const step = (to - from) / cubics;
	const k = (4 / 3) * Math.tan(step / 4);
	return Array.from({ length: cubics }, (_, i) => {
		const at = (angle: number): Point => [a * Math.cos(angle), b * Math.sin(angle)];
		const along = (angle: number, scale: number): Point => [-a * Math.sin(angle) * scale, b * Math.cos(angle) * scale];
		const [p, q] = [at(from + i * step), at(from + (i + 1) * step)];
		const [u, v] = [along(from + i * step, k), along(from + (i + 1) * step, -k)];
		return cubic(p, [p[0] + u[0], p[1] + u[1]], [q[0] + v[0], q[1] + v[1]], q);
	}).map((segment, i, all) => (i === 0 ? segment : { ...segment, from: all[i - 1].to }));
}

/** A square of 100 mm with rounded last corner, clockwise as seen. */
const rounded: Path = [
	line([0, 0], [100, 0]),
	line([100, 0], [100, 60]),
	cubic([100, 60], [100, 82], [82, 100], [60, 100]),
	line([60, 100], [0, 100]),
	line([0, 100], [0, 0])
];

describe('length of paths', () => {
	test('a quarter of the ellipse 120 by 80 measures 158.654396 mm', () => {
		// Complete elliptic integral, numerically; S. Ramanujan's perimeter formula (1914) agrees to 4e-10.
		const h = ((120 - 80) / (120 + 80)) ** 2;
		const ramanujan = (Math.PI * (120 + 80) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)))) / 4;
		const drawn = pathLength(ellipse(120, 80, 0, Math.PI / 2, 32));
		expect(drawn).toBeCloseTo(158.654396, 6);
		expect(Math.abs(drawn - ramanujan)).toBeLessThan(2e-6);
	});

	test('a whole circle of radius 50 measures 314.159265', () => {
		expect(pathLength(ellipse(50, 50, 0, 2 * Math.PI, 64), 1e-9)).toBeCloseTo(100 * Math.PI, 6);
	});

	test('is the sum of its segments, however closely asked (seed 31)', () => {
		fc.assert(
			fc.property(paths, (path) => {
				const starts = segmentStarts(path);
				expect(starts).toHaveLength(path.length + 1);
				expect(starts[0]).toBe(0);
				expect(pathLength(path)).toBe(starts[path.length]);
				expect(Math.abs(pathLength(path, 1e-11) - pathLength(path))).toBeLessThan(1e-8);
				// Chords fall short of the curve, and by little when there are many.
				const chords = sampled(path, 2000);
				const sum = chords.slice(1).reduce((all, p, i) => all + distance(chords[i], p), 0);
				expect(pathLength(path)).toBeGreaterThan(sum - 1e-6);
				expect(pathLength(path)).toBeLessThan(sum + 0.05);
			}),
			{ seed: 31, numRuns: 60 }
		);
	});
});

describe('places on paths', () => {
	test('a point at s has s of path before it (seed 32)', () => {
		fc.assert(
			fc.property(paths, evenly(0, 1), (path, share) => {
				const s = share * pathLength(path);
				fc.pre(s > 0.01 && s < pathLength(path) - 0.01);
				expect(Math.abs(pathLength(portion(path, 0, s), 1e-10) - s)).toBeLessThan(2 * measured);
				expect(pathEnd(portion(path, 0, s))).toEqual(pathStart(portion(path, s, pathLength(path))));
				expect(distance(pathEnd(portion(path, 0, s)), pointAt(path, s))).toBeLessThan(2 * measured);
			}),
			{ seed: 32, numRuns: 200 }
		);
	});

	test('two parts measure what the whole did (seed 33)', () => {
		fc.assert(
			fc.property(paths, evenly(0, 1), evenly(0, 1), (path, a, b) => {
				const length = pathLength(path);
				const [s0, s1] = [Math.min(a, b) * length, Math.max(a, b) * length];
				fc.pre(s1 - s0 > 1e-3 && s0 > 1e-3 && s1 < length - 1e-3);
				const parts = [portion(path, 0, s0), portion(path, s0, s1), portion(path, s1, length)];
				expect(Math.abs(parts.reduce((sum, part) => sum + pathLength(part), 0) - length)).toBeLessThan(5 * measured);
				expect(Math.abs(pathLength(parts[1]) - (s1 - s0))).toBeLessThan(3 * measured);
				const whole = joinedPaths(...parts);
				whole.slice(1).forEach((segment, i) => expect(segment.from).toEqual(whole[i].to));
			}),
			{ seed: 33, numRuns: 200 }
		);
	});

	test.each(nastyCurves)('rise with s and never step farther than it: $remark', ({ curve }) => {
		const path: Path = [curve, line(curve.to, [curve.to[0] + 40, curve.to[1] + 30])];
		const length = pathLength(path);
		let before = pathStart(path);
		for (let i = 1; i <= 200; i++) {
			const at = pointAt(path, (i / 200) * length);
			expect(distance(before, at)).toBeLessThanOrEqual(length / 200 + 2 * measured);
			before = at;
		}
		expect(before).toEqual(pathEnd(path));
	});

	test('a joint belongs to the segment after it, and both sides have their tangent', () => {
		expect(locate(rounded, 100)).toEqual({ index: 1, t: 0 });
		expect(tangentAt(rounded, 100, 'before')).toEqual([1, 0]);
		expect(tangentAt(rounded, 100)).toEqual([0, 1]);
		// Within `measured` of the joint on either hand too.
		expect(tangentAt(rounded, 100 - 1e-7)).toEqual([0, 1]);
		expect(tangentAt(rounded, 100 + 1e-7, 'before')).toEqual([1, 0]);
		expect(tangentAt(rounded, 50)).toEqual([1, 0]);
	});

	test('beyond an end is that end', () => {
		expect(pointAt(rounded, -5)).toEqual([0, 0]);
		expect(pointAt(rounded, 1e6)).toEqual([0, 0]);
		expect(locate(rounded, 1e6)).toEqual({ index: 4, t: 1 });
	});

	test('segments of no length are passed over for tangents', () => {
		const dotted: Path = [
			line([0, 0], [0, 0]),
			line([0, 0], [30, 40]),
			line([30, 40], [30, 40]),
			line([30, 40], [90, 40])
		];
		expect(startTangent(dotted)).toEqual([0.6, 0.8]);
		expect(endTangent(dotted)).toEqual([1, 0]);
		expect(tangentAt(dotted, 50, 'before')).toEqual([0.6, 0.8]);
		expect(tangentAt(dotted, 50, 'after')).toEqual([1, 0]);
		expect(cornersOf(dotted)).toEqual([50]);
		expect(endTangent([line([0, 0], [5, 0]), line([5, 0], [5, 0])])).toEqual([1, 0]);
	});

	test('the curvature at a place of a circle of radius 50 is 1/50', () => {
		const circle = ellipse(50, 50, 0, 2 * Math.PI, 64);
		// From +x towards +y: clockwise as seen, so positive.
		for (const s of [1, 77, 200]) expect(curvatureAt(circle, s)).toBeCloseTo(0.02, 7);
	});
});

describe('parts and joins', () => {
	test('a portion that ends at a joint leaves no sliver there', () => {
		expect(portion(rounded, 100 - 1e-7, 160 + 1e-7)).toEqual([rounded[1]]);
		expect(portion(rounded, 0, 100)).toEqual([rounded[0]]);
		expect(portion(rounded, 0, 100)[0]).toBe(rounded[0]);
		expect(portion(rounded, 0, pathLength(rounded))).toBe(rounded);
		expect(portion(rounded, 99.9999995, 100.0000004)).toHaveLength(1);
	});

	test('a portion that runs backwards is refused', () => {
		expect(() => portion(rounded, 50, 50)).toThrow(RangeError);
		expect(() => portion(rounded, 60, 50)).toThrow(RangeError);
		expect(() => portion(rounded, NaN, 50)).toThrow(RangeError);
	});

	test('ends within a ten-thousandth are snapped together to the bit, wider gaps refused', () => {
		const joined = joinedPaths(straight([0, 0], [10, 0]), [cubic([10.00005, 0], [12, 5], [14, 9], [20, 10])]);
		expect(joined[1].from).toBe(joined[0].to);
		expect(joined[1].to).toEqual([20, 10]);
		expect(() => joinedPaths(straight([0, 0], [10, 0]), straight([10.001, 0], [20, 0]))).toThrow(RangeError);
	});

	test('turned round twice is the same path, with the same length and points from the other end (seed 34)', () => {
		fc.assert(
			fc.property(paths, evenly(0, 1), (path, share) => {
				expect(reversedPath(reversedPath(path))).toEqual(path);
				const length = pathLength(path);
				const there = pointAt(path, share * length);
				const back = pointAt(reversedPath(path), length - share * length);
				expect(distance(there, back)).toBeLessThan(3 * measured);
			}),
			{ seed: 34 }
		);
	});

	test('corners are where the direction jumps by more than half a degree', () => {
		expect(cornersOf(rounded)).toEqual([100, 160 + pathLength([rounded[2]], 1e-9) + 60]);
		const bend = (degrees: number): Path => {
			const angle = (degrees * Math.PI) / 180;
			return [line([0, 0], [100, 0]), line([100, 0], [100 + 100 * Math.cos(angle), 100 * Math.sin(angle)])];
		};
		expect(cornersOf(bend(0.49))).toEqual([]);
		expect(cornersOf(bend(0.51))).toEqual([100]);
		expect(cornersOf(bend(-30))).toEqual([100]);
	});

	test('the box of a path holds its samples (seed 35)', () => {
		fc.assert(
			fc.property(paths, (path) => {
				const { left, right, top, bottom } = pathBox(path);
				for (const [x, y] of sampled(path, 50)) {
					expect(x >= left - 1e-9 && x <= right + 1e-9 && y >= top - 1e-9 && y <= bottom + 1e-9).toBe(true);
				}
			}),
			{ seed: 35 }
		);
	});
});
