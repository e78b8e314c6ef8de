import type { Dart, Draft, FoldDart, Piece } from './types.ts';
import type { Path } from '../geometry/types.ts';
import { signedArea } from '../geometry/area.ts';
import { chained, portion, reversedPath } from '../geometry/path.ts';
import { dartLegs, foldDartLegs } from './dart-legs.ts';
import { edgeOf, findPiece } from './find.ts';
import { remembered } from '../geometry/memo.ts';

/** The closed stitching line of a piece, clockwise as seen: its edges one after the other, dart mouths as drawn. */
export const outlineOf: (piece: Piece) => Path = remembered((piece: Piece) =>
	chained(piece.edges.map((edge) => edge.path))
);

/** Area inside a piece's stitching line in mm², dart mouths included; one layer. Thrown: an unknown piece. */
export function pieceArea(draft: Draft, id: string): number {
	const piece = findPiece(draft, id);
	if (piece === undefined) throw new Error(`There is no piece ${id} in this draft.`);
	return signedArea(outlineOf(piece));
}

/** Area that is left when the darts are sewn, mm²: the outline's less that between each dart's legs and its mouth as drawn. */
export const clothArea: (piece: Piece) => number = remembered((piece: Piece) => {
	let area = signedArea(outlineOf(piece));
	for (const dart of piece.darts) area -= signedArea(dartOutline(piece, dart));
	for (const foldDart of piece.foldDarts) area -= Math.abs(signedArea(foldDartOutline(foldDart)));
	return area;
});

/** What a dart takes: along its mouth, in to the point and back. Closed, clockwise. */
function dartOutline(piece: Piece, dart: Dart): Path {
	const edge = edgeOf(piece, dart.edge);
	if (edge === undefined) throw new Error(`The dart ${dart.id} opens on no edge of ${piece.id}.`);
	const legs = dartLegs(piece, dart);
	return [...portion(edge.path, dart.from, dart.to), ...legs.to, ...reversedPath(legs.from)];
}

/** What a fold dart takes. Closed. */
function foldDartOutline(foldDart: FoldDart): Path {
	const legs = foldDartLegs(foldDart);
	return [...legs.left, ...reversedPath(legs.right)];
}
