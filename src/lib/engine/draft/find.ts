import type { Dart, Draft, Edge, FoldDart, Mark, Notch, Piece, Seam } from './types.ts';
import { remembered } from '../geometry/memo.ts';

/*
 * Things are named whole, `piece/id`; neither part holds a slash. Ids are unique in their piece whatever they name.
 */

/** The two parts of a whole name: `front@left/side` is `side` of `front@left`. Without a slash the id is empty. */
export function splitName(name: string): { readonly piece: string; readonly id: string } {
	const slash = name.indexOf('/');
	return slash < 0 ? { piece: name, id: '' } : { piece: name.slice(0, slash), id: name.slice(slash + 1) };
}

export function nameOf(piece: Piece | string, id: string): string {
	return `${typeof piece === 'string' ? piece : piece.id}/${id}`;
}

const piecesById = remembered((draft: Draft) => new Map(draft.pieces.map((piece) => [piece.id, piece])));

/** Remembered by the list, which a draft keeps when its edges move. */
const seamsById = remembered((seams: readonly Seam[]) => new Map(seams.map((seam) => [seam.id, seam])));

/** A piece has so few of each that looking through them is less work than an index. */
function withId<T extends { readonly id: string }>(list: readonly T[], id: string): T | undefined {
	for (const item of list) if (item.id === id) return item;
	return undefined;
}

export function findPiece(draft: Draft, id: string): Piece | undefined {
	return piecesById(draft).get(id);
}

export function findSeam(draft: Draft, id: string): Seam | undefined {
	return seamsById(draft.seams).get(id);
}

/** An edge by its whole name, with its position among the edges of its piece. */
export function findEdge(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly edge: Edge; readonly index: number } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const index = found ? edgeIndex(found, id) : -1;
	return found === undefined || index < 0 ? undefined : { piece: found, edge: found.edges[index], index };
}

export function findDart(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly dart: Dart; readonly edge: Edge } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const dart = found && withId(found.darts, id);
	const edge = found && dart && edgeOf(found, dart.edge);
	return found && dart && edge ? { piece: found, dart, edge } : undefined;
}

export function findFoldDart(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly foldDart: FoldDart } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const foldDart = found && withId(found.foldDarts, id);
	return found && foldDart ? { piece: found, foldDart } : undefined;
}

export function findNotch(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly notch: Notch; readonly edge: Edge } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const notch = found && withId(found.notches, id);
	const edge = found && notch && edgeOf(found, notch.edge);
	return found && notch && edge ? { piece: found, notch, edge } : undefined;
}

export function findMark(draft: Draft, name: string): { readonly piece: Piece; readonly mark: Mark } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const mark = found && withId(found.marks, id);
	return found && mark ? { piece: found, mark } : undefined;
}

/** An edge of one piece by its plain id. */
export function edgeOf(piece: Piece, id: string): Edge | undefined {
	return withId(piece.edges, id);
}

function edgeIndex({ edges }: Piece, id: string): number {
	for (let i = 0; i < edges.length; i++) if (edges[i].id === id) return i;
	return -1;
}

/** A notch of one piece by its plain id. */
export function notchOf(piece: Piece, id: string): Notch | undefined {
	return withId(piece.notches, id);
}

/** The edges that meet an edge's start and its end. */
export function neighbouringEdges(
	piece: Piece,
	id: string
): { readonly before: Edge; readonly after: Edge } | undefined {
	const index = edgeIndex(piece, id);
	if (index < 0) return undefined;
	const count = piece.edges.length;
	return { before: piece.edges[(index + count - 1) % count], after: piece.edges[(index + 1) % count] };
}

/** Whether anything in the piece goes by this id. */
export function isTaken(piece: Piece, id: string): boolean {
	const { edges, darts, foldDarts, notches, marks, pleats } = piece;
	return [edges, darts, foldDarts, notches, marks, pleats].some((list) => withId<{ readonly id: string }>(list, id));
}

/** Every level that a piece of the draft has, in the order in which they first occur. */
export const levelsOf: (draft: Draft) => readonly string[] = remembered((draft: Draft) => [
	...new Set(draft.pieces.flatMap((piece) => piece.levels.map((level) => level.level)))
]);
