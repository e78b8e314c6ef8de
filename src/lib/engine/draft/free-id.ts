import { isTaken } from './find.ts';
import type { Piece } from './types.ts';

/** The id wanted, or the first of `wanted-2`, `wanted-3` … that nothing in the piece has yet. */
export function freeId(piece: Piece, wanted: string): string {
	let id = wanted;
	for (let i = 2; isTaken(piece, id); i++) id = `${wanted}-${i}`;
	return id;
}
