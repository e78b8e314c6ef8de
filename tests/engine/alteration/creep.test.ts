/**
 * Taking in and letting out again, over and over, must not creep: a line comes back to within amount × (steepest slope of the
 * amount)² + 2 × `fitted` of where it was with each pair, and so after twenty pairs to twenty times
 * the first of these. Within the
 * trimmed length of a moved corner the run-on is straight, and the line may differ by amount² / (2 × radius) there.
 */
import { Bezier } from 'bezier-js';
import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { fitted } from '../../../src/lib/engine/geometry/accuracy.ts';

const asBeziers = (path: Path) =>
	path.map((segment) => {
		const third = (a: Point, b: Point): Point => [a[0] + (b[0] - a[0]) / 3, a[1] + (b[1] - a[1]) / 3];
		const { from, to } = segment;
		const [first, second] =
			segment.kind === 'line' ? [third(from, to), third(to, from)] : [segment.control1, segment.control2];
		return new Bezier([from, first, second, to].map(([x, y]) => ({ x, y })));
	});

/** The greatest distance of one path from the other, by another library's curves: nearest of many, then nearest between them. */
function apart(one: Path, other: Path): number {
	const lines = asBeziers(other).map((curve) => curve.getLUT(400));
	const away = ({ x, y }: { x: number; y: number }) => {
		let least = Infinity;
		for (const points of lines)
			for (let i = 0; i + 1 < points.length; i++) {
				const [ax, ay] = [points[i].x, points[i].y];
				const [bx, by] = [points[i + 1].x - ax, points[i + 1].y - ay];
				const size = bx * bx + by * by;
				const t = size > 0 ? Math.min(1, Math.max(0, ((x - ax) * bx + (y - ay) * by) / size)) : 0;
				least = Math.min(least, Math.hypot(ax + t * bx - x, ay + t * by - y));
			}
		return least;
	};
	return Math.max(...asBeziers(one).flatMap((curve) => curve.getLUT(40).map(away)));
}

/** A front and a back sewn at a side that bends by three quarters of `bend`, each the other's mirror image. */
function sewn(bend: number): Draft {
	const open = (id: string, path: string) => ({ id, kind: 'open', path });
	const side = (path: string) => ({ id: 'side', kind: 'seam', path });
	const waist = 200 - bend;
	return parseDraft({
		format: 'pin-to-paper/draft@1',
		name: 'Two halves',
		pieces: [
			{
				id: 'front',
				cut: 'pair',
				edges: [
					open('top', 'M 0 0 L 200 0'),
					side(`M 200 0 C ${waist} 100 ${waist} 200 200 300`),
					open('hem', 'M 200 300 L 0 300'),
					open('centre', 'M 0 300 L 0 0')
				]
			},
			{
				id: 'back',
				cut: 'pair',
				edges: [
					open('top', 'M -200 0 L 0 0'),
					open('centre', 'M 0 0 L 0 300'),
					open('hem', 'M 0 300 L -200 300'),
					side(`M -200 300 C ${-waist} 200 ${-waist} 100 -200 0`)
				]
			}
		],
		seams: [{ id: 'side', a: [{ edge: 'front/side' }], b: [{ edge: 'back/side', reversed: true }] }]
	});
}

const sideOf = (draft: Draft, piece: number) => draft.pieces[piece].edges.find(({ id }) => id === 'side')!.path;

/** A smooth blend from 0 to the amount over a length rises at 1.5 × amount / length at its steepest (derivative of 3t² − 2t³). */
const steepest = (amount: number, length: number) => (1.5 * amount) / length;

function pairs(draft: Draft, pins: (sign: 1 | -1) => readonly object[], count: number): Draft {
	let now = draft;
	for (let i = 0; i < count; i++)
		for (const sign of [-1, 1] as const) {
			const alteration = parseAlteration({ id: `${i}-${sign}`, kind: 'seam', seam: 'side', pins: pins(sign) });
			const carried = carryAlterations(now, [alteration]);
			expect(carried.unplaced).toEqual([]);
			now = carried.draft;
		}
	return now;
}

const faded = (amount: number) => (sign: 1 | -1) => [
	{ at: { end: 'start' }, a: 0, b: 0 },
	{ at: { fraction: 0.5 }, a: sign * amount, b: sign * amount },
	{ at: { end: 'finish' }, a: 0, b: 0 }
];
const evenly = (amount: number) => (sign: 1 | -1) => [{ at: { fraction: 0.5 }, a: sign * amount, b: sign * amount }];

describe('a seam taken in and let out by the same, twenty times over', () => {
	it.each([
		['straight, 3 mm fading to both ends', 0, 3],
		['hollow, 3 mm fading to both ends', 12, 3],
		['hollow, 2 mm fading to both ends (to 0.036 mm)', 12, 2],
		['hollow, 6 mm fading to both ends (to 0.45 mm)', 30, 6],
		['rounded, 3 mm fading to both ends', -20, 3]
	])('%s, is where it was', { timeout: 60_000 }, (_, bend, amount) => {
		const draft = sewn(bend);
		const slope = steepest(amount, 150);
		const bound = 20 * amount * slope * slope + 2 * fitted;
		const after = pairs(draft, faded(amount), 20);
		for (const piece of [0, 1]) {
			const moved = Math.max(
				apart(sideOf(after, piece), sideOf(draft, piece)),
				apart(sideOf(draft, piece), sideOf(after, piece))
			);
			expect(moved).toBeLessThan(bound);
		}
	});

	it.each([
		['straight', 0, 6],
		['hollow', 12, 6],
		['rounded', -20, 6]
	])(
		'all along, %s, is where it was to 0.05 mm and beside its ends to amount² / 2 radii',
		{ timeout: 60_000 },
		(_, bend, amount) => {
			const draft = sewn(bend);
			const after = pairs(draft, evenly(amount), 20);
			for (const piece of [0, 1]) {
				const moved = apart(sideOf(after, piece), sideOf(draft, piece));
				expect(moved).toBeLessThan(0.05);
			}
		}
	);

	it('is drawn with no more curves at the end than it can do with', { timeout: 60_000 }, () => {
		// Each alteration puts two joints at its pin and every corner, eighty in all, if none were ever taken out again.
		const after = pairs(sewn(20), faded(3), 40);
		for (const piece of [0, 1]) expect(sideOf(after, piece).length).toBeLessThanOrEqual(6);
	});

	it('one pair of a steep take-in comes back within amount × slope² + 2 × fitted', () => {
		for (const [bend, amount] of [
			[0, 12],
			[20, 12],
			[-20, 20]
		]) {
			const draft = sewn(bend);
			const after = pairs(draft, faded(amount), 1);
			const slope = steepest(amount, 150);
			expect(apart(sideOf(after, 0), sideOf(draft, 0))).toBeLessThan(amount * slope * slope + 2 * fitted);
		}
	});
});
