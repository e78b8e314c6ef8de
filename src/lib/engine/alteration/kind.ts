import type { Draft } from '../draft/types.ts';
import type { AlterationBase, Outcome, PlacedMove } from './types.ts';

/**
 * One kind of alteration: whether it has been read, and what it does. How it is written stands beside it in the same file, and
 * is listed apart, so that whoever only carries loads nothing that checks files. Adding a kind is one file in kinds/, one line
 * each in registry.ts and schemas.ts and one test file; nothing else asks which kind an alteration is.
 */
export interface Kind<A extends AlterationBase> {
	readonly kind: A['kind'];
	/** Whether its amounts have been read off the pins; if not it waits, unplaced. */
	isRead(alteration: A): boolean;
	/** Whether all its amounts are zero: then its places are looked for and nothing else happens. */
	isNothing(alteration: A): boolean;
	/** The seam, edges, darts or pieces that it names, as it names them. */
	names(alteration: A): readonly string[];
	/** The draft with the alteration carried, or the reason why not. Never throws for what a dressmaker may ask. */
	carry(draft: Draft, alteration: A): Outcome;
	/** The same alteration with every amount multiplied, or undefined where that has no meaning. */
	scaled?(alteration: A, factor: number): A;
	/** What it moves along the line that it names, place by place; absent where its amounts are not of that sort. */
	movesAt?(alteration: A): readonly PlacedMove[];
	/** The alteration as it would be on the wearer's other half: bare coordinates turned over, for a mirrored draft. */
	mirrored(alteration: A): A;
}
