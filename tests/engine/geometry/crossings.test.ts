import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measured } from '../../../src/lib/engine/geometry/accuracy.ts';
import { crossings } from '../../../src/lib/engine/geometry/crossings.ts';
import { movePath, rotation } from '../../../src/lib/engine/geometry/motion.ts';
import { distance } from '../../../src/lib/engine/geometry/point.ts';
import { pathLength, pointAt, straight } from '../../../src/lib/engine/geometry/path.ts';
import { cubic, line, splitSegment } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { chordCrossings, cubics, evenly, paths, raised, sampled } from '../../support/curves.ts';
import { onBoth } from '../../support/on-both.ts';

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
