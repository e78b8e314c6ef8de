/** Moves edges of one piece and lets everything that lies on them ride along: dart mouths, notches, pleats. */
import { moveOutline, type EdgeMove, type MovedOutline } from '../geometry/move-outline.ts';
import { fitted } from '../geometry/accuracy.ts';
import { inchesBelow } from '../draft/say.ts';
import type { Edge, Piece } from '../draft/types.ts';
import { refused, type Refusal } from './refusal.ts';
import { edgeInWords, lower, rideEdges, sentenceCase, type RiddenPiece } from './ride-edges.ts';

/** The share of `fitted` that one move may use up, so that many moves one after another do not creep. */
const accuracy = fitted / 4;

/** Why a piece's edges cannot be moved as asked, with what a kind needs to offer something that works. */
export interface MoveProblem {
	readonly refused: Refusal;
	/** For `too-tight`: the factor by which all amounts could be scaled. */
	readonly factor?: number;
	/** For `no-join`: the edge and which of its ends. */
	readonly edge?: Edge;
	readonly end?: 'start' | 'finish';
}

/**
 * The piece with its edges moved (one move or none for each, in order). A dart keeps its leg lines: they are cut at, or run
 * on to, the moved edge. Refused if a line would turn back on itself, if neighbours do not meet, or if a leg misses its edge.
 */
export function moveEdges(piece: Piece, moves: readonly (EdgeMove | undefined)[]): RiddenPiece | MoveProblem {
	for (let i = 0; i < moves.length; i++) {
		const edge = piece.edges[i];
		if (edge.kind === 'fold' && moves[i] && typeof moves[i]!.amount !== 'number')
			return refused(
				'fold-uneven',
				`${edge.name} of the ${lower(piece.name)} is cut on the fold: it moves evenly or not at all.`
			);
	}
	const moved = moveOutline(
		piece.edges.map((edge) => edge.path),
		moves,
		accuracy
	);
	if ('refused' in moved) return problemOf(piece, moves, moved);
	return rideEdges(
		piece,
		moved.edges,
		moves.map((move) => move !== undefined)
	);
}

function problemOf(
	piece: Piece,
	moves: readonly (EdgeMove | undefined)[],
	moved: Exclude<ReturnType<typeof moveOutline>, MovedOutline>
): MoveProblem {
	const edge = piece.edges[moved.edge];
	const named = edgeInWords(piece, edge.id);
	if (moved.refused === 'too-tight') {
		const greatest = moves[moved.edge]!.greatest * moved.factor;
		return {
			...refused(
				'too-tight',
				`${sentenceCase(named)} bends too sharply for this: the new line would turn back on itself. That bend takes ${inchesBelow(greatest)} at most.`
			),
			factor: moved.factor,
			edge
		};
	}
	if (moved.end === 'inside')
		return {
			...refused('no-join', `The new line of ${named} does not close again at a corner inside it. Move it less there.`),
			edge
		};
	const neighbour =
		piece.edges[(moved.edge + (moved.end === 'finish' ? 1 : piece.edges.length - 1)) % piece.edges.length];
	return {
		...refused(
			'no-join',
			`The new line of ${named} does not meet ${edgeInWords(piece, neighbour.id)} again at its ${moved.end}. Keep 0 at that end, or move ${edgeInWords(piece, neighbour.id)} alike.`
		),
		edge,
		end: moved.end
	};
}
