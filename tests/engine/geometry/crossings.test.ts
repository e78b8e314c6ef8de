import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measured } from '../../../src/lib/engine/geometry/accuracy.ts';
import { crossings, lineCrossings } from '../../../src/lib/engine/geometry/crossings.ts';
import { movePath, rotation, translation } from '../../../src/lib/engine/geometry/motion.ts';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import { pathLength, pointAt, portion, reversedPath, straight } from '../../../src/lib/engine/geometry/path.ts';
import { cubic, line, splitSegment } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { chordCrossings, cubics, evenly, nastyCurves, paths, points, raised, sampled } from '../../support/curves.ts';

/** Every crossing lies on both paths. */
function onBoth(a: Path, b: Path, accuracy = measured) {
	const found = crossings(a, b, accuracy);
	for (const { sa, sb, point } of found) {
		expect(distance(pointAt(a, sa), point)).toBeLessThan(accuracy + 2 * measured);
		expect(distance(pointAt(b, sb), point)).toBeLessThan(2 * accuracy + 2 * measured);
	}
	found.slice(1).forEach(({ sa }, i) => expect(sa).toBeGreaterThanOrEqual(found[i].sa));
	return found;
}

/** y = 4x³ − 3x on [−1, 1], 100 mm to the unit: the Chebyshev polynomial T₃. */
const chebyshev: Path = [cubic([-100, -100], [-100 / 3, 500], [100 / 3, -500], [100, 100])];
const onItsSide: Path = [cubic([-100, -100], [500, -100 / 3], [-500, 100 / 3], [100, 100])];

describe('crossings in closed form', () => {
	test('two lines cross where their equations do', () => {
		const [only, ...others] = onBoth(straight([0, 0], [300, 400]), straight([300, 0], [0, 400]));
		expect(others).toEqual([]);
		expect(only.sa).toBeCloseTo(250, 9);
		expect(only.sb).toBeCloseTo(250, 9);
		expect(only.point[0]).toBeCloseTo(150, 9);
		expect(only.point[1]).toBeCloseTo(200, 9);
		expect(onBoth(straight([0, 0], [10, 0]), straight([20, -5], [20, 5]))).toEqual([]);
		expect(onBoth(straight([0, 0], [10, 0]), straight([0, 1], [10, 1]))).toEqual([]);
	});

	test('two cubics can cross nine times: T₃ and its mirror image in y = x, at the cosines of k·π/4 and k·π/5', () => {
		// T₃(T₃(t)) = T₉(t) = t: É. Bézout's bound of 3 × 3 is reached (derived).
		const cosines = [0, 1, 2, 3, 4].map((k) => Math.cos((k * Math.PI) / 4));
		cosines.push(...[1, 2, 3, 4].map((k) => Math.cos((k * Math.PI) / 5)));
		cosines.sort((a, b) => a - b);
		const found = onBoth(chebyshev, onItsSide);
		expect(found).toHaveLength(9);
		found.forEach(({ point }, i) => expect(point[0]).toBeCloseTo(100 * cosines[i], 6));
	});

	test('a line crosses the same cubic at the cosines of a third', () => {
		// T₃(cos θ) = cos 3θ, so height 50 is reached at cos 20°, cos 100° and cos 140°.
		const found = onBoth(chebyshev, straight([-200, 50], [200, 50]));
		const cosines = [140, 100, 20].map((degrees) => Math.cos((degrees * Math.PI) / 180));
		expect(found).toHaveLength(3);
		found.forEach(({ point }, i) => expect(point[0]).toBeCloseTo(100 * cosines[i], 8));
		expect(onBoth(straight([-200, 50], [200, 50]), chebyshev)).toHaveLength(3);
	});

	test('two parabolas that touch side by side meet once, there', () => {
		const up: Path = [raised([-100, 50], [0, -50], [100, 50])];
		const down: Path = [raised([-100, -50], [0, 50], [100, -50])];
		const found = onBoth(up, down);
		expect(found).toHaveLength(1);
		expect(distance(found[0].point, [0, 0])).toBeLessThan(1e-6);
		const tilted = movePath(rotation(0.3, [17, -9]), up);
		expect(onBoth(tilted, movePath(rotation(0.3, [17, -9]), down))).toHaveLength(1);
	});

	test('a tangent line touches once, a hair higher twice, a hair lower never', () => {
		const up: Path = [raised([-100, 50], [0, -50], [100, 50])];
		expect(onBoth(up, straight([-90, 0], [90, 0]))).toHaveLength(1);
		const twice = onBoth(up, straight([-90, 1e-4], [90, 1e-4]));
		// y = x²/200: ±√0.02.
		expect(twice.map(({ point }) => point[0])).toHaveLength(2);
		expect(twice[0].point[0]).toBeCloseTo(-Math.sqrt(0.02), 6);
		expect(twice[1].point[0]).toBeCloseTo(Math.sqrt(0.02), 6);
		expect(onBoth(up, straight([-90, -1e-5], [90, -1e-5]))).toEqual([]);
	});

	test('two parabolas that touch a hair apart meet never, a hair overlapped twice', () => {
		const up = (lift: number): Path => [raised([-100, 50 + lift], [0, -50 + lift], [100, 50 + lift])];
		const down: Path = [raised([-100, -50], [0, 50], [100, -50])];
		expect(onBoth(up(1e-5), down)).toEqual([]);
		const twice = onBoth(up(-1e-4), down);
		// x²/200 − 1e-4 = −x²/200: ±0.1.
		expect(twice).toHaveLength(2);
		expect(twice[0].point[0]).toBeCloseTo(-0.1, 6);
		expect(twice[1].point[0]).toBeCloseTo(0.1, 6);
	});

	test('curves that pass through one another at one place with one tangent and one curvature cross once', () => {
		// y = x²/200 and y = x²/200 + x³/20000.
		const parabola: Path = [raised([-100, 50], [0, -50], [100, 50])];
		// Control points of a graph y(x) stand at thirds of x; from values and slopes at ±100: 0, −0.5; 100, 2.5.
		const twisted: Path = [cubic([-100, 0], [-100 / 3, (200 / 3) * 0.5], [100 / 3, 100 - (200 / 3) * 2.5], [100, 100])];
		const slope = (x: number) => x / 100 + (3 * x * x) / 20000;
		expect(slope(-100)).toBeCloseTo(0.5, 12);
		const found = onBoth(parabola, twisted);
		expect(found).toHaveLength(1);
		// Third-order contact: within the accuracy of one another over some (6e-6 × 20000/6)^⅓ mm.
		expect(distance(found[0].point, [0, 0])).toBeLessThan(0.4);
	});
});

describe('ends', () => {
	const edge: Path = [cubic([0, 0], [-5, 90], [20, 150], [95, 160])];

	test('an end that lies on the other path counts, within the accuracy and not beyond', () => {
		const on = pointAt(edge, 100);
		for (const [gap, count] of [
			[0, 1],
			[5e-7, 1],
			[3e-6, 0]
		] as const) {
			const stop: Point = [on[0] + gap, on[1] - gap / 10];
			expect(onBoth(edge, straight(stop, [on[0] + 80, on[1] - 8]))).toHaveLength(count);
			expect(onBoth(straight([on[0] + 80, on[1] - 8], stop), edge)).toHaveLength(count);
		}
	});

	test('ends that meet count once, whatever the angle', () => {
		for (let degrees = 0; degrees < 360; degrees += 15) {
			const next = movePath(rotation((degrees * Math.PI) / 180, [95, 160]), [
				cubic([95, 160], [120, 162], [150, 140], [180, 150])
			]);
			const found = onBoth(edge, next);
			expect(found.some(({ sa, sb }) => Math.abs(sa - pathLength(edge)) < 1e-5 && sb < 1e-5)).toBe(true);
			expect(found.filter(({ point }) => distance(point, [95, 160]) < 0.01)).toHaveLength(1);
		}
	});

	test('a joint that is crossed counts once', () => {
		const bent: Path = [line([0, 0], [50, 50]), line([50, 50], [100, 0])];
		expect(onBoth(bent, straight([0, 50], [100, 50]))).toHaveLength(1);
		expect(onBoth(bent, straight([50, 0], [50, 100]))).toHaveLength(1);
		const curve = cubic([0, 0], [-5, 90], [20, 150], [95, 160]);
		for (const t of [0.2, 0.5, 0.8]) {
			const [first, second] = splitSegment(curve, t);
			const [x, y] = first.to;
			expect(onBoth([first, second], straight([x - 30, y + 20], [x + 30, y - 20]))).toHaveLength(1);
			expect(
				onBoth([first, second], [cubic([x - 60, y + 20], [x - 20, y + 20], [x + 20, y - 20], [x + 60, y - 20])])
			).toHaveLength(1);
		}
	});
});

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

describe('random curves', () => {
	test('cross as often as their fine polylines do (seed 101)', () => {
		let judged = 0;
		fc.assert(
			fc.property(cubics, cubics, (a, b) => {
				const coarse = chordCrossings(sampled([a], 150), sampled([b], 150));
				const fine = chordCrossings(sampled([a], 611), sampled([b], 613));
				// Where two resolutions disagree the polylines themselves are too coarse to judge.
				if (coarse !== fine) return;
				judged++;
				expect(onBoth([a], [b])).toHaveLength(fine);
			}),
			{ seed: 101, numRuns: 600 }
		);
		expect(judged).toBeGreaterThan(560);
	}, 120_000);

	test('chains cross as often as their fine polylines do (seed 102)', () => {
		let judged = 0;
		fc.assert(
			fc.property(paths, paths, (a, b) => {
				const coarse = chordCrossings(sampled(a, 101), sampled(b, 101));
				const fine = chordCrossings(sampled(a, 331), sampled(b, 333));
				if (coarse !== fine) return;
				judged++;
				expect(onBoth(a, b)).toHaveLength(fine);
			}),
			{ seed: 102, numRuns: 200 }
		);
		expect(judged).toBeGreaterThan(180);
	}, 120_000);

	test('cross alike whichever is asked first, and turned and shifted (seed 103)', () => {
		fc.assert(
			fc.property(paths, paths, evenly(-3, 3), (a, b, angle) => {
				const there = crossings(a, b, measured);
				const back = crossings(b, a, measured).sort((p, q) => p.sb - q.sb);
				expect(back).toHaveLength(there.length);
				back.forEach(({ sa, sb }, i) => {
					expect(Math.abs(sb - there[i].sa)).toBeLessThan(1e-5);
					expect(Math.abs(sa - there[i].sb)).toBeLessThan(1e-5);
				});
				const turn = rotation(angle, [40, 700]);
				const turned = crossings(movePath(turn, a), movePath(turn, b), measured);
				expect(turned).toHaveLength(there.length);
			}),
			{ seed: 103, numRuns: 200 }
		);
	});
});

describe('with the infinite line', () => {
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
});
