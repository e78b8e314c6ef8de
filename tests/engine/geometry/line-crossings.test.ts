import fc from 'fast-check';
import { expect, test } from 'vitest';
import { measured } from '../../../src/lib/engine/geometry/accuracy.ts';
import { crossings, lineCrossings } from '../../../src/lib/engine/geometry/crossings.ts';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import { pointAt, straight } from '../../../src/lib/engine/geometry/path.ts';
import { cubic, line } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { evenly, paths, points, raised } from '../../support/curves.ts';

test('the parabola y = x²/100 and y = x meet at 0 and 100', () => {
	const parabola: Path = [raised([-200, 400], [0, -400], [200, 400])];
	const found = lineCrossings(parabola, [50, 50], [49, 49], measured);
	expect(found).toHaveLength(2);
	expect(found[0].point[0]).toBeCloseTo(0, 9);
	expect(found[1].point[0]).toBeCloseTo(100, 9);
	// From (50, 50) towards the origin.
	expect(found[0].u).toBeCloseTo(50 * Math.SQRT2, 9);
	expect(found[1].u).toBeCloseTo(-50 * Math.SQRT2, 9);
	expect(distance(pointAt(parabola, found[1].s), [100, 100])).toBeLessThan(2e-6);
});

test('a tangent touches once, a joint counts once, a stretch on the line gives its ends', () => {
	const parabola: Path = [raised([-200, 400], [0, -400], [200, 400])];
	expect(lineCrossings(parabola, [-5, 0], [5, 0], measured)).toHaveLength(1);
	expect(lineCrossings(parabola, [-5, -1e-5], [5, -1e-5], measured)).toHaveLength(0);
	const bent: Path = [line([0, 50], [50, 0]), line([50, 0], [100, 50])];
	expect(lineCrossings(bent, [0, 0], [1, 0], measured).map(({ u }) => u)).toEqual([50]);
	const stepped: Path = [
		line([0, 50], [0, 0]),
		line([0, 0], [30, 0]),
		cubic([30, 0], [40, 0], [50, 0], [70, 0]),
		line([70, 0], [90, -40])
	];
	expect(lineCrossings(stepped, [0, 0], [1, 0], measured).map(({ u }) => u)).toEqual([0, 70]);
	expect(lineCrossings(stepped, [35, 9], [35, -9], measured).map(({ u }) => u)).toEqual([9]);
});

test('curves whose leading terms all but vanish', () => {
	// A line written as a cubic, and shifted off it by rounding-sized amounts.
	for (const off of [0, 1e-16, 1e-13, 1e-10]) {
		const nearlyLine: Path = [cubic([0, 0], [100, 50 + off], [200, 100 - off], [300, 150])];
		const found = lineCrossings(nearlyLine, [0, 75], [1, 75], measured);
		expect(found).toHaveLength(1);
		expect(found[0].u).toBeCloseTo(150, 8);
		expect(found[0].s).toBeCloseTo(75 * Math.sqrt(5), 6);
	}
});

test('is what crossing with a very long line gives (seed 104)', () => {
	fc.assert(
		fc.property(paths, points, evenly(-3, 3), (path, p, angle) => {
			const along = (reach: number): Point => [p[0] + reach * Math.cos(angle), p[1] + reach * Math.sin(angle)];
			const infinite = lineCrossings(path, p, along(1), measured);
			const long = crossings(path, straight(along(-3000), along(3000)), measured);
			expect(infinite).toHaveLength(long.length);
			infinite.forEach(({ s, u, point }, i) => {
				expect(Math.abs(s - long[i].sa)).toBeLessThan(1e-5);
				expect(distance(point, along(u))).toBeLessThan(measured);
			});
		}),
		{ seed: 104, numRuns: 400 }
	);
});

test('one point is no line', () => {
	expect(() => lineCrossings(straight([0, 0], [1, 0]), [2, 2], [2, 2], measured)).toThrow(RangeError);
});
