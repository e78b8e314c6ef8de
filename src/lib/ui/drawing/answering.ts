import { findPiece, movePath, reversedPath, undividedName } from './engine.ts';
import type { Draft, Edge, Motion, Path, Piece, Point } from './engine.ts';

/** What each piece of a draft was in an earlier one, by the id that it has now; one divided since was undivided then. */
export function piecesBefore(before: Draft, after: Draft): ReadonlyMap<string, Piece> {
	return new Map(
		after.pieces.flatMap(({ id }) => {
			const piece = findPiece(before, id) ?? findPiece(before, undividedName(id));
			return piece ? [[id, piece] as const] : [];
		})
	);
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
	return after.edges.flatMap(({ id }): LineBefore[] => {
		const same = before.edges.find((edge) => edge.id === id);
		if (same) return [{ edge: id, was: same, path: same.path }];
		const half = before.edges.find((edge) => edge.id === undividedName(id));
		return half ? [{ edge: id, was: half, path: onItsHalf(before, half, id) }] : [];
	});
}

/** An edge of a piece cut on the fold, as it lies on the half that its divided id names. */
function onItsHalf(piece: Piece, edge: Edge, divided: string): Path {
	const fold = piece.edges.find(({ kind }) => kind === 'fold');
	if (!fold || !divided.endsWith('@left')) return edge.path;
	return reversedPath(movePath(mirrorIn(fold.path[0].from, fold.path[fold.path.length - 1].to), edge.path));
}

/** The mirror image in the line through two points. */
function mirrorIn(a: Point, b: Point): Motion {
	const [x, y] = [b[0] - a[0], b[1] - a[1]];
	const square = x * x + y * y;
	const [cos, sin] = [(x * x - y * y) / square, (2 * x * y) / square];
	return [cos, sin, sin, -cos, a[0] - cos * a[0] - sin * a[1], a[1] - sin * a[0] + cos * a[1]];
}
