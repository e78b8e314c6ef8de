import { compare, undividedName } from '../../engine/index.ts';
import type { Draft } from '../../engine/index.ts';

/** Less than this is no change, mm. */
const least = 0.05;

/** The pieces, by id, that are not as they were in another draft: a line moved, a dart changed, or the whole piece is new. */
export function changedPieces(before: Draft, after: Draft): readonly string[] {
	const { edges, darts, pieces } = compare(before, after);
	const changed = new Set([
		...edges.filter(({ greatest }) => Math.abs(greatest.move) >= least).map(({ edge }) => pieceOf(edge)),
		...darts.map(({ dart }) => pieceOf(dart)),
		...pieces.filter(({ areaBefore }) => areaBefore === undefined).map(({ piece }) => piece)
	]);
	return after.pieces.map(({ id }) => id).filter((id) => changed.has(id) || changed.has(undividedName(id)));
}

const pieceOf = (name: string) => name.split('/')[0];
