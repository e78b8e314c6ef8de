import {
	findDart,
	findEdge,
	findFoldDart,
	findPiece,
	findSeam,
	seamRun,
	sideOfName,
	undividedName
} from '../../engine/index.ts';
import type { Draft, Edge, Piece, Seam } from '../../engine/index.ts';
import { atStart, inSentence } from './casing.ts';

/** What the things of a draft are called on the pages. Names of divided things are those of the whole. */

/** The name of a thing without the side that dividing wrote behind it: `Front, left` is `Front`. */
export function wholeName({ id, name }: { readonly id: string; readonly name: string }): string {
	const side = sideOfName(id);
	return side !== undefined && name.endsWith(`, ${side}`) ? name.slice(0, -side.length - 2) : name;
}

/** `back, side back and front` */
export function listed(names: readonly string[]): string {
	return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

/** The seam of that id; of a divided one, its right half. */
export function seamOf(draft: Draft, id: string): Seam | undefined {
	return findSeam(draft, id) ?? draft.seams.find((seam) => undividedName(seam.id) === undividedName(id));
}

/** The edge of that whole name; of a divided piece, its right half's. */
export function edgeOf(draft: Draft, name: string): { readonly piece: Piece; readonly edge: Edge } | undefined {
	const found = findEdge(draft, name);
	if (found) return found;
	for (const piece of draft.pieces)
		for (const edge of piece.edges)
			if (undividedName(`${piece.id}/${edge.id}`) === undividedName(name)) return { piece, edge };
	return undefined;
}

export function pieceOf(draft: Draft, id: string): Piece | undefined {
	return findPiece(draft, id) ?? draft.pieces.find((piece) => undividedName(piece.id) === undividedName(id));
}

/** “Side seam”; an id that the draft does not have stands for itself. */
export function seamName(draft: Draft, id: string): string {
	const seam = seamOf(draft, id);
	return seam ? wholeName(seam) : atStart(undividedName(id).replaceAll('-', ' '));
}

export function pieceName(draft: Draft, id: string): string {
	const piece = pieceOf(draft, id);
	return piece ? wholeName(piece) : atStart(undividedName(id).replaceAll('-', ' '));
}

/** “Front neck”, “Front edge” (of the front), “Side back, of the back”. */
export function edgeName(draft: Draft, name: string): string {
	const found = edgeOf(draft, name);
	return found ? ofPiece(wholeName(found.piece), wholeName(found.edge)) : unknownName(name);
}

/** “Front dart”, “Front waist dart”. */
export function dartName(draft: Draft, name: string): string {
	const found = dartOf(draft, name);
	return found ? ofPiece(wholeName(found.piece), wholeName(found)) : unknownName(name);
}

/** A dart or fold dart of that whole name, with its piece; of a divided piece, its right half's. */
export function dartOf(
	draft: Draft,
	name: string
): { readonly piece: Piece; readonly id: string; readonly name: string; readonly whole: string } | undefined {
	const dart = findDart(draft, name);
	if (dart) return { piece: dart.piece, id: dart.dart.id, name: dart.dart.name, whole: name };
	const fold = findFoldDart(draft, name);
	if (fold) return { piece: fold.piece, id: fold.foldDart.id, name: fold.foldDart.name, whole: name };
	for (const piece of draft.pieces)
		for (const { id, name: called } of [...piece.darts, ...piece.foldDarts])
			if (undividedName(`${piece.id}/${id}`) === undividedName(name))
				return { piece, id, name: called, whole: `${piece.id}/${id}` };
	return undefined;
}

function ofPiece(piece: string, thing: string): string {
	const [whole, part] = [piece.toLowerCase(), thing.toLowerCase()];
	if (part.startsWith(whole)) return thing;
	return part.split(/[^\p{L}]+/u).includes(whole)
		? `${thing}, of the ${inSentence(piece)}`
		: `${piece} ${inSentence(thing)}`;
}

function unknownName(name: string): string {
	return atStart(undividedName(name).replace('/', ' ').replaceAll('-', ' '));
}

/** “Waist line” in a list of places. */
export function levelName(level: string): string {
	const words = level.replaceAll('-', ' ');
	return atStart(/line$|hem$|length$/.test(words) ? words : `${words} line`);
}

/** “the waist” in a sentence. */
export function levelInSentence(level: string): string {
	return `the ${level.replaceAll('-', ' ')}`;
}

/** Whether a seam is of a sleeve alone. */
export function isLimbSeam(draft: Draft, seam: Seam): boolean {
	return seamRun(draft, seam, 'a').every(({ piece }) => piece.limb);
}
