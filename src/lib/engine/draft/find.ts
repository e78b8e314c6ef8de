import type { Dart, Draft, Edge, FoldDart, Mark, Notch, Piece, Pleat, Seam } from './types.ts';
import { remembered } from './memo.ts';

/*
 * Things are named whole, `piece/id`; neither part holds a slash. Ids are unique in their piece whatever they name, so one
 * index answers for all of them. Indexes are kept per piece: a draft that shares pieces with the one before shares theirs.
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

const seamsById = remembered((draft: Draft) => new Map(draft.seams.map((seam) => [seam.id, seam])));

interface Index {
	readonly edges: ReadonlyMap<string, number>;
	readonly darts: ReadonlyMap<string, Dart>;
	readonly foldDarts: ReadonlyMap<string, FoldDart>;
	readonly notches: ReadonlyMap<string, Notch>;
	readonly marks: ReadonlyMap<string, Mark>;
	readonly pleats: ReadonlyMap<string, Pleat>;
}

function byId<T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, T> {
	return new Map(list.map((item) => [item.id, item]));
}

const indexOf = remembered((piece: Piece): Index => {
	return {
		edges: new Map(piece.edges.map((edge, index) => [edge.id, index])),
		darts: byId(piece.darts),
		foldDarts: byId(piece.foldDarts),
		notches: byId(piece.notches),
		marks: byId(piece.marks),
		pleats: byId(piece.pleats)
	};
});

export function findPiece(draft: Draft, id: string): Piece | undefined {
	return piecesById(draft).get(id);
}

export function findSeam(draft: Draft, id: string): Seam | undefined {
	return seamsById(draft).get(id);
}

/** An edge by its whole name, with its position among the edges of its piece. */
export function findEdge(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly edge: Edge; readonly index: number } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const index = found && indexOf(found).edges.get(id);
	return found === undefined || index === undefined ? undefined : { piece: found, edge: found.edges[index], index };
}

export function findDart(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly dart: Dart; readonly edge: Edge } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const dart = found && indexOf(found).darts.get(id);
	const edge = found && dart && edgeOf(found, dart.edge);
	return found && dart && edge ? { piece: found, dart, edge } : undefined;
}

export function findFoldDart(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly foldDart: FoldDart } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const foldDart = found && indexOf(found).foldDarts.get(id);
	return found && foldDart ? { piece: found, foldDart } : undefined;
}

export function findNotch(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly notch: Notch; readonly edge: Edge } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const notch = found && indexOf(found).notches.get(id);
	const edge = found && notch && edgeOf(found, notch.edge);
	return found && notch && edge ? { piece: found, notch, edge } : undefined;
}

export function findMark(draft: Draft, name: string): { readonly piece: Piece; readonly mark: Mark } | undefined {
	const { piece, id } = splitName(name);
	const found = findPiece(draft, piece);
	const mark = found && indexOf(found).marks.get(id);
	return found && mark ? { piece: found, mark } : undefined;
}

/** An edge of one piece by its plain id. */
export function edgeOf(piece: Piece, id: string): Edge | undefined {
	const index = indexOf(piece).edges.get(id);
	return index === undefined ? undefined : piece.edges[index];
}

/** A notch of one piece by its plain id. */
export function notchOf(piece: Piece, id: string): Notch | undefined {
	return indexOf(piece).notches.get(id);
}

/** The edges that meet an edge's start and its end. */
export function neighbouringEdges(
	piece: Piece,
	id: string
): { readonly before: Edge; readonly after: Edge } | undefined {
	const index = indexOf(piece).edges.get(id);
	if (index === undefined) return undefined;
	const count = piece.edges.length;
	return { before: piece.edges[(index + count - 1) % count], after: piece.edges[(index + 1) % count] };
}

/** Whether anything in the piece goes by this id. */
export function isTaken(piece: Piece, id: string): boolean {
	return Object.values(indexOf(piece)).some((index) => index.has(id));
}

/** Every level that a piece of the draft has, in the order in which they first occur. */
export const levelsOf: (draft: Draft) => readonly string[] = remembered((draft: Draft) => [
	...new Set(draft.pieces.flatMap((piece) => piece.levels.map((level) => level.level)))
]);
