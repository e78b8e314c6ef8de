import { carry, check, formatDraft, parseAlteration, parseDraft } from '../engine/index.ts';
import type { Alteration, Draft, Query } from '../engine/index.ts';

/**
 * The engine as the journal calls it, handed to `openJournal` like the clock, so that a journal can be replayed by another
 * engine than the one that wrote it.
 */
export interface Engine {
	/** Recorded with every version. */
	readonly version: string;
	readonly parseDraft: typeof parseDraft;
	readonly formatDraft: typeof formatDraft;
	readonly parseAlteration: typeof parseAlteration;
	readonly carry: typeof carry;
	readonly check: typeof check;
}

/** Raised whenever carrying the same alterations may come to another line than before. */
const version = '1';

export const thisEngine: Engine = { version, parseDraft, formatDraft, parseAlteration, carry, check };

export type CheckOptions = NonNullable<Parameters<typeof check>[1]>;
export type { Alteration as EngineAlteration, Draft, Query };
export type { AlterationBase, Step, Unplaced } from '../engine/index.ts';
