import fc from 'fast-check';
import { Clipper, EndType, JoinType } from 'clipper2-ts';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { cuttingLines, type CutPiece } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { contains } from '../../../src/lib/engine/geometry/contains.ts';
import { measured } from '../../../src/lib/engine/geometry/accuracy.ts';
import { nearestOn } from '../../../src/lib/engine/geometry/nearest.ts';
import { parsePathData } from '../../../src/lib/engine/geometry/path-data.ts';
import { selfCrossings } from '../../../src/lib/engine/geometry/self-crossing.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { plainBodice } from '../../support/plain-bodice.ts';
import { pieceOf, polygonOf } from './simple-piece.ts';

function pathOf(data: string): Path {
	const parsed = parsePathData(data);
	if ('problem' in parsed) throw new Error(parsed.problem);
	return parsed.path;
}

const corners = ({ outline }: CutPiece): Point[] => pathOf(outline).map((segment) => segment.from);
const hasCorner = (piece: CutPiece, [x, y]: Point): void => {
	const nearest = Math.min(...corners(piece).map((corner) => Math.hypot(corner[0] - x, corner[1] - y)));
	expect(nearest, `${x}, ${y} in ${piece.outline}`).toBeLessThan(1e-6);
};

/** The length of the curves of an outline, by another library. */
const curvedLength = ({ outline }: CutPiece): number =>
	pathOf(outline)
		.filter((segment) => segment.kind === 'cubic')
		.map(({ from, control1, control2, to }) => new svgPathProperties(`M ${from} C ${control1} ${control2} ${to}`))
		.reduce((sum, one) => sum + one.getTotalLength(), 0);

describe('the cutting line of a polygon', () => {
	// Mitred offset of a convex polygon: A′ = A + P·d + Σ d²·tan(exterior angle / 2); 230 × 430 here.
	it('encloses 98 900 mm² round 200 × 400 with 15 mm', () => {
		const [piece] = cuttingLines(
			polygonOf([
				[0, 0],
				[200, 0],
				[200, 400],
				[0, 400]
			]),
			{ default: 15 }
		);
		expect(piece.area).toBeCloseTo(98_900, 8);
		expect(corners(piece)).toHaveLength(4);
	});

	// A 3-4-5 triangle has an inscribed circle of radius 1: with 10 mm round 300-400-500 it grows by (1.1)², to 72 600.
	it('encloses 72 600 mm² round a 3-4-5 triangle with 10 mm, mitred to the end', () => {
		const triangle = polygonOf([
			[0, 0],
			[400, 0],
			[0, 300]
		]);
		expect(cuttingLines(triangle, { default: 10, mitre: 4 })[0].area).toBeCloseTo(72_600, 8);
	});

	// The corner of 36.87° would reach 31.6 mm, more than 2.5 × 10: it is cut square to the longer of its two edges, where the
	// other edge's cutting line comes to that edge run on. Worked by hand.
	it('squares a long point off', () => {
		const triangle = polygonOf([
			[0, 0],
			[400, 0],
			[0, 300]
		]);
		const [piece] = cuttingLines(triangle, { default: 10 });
		// The longer edge runs from (400, 0) to (0, 300) in direction (−0.8, 0.6); run back past the point it meets y = −10.
		hasCorner(piece, [400 + 40 / 3, -10]);
		hasCorner(piece, [400 + 40 / 3 + 6, -10 + 8]);
	});

	// Each of two edges gets 3/8 in, 3/4 in in all: The Practical Designer, p. 67 of the scan.
	it('is wider than the piece by the allowances of both edges: two of 3/8″ make 19.05 mm', () => {
		const strip = polygonOf([
			[0, 0],
			[100, 0],
			[100, 500],
			[0, 500]
		]);
		const [piece] = cuttingLines(strip, { default: 9.525 });
		const xs = corners(piece).map(([x]) => x);
		expect(Math.max(...xs) - Math.min(...xs) - 100).toBeCloseTo(19.05, 9);
	});

	it('gives each edge its own allowance, and a step where two lie in one line', () => {
		const strip = polygonOf([
			[0, 0],
			[100, 0],
			[200, 0],
			[200, 50],
			[0, 50]
		]);
		const [piece] = cuttingLines(strip, { default: 10, edges: { 'piece/edge-2': 25 } });
		for (const corner of [
			[-10, -10],
			[100, -10],
			[100, -25],
			[210, -25],
			[210, 60],
			[-10, 60]
		] as const)
			hasCorner(piece, corner);
		expect(corners(piece)).toHaveLength(6);
	});

	it('trims the lines to where they cross in a hollow corner', () => {
		const angle = polygonOf([
			[0, 0],
			[100, 0],
			[100, 100],
			[200, 100],
			[200, 200],
			[0, 200]
		]);
		const [piece] = cuttingLines(angle, { default: 10, edges: { 'piece/edge-3': 25 } });
		hasCorner(piece, [110, 75]);
		expect(corners(piece)).toHaveLength(6);
	});

	it('agrees with a polygon library on random polygons whose points stay within the mitre limit', () => {
		const polygon = fc
			.array(fc.double({ min: 120, max: 200, noNaN: true }), { minLength: 5, maxLength: 9 })
			.map((radii) =>
				radii.map((radius, i): [number, number] => {
					const angle = (2 * Math.PI * i) / radii.length;
					return [radius * Math.cos(angle), radius * Math.sin(angle)];
				})
			);
		fc.assert(
			fc.property(polygon, fc.double({ min: 1, max: 40, noNaN: true }), (points, allowance) => {
				const [piece] = cuttingLines(polygonOf(points), { default: allowance });
				const inflated = Clipper.inflatePathsD(
					[points.map(([x, y]) => ({ x, y }))],
					allowance,
					JoinType.Miter,
					EndType.Polygon,
					2.5,
					6
				);
				const area = inflated.reduce((sum, path) => sum + Math.abs(Clipper.areaD(path)), 0);
				expect(Math.abs(piece.area - area)).toBeLessThan(1e-4 * area);
			}),
			{ numRuns: 300 }
		);
	});
});

describe('the cutting line of curves', () => {
	// Pythagorean-hodograph cubic (Farouki), length 4/3, turning through 90°; its offsets by ±0.1 are 4/3 ± 0.05π long, for a
	// parallel curve is longer by distance × turning. Scaled by 300: allowance 30 mm.
	const k = 300;
	const curve = `M 0 0 C ${k / 3} 0 ${(2 * k) / 3} ${k / 3} ${(2 * k) / 3} ${k}`;
	const back = `M ${(2 * k) / 3} ${k} C ${(2 * k) / 3} ${k / 3} ${k / 3} 0 0 0`;
	const allowances = { default: 0, edges: { 'piece/edge-1': 30 } };

	it('is longer than a rounded edge by the allowance × its turning', () => {
		const piece = pieceOf([curve, `M ${(2 * k) / 3} ${k} L 0 ${k}`, `M 0 ${k} L 0 0`]);
		const [cut] = cuttingLines(piece, allowances);
		expect(cut.deviation).toBeLessThan(0.01);
		expect(Math.abs(curvedLength(cut) - 1.490412966 * k)).toBeLessThan(0.02);
	});

	it('is shorter than a hollow edge by the same', () => {
		const piece = pieceOf([
			back,
			`M 0 0 L 0 -150`,
			`M 0 -150 L 400 -150`,
			`M 400 -150 L 400 ${k}`,
			`M 400 ${k} L ${(2 * k) / 3} ${k}`
		]);
		const [cut] = cuttingLines(piece, allowances);
		expect(Math.abs(curvedLength(cut) - 1.1762537 * k)).toBeLessThan(0.02);
	});

	// Closed convex curve: L′ = L + 2πd, A′ = A + L·d + πd² (Steiner). The curve is drawn with four cubics, which are not quite a circle:
	// its own length and area are measured by other means.
	it('encloses what Steiner says round a closed convex curve', () => {
		const [r, d] = [50, 15];
		const c = 0.5522847498 * r;
		const quarters = [
			`M ${r} 0 C ${r} ${c} ${c} ${r} 0 ${r}`,
			`M 0 ${r} C ${-c} ${r} ${-r} ${c} ${-r} 0`,
			`M ${-r} 0 C ${-r} ${-c} ${-c} ${-r} 0 ${-r}`,
			`M 0 ${-r} C ${c} ${-r} ${r} ${-c} ${r} 0`
		];
		const [cut] = cuttingLines(pieceOf(quarters), { default: d });
		const length = quarters.reduce((sum, path) => sum + new svgPathProperties(path).getTotalLength(), 0);
		// One such quarter encloses this share more than its circle (published error of the usual quarter: 0.02800 %).
		const area = Math.PI * r * r * 1.00028;
		expect(Math.abs(cut.area - (area + length * d + Math.PI * d * d))).toBeLessThan(0.01 * length);
		// On a true circle: π·65².
		expect(cut.area / 13_273.23 - 1).toBeLessThan(3e-4);
	});

	it('loses the loops of a hollow narrower than its allowances, and says nothing', () => {
		const slot = pieceOf([
			'M 0 0 L 90 0',
			'M 90 0 L 90 60 C 90 65.5 94.5 70 100 70 C 105.5 70 110 65.5 110 60 L 110 0',
			'M 110 0 L 200 0',
			'M 200 0 L 200 200',
			'M 200 200 L 0 200',
			'M 0 200 L 0 0'
		]);
		const [cut] = cuttingLines(slot, { default: 15 });
		expect(cut.area).toBeCloseTo(230 * 230, 6);
		expect(corners(cut)).toHaveLength(4);
	});

	// Two straight edges at 45° joined by a tight round hollow: beyond its radius the cutting lines simply cross. Worked by hand:
	// the line y = x − 40 moved out by 25 passes x = 100 at y = 60 − 25·√2.
	// The neck begins too hollow for its allowance: it bends with a radius of 2.2 mm. The mitre at the shoulder is still that of the two
	// directions there, and what follows is bridged inside the contour.
	it('mitres a corner from which a hollow starts', () => {
		const allowance = 25.4;
		const [, back] = cuttingLines(plainBodice(), { default: allowance });
		const leans = Math.atan2(2, 12);
		const start = [210 + allowance * Math.cos(leans), -allowance * Math.sin(leans)];
		hasCorner(back, [start[0] - (start[1] + allowance) * Math.tan(leans), -allowance]);
	});

	it('runs to the crossing of the lines beside a tight hollow', () => {
		const hollow = pieceOf([
			'M 0 0 L 40 0',
			'M 40 0 L 90 50 C 95 55 105 55 110 50 L 160 0',
			'M 160 0 L 200 0',
			'M 200 0 L 200 200',
			'M 200 200 L 0 200',
			'M 0 200 L 0 0'
		]);
		hasCorner(cuttingLines(hollow, { default: 25 })[0], [100, 60 - 25 * Math.SQRT2]);
	});

	it('keeps its distance everywhere, closed and without crossings, on random outlines with hollows', () => {
		const radii = fc.array(fc.double({ min: 60, max: 200, noNaN: true }), { minLength: 4, maxLength: 8 });
		fc.assert(
			fc.property(radii, fc.double({ min: 2, max: 45, noNaN: true }), (list, allowance) => {
				const at = (i: number, r: number, shift = 0): string => {
					const angle = (2 * Math.PI * (i + shift)) / list.length;
					return `${r * Math.cos(angle)} ${r * Math.sin(angle)}`;
				};
				const next = (i: number) => list[(i + 1) % list.length];
				const piece = pieceOf(
					list.map(
						(r, i) =>
							`M ${at(i, r)} C ${at(i, (r + next(i)) / 2, 0.3)} ${at(i, (r + next(i)) / 2.2, 0.6)} ${at((i + 1) % list.length, next(i))}`
					)
				);
				const [cut] = cuttingLines(piece, { default: allowance });
				const outline = pathOf(cut.outline);
				const stitching = pathOf(cut.stitching);
				outline.forEach((segment, i) => expect(outline[(i + 1) % outline.length].from).toEqual(segment.to));
				expect(selfCrossings(outline, measured)).toEqual([]);
				for (const segment of outline) {
					const middle =
						segment.kind === 'line'
							? ([(segment.from[0] + segment.to[0]) / 2, (segment.from[1] + segment.to[1]) / 2] as const)
							: segment.from;
					expect(nearestOn(stitching, middle, measured).distance).toBeGreaterThan(allowance - 0.02);
				}
				for (const { from } of stitching) expect(contains(outline, from)).toBe(true);
			}),
			{ numRuns: 200 }
		);
	});
});

describe('the cutting line of a garment piece', () => {
	it('lies on the fold where the piece does, and meets it where the edges beside it come to it', () => {
		const onFold = pieceOf(
			['M 0 0 L 100 -20', 'M 100 -20 L 100 200', 'M 100 200 L 0 200', 'M 0 200 L 0 0'],
			{ cut: 'fold' },
			[{}, { kind: 'seam' }, {}, { kind: 'fold' }]
		);
		const [cut] = cuttingLines(onFold, { default: 10, edges: { 'piece/edge-4': 99 } });
		// The neck slants by 1 in 5, so its cutting line comes to the fold 10·√(1 + 1/25) above its stitching line.
		hasCorner(cut, [0, -10 * Math.sqrt(1.04)]);
		hasCorner(cut, [0, 210]);
		expect(Math.min(...corners(cut).map(([x]) => x))).toBeCloseTo(0, 9);
		const [fold] = pathOf(cut.fold!);
		expect(Math.hypot(fold.from[0], fold.from[1] - 210)).toBeLessThan(1e-9);
		expect(Math.hypot(fold.to[0], fold.to[1] + 10 * Math.sqrt(1.04))).toBeLessThan(1e-9);
	});

	it('cuts notches outward, no longer than the allowance, mates alike', () => {
		const cut = cuttingLines(plainBodice(), { default: 25.4, edges: { 'back/side': 5 } });
		const [front, back] = cut.map((piece) => piece.notches[0]);
		expect(front).toEqual({ id: 'n1', edge: 'front/side', at: [250, 250], outward: [1, 0], length: 6.35, count: 1 });
		expect(back).toMatchObject({ outward: [-1, 0], length: 5, count: 1 });
		expect(Math.hypot(back.at[0], back.at[1] - 250)).toBeLessThan(1e-9);
	});

	it('is refused for an allowance that is no length', () => {
		expect(() => cuttingLines(plainBodice(), { default: -1 })).toThrow(RangeError);
		expect(() => cuttingLines(plainBodice(), { default: 10, edges: { 'front/side': NaN } })).toThrow(RangeError);
	});
});
