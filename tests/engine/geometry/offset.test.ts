import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, test } from 'vitest';
import { fitted } from '../../../src/lib/engine/geometry/accuracy.ts';
import { offsetPath, type MovedPart } from '../../../src/lib/engine/geometry/offset.ts';
import { formatPathData } from '../../../src/lib/engine/geometry/path-data.ts';
import { pathLength } from '../../../src/lib/engine/geometry/path.ts';
import { roomFor } from '../../../src/lib/engine/geometry/room-for.ts';
import { cubic, line } from '../../../src/lib/engine/geometry/segment.ts';
import type { Cubic, Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { away, pointsAlong } from '../../support/apart.ts';
import { evenly, nastyCurves } from '../../support/curves.ts';

/** The length by another library. */
const lengthOf = (path: Path): number => new svgPathProperties(formatPathData(path)).getTotalLength();
const whole = (parts: readonly MovedPart[]): Path => parts.flatMap(({ path }) => path);

/** The usual cubic for a quarter of a circle about the origin: its radius is too great by 0.02725 % at most. */
const quarter = (radius: number): Cubic => {
	const k = 0.5522847498 * radius;
	return cubic([radius, 0], [radius, k], [k, radius], [0, radius]);
};

describe('a parallel curve is longer by its distance × the angle it turns through, outward, and shorter inward', () => {
	// L′ = L ± d·Δθ for d·|κ| < 1: elementary differential geometry; the Pythagorean-hodograph cubic with speed k(1 + t²) turns
	// through 90° over a length of 4k/3 (Farouki 2008, from memory).
	test.each([
		[30, 1.490412966],
		[-30, 1.1762537]
	])('a Pythagorean-hodograph cubic 300 × as large, moved by %d', (amount, length) => {
		const k = 300;
		const path = [cubic([0, 0], [k / 3, 0], [(2 * k) / 3, k / 3], [(2 * k) / 3, k])];
		const parts = offsetPath(path, amount, [], fitted);
		expect(lengthOf(whole(parts)) / k).toBeCloseTo(length, 4);
	});

	test.each([
		[5, 15],
		[50, 15],
		[120, -15],
		[120, -100]
	])('a quarter circle of radius %d moved by %d', (radius, amount) => {
		const path = [quarter(radius)];
		const moved = lengthOf(whole(offsetPath(path, amount, [], fitted)));
		expect(Math.abs(moved - lengthOf(path) - (amount * Math.PI) / 2)).toBeLessThan(2 * fitted);
	});

	test('a line keeps its length and lies its distance away', () => {
		const [{ path }] = offsetPath([line([0, 0], [30, 40])], 5, [], fitted);
		expect(path).toHaveLength(1);
		expect(path[0].from[0]).toBeCloseTo(4, 12);
		expect(path[0].from[1]).toBeCloseTo(-3, 12);
		expect(lengthOf(path)).toBeCloseTo(50, 9);
	});

	// A straight taper: 10 mm over 200 makes the line 0.2498 mm longer, 20 over 150 by 1.3275 (Pythagoras).
	test.each([
		[200, 10, 0.2498],
		[150, 20, 1.3275]
	])('a line %d long, tapered to %d, is longer by %d', (length, amount, longer) => {
		const slope = amount / length;
		const taper = { value: (s: number) => s * slope, slope: () => slope };
		const parts = offsetPath([line([0, 0], [length, 0])], taper, [], fitted);
		expect(lengthOf(whole(parts)) - length).toBeCloseTo(longer, 4);
	});
});

describe('the moved line', () => {
	test('is nowhere farther from the exact one than it says, nor than was asked', () => {
		const bend = evenly(-60, 60);
		fc.assert(
			fc.property(fc.tuple(bend, bend), evenly(-12, 12), ([a, b], amount) => {
				const curve = cubic([0, 0], [70, a], [140, b], [210, 0]);
				if (amount === 0 || roomFor([curve], amount, Math.abs(amount)) <= 1.2) return;
				const parts = offsetPath([curve], amount, [], fitted);
				for (const { deviation } of parts) expect(deviation).toBeLessThanOrEqual(fitted);
				for (const point of pointsAlong(whole(parts), 16))
					expect(Math.abs(away(point, [curve]) - Math.abs(amount))).toBeLessThan(2 * fitted);
			}),
			{ seed: 20261128, numRuns: 60 }
		);
	});

	test.each(nastyCurves)('of $remark is finite, or there is no room for it', ({ curve }) => {
		for (const amount of [0.5, -0.5, 15, -15]) {
			const path: Path = [curve];
			if (roomFor(path, amount, Math.abs(amount)) <= 1) continue;
			for (const { path: moved } of offsetPath(path, amount, [], fitted))
				for (const [x, y] of pointsAlong(moved, 8)) expect(Number.isFinite(x + y)).toBe(true);
		}
	});
});

describe('there is room for a moved line', () => {
	test.each<[string, Point, Point]>([
		['both', [0, 0], [120, 50]],
		['the first', [0, 0], [80, 100 / 3]],
		['the second', [40, 50 / 3], [120, 50]]
	])('of a straight line drawn as a curve with %s of its handles drawn in, to either side', (_, first, second) => {
		const path = [cubic([0, 0], first, second, [120, 50])];
		for (const amount of [300, -300]) {
			expect(roomFor(path, amount, 300)).toBeGreaterThan(1);
			const moved = whole(offsetPath(path, amount, [], fitted));
			expect(pathLength(moved)).toBeCloseTo(130, 6);
		}
	});

	// A circle moved inward by its own radius has nothing left: the factor is the radius against the amount.
	test('round a quarter circle of radius 50 inward by less than 50', () => {
		expect(roomFor([quarter(50)], -25, 25)).toBeCloseTo(2, 1);
		expect(roomFor([quarter(50)], -100, 100)).toBeCloseTo(0.5, 1);
		expect(roomFor([quarter(50)], 100, 100)).toBeGreaterThan(1);
	});
});
