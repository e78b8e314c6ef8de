import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestOn } from '../../../src/lib/engine/geometry/nearest.ts';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import { pathLength, pointAt } from '../../../src/lib/engine/geometry/path.ts';
import { line } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path } from '../../../src/lib/engine/geometry/types.ts';
import { distanceToPolyline, nastyCurves, paths, points, raised, sampled } from '../../support/curves.ts';

test('on the parabola y = x²/100 a point (0, h) is √(100 h − 2500) away once h is above 50', () => {
	// Derived: x² + (x²/100 − h)² is least at x² = 100 h − 5000, where it is 100 h − 2500. Below, the foot of the curve is nearest.
	const parabola: Path = [raised([-200, 400], [0, -400], [200, 400])];
	for (const h of [50.001, 60, 100, 200, 300]) {
		const nearest = nearestOn(parabola, [0, h], 1e-6);
		expect(nearest.distance).toBeCloseTo(Math.sqrt(100 * h - 2500), 9);
		expect(Math.abs(nearest.point[0])).toBeCloseTo(Math.sqrt(100 * h - 5000), 5);
	}
	for (const h of [0, 20, 49.9, -70]) {
		const nearest = nearestOn(parabola, [0, h], 1e-6);
		expect(nearest.distance).toBeCloseTo(Math.abs(h), 9);
		expect(Math.abs(nearest.s - 0.5 * pathLength(parabola))).toBeLessThan(1e-3);
	}
});

test('on a line it is the foot of the perpendicular, or an end', () => {
	const path: Path = [line([0, 0], [300, 400])];
	expect(nearestOn(path, [150 - 8, 200 + 6], 1e-6)).toMatchObject({ s: 250, index: 0, t: 0.5 });
	expect(nearestOn(path, [150 - 8, 200 + 6], 1e-6).distance).toBeCloseTo(10, 12);
	expect(nearestOn(path, [-3, -4], 1e-6)).toMatchObject({ s: 0, distance: 5 });
	expect(nearestOn(path, [303, 404], 1e-6)).toMatchObject({ s: 500, distance: 5 });
	expect(nearestOn([line([1, 1], [1, 1])], [4, 5], 1e-6)).toMatchObject({ s: 0, distance: 5 });
});

describe('against dense sampling', () => {
	const holds = (path: Path, point: readonly [number, number], steps: number) => {
		const nearest = nearestOn(path, point, 1e-6);
		const polyline = sampled(path, steps);
		const sampledLeast = Math.min(...polyline.map((p) => distance(p, point)));
		expect(nearest.distance).toBeLessThanOrEqual(sampledLeast + 1e-8);
		// The polyline is off the curve by at most h²/8 of the greatest second derivative.
		expect(nearest.distance).toBeGreaterThan(distanceToPolyline(point, polyline) - (6 * 4 * 3000) / (8 * steps ** 2));
		expect(distance(nearest.point, point)).toBeCloseTo(nearest.distance, 9);
		expect(distance(pointAt(path, nearest.s), nearest.point)).toBeLessThan(3e-6);
	};

	test('nothing sampled is nearer, on random chains (seed 41)', () => {
		fc.assert(
			fc.property(paths, points, (path, point) => holds(path, point, 400)),
			{ seed: 41, numRuns: 200 }
		);
	});

	test.each(nastyCurves)('nothing sampled is nearer: $remark', ({ curve }) => {
		for (const x of [-50, 0, 37, 50, 100, 333]) for (const y of [-20, 0, 25, 75, 140]) holds([curve], [x, y], 1000);
		for (const t of [0, 0.25, 0.5, 0.75, 1]) {
			const on = sampled([curve], 4)[4 * t];
			expect(nearestOn([curve], on, 1e-6).distance).toBeLessThan(1e-8);
		}
	});
});

test('of two equally near places the first is given', () => {
	const path: Path = [line([0, 0], [100, 0]), line([100, 0], [100, 100]), line([100, 100], [0, 100])];
	expect(nearestOn(path, [50, 50], 1e-6).s).toBe(50);
});
