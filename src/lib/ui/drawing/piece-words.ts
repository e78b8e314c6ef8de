import type { Piece } from './engine.ts';

/** How many of a piece are cut, as it is written on it. */
export function cutWords(piece: Piece): string {
	if (piece.cut === 'fold') return 'cut 1 on the fold';
	if (piece.side !== 'both') return `cut 1, ${piece.side}`;
	return piece.cut === 'pair' ? 'cut 2' : 'cut 1';
}

/** A balance line's name as it is said: `under-bust` is “under bust line”, `hem` only “hem”. */
export function levelName(level: string): string {
	const words = level.replaceAll('-', ' ');
	return /line$|hem$|length$/.test(words) ? words : `${words} line`;
}
