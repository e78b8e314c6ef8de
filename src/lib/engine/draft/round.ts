import { levelWidth } from './level.ts';
import { remembered } from '../geometry/memo.ts';
import type { Draft, Level, Piece } from './types.ts';

/** The garment's whole measure round the body (or round one limb) at a balance line, in mm. */
export interface Round {
	readonly level: string;
	/** Round a limb: counted once, apart from the body. */
	readonly limb: boolean;
	/** For a limb whose two sides have been made unlike. */
	readonly side?: 'left' | 'right';
	readonly round: number;
}

/**
 * The rounds at every level of the draft, in the order in which the levels first appear. Pair and fold pieces count twice
 * for the body, single pieces once; pieces of a limb count once, twice where they are cut on the fold.
 */
export const garmentRounds: (draft: Draft) => readonly Round[] = remembered((draft: Draft) => {
	const rounds: { level: string; limb: boolean; side?: 'left' | 'right'; round: number }[] = [];
	for (const piece of draft.pieces) {
		const { limb } = piece;
		const side = limb && piece.side !== 'both' ? piece.side : undefined;
		const times = piece.cut === 'fold' || (piece.cut === 'pair' && !limb) ? 2 : 1;
		for (const level of levelNames(piece)) {
			const width = levelWidth(piece, level);
			if (width === undefined) continue;
			let at = 0;
			while (
				at < rounds.length &&
				!(rounds[at].level === level && rounds[at].limb === limb && rounds[at].side === side)
			)
				at++;
			if (at < rounds.length) rounds[at].round += width * times;
			else rounds.push({ level, limb, side, round: width * times });
		}
	}
	return rounds;
});

/** The level names of a piece, each once. */
export function levelNames(piece: Piece): readonly string[] {
	return namesOf(piece.levels);
}

/** Remembered by the list, which a piece keeps when its edges move. */
const namesOf = remembered((levels: readonly Level[]) => [...new Set(levels.map(({ level }) => level))]);
