import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { Clipper } from 'clipper2-ts';
import { describe, expect, test } from 'vitest';
import { polygonArea, signedArea } from '../../../src/lib/engine/geometry/area.ts';
import { movePath, reflection, rotation, translation } from '../../../src/lib/engine/geometry/motion.ts';
import { cubic, line } from '../../../src/lib/engine/geometry/segment.ts';
import { reversedPath } from '../../../src/lib/engine/geometry/path.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { cubics, evenly, paths, sampled } from '../../support/curves.ts';

const closed = (path: Path): Path => [...path, line(path[path.length - 1].to, path[0].from)];

describe('areas known outside', () => {
	test('the corners (3,1), (7,2), (8,9), (2,11) as control points enclose 43.1 by a cubic and its chord to the origin', () => {
		// "Area of a closed Bézier curve", forum derivation from the divergence theorem: the curve's own term is 43.1.
		const [a, b, c, d]: Point[] = [
			[3, 1],
			[7, 2],
			[8, 9],
			[2, 11]
		];
		expect(signedArea([line([0, 0], a), cubic(a, b, c, d), line(d, [0, 0])])).toBeCloseTo(43.1, 12);
	});

	test('a cubic whose speed is 1 + t² sweeps a fifth seen from the origin', () => {
		// R. T. Farouki, Pythagorean-Hodograph Curves, 2008 (from memory); area derived.
		expect(signedArea(closed([cubic([0, 0], [1 / 3, 0], [2 / 3, 1 / 3], [2 / 3, 1])]))).toBeCloseTo(1 / 5, 14);
	});

	test('a semicubical parabola to (1, 1) encloses a tenth with its chord', () => {
		// Derived: ½ − ∫ x^(3/2) dx = ½ − 2/5.
		expect(Math.abs(signedArea(closed([cubic([0, 0], [0, 0], [1 / 3, 0], [1, 1])])))).toBeCloseTo(1 / 10, 14);
	});

	test('a quarter circle drawn as one cubic is 0.02800 % too large', () => {
		// The usual k = 0.5522847498 (from memory); excess derived.
		const k = 0.5522847498;
		const area = signedArea([line([0, 0], [1, 0]), cubic([1, 0], [1, k], [k, 1], [0, 1]), line([0, 1], [0, 0])]);
		expect(area / (Math.PI / 4) - 1).toBeCloseTo(0.00028, 6);
	});

	test('is positive clockwise as seen, negative the other way', () => {
		const square: Path = [
			line([0, 0], [10, 0]),
			line([10, 0], [10, 10]),
			line([10, 10], [0, 10]),
			line([0, 10], [0, 0])
		];
		expect(signedArea(square)).toBe(100);
		expect(signedArea(reversedPath(square))).toBe(-100);
		expect(polygonArea([square.map(({ from }) => from)])).toBe(100);
	});
});

test('a fine polygon comes to the same area, by our shoelace sum and by Clipper2’s (seed 61)', () => {
	fc.assert(
		fc.property(paths, (path) => {
			const outline = closed(path);
			const exact = signedArea(outline);
			const [coarse, fine] = [500, 1000].map((steps) => sampled(outline, steps).slice(0, -1));
			// Areas of inscribed polygons err as the square of the step, so two of them extrapolate.
			const extrapolated = polygonArea([fine]) + (polygonArea([fine]) - polygonArea([coarse])) / 3;
			expect(Math.abs(extrapolated - exact)).toBeLessThan(1e-5);
			const clipper = (polygon: Point[]) => Clipper.areaD(polygon.map(([x, y]) => ({ x, y })));
			expect(Math.abs(clipper(fine) - polygonArea([fine]))).toBeLessThan(1e-6);
		}),
		{ seed: 61, numRuns: 100 }
	);
});

test('agrees with bezier-js points put through polygon-clipping on simple outlines', () => {
	const outline: Path = [
		cubic([0, 0], [60, -30], [140, 20], [200, 0]),
		cubic([200, 0], [230, 120], [180, 200], [210, 300]),
		line([210, 300], [0, 290]),
		cubic([0, 290], [30, 200], [-40, 100], [0, 0])
	];
	const ring = outline.flatMap((segment): [number, number][] => {
		if (segment.kind === 'line') return [[...segment.from]];
		const curve = new Bezier(...segment.from, ...segment.control1, ...segment.control2, ...segment.to);
		return curve
			.getLUT(4000)
			.slice(0, -1)
			.map(({ x, y }): [number, number] => [x, y]);
	});
	const [[cleaned]] = polygonClipping.union([ring]);
	expect(Math.abs(Math.abs(polygonArea([cleaned])) - signedArea(outline))).toBeLessThan(0.01);
});

test('rigid motions keep it, mirroring changes its sign, and it is the same seen from any start (seed 62)', () => {
	fc.assert(
		fc.property(cubics, cubics, evenly(-3, 3), (first, second, angle) => {
			const outline = closed([first, line(first.to, second.from), second]);
			const area = signedArea(outline);
			expect(Math.abs(signedArea(movePath(rotation(angle, [50, 9]), outline)) - area)).toBeLessThan(1e-7);
			expect(Math.abs(signedArea(movePath(translation(5000, -3000), outline)) - area)).toBeLessThan(1e-6);
			expect(Math.abs(signedArea(movePath(reflection([0, 0], [3, 7]), outline)) + area)).toBeLessThan(1e-7);
			expect(Math.abs(signedArea([...outline.slice(2), ...outline.slice(0, 2)]) - area)).toBeLessThan(1e-7);
			expect(Math.abs(signedArea(reversedPath(outline)) + area)).toBeLessThan(1e-7);
		}),
		{ seed: 62 }
	);
});
