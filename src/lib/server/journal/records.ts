import type { Draft, Query, Step, Unplaced } from '../engine.ts';

export * from './fitting-records.ts';
export * from './photo-records.ts';
export * from './step-records.ts';

/**
 * The journal's records as pages read them: plain frozen data. Lengths in mm, days `YYYY-MM-DD`, times of day `HH:MM`,
 * instants in ISO 8601 (UTC). An absent answer is `null`; text that was not written is ''.
 *
 * `revision` counts the changes of one record. A form carries the revision it was drawn from.
 */

/** A day, `2026-03-10`. */
export type Day = string;
/** A time of day, `14:30`. */
export type TimeOfDay = string;
/** An instant, `2026-03-10T14:32:05.000Z`. */
export type Instant = string;
/** Name of a measurement (ISO 8559-1, as `measure` lists them) to mm. */
export type Measures = Readonly<Record<string, number>>;
/** `piece/edge` to mm; an edge that is not named has the default allowance. */
export type Allowances = Readonly<Record<string, number>>;

export interface Wearer {
	readonly id: string;
	readonly revision: number;
	/** Counts wearers; the only name left when one is forgotten. */
	readonly number: number;
	readonly name: string;
	readonly note: string;
	readonly addedAt: Instant;
	readonly forgottenAt: Instant | null;
}

/** What is worn under it: a fit holds only over its foundation. */
export interface Foundation {
	readonly id: string;
	readonly revision: number;
	readonly wearer: string;
	readonly name: string;
	readonly note: string;
}

export interface MeasurementSheet {
	readonly id: string;
	readonly revision: number;
	readonly wearer: string;
	readonly foundation: string;
	readonly date: Day;
	readonly takenBy: string;
	readonly note: string;
	readonly measures: Measures;
}

/** Where a base draft came from. */
export type DraftSource = 'file' | 'demo' | 'starter' | 'table' | 'svg' | 'photo' | 'version';

export interface Garment {
	readonly id: string;
	readonly revision: number;
	readonly number: number;
	readonly name: string;
	readonly wearer: string;
	/** What it is made for: a play, an occasion. */
	readonly madeFor: string;
	/** The day it must be ready. */
	readonly neededOn: Day | null;
	readonly cloth: string;
	/** Name of the ease preset that it is held against. */
	readonly easePreset: string | null;
	/** The sheet that ease is reckoned from; `null`: the wearer's latest. */
	readonly sheet: string | null;
	readonly note: string;
	readonly addedAt: Instant;
}

/** How one query of a version was settled. */
export interface Settlement {
	readonly id: string;
	readonly version: string;
	readonly code: string;
	readonly where: string;
	/** `left`: on purpose, as ease or as it is · `altered`: by an alteration. */
	readonly how: 'left' | 'altered';
	readonly alteration: string | null;
	/** The sentence of the query, as it was asked. */
	readonly sentence: string;
	readonly note: string;
	readonly at: Instant;
}

export interface VersionSummary {
	readonly id: string;
	readonly garment: string;
	/** 0 is the base draft. */
	readonly number: number;
	readonly previous: string | null;
	/** `base`: brought in · `carried`: a fitting or table work carried to paper · `withdrawn`: an alteration taken back out. */
	readonly reason: 'base' | 'carried' | 'withdrawn';
	/** The fitting or table work that was carried. */
	readonly fitting: string | null;
	/** The alteration that was taken back out. */
	readonly withdrew: string | null;
	readonly source: DraftSource | null;
	readonly sourceName: string;
	/** Every alteration that stands in it, in order, from the base draft on. */
	readonly alterations: readonly string[];
	readonly queries: readonly Query[];
	readonly settlements: readonly Settlement[];
	/** Queries of the version that nobody has settled yet; alterations that wait for a place are not among them. */
	readonly unsettled: readonly Query[];
	readonly engineVersion: string;
	readonly createdAt: Instant;
}

/** A version with its frozen draft and what the carry to it did. */
export interface Version extends VersionSummary {
	readonly draft: Draft;
	readonly steps: readonly Step[];
	readonly unplaced: readonly Unplaced[];
}

export const toileStates = [
	'cut',
	'put-together',
	'fitted',
	'marked',
	'taken-apart',
	'restitched',
	'lining',
	'scrap'
] as const;
export type ToileState = (typeof toileStates)[number];

export interface Toile {
	readonly id: string;
	readonly revision: number;
	readonly garment: string;
	readonly number: number;
	/** Version numbers: what its cloth was cut from, and what it is sewn to now. */
	readonly cutFrom: number;
	readonly stitchedTo: number;
	readonly cloth: string;
	readonly allowance: number;
	readonly allowances: Allowances;
	readonly state: ToileState;
	readonly states: readonly {
		readonly state: ToileState;
		readonly date: Day;
		readonly note: string;
		readonly stitchedTo: number;
	}[];
	readonly note: string;
}

/** The version chosen for cutting in the lining, with its final allowances. The latest choice holds. */
export interface LiningChoice {
	/** Counts the choices of one garment; 0 before the first. */
	readonly revision: number;
	readonly garment: string;
	readonly version: number;
	readonly cloth: string;
	readonly allowance: number;
	readonly allowances: Allowances;
	readonly note: string;
	readonly chosenAt: Instant;
}

export interface Note {
	readonly id: string;
	readonly revision: number;
	readonly garment: string | null;
	readonly wearer: string | null;
	/** A piece, seam or edge of the garment: `front`, `side`, `front/side`. */
	readonly feature: string | null;
	readonly text: string;
	readonly at: Instant;
}

/** One line of the log that is only ever added to. Its sentences name no wearer. */
export interface Entry {
	readonly number: number;
	readonly at: Instant;
	/** `carried`, `closed`, `withdrew`, `forgot-wearer`, … */
	readonly what: string;
	readonly sentence: string;
	readonly garment: string | null;
	readonly wearer: string | null;
}
