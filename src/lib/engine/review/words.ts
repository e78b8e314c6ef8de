/** How the engine's sentences name things, and how names are read for the words of the trade. */
import { seamRun, type SeamSide } from '../draft/seam.ts';
import type { Draft, Edge, Piece, Seam } from '../draft/types.ts';

/** A name inside a sentence: `Side back` is `side back`. */
export function inSentence(name: string): string {
	return name.charAt(0).toLowerCase() + name.slice(1);
}

/** `front’s armhole` */
export function edgeInSentence(piece: Piece, edge: Edge): string {
	return `${inSentence(piece.name)}’s ${inSentence(edge.name)}`;
}

/** Whether a thing's id or name holds a word: `side-back` is found in `Side-back seam` and in `side_back@left`. */
export function isCalled(thing: { readonly id: string; readonly name: string }, word: string): boolean {
	const wanted = plain(word);
	return plain(thing.id).includes(wanted) || plain(thing.name).includes(wanted);
}

function plain(text: string): string {
	return text.toLowerCase().replace(/[^a-z0-9]+/g, '-');
}

/**
 * What to call the two sides of a seam so that they can be told apart: by their pieces, by the edge that several pieces share
 * (`armhole`), or by piece and edge where both sides are of one piece.
 */
export function sidesInSentence(draft: Draft, seam: Seam): { readonly a: string; readonly b: string } {
	const a = shortName(draft, seam, 'a');
	const b = shortName(draft, seam, 'b');
	return a === b ? { a: fullName(draft, seam, 'a'), b: fullName(draft, seam, 'b') } : { a, b };
}

function shortName(draft: Draft, seam: Seam, side: SeamSide): string {
	const run = seamRun(draft, seam, side);
	const pieces = [...new Set(run.map(({ piece }) => inSentence(piece.name)))];
	const edges = [...new Set(run.map(({ edge }) => inSentence(edge.name)))];
	return pieces.length > 1 && edges.length === 1 ? edges[0] : listed(pieces);
}

function fullName(draft: Draft, seam: Seam, side: SeamSide): string {
	return listed([...new Set(seamRun(draft, seam, side).map(({ piece, edge }) => edgeInSentence(piece, edge)))]);
}

/** `back, side back and front` */
export function listed(names: readonly string[]): string {
	if (names.length < 2) return names.join('');
	return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}
