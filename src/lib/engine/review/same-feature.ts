/**
 * Which piece and which edge of one draft answers to which of another, where one of the two may have been divided into the
 * wearer's right and left.
 */
import { edgeOf, findPiece, nameOf } from '../draft/find.ts';
import { sideOfName, undividedName } from '../draft/undivided-name.ts';
import { straightMouths } from '../draft/straight-mouths.ts';
import { movePath, reflection } from '../geometry/motion.ts';
import { pathEnd, pathStart, reversedPath } from '../geometry/path.ts';
import type { Draft, Edge, Piece } from '../draft/types.ts';
import type { Path } from '../geometry/types.ts';

/** The same piece before and after, named as it is in the one that is divided further. Either may be missing. */
export interface PiecePair {
	readonly name: string;
	readonly before?: Piece;
	readonly after?: Piece;
}

/** An edge as it is laid to be compared. */
export interface LaidEdge {
	readonly piece: Piece;
	readonly edge: Edge;
	/** Its line as drawn. */
	readonly path: Path;
	/** The same to be measured, with the mouths of trued darts straight across. */
	readonly line: Path;
	/** Turned over, to lie on the left half of a piece that was opened: walked the other way. */
	readonly turned: boolean;
}

/** The same edge before and after, both laid as in the draft where it is divided further. */
export interface EdgePair {
	/** `front@left/side`. */
	readonly name: string;
	readonly before: LaidEdge;
	readonly after: LaidEdge;
}

/** The pieces of both drafts, in the order of the later one, those that are gone at the end. */
export function piecePairs(before: Draft, after: Draft): PiecePair[] {
	const pairs: PiecePair[] = [];
	const met = new Set<string>();
	for (const piece of after.pieces) {
		const same = findPiece(before, piece.id) ?? findPiece(before, undividedName(piece.id));
		if (same) {
			pairs.push({ name: piece.id, before: same, after: piece });
			met.add(same.id);
			continue;
		}
		const parts = before.pieces.filter((part) => undividedName(part.id) === piece.id);
		for (const part of parts) {
			pairs.push({ name: part.id, before: part, after: piece });
			met.add(part.id);
		}
		if (parts.length === 0) pairs.push({ name: piece.id, after: piece });
	}
	for (const piece of before.pieces) if (!met.has(piece.id)) pairs.push({ name: piece.id, before: piece });
	return pairs;
}

/** The edges that a pair of pieces have in common; an edge of one only is in none. */
export function edgePairs({ name, before, after }: PiecePair): EdgePair[] {
	if (!before || !after) return [];
	const pairs: EdgePair[] = [];
	for (const edge of after.edges) {
		const same = edgeOf(before, edge.id) ?? edgeOf(before, undividedName(edge.id));
		if (same) {
			pairs.push({
				name: nameOf(name, edge.id),
				before: laid(before, same, edge.id),
				after: laid(after, edge, edge.id)
			});
			continue;
		}
		for (const part of before.edges) {
			if (undividedName(part.id) !== edge.id) continue;
			pairs.push({
				name: nameOf(name, part.id),
				before: laid(before, part, part.id),
				after: laid(after, edge, part.id)
			});
		}
	}
	return pairs;
}

/** An edge as it lies under the name that it has in the draft that is divided further. */
function laid(piece: Piece, edge: Edge, divided: string): LaidEdge {
	const line = straightMouths(piece, edge);
	const fold = piece.edges.find((one) => one.kind === 'fold');
	if (!fold || edge.id === divided || sideOfName(divided) !== 'left') {
		return { piece, edge, path: edge.path, line, turned: false };
	}
	const mirror = reflection(pathStart(fold.path), pathEnd(fold.path));
	const over = (path: Path) => reversedPath(movePath(mirror, path));
	const path = over(edge.path);
	return { piece, edge, path, line: line === edge.path ? path : over(line), turned: true };
}
