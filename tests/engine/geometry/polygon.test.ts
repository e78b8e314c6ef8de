import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import type { MultiPolygon, Ring } from 'polygon-clipping';
import { describe, expect, test } from 'vitest';
import { containsWithin, difference, polygonArea, union } from '../../../src/lib/engine/geometry/polygon.ts';
import type { Point } from '../../../src/lib/engine/geometry/types.ts';
import { evenly } from '../../support/curves.ts';

const rectangle = (left: number, top: number, right: number, bottom: number): Point[] => [
	[left, top],
	[right, top],
	[right, bottom],
	[left, bottom]
];

/** Simple polygons: corners at rising angles about a middle, far and near, deeply notched. */
const simplePolygons: fc.Arbitrary<Point[]> = fc
	.tuple(evenly(-150, 150), evenly(-150, 150), fc.array(evenly(20, 300), { minLength: 3, maxLength: 60 }))
	.map(([x, y, radii]) =>
		radii.map((r, i): Point => {
			const angle = (2 * Math.PI * i) / radii.length;
			return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
		})
	);

/** Rings around which chance has led the pen: they cross themselves. */
const tangled: fc.Arbitrary<Point[]> = fc.array(fc.tuple(evenly(-200, 200), evenly(-200, 200)), {
	minLength: 3,
	maxLength: 12
});

const ring = (polygon: readonly Point[]): Ring => polygon.map(([x, y]): [number, number] => [x, y]);

function oracleArea(polygons: MultiPolygon): number {
	let sum = 0;
	for (const [outer, ...holes] of polygons) {
		const area = (one: Ring) =>
			Math.abs(
				one.reduce((all, [x, y], i) => all + x * one[(i + 1) % one.length][1] - y * one[(i + 1) % one.length][0], 0)
			) / 2;
		sum += area(outer) - holes.reduce((all, hole) => all + area(hole), 0);
	}
	return sum;
}

/** Points are rounded to 1e-4 mm, so an area is sure to about that times the outline's length. */
const rounding = (...polygons: (readonly Point[])[]) =>
	polygons.reduce(
		(sum, polygon) =>
			sum +
			polygon.reduce(
				(all, p, i) =>
					all + Math.hypot(p[0] - polygon[(i + 1) % polygon.length][0], p[1] - polygon[(i + 1) % polygon.length][1]),
				0
			),
		0
	) * 2e-4;

describe('against polygon-clipping', () => {
	test('differences and unions of simple polygons have the same areas (seed 121)', () => {
		fc.assert(
			fc.property(simplePolygons, simplePolygons, (a, b) => {
				const sure = rounding(a, b);
				const less = polygonArea(difference([a], [b]));
				expect(Math.abs(less - oracleArea(polygonClipping.difference([ring(a)], [ring(b)])))).toBeLessThan(sure);
				const both = polygonArea(union([a], [b]));
				expect(Math.abs(both - oracleArea(polygonClipping.union([ring(a)], [ring(b)])))).toBeLessThan(sure);
				expect(Math.abs(both - less - polygonArea([b]))).toBeLessThan(sure);
			}),
			{ seed: 121, numRuns: 1000 }
		);
	}, 60_000);

	test('what is left of a simple polygon under a tangled one, holes and islands and all (seed 122)', () => {
		fc.assert(
			fc.property(simplePolygons, tangled, (a, tangle) => {
				// Tangles are made simple first, each library reading its own fill rule otherwise.
				const simple = union([tangle], []);
				const less = difference([a], simple);
				const oracle = polygonClipping.difference(
					[ring(a)],
					...simple.filter((one) => polygonArea([one]) > 0).map((one) => [ring(one)])
				);
				const holes = simple.filter((one) => polygonArea([one]) < 0).map((one) => [[...one].reverse()]);
				const inHoles = holes.map((hole) => polygonArea([a]) - polygonArea(difference([a], hole)));
				const expected = oracleArea(oracle) + inHoles.reduce((sum, area) => sum + area, 0);
				expect(Math.abs(polygonArea(less) - expected)).toBeLessThan(rounding(a, tangle, ...simple));
			}),
			{ seed: 122, numRuns: 300 }
		);
	}, 60_000);
});

describe('known figures', () => {
	test('a notch, a hole and two halves', () => {
		const square = rectangle(0, 0, 100, 100);
		expect(polygonArea(difference([square], [rectangle(50, -10, 60, 30)]))).toBeCloseTo(10000 - 300, 9);
		const holed = difference([square], [rectangle(20, 20, 40, 50)]);
		expect(holed).toHaveLength(2);
		expect(polygonArea(holed)).toBeCloseTo(10000 - 600, 9);
		// A result can be taken from again, its hole staying a hole.
		expect(polygonArea(difference(holed, [rectangle(0, 0, 30, 100)]))).toBeCloseTo(7000 - 300, 9);
		expect(difference([square], [rectangle(40, -1, 60, 101)])).toHaveLength(2);
		expect(difference([square], [square])).toEqual([]);
		expect(polygonArea(union([square], [rectangle(50, 50, 150, 150)]))).toBeCloseTo(17500, 9);
	});

	test('a clockwise outline, as seen, has a positive area, whichever way it was given', () => {
		const square = rectangle(0, 0, 100, 100);
		expect(polygonArea([square])).toBe(10000);
		expect(polygonArea([[...square].reverse()])).toBe(-10000);
		expect(polygonArea(difference([[...square].reverse()], [rectangle(0, 0, 100, 50)]))).toBe(5000);
	});

	test('inside within a tolerance', () => {
		const outer = [rectangle(0, 0, 200, 300)];
		expect(containsWithin(outer, [rectangle(0, 0, 200, 300)], 1)).toBe(true);
		expect(containsWithin(outer, [rectangle(10, 10, 190, 290)], 0)).toBe(true);
		// A tenth of a millimetre over along 300 mm is 30 mm².
		expect(containsWithin(outer, [rectangle(10, 0, 200.1, 300)], 31)).toBe(true);
		expect(containsWithin(outer, [rectangle(10, 0, 200.1, 300)], 29)).toBe(false);
		expect(containsWithin(outer, [rectangle(500, 0, 600, 10)], 1)).toBe(false);
	});
});
