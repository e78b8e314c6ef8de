import { describe, expect, it } from 'vitest';
import { carry, cuttingLines, notchCounts } from '../../../src/lib/engine/index.ts';
import { linesBefore } from '../../../src/lib/ui/drawing/answering.ts';
import { layTable } from '../../../src/lib/ui/drawing/lay-table.ts';
import { jacket } from '../jacket.ts';

const sideIn = (on: 'left' | 'right') => ({
	id: 'a1',
	kind: 'seam',
	on,
	seam: 'side',
	pins: [
		{ at: { end: 'start' }, a: 0, b: 0 },
		{ at: { level: 'waist' }, a: -6, b: -6 },
		{ at: { end: 'finish' }, a: 0, b: 0 }
	]
});

describe('an alteration to one side only', () => {
	const { draft, unplaced } = carry(jacket, [sideIn('left')] as never);

	it('is drawn on that side and not on the other', () => {
		expect(unplaced).toEqual([]);
		const moved = (side: 'left' | 'right') =>
			layTable(draft, { unit: 'in', before: jacket, side })
				.pieces.filter(({ bands }) => bands.length > 0)
				.map(({ id }) => id)
				.sort();
		expect(moved('left')).toEqual(['front@left', 'under-arm@left']);
		expect(moved('right')).toEqual([]);
	});
});

describe('a piece opened at its fold', () => {
	const back = jacket.pieces.find(({ id }) => id === 'back')!;
	const folded = {
		...back,
		cut: 'fold' as const,
		edges: back.edges.map((edge) => (edge.id === 'centre-back' ? { ...edge, kind: 'fold' as const } : edge))
	};
	const opened = { ...folded, edges: folded.edges.map((edge) => ({ ...edge, id: `${edge.id}@left` })) };

	it('had its left edges where their mirror images lie, and the fold itself where it was', () => {
		const lines = new Map(linesBefore(folded, opened).map(({ edge, path }) => [edge, path]));
		const fold = folded.edges.find(({ id }) => id === 'centre-back')!.path;
		const [a, b] = [fold[0].from, fold[fold.length - 1].to];
		const square = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2;
		for (const edge of folded.edges) {
			const path = lines.get(`${edge.id}@left`)!;
			const [was, is] = [edge.path[0].from, path[path.length - 1].to];
			// The middle of a point and its mirror image lies on the mirror, and the way between them is square to it.
			const middle = [(was[0] + is[0]) / 2 - a[0], (was[1] + is[1]) / 2 - a[1]];
			expect(((b[0] - a[0]) * middle[1] - (b[1] - a[1]) * middle[0]) / Math.sqrt(square)).toBeCloseTo(0, 6);
			expect(((b[0] - a[0]) * (is[0] - was[0]) + (b[1] - a[1]) * (is[1] - was[1])) / Math.sqrt(square)).toBeCloseTo(
				0,
				6
			);
		}
	});
});

describe('the cuts of a notch', () => {
	it('are as many on the screen as in the cutting lines', () => {
		const cuts = notchCounts(jacket);
		for (const { piece, notches } of cuttingLines(jacket, { default: 19.05 })) {
			for (const { id, count } of notches) expect(cuts.get(`${piece}/${id}`) ?? 1).toBe(count);
		}
	});

	it('are alike on mates, and no two neighbours of a seam have the same', () => {
		const cuts = notchCounts(jacket);
		expect(['m1', 'm2', 'm3'].map((id) => cuts.get(`under-arm/${id}`))).toEqual([1, 2, 3]);
		expect(['m1', 'm2', 'm3'].map((id) => cuts.get(`front/${id}`))).toEqual([1, 2, 3]);
	});
});
