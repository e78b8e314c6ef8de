import type { AlterationBase } from '../alteration/types.ts';

export type Severity = 'error' | 'warning' | 'note';

/** What the engine tells about a draft: a seam that does not walk, a let-out with no cloth to hold it. */
export interface Query {
	readonly code: string;
	readonly severity: Severity;
	/** The feature it is about, named whole. */
	readonly where: string;
	/** mm (degrees for `seam-corner`). */
	readonly figure?: number;
	readonly sentence: string;
	/** Alterations that would settle it: none, one or several. */
	readonly settle: readonly AlterationBase[];
}
