import { edgePairs, piecePairs } from './engine.ts';
import type { Draft, Edge, Path, Piece } from './engine.ts';

/** What each piece of a draft was in an earlier one, by the id that it has now; one divided since was undivided then. */
export function piecesBefore(before: Draft, after: Draft): ReadonlyMap<string, Piece> {
	const earlier = new Map<string, Piece>();
	for (const pair of piecePairs(before, after))
		if (pair.before && pair.after && !earlier.has(pair.after.id)) earlier.set(pair.after.id, pair.before);
	return earlier;
}

export interface LineBefore {
	/** Id of the edge now. */
	readonly edge: string;
	/** The edge that it was. */
	readonly was: Edge;
	/** Where it lay, in the piece's own mm: on the left half of a piece opened at its fold, the mirror image. */
	readonly path: Path;
}

/** Where each edge of a piece lay before, for those that both have. */
export function linesBefore(before: Piece, after: Piece): readonly LineBefore[] {
	return edgePairs({ name: after.id, before, after }).map((pair) => ({
		edge: pair.after.edge.id,
		was: pair.before.edge,
		path: pair.before.path
	}));
}
