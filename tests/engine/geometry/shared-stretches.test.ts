import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { movePath, rotation, translation } from '../../../src/lib/engine/geometry/motion.ts';
import { pathLength, portion, reversedPath, straight } from '../../../src/lib/engine/geometry/path.ts';
import { cubic, line, splitSegment } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { evenly, nastyCurves, sampled } from '../../support/curves.ts';
import { onBoth } from '../../support/on-both.ts';

describe('paths that lie on one another give the two ends of what they share', () => {
	const ends = (a: Path, b: Path) => onBoth(a, b).map(({ sa, sb }) => [sa, sb]);

	test.each(nastyCurves.filter(({ remark }) => !/loop|over itself|cusp|one place|hairpin/.test(remark)))(
		'$remark',
		({ curve }) => {
			const path: Path = [curve];
			const length = pathLength(path);
			const same = ends(path, [{ ...curve }]);
			expect(same).toHaveLength(2);
			expect(same[0][0]).toBeCloseTo(0, 5);
			expect(same[1][1]).toBeCloseTo(length, 5);
			const back = ends(path, reversedPath(path));
			expect(back).toHaveLength(2);
			expect(back[0][1]).toBeCloseTo(length, 5);
			const middle = ends(path, portion(path, 0.3 * length, 0.6 * length));
			expect(middle).toHaveLength(2);
			expect(middle[0][0]).toBeCloseTo(0.3 * length, 4);
			expect(middle[1][0]).toBeCloseTo(0.6 * length, 4);
			const past = ends(portion(path, 0, 0.7 * length), reversedPath(portion(path, 0.4 * length, length)));
			expect(past).toHaveLength(2);
			expect(past[0][0]).toBeCloseTo(0.4 * length, 4);
			expect(past[1][0]).toBeCloseTo(0.7 * length, 4);
		}
	);

	test('chains with other joints, and moved by rounding', () => {
		const curve = cubic([0, 0], [-5, 90], [20, 150], [95, 160]);
		const chain: Path = [line([0, -80], [0, 0]), curve, line([95, 160], [200, 170])];
		const [first, second] = splitSegment(curve, 0.37);
		const other: Path = [line([0, -80], [0, 0]), first, second, line([95, 160], [200, 170])];
		expect(ends(chain, other)).toHaveLength(2);
		const there = movePath(rotation(1, [400, 300]), other);
		expect(ends(chain, movePath(rotation(-1, [400, 300]), there))).toHaveLength(2);
		expect(ends(chain, movePath(translation(0, 5e-7), other))).toHaveLength(2);
	});

	test('lines', () => {
		expect(ends(straight([0, 0], [100, 0]), straight([150, 0], [40, 0]))).toEqual([
			[40, 110],
			[100, 50]
		]);
		expect(ends(straight([0, 0], [100, 0]), straight([100, 0], [200, 0]))).toEqual([[100, 0]]);
		const straightCurve: Path = [cubic([20, 0], [40, 0], [60, 0], [120, 0])];
		expect(ends(straight([0, 0], [100, 0]), straightCurve)).toHaveLength(2);
	});

	test('a stretch that is shared and a crossing elsewhere', () => {
		const a: Path = [line([0, 0], [100, 0]), line([100, 0], [100, 100])];
		const b: Path = [line([20, 0], [80, 0]), line([80, 0], [80, 50]), line([80, 50], [150, 50])];
		expect(ends(a, b).map(([sa]) => sa)).toEqual([20, 80, 150]);
	});

	test('a shared edge that parts without a corner', () => {
		const shared = cubic([0, 0], [-5, 90], [20, 150], [95, 160]);
		// Both run on along (75, 10), one bending up, one down.
		const one: Path = [shared, cubic([95, 160], [132.5, 165], [170, 150], [200, 120])];
		const other: Path = [shared, cubic([95, 160], [125, 164], [180, 180], [200, 220])];
		const found = onBoth(one, other);
		expect(found).toHaveLength(2);
		expect(found[0].sa).toBeCloseTo(0, 6);
		expect(Math.abs(found[1].sa - pathLength([shared]))).toBeLessThan(0.2);
	});
});

/** How often a curve changes from one side of its near copy to the other, by 20 000 chords of each, looked at side by side. */
function sideChanges(a: Path, copy: Path): number {
	const steps = 20000;
	const [as, bs] = [sampled(a, steps), sampled(copy, steps)];
	let before = 0;
	let changes = 0;
	for (let i = 0; i <= steps; i += 10) {
		let least = Infinity;
		let nearest = -1;
		for (let j = Math.max(0, i - 200); j < Math.min(steps, i + 200); j++) {
			const away = Math.hypot(as[i][0] - bs[j][0], as[i][1] - bs[j][1]);
			if (away < least) [least, nearest] = [away, j];
		}
		// Beyond the copy's ends there are no sides.
		if (nearest <= 0 || nearest >= steps - 1) continue;
		const [p, q] = [bs[nearest - 1], bs[nearest + 1]];
		const side = Math.sign((q[0] - p[0]) * (as[i][1] - p[1]) - (q[1] - p[1]) * (as[i][0] - p[0]));
		if (before !== 0 && side !== 0 && side !== before) changes++;
		if (side !== 0) before = side;
	}
	return changes;
}

test('a curve and its near copy cross where it changes sides, at slants down to a millionth (seed 105)', () => {
	const smooth = fc
		.tuple(...Array.from({ length: 8 }, () => evenly(-25, 25)))
		.map(([a, b, c, d, e, f, g, h]) => cubic([a, b], [c, 90 + d], [20 + e, 150 + f], [95 + g, 160 + h]));
	fc.assert(
		fc.property(
			smooth,
			fc.noBias(fc.array(evenly(-1, 1), { minLength: 8, maxLength: 8 })),
			fc.integer({ min: 0, max: 3 }),
			(a, by, decade) => {
				const [from, control1, control2, to] = [a.from, a.control1, a.control2, a.to].map(([x, y], i): Point => [
					x + by[2 * i] * 10 ** -decade,
					y + by[2 * i + 1] * 10 ** -decade
				]);
				const copy = cubic(from, control1, control2, to);
				const found = onBoth([a], [copy]);
				expect(found.length).toBe(sideChanges([a], [copy]));
			}
		),
		{ seed: 105, numRuns: 60, endOnFailure: true }
	);
}, 120_000);
