import { describe, expect, it } from 'vitest';
import { cuttingLines } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { movePoint, reflection } from '../../../src/lib/engine/geometry/motion.ts';
import { parsePathData } from '../../../src/lib/engine/geometry/path-data.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { pieceOf } from './simple-piece.ts';

function outlineOf(...args: Parameters<typeof cuttingLines>): Path {
	const parsed = parsePathData(cuttingLines(...args)[0].outline);
	if ('problem' in parsed) throw new Error(parsed.problem);
	return parsed.path;
}

const distanceTo = (path: Path, [x, y]: Point): number =>
	Math.min(...path.map(({ from }) => Math.hypot(from[0] - x, from[1] - y)));

/** A rectangle 200 wide whose lower edge carries a dart, its mouth 24 mm, its point 120 mm up. */
const withDart = (hem: string, dart: object = {}, right = 300) =>
	pieceOf(['M 0 0 L 200 0', `M 200 0 L 200 ${right}`, hem, 'M 0 300 L 0 0'], {
		darts: [{ id: 'dart', edge: 'edge-3', from: 88, to: 112, point: [100, 180], ...dart }],
		grain: [
			[30, 50],
			[30, 250]
		]
	});

describe('the mouth of a dart', () => {
	// A dart of half-angle α and depth L in an edge square to it: folded and cut, its peak lies L / cos 2α from the point. Worked by
	// hand from the triangle of leg, fold and mirrored edge (angles α, 90° + α, 90° − 2α).
	it('is cut with the peak that folding it and cutting along the edge would give', () => {
		const alpha = Math.atan(12 / 120);
		const peak = 180 + 120 / Math.cos(2 * alpha);
		const outline = outlineOf(withDart('M 200 300 L 0 300'), { default: 0 });
		expect(distanceTo(outline, [100, peak])).toBeLessThan(1e-6);
		expect(distanceTo(outline, [112, 300])).toBeLessThan(1e-6);
		expect(distanceTo(outline, [88, 300])).toBeLessThan(1e-6);
	});

	it('folded, brings the edge and its allowance to one line', () => {
		const slanted = withDart('M 200 300 C 150 300 60 320 0 300', { from: 80, to: 104, press: 'to' });
		const outline = outlineOf(slanted, { default: 0 });
		const { darts, edges } = slanted.pieces[0];
		expect(edges[2].path).toHaveLength(1);
		// The corner at the fold, mirrored in the leg that the dart is pressed towards, lies on the edge beyond that leg.
		const cut = cuttingLines(slanted, { default: 0 })[0];
		const leg = parsePathData(cut.darts[0].legs[1]);
		if ('problem' in leg) throw new Error(leg.problem);
		const fold = parsePathData(cut.darts[0].fold);
		if ('problem' in fold) throw new Error(fold.problem);
		const onFold = (p: Point): number => {
			const [a, b] = [fold.path[0].from, darts[0].point];
			return (
				Math.abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / Math.hypot(b[0] - a[0], b[1] - a[1])
			);
		};
		const peak = outline.map(({ from }) => from).find((p) => onFold(p) < 1e-6 && p[1] > 290);
		expect(peak).toBeDefined();
		const folded = movePoint(reflection(leg.path[0].from, darts[0].point), peak as Point);
		const edge = edges[2].path[0];
		if (edge.kind !== 'cubic') throw new Error('the hem is a curve');
		const nearest = Math.min(
			...Array.from({ length: 20_001 }, (_, i) => {
				const t = i / 20_000;
				const at = (k: 0 | 1) =>
					(1 - t) ** 3 * edge.from[k] +
					3 * t * (1 - t) ** 2 * edge.control1[k] +
					3 * t * t * (1 - t) * edge.control2[k] +
					t ** 3 * edge.to[k];
				return Math.hypot(at(0) - folded[0], at(1) - folded[1]);
			})
		);
		expect(nearest).toBeLessThan(0.01);
	});

	it('changes the cutting line between its own legs only, run on into the allowance', () => {
		const slanting = withDart('M 200 300 L 0 300', { point: [150, 180] });
		const outline = outlineOf(slanting, { default: 20 });
		// x of the two legs, run on from the point through (112, 300) and (88, 300), at a depth y.
		const legAt = (mouth: number, y: number): number => 150 + ((mouth - 150) * (y - 180)) / 120;
		const shaped = outline.map(({ from }) => from).filter(([x, y]) => y > 290 && x > 0 && x < 200 && y !== 320);
		expect(shaped.length).toBeGreaterThan(0);
		for (const [x, y] of shaped) {
			expect(x).toBeGreaterThan(legAt(88, y) - 1e-6);
			expect(x).toBeLessThan(legAt(112, y) + 1e-6);
		}
	});

	it('that was trued already is followed like any edge', () => {
		const alpha = Math.atan(12 / 120);
		const peak = 180 + 120 / Math.cos(2 * alpha);
		const half = Math.hypot(12, peak - 300);
		const trued = withDart(`M 200 300 L 112 300 L 100 ${peak} L 88 300 L 0 300`, { from: 88, to: 88 + 2 * half });
		const untrued = withDart('M 200 300 L 0 300');
		for (const allowance of [0, 10]) {
			const [one, other] = [trued, untrued].map((draft) => cuttingLines(draft, { default: allowance })[0].area);
			expect(one).toBeCloseTo(other, 6);
		}
	});

	it('is pressed towards the grain unless the dart says otherwise', () => {
		// A hem that rises to the right of the dart only: pressed that way, the peak comes out higher.
		const hem = 'M 200 260 L 112 300 L 88 300 L 0 300';
		const length = Math.hypot(88, 40);
		const mouth = { from: length, to: length + 24 };
		const usual = outlineOf(withDart(hem, mouth, 260), { default: 0 });
		const left = outlineOf(withDart(hem, { ...mouth, press: 'to' }, 260), { default: 0 });
		const right = outlineOf(withDart(hem, { ...mouth, press: 'from' }, 260), { default: 0 });
		expect(usual).toEqual(left);
		expect(usual).not.toEqual(right);
	});
});
