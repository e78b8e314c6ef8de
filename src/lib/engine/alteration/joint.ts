/** What an edge runs on into at one of its ends: its neighbour on the piece, or, across a seam that ends there, the edge beyond it. */
import { endTangent, startTangent } from '../geometry/path.ts';
import { angleBetween } from '../geometry/point.ts';
import { findEdge, nameOf } from '../draft/find.ts';
import { otherSide, seamRun, seamsOf, type SeamEdge } from '../draft/seam.ts';
import type { Draft, Edge, Piece } from '../draft/types.ts';

export type End = 'start' | 'finish';

/** An edge's end and by how much its line is to turn about the corner, radians, positive away from the cloth. */
export interface Turn {
	readonly piece: Piece;
	readonly edge: Edge;
	readonly end: End;
	readonly angle: number;
}

/**
 * The turns by which an edge runs on without a corner at that end, shared alike. Beside a fold or a centre seam it comes to
 * stand square. Where a seam ends at the corner the two pieces are laid together along it.
 */
export function turnsAt(draft: Draft, name: string, end: End): readonly Turn[] {
	const { piece, edge } = findEdge(draft, name)!;
	const beside = neighbour(piece, edge, end);
	const angle = cornerAngle(piece, edge, end);
	const square = [{ piece, edge, end, angle: Math.PI / 2 - angle }];
	if (beside.edge.kind === 'fold') return square;
	for (const { seam, side } of seamsOf(draft, nameOf(piece, beside.edge.id))) {
		const seamEnd = endOfSeam(seamRun(draft, seam, side), nameOf(piece, beside.edge.id), beside.end);
		if (!seamEnd) continue;
		if (seam.b === 'mirror') return square;
		const run = seamRun(draft, seam, otherSide(side));
		const met = seamEnd === 'start' ? run[0] : run[run.length - 1];
		const metEnd = (seamEnd === 'start') !== met.reversed ? 'start' : 'finish';
		const beyond = neighbour(met.piece, met.edge, metEnd);
		const missing = Math.PI - angle - cornerAngle(met.piece, met.edge, metEnd);
		return shared({ piece, edge, end }, { piece: met.piece, ...beyond }, missing);
	}
	return shared({ piece, edge, end }, { piece, ...beside }, Math.PI - angle);
}

function shared(one: Omit<Turn, 'angle'>, other: Omit<Turn, 'angle'>, missing: number): readonly Turn[] {
	// A fold stays straight: the other takes all of it.
	if (other.edge.kind === 'fold') return [{ ...one, angle: missing }];
	return [
		{ ...one, angle: missing / 2 },
		{ ...other, angle: missing / 2 }
	];
}

/** The edge that shares the corner, and which of its ends is there. */
function neighbour(piece: Piece, edge: Edge, end: End): { readonly edge: Edge; readonly end: End } {
	const count = piece.edges.length;
	const index = piece.edges.indexOf(edge) + (end === 'finish' ? 1 : count - 1);
	return { edge: piece.edges[index % count], end: end === 'finish' ? 'start' : 'finish' };
}

/** Inside the piece, between an edge and its neighbour, radians. */
function cornerAngle(piece: Piece, edge: Edge, end: End): number {
	const beside = neighbour(piece, edge, end).edge;
	const [before, after] = end === 'start' ? [beside, edge] : [edge, beside];
	return Math.PI - angleBetween(endTangent(before.path), startTangent(after.path));
}

/** Which end of the seam lies at that end of an edge in its run, if either does. */
function endOfSeam(run: readonly SeamEdge[], name: string, end: End): End | undefined {
	const last = run.length - 1;
	if (run[0].name === name && (run[0].reversed ? 'finish' : 'start') === end) return 'start';
	return run[last].name === name && (run[last].reversed ? 'start' : 'finish') === end ? 'finish' : undefined;
}
