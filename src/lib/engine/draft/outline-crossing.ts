import type { Edge, Piece } from './types.ts';
import { measured } from '../geometry/accuracy.ts';
import { pathLength } from '../geometry/path.ts';
import { selfCrossings } from '../geometry/self-crossing.ts';
import { remembered } from '../geometry/memo.ts';
import { outlineOf } from './outline.ts';

/** The first two edges of a piece that cross or touch one another, or one edge that does so with itself, twice. */
export const outlineCrossing: (piece: Piece) => readonly [Edge, Edge] | undefined = remembered((piece: Piece) => {
	const [first] = selfCrossings(outlineOf(piece), measured);
	return first && ([edgeAt(piece, first.s1), edgeAt(piece, first.s2)] as const);
});

function edgeAt(piece: Piece, s: number): Edge {
	let walked = 0;
	for (const edge of piece.edges) {
		walked += pathLength(edge.path);
		if (s < walked) return edge;
	}
	return piece.edges[piece.edges.length - 1];
}
