/** Lets length into an edge, or takes it out, right across its piece: by a parallel opening or fold, or by moving the line at its end. */
import { joined, measured } from '../geometry/accuracy.ts';
import { signedArea } from '../geometry/area.ts';
import { contains } from '../geometry/contains.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { pointAt, tangentAt } from '../geometry/path.ts';
import { add, midpoint, outward, scale } from '../geometry/point.ts';
import type { EdgeMove } from '../geometry/move-outline.ts';
import { nameOf, splitName } from '../draft/find.ts';
import { toStitched } from '../draft/length.ts';
import { closedRegion, type OutlinePlace } from '../draft/outline-stretch.ts';
import { seamsOf } from '../draft/seam.ts';
import type { Draft, Edge, EdgePlace, Piece } from '../draft/types.ts';
import { slash } from './slash.ts';
import { moveEdges } from './move-edges.ts';
import { isRefused, refused } from './refusal.ts';
import { isDividedCentreSeam } from './sides.ts';
import type { Outcome } from './types.ts';

/** Nearer than this the cut would run along the outline, mm. */
const leastAcross = 1;

/**
 * The draft with the piece opened evenly by `by` mm (folded if negative) along a line square to the edge at arc length `s`,
 * right across to the outline. The part with the fold stays, else the part with the grain line's middle, else the larger.
 * Refused where the line ends in the mouth of a dart.
 */
export function spreadAcross(draft: Draft, piece: Piece, edge: Edge, s: number, by: number): Outcome {
	const index = piece.edges.indexOf(edge);
	const start = pointAt(edge.path, s);
	const inward = scale(outward(tangentAt(edge.path, s)), -1);
	let far: (OutlinePlace & { readonly u: number }) | undefined;
	piece.edges.forEach(({ path }, i) => {
		for (const met of lineCrossings(path, start, add(start, inward), measured))
			if (met.u > leastAcross && (!far || met.u < far.u)) far = { edge: i, s: met.s, u: met.u };
	});
	if (!far)
		return refused(
			'slash-short',
			`There is no cloth of ${piece.name} across from that place. Give the length at another place of the seam.`
		);
	const mouth = piece.darts.find(
		(dart) => far && dart.edge === piece.edges[far.edge].id && far.s >= dart.from - joined && far.s <= dart.to + joined
	);
	if (mouth)
		return refused(
			'slash-through-mouth',
			`Straight across from that place lies the mouth of ${mouth.name}. Give the length at a place of the seam beside it.`
		);
	const keep = edgeThatStays(piece, { edge: index, s }, far);
	if (!keep)
		return refused(
			'keep-cut',
			`${piece.name} has no edge that stays whole if it is cut there. Give the length at another place of the seam.`
		);
	const at = (where: OutlinePlace): EdgePlace => {
		const on = piece.edges[where.edge];
		return { edge: nameOf(piece, on.id), end: 'start', offset: toStitched(piece, on, where.s) };
	};
	return slash(draft, piece.id, {
		piece: piece.id,
		from: at({ edge: index, s }),
		to: at(far),
		gapFrom: by,
		gapTo: by,
		keep: nameOf(piece, keep.id)
	});
}

/** A whole edge of the part that stays. */
function edgeThatStays(piece: Piece, from: OutlinePlace, to: OutlinePlace): Edge | undefined {
	const parts = [wholeEdges(piece, from, to), wholeEdges(piece, to, from)];
	const fold = parts.flat().find(({ kind }) => kind === 'fold');
	if (fold) return fold;
	const region = closedRegion(piece, from, to, []);
	const first = piece.grain
		? contains(region, midpoint(piece.grain[0], piece.grain[1]))
		: 2 * signedArea(region) >= signedArea(piece.edges.flatMap(({ path }) => path));
	const [kept, other] = first ? parts : [parts[1], parts[0]];
	return kept[0] ?? other[0];
}

/** The edges that lie whole between two places on the outline, going clockwise. */
function wholeEdges(piece: Piece, from: OutlinePlace, to: OutlinePlace): Edge[] {
	const count = piece.edges.length;
	const edges: Edge[] = [];
	if (from.edge === to.edge && from.s < to.s) return edges;
	for (let i = (from.edge + 1) % count; i !== to.edge; i = (i + 1) % count) edges.push(piece.edges[i]);
	return edges;
}

/**
 * The draft with the line at an end of the edge moved evenly outward by `by` mm: the next edge, and with it all edges of the
 * piece that are sewn with it in one centre seam.
 */
export function moveLineAtEnd(draft: Draft, piece: Piece, edge: Edge, end: 'start' | 'finish', by: number): Outcome {
	const count = piece.edges.length;
	const next = piece.edges[(piece.edges.indexOf(edge) + (end === 'finish' ? 1 : count - 1)) % count];
	const together = new Set([next.id, ...centreEdges(draft, piece, next)]);
	const moves = piece.edges.map(({ id }): EdgeMove | undefined =>
		together.has(id) ? { amount: by, breaks: [], greatest: Math.abs(by) } : undefined
	);
	const moved = moveEdges(piece, moves);
	if (isRefused(moved)) return { refused: moved.refused };
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? moved.piece : one)) },
		touched: [],
		remarks: moved.remarks
	};
}

function centreEdges(draft: Draft, piece: Piece, edge: Edge): string[] {
	const name = nameOf(piece, edge.id);
	return seamsOf(draft, name)
		.filter(({ seam }) => seam.b === 'mirror' || isDividedCentreSeam(seam))
		.flatMap(({ seam, side }) => (side === 'a' || seam.b === 'mirror' ? seam.a : seam.b))
		.map((run) => splitName(run.edge))
		.filter((one) => one.piece === piece.id)
		.map(({ id }) => id);
}

/** Whether a place at stitched length `at` of a line that long is one of its ends. */
export function endAt(at: number, length: number): 'start' | 'finish' | undefined {
	if (at <= joined) return 'start';
	return at >= length - joined ? 'finish' : undefined;
}
