import type { EngineAlteration } from '../engine.ts';
import type { Instant, SeenAt } from './records.ts';

/** Steps at an open fitting, and what is in the hand there; read on as `records.ts` says. */

export const stepsDone = [
	'alteration-added',
	'alteration-changed',
	'alteration-left-out',
	'alteration-taken-up',
	'alteration-moved',
	'observation-added',
	'observation-changed'
] as const;

/** A record as it stood before or after a step: enough of it to say which. */
export type StepRow = { readonly id: string; readonly revision: number } & Readonly<Record<string, unknown>>;

/** One step that can be undone, or done again. */
export interface StepRecord {
	/** Names it; a later step has a greater one. */
	readonly step: number;
	readonly at: Instant;
	readonly what: (typeof stepsDone)[number];
	readonly kind: 'alteration' | 'observation';
	/** Id of what it was done to. */
	readonly record: string;
	/** What it was done to, as it stood after it. */
	readonly alteration?: { readonly number: number; readonly act: string; readonly intent: EngineAlteration };
	readonly observation?: { readonly letter: string; readonly what: string; readonly where: SeenAt };
}

/** Where the steps of a fitting stand. */
export interface Steps {
	/** The last step: the one that can be undone. */
	readonly last: StepRecord | null;
	/** The one that was undone last and can be done again; none once something else was done. */
	readonly next: StepRecord | null;
}

/** The fields of an alteration in the hand by name, as typed so far. */
export type HandTyped = Readonly<Record<string, string>>;

/** An alteration that some device has in the hand. */
export interface HeldHand {
	readonly fitting: string;
	readonly device: string;
	readonly typed: HandTyped;
	readonly savedAt: Instant;
	/** Number of the alteration that it changes, or will be. */
	readonly number: number;
}
