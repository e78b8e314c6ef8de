import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measured } from '../../../src/lib/engine/geometry/accuracy.ts';
import { movePath, reflection } from '../../../src/lib/engine/geometry/motion.ts';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import { pathLength, pointAt, reversedPath } from '../../../src/lib/engine/geometry/path.ts';
import { selfCrossings } from '../../../src/lib/engine/geometry/self-crossing.ts';
import { cubic, line } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { nastyCurves, points, sampled } from '../../support/curves.ts';

const polygon = (...corners: Point[]): Path =>
	corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length]));

function found(closed: Path) {
	const crossings = selfCrossings(closed, measured);
	for (const { s1, s2, point } of crossings) {
		expect(s1).toBeLessThan(s2);
		expect(distance(pointAt(closed, s1), point)).toBeLessThan(3e-6);
		expect(distance(pointAt(closed, s2), point)).toBeLessThan(3e-6);
	}
	return crossings;
}

/** Loops shorter than this are too small for a polyline to judge, in mm. */
const shortest = 10;

const loopLength = (s1: number, s2: number, round: number) => Math.min(Math.abs(s2 - s1), round - Math.abs(s2 - s1));

/** Crossings of a closed polyline with itself, chord by chord. */
function bruteForce(polyline: readonly Point[]): number {
	const n = polyline.length;
	const starts = [0];
	for (let i = 0; i < n; i++) starts.push(starts[i] + distance(polyline[i], polyline[(i + 1) % n]));
	const side = (p: Point, q: Point, r: Point) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
	let count = 0;
	for (let i = 0; i < n; i++) {
		for (let j = i + 2; j < n; j++) {
			if ((i === 0 && j === n - 1) || loopLength(starts[i], starts[j], starts[n]) < shortest) continue;
			const [a, b, c, d] = [polyline[i], polyline[i + 1], polyline[j], polyline[(j + 1) % n]];
			if (side(a, b, c) > 0 !== side(a, b, d) > 0 && side(c, d, a) > 0 !== side(c, d, b) > 0) count++;
		}
	}
	return count;
}

describe('outlines that do not cross themselves', () => {
	test.each([
		['a triangle', polygon([0, 0], [100, 0], [50, 80])],
		['a needle of a triangle', polygon([0, 0], [300, 0.001], [300, 0])],
		['a square, joints at right angles', polygon([0, 0], [100, 0], [100, 100], [0, 100])],
		[
			'a spike that turns back by all but a thousandth',
			polygon([0, 0], [100, 0], [100, 50], [40, 50.1], [100, 50.2], [100, 100], [0, 100])
		],
		[
			'two curves that meet with one tangent at both ends',
			[cubic([0, 0], [0, -70], [100, -70], [100, 0]), cubic([100, 0], [100, 70], [0, 70], [0, 0])]
		],
		['one curve and its chord', [cubic([0, 0], [20, 80], [90, 90], [120, 0]), line([120, 0], [0, 0])]],
		['a teardrop of one curve', [cubic([0, 0], [150, 40], [40, 150], [0, 0])]],
		[
			'a sickle whose two curves leave one point in one direction',
			[
				cubic([0, 0], [60, 0], [120, 20], [160, 80]),
				line([160, 80], [150, 85]),
				cubic([150, 85], [110, 30], [60, 0], [0, 0])
			]
		],
		[
			'joints with segments of no length',
			[
				line([0, 0], [100, 0]),
				line([100, 0], [100, 0]),
				line([100, 0], [100, 100]),
				cubic([100, 100], [100, 100], [100, 100], [100, 100]),
				line([100, 100], [0, 0])
			]
		],
		[
			'an edge of many short chords',
			sampled([cubic([0, 0], [-5, 90], [20, 150], [95, 160])], 60).map((p, i, all) =>
				line(p, all[(i + 1) % all.length])
			)
		]
	] as [string, Path][])('%s', (_, outline) => {
		expect(found(outline)).toEqual([]);
		expect(found(reversedPath(outline))).toEqual([]);
		expect(found(movePath(reflection([0, 3], [70, 50]), outline))).toEqual([]);
	});
});

describe('outlines that do', () => {
	test('a bow tie crosses in its middle', () => {
		const crossings = found(polygon([0, 0], [100, 100], [100, 0], [0, 100]));
		expect(crossings).toHaveLength(1);
		expect(distance(crossings[0].point, [50, 50])).toBeLessThan(1e-9);
	});

	test('a five-pointed star crosses five times', () => {
		const corner = (k: number): Point => [100 * Math.cos((k * 4 * Math.PI) / 5), 100 * Math.sin((k * 4 * Math.PI) / 5)];
		expect(found(polygon(corner(0), corner(1), corner(2), corner(3), corner(4)))).toHaveLength(5);
	});

	test('one curve with a loop crosses where its two passes meet', () => {
		// Derived: with v = t − ½, x = 50 − 150 v + 1000 v³ and y = 450 (¼ − v²): x is 50 again at v² = 0.15, where y is 45.
		const loop = cubic([0, 0], [200, 150], [-100, 150], [100, 0]);
		const crossings = found([loop, line([100, 0], [50, -80]), line([50, -80], [0, 0])]);
		expect(crossings).toHaveLength(1);
		expect(crossings[0].point[0]).toBeCloseTo(50, 9);
		expect(crossings[0].point[1]).toBeCloseTo(45, 9);
	});

	test('neighbours that cross elsewhere than at their joint', () => {
		const hook = cubic([0, 0], [100, 0], [100, 60], [40, 60]);
		const crossings = found([hook, line([40, 60], [120, 20]), line([120, 20], [160, -40]), line([160, -40], [0, 0])]);
		expect(crossings).toHaveLength(1);
		expect(distance(crossings[0].point, [40, 60])).toBeGreaterThan(10);
		// Two curves with one tangent at their joint, the second curling back through the first.
		const curl: Path = [
			cubic([0, 0], [60, 0], [100, 0], [140, 0]),
			cubic([140, 0], [220, 0], [120, 120], [90, -40]),
			line([90, -40], [0, 0])
		];
		expect(found(curl)).toHaveLength(1);
	});

	test('a waist pinched until its sides cross', () => {
		const pinched = (by: number): Path => [
			line([0, 0], [100, 0]),
			cubic([100, 0], [100 - by, 60], [100 - by, 120], [100, 180]),
			line([100, 180], [0, 180]),
			cubic([0, 180], [by, 120], [by, 60], [0, 0])
		];
		// The sides stand 100 − 1.5 by apart in the middle.
		expect(found(pinched(60))).toEqual([]);
		expect(found(pinched(66.6))).toEqual([]);
		expect(found(pinched(66.7))).toHaveLength(2);
		expect(found(pinched(90))).toHaveLength(2);
	});

	test.each(nastyCurves.filter(({ remark }) => /plain loop|too small/.test(remark)))('$remark', ({ remark, curve }) => {
		const closed: Path = [curve, line(curve.to, [50, -300]), line([50, -300], curve.from)];
		// The loop past the cusp is about 1e-9 mm round: less than what counts as two places.
		expect(found(closed)).toHaveLength(/too small/.test(remark) ? 0 : 1);
	});

	test('an edge that runs back along its neighbour gives where the two part', () => {
		const spike = polygon([0, 0], [100, 0], [100, 50], [150, 50], [100, 50], [100, 100], [0, 100]);
		const crossings = found(spike);
		expect(crossings.length).toBeGreaterThan(0);
		expect(crossings.length).toBeLessThan(4);
		expect(distance(crossings[0].point, [100, 50])).toBeLessThan(1e-6);
	});
});

test('an outline that runs there and back over itself is seen to', () => {
	const there = cubic([0, 0], [40, 30], [80, -30], [120, 0]);
	expect(found([there, cubic([120, 0], [80, -30], [40, 30], [0, 0])])).toHaveLength(1);
	expect(found(polygon([0, 0], [0, 10], [0, 20])).length).toBeGreaterThan(0);
});

test('random outlines cross themselves as often as their polylines (seed 111)', () => {
	let judged = 0;
	fc.assert(
		fc.property(fc.noBias(fc.array(fc.tuple(points, points, points), { minLength: 2, maxLength: 5 })), (parts) => {
			const corners = parts.map(([corner]) => corner);
			const outline: Path = parts.map(([corner, c1, c2], i) =>
				cubic(corner, c1, c2, corners[(i + 1) % corners.length])
			);
			const coarse = bruteForce(sampled(outline, 60).slice(0, -1));
			const fine = bruteForce(sampled(outline, 171).slice(0, -1));
			const round = pathLength(outline);
			const loops = found(outline).map(({ s1, s2 }) => loopLength(s1, s2, round));
			// Where two resolutions disagree, or a loop is about the shortest, the polylines are too coarse to judge.
			if (coarse !== fine || loops.some((loop) => loop > 0.5 * shortest && loop < 2 * shortest)) return;
			judged++;
			expect(loops.filter((loop) => loop >= shortest)).toHaveLength(fine);
		}),
		{ seed: 111, numRuns: 150, endOnFailure: true }
	);
	expect(judged).toBeGreaterThan(90);
}, 120_000);

test('the count is the same turned round and begun elsewhere (seed 112)', () => {
	fc.assert(
		fc.property(fc.noBias(fc.array(points, { minLength: 3, maxLength: 8 })), (corners) => {
			const outline = polygon(...corners);
			const count = found(outline).length;
			expect(found(reversedPath(outline))).toHaveLength(count);
			expect(found([...outline.slice(1), outline[0]])).toHaveLength(count);
		}),
		{ seed: 112, numRuns: 300 }
	);
});
