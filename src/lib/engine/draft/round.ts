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
	const rounds = new Map<string, Round>();
	for (const piece of draft.pieces) {
		for (const level of levelNames(piece)) {
			const width = levelWidth(piece, level);
			if (width === undefined) continue;
			const side = piece.limb && piece.side !== 'both' ? piece.side : undefined;
			const key = `${level} ${piece.limb ? 'limb' : 'body'} ${side ?? ''}`;
			const counted = width * (piece.cut === 'fold' || (piece.cut === 'pair' && !piece.limb) ? 2 : 1);
			rounds.set(key, { level, limb: piece.limb, side, round: (rounds.get(key)?.round ?? 0) + counted });
		}
	}
	return [...rounds.values()];
});

/** The level names of a piece, each once. */
export function levelNames(piece: Piece): readonly string[] {
	return namesOf(piece.levels);
}

/** Remembered by the list, which a piece keeps when its edges move. */
const namesOf = remembered((levels: readonly Level[]) => [...new Set(levels.map(({ level }) => level))]);
