/**
 * [RIGID]: what is swung, slashed or spread moves as it is. Each law makes a random case of one alteration on a random piece and
 * holds it against closed forms: sums of angles, stitched lengths, areas of triangles and trapezia.
 */
import fc from 'fast-check';
import { expect } from 'vitest';
import { carryAlterations, type Carried } from '../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../src/lib/engine/alteration/parse.ts';
import { dartLegs } from '../../src/lib/engine/draft/dart-legs.ts';
import { edgeLength, stitchedLength, toStitched } from '../../src/lib/engine/draft/length.ts';
import { clothArea, pieceArea } from '../../src/lib/engine/draft/outline.ts';
import type { Draft, Edge, Piece } from '../../src/lib/engine/draft/types.ts';
import { pathLength, pointAt } from '../../src/lib/engine/geometry/path.ts';
import { check } from '../../src/lib/engine/review/check.ts';
import { piecesApart } from './apart.ts';
import { arbitraryDraft } from './arbitrary-draft.ts';
import { number } from './arbitrary-number.ts';
import { parameters, type Cases, type Law } from './laws.ts';

/** What rigid motion keeps, it keeps to this: mm, and radians of an angle. */
const exact = 1e-6;

interface Case {
	readonly which: number;
	readonly from: number;
	readonly to: number;
	readonly gap: number;
	readonly depth: number;
	readonly share: number;
	readonly hinged: boolean;
}

const anyCase: fc.Arbitrary<Case> = fc.record({
	which: fc.nat(1000),
	from: number(0.1, 0.9),
	to: number(0.1, 0.9),
	gap: number(0.5, 15),
	depth: number(30, 90),
	share: number(0.05, 1),
	hinged: fc.boolean()
});

function law(name: string, hold: (draft: Draft, piece: Piece, made: Case) => void): Law {
	return {
		name: `[RIGID] ${name}`,
		hold: (cases: Cases) =>
			fc.assert(
				fc.property(arbitraryDraft, anyCase, (draft, made) => {
					const given = draft.pieces[made.which % draft.pieces.length];
					const piece = { ...given, darts: [], foldDarts: [], pleats: [] };
					const plain = { ...draft, pieces: draft.pieces.map((one) => (one === given ? piece : one)) };
					hold(plain, piece, made);
				}),
				parameters(cases)
			)
	};
}

/** What came of alterations that may be refused: undefined if one was, or if an outline now crosses itself. */
function applied(draft: Draft, ...json: object[]): Carried | undefined {
	const carried = carryAlterations(
		draft,
		json.map((one) => parseAlteration(one))
	);
	if (carried.unplaced.length > 0) return undefined;
	return check(carried.draft).some(({ code }) => code === 'crosses') ? undefined : carried;
}

const pieceOf = (draft: Draft, { id }: Piece) => draft.pieces.find((piece) => piece.id === id)!;
const nameOf = (piece: Piece, edge: Edge) => `${piece.id}/${edge.id}`;

export const rigidLaws: readonly Law[] = [
	law('swinging keeps angles about the point, stitched lengths and cloth', (draft, piece, made) => {
		const edges = piece.edges.filter(({ kind }) => kind !== 'fold');
		// A straight mouth with equal legs: the dart stands square on a straight stretch.
		const straight = edges.find(({ path }) => path.length === 1 && path[0].kind === 'line');
		if (!straight) return;
		const at = { fraction: 0.3 + 0.4 * made.from };
		const dart = {
			id: 'dart',
			kind: 'dart',
			edge: nameOf(piece, straight),
			at,
			intake: made.gap,
			point: { from: { edge: nameOf(piece, straight), ...at }, in: made.depth }
		};
		const before = applied(draft, dart)?.draft;
		if (!before) return;
		const target = edges[made.which % edges.length];
		const swing = {
			id: 'swing',
			kind: 'dart-swing',
			dart: `${piece.id}/dart`,
			edge: nameOf(piece, target),
			at: { fraction: made.to },
			share: made.hinged ? 1 : made.share
		};
		const after = applied(before, swing)?.draft;
		if (!after) return;
		const [was, is] = [pieceOf(before, piece), pieceOf(after, piece)];
		const angles = (one: Piece) => one.darts.reduce((sum, each) => sum + dartLegs(one, each).angle, 0);
		expect(Math.abs(angles(is) - angles(was))).toBeLessThan(exact);
		for (const edge of piece.edges)
			expect(
				Math.abs(stitchedLength(after, nameOf(piece, edge)) - stitchedLength(before, nameOf(piece, edge)))
			).toBeLessThan(exact);
		expect(Math.abs(clothArea(is) - clothArea(was))).toBeLessThan(1e-3);
	}),
	law(
		'slashing open adds the bridges to the two edges and the opening to the area, and nothing else',
		(draft, piece, made) => {
			const cut = cutAcross(piece, made);
			const carried = cut ? applied(draft, spread(piece, cut, made.gap, made.hinged ? 0 : made.gap)) : undefined;
			if (!cut || !carried) return;
			const bridge = (edge: Edge) =>
				carried.remarks.find(({ code, where }) => code === 'bridge' && where === nameOf(piece, edge))?.figure ?? 0;
			for (const edge of piece.edges) {
				const name = nameOf(piece, edge);
				expect(Math.abs(edgeLength(carried.draft, name) - edgeLength(draft, name) - bridge(edge))).toBeLessThan(exact);
			}
			const [from, to] = [cut.from, cut.to].map(({ edge, s }) => pointAt(edge.path, s));
			const width = Math.hypot(to[0] - from[0], to[1] - from[1]);
			const half = made.hinged ? Math.atan(made.gap / 2 / width) : 0;
			// Opened evenly: gap × width. Opened about its end: a triangle with two sides as long as the cut.
			const opening = made.hinged ? (width * width * Math.sin(2 * half)) / 2 : made.gap * width;
			expect(Math.abs(pieceArea(carried.draft, piece.id) - pieceArea(draft, piece.id) - opening)).toBeLessThan(1e-3);
		}
	),
	law('folding away in the middle of what was slashed open gives back what was', (draft, piece, made) => {
		const cut = cutAcross(piece, made);
		const opened = cut ? applied(draft, spread(piece, cut, made.gap, made.hinged ? 0 : made.gap)) : undefined;
		if (!cut || !opened) return;
		const now = pieceOf(opened.draft, piece);
		const middle = ({ edge, s }: OnEdge): OnEdge => {
			const figure =
				opened.remarks.find(({ code, where }) => code === 'bridge' && where === nameOf(piece, edge))?.figure ?? 0;
			return { edge: now.edges.find(({ id }) => id === edge.id)!, s: s + figure / 2 };
		};
		const figure = opened.remarks.find(({ code }) => code === 'bridge')?.figure ?? 0;
		const shut = { ...cut, from: middle(cut.from), to: middle(cut.to) };
		const back = applied(opened.draft, spread(now, shut, -figure, made.hinged ? 0 : -figure));
		if (!back) return;
		expect(piecesApart(pieceOf(back.draft, piece), piece, 8)).toBeLessThan(0.1);
	}),
	law('a lap undoes a spread for the bust', (draft, piece, made) => {
		const count = piece.edges.length;
		if (count < 4) return;
		const clockwise = made.which % 3 > 0;
		const edgeAt = (steps: number) => piece.edges[(made.which + (clockwise ? steps : -steps) + 4 * count) % count];
		// Measured from the end that goes with the part beyond the lines, which is there again on the spread draft.
		const place = (steps: number, share: number) => ({
			edge: nameOf(piece, edgeAt(steps)),
			end: clockwise ? 'start' : 'finish',
			offset: share * pathLength(edgeAt(steps).path)
		});
		const dart = nameOf(piece, edgeAt(1));
		const bust = {
			id: 'bust',
			kind: 'bust-spread',
			piece: piece.id,
			point: { mark: 'bust-point', toward: { edge: dart, fraction: 0.5 } },
			hinge: { edge: nameOf(piece, edgeAt(0)), end: clockwise ? 'finish' : 'start', offset: made.from * 40 },
			dart: place(1, made.to),
			base: place(2, made.share * 0.9),
			...(made.hinged ? { centre: place(3, made.from) } : {}),
			gap: made.gap
		};
		const spreadOut = applied(draft, bust);
		if (!spreadOut) return;
		// Where the point rises instead of coming down, the centre is lapped, and cloth that was trimmed off does not come back.
		const [was, is] = [piece, pieceOf(spreadOut.draft, piece)].map(({ marks }) => marks[0].at);
		const base = edgeAt(2).path;
		const [x, y] = pointAt(base, clockwise ? bust.base.offset : pathLength(base) - bust.base.offset);
		const lowers = (is[0] - was[0]) * (x - was[0]) + (is[1] - was[1]) * (y - was[1]) > 0;
		if (made.hinged && !lowers) return;
		const back = applied(spreadOut.draft, { ...bust, gap: -made.gap });
		expect(back, 'the lap is carried').toBeDefined();
		// Places are found to a millionth, and a hinge nearly level with the point moves it ten times as far as the gap.
		expect(piecesApart(pieceOf(back!.draft, piece), piece, 8)).toBeLessThan(10 * exact);
	})
];

interface OnEdge {
	readonly edge: Edge;
	readonly s: number;
}

interface Cut {
	readonly from: OnEdge;
	readonly to: OnEdge;
	readonly keep: Edge;
}

/** A cut from one edge to another with a whole edge between them, all by number. */
function cutAcross(piece: Piece, { which, from, to }: Case): Cut | undefined {
	const count = piece.edges.length;
	const [first, keep, second] = [0, 1, 2].map((step) => piece.edges[(which + step) % count]);
	if (count < 4 || [first, second].some(({ kind }) => kind === 'fold')) return undefined;
	const on = (edge: Edge, share: number) => ({ edge, s: share * pathLength(edge.path) });
	return { from: on(first, from), to: on(second, to), keep };
}

function spread(piece: Piece, { from, to, keep }: Cut, gapFrom: number, gapTo: number): object {
	const place = ({ edge, s }: OnEdge) => ({
		edge: nameOf(piece, edge),
		end: 'start',
		offset: toStitched(piece, edge, s)
	});
	return {
		id: 'spread',
		kind: 'spread',
		cuts: [{ piece: piece.id, from: place(from), to: place(to), gapFrom, gapTo, keep: nameOf(piece, keep) }]
	};
}
