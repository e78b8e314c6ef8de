import type { Measured } from '../../measure/fold.ts';
import type { Readings as FourReadings } from '../../measure/readings.ts';
import type { EngineAlteration } from '../engine.ts';
import type { Day, Instant, Measures, TimeOfDay } from './records.ts';

/** Fittings and table work, what was seen and what was altered at them; read on as `records.ts` says. */

export const triedOn = ['toile', 'lining-basted', 'flat-lined-body', 'finished'] as const;
export type TriedOn = (typeof triedOn)[number];

/** State of the toile as it was tried on; whatever nobody noted is absent. */
export interface StateOfToile {
	/** Piece ids that were not on it (the sleeve that is fitted later). */
	readonly piecesOff?: readonly string[];
	readonly sewn?: 'basted' | 'long-stitch' | 'pinned';
	readonly closing?: 'edge-to-edge' | 'lapped' | 'lacing-gap';
	/** mm, for a lapped closing or a lacing gap. */
	readonly closingWidth?: number;
	readonly bones?: boolean;
	readonly waistTape?: boolean;
	readonly edgesClipped?: boolean;
	readonly washed?: boolean;
	/** Cloth and its give, in words. */
	readonly give?: string;
}

/** Measures of the sewn toile before pinning, mm. */
export interface AsSewn {
	readonly bust?: number;
	readonly waist?: number;
	readonly neck?: number;
	readonly armhole?: number;
	/** Where the pins are read from if it differs from the draft. */
	readonly readFrom?: 'traced-line' | 'stitching';
}

/** One try-on, or corrections made at the table without a body. */
export interface Fitting {
	readonly id: string;
	/** Counts the changes of the fitting's own fields. */
	readonly revision: number;
	/** Counts every change of the fitting or of anything in it but its photos: what carrying to paper and closing are drawn from. */
	readonly wholeRevision: number;
	readonly garment: string;
	readonly kind: 'fitting' | 'table';
	/** Fittings and table work are numbered apart. */
	readonly number: number;
	readonly date: Day;
	readonly from: TimeOfDay | null;
	readonly to: TimeOfDay | null;
	readonly tried: TriedOn | null;
	readonly toile: string | null;
	/** Number of the version that was on the body (for table work: on the table). */
	readonly on: number;
	readonly foundation: string | null;
	/** Seams outside or inside. Right and left always mean the wearer's. */
	readonly worn: 'outside' | 'inside' | null;
	readonly stateOfToile: StateOfToile;
	readonly asSewn: AsSewn;
	/** Of the wearer, this day: bust, waist, hip, nape to waist. */
	readonly checkMeasures: Measures;
	readonly shoes: string;
	readonly heel: number | null;
	readonly pinnedBy: string;
	readonly note: string;
	/** To bring to the next fitting. */
	readonly bring: string;
	readonly pinsIn: number | null;
	readonly pinsOut: number | null;
	readonly closedAt: Instant | null;
	/** Number of the version it was carried into. */
	readonly carriedInto: number | null;
}

export const postures = ['standing', 'seated', 'arms-up', 'reaching', 'deep-breath'] as const;
export type Posture = (typeof postures)[number];

/** Where something was seen: a feature named whole, a point on a piece, or words. */
export interface SeenAt {
	readonly piece?: string;
	readonly feature?: string;
	readonly point?: readonly [x: number, y: number];
	readonly side?: 'right' | 'left' | 'both';
	readonly words?: string;
}

export const verdicts = ['better', 'solved', 'too-much', 'not-enough', 'left'] as const;
/** What became of an observation, said at a later fitting. */
export interface Verdict {
	readonly verdict: (typeof verdicts)[number];
	readonly fitting: string;
	readonly note: string;
	readonly at: Instant;
}

export interface Observation {
	readonly id: string;
	readonly revision: number;
	readonly fitting: string;
	readonly letter: string;
	readonly where: SeenAt;
	/** Of the cloth, never of the figure. */
	readonly what: string;
	/** 1 slight, 2 plain, 3 spoils it. */
	readonly howBad: 1 | 2 | 3;
	readonly posture: Posture;
	/** As it was left by its own fitting. */
	readonly state: 'open' | 'answered' | 'left-on-purpose';
	/** How it was answered without the pattern: bones, padding, relaced, pressed … */
	readonly answeredBy: string;
	readonly note: string;
	/** Ids of the alterations that answer it, of this fitting or a later one. */
	readonly alterations: readonly string[];
	readonly verdicts: readonly Verdict[];
	/** Neither answered, nor left on purpose, nor solved later. */
	readonly stillOpen: boolean;
}

/** Up to four readings at one place, mm, as they were read (see `measured`), positive outward. */
export interface ReadingsAtPlace extends FourReadings {
	/** The engine's place, as in the intent's pin. */
	readonly at: unknown;
}

export interface Readings {
	readonly pinnedOn?: 'right' | 'left' | 'both';
	/** How the sides were carried. */
	readonly sides?: 'both' | 'one' | 'average' | 'each';
	readonly places: readonly ReadingsAtPlace[];
}

/** One layer · the whole fold · each layer by itself. */
export const measuredAs = ['one-layer', 'whole-fold', 'each-layer'] as const satisfies readonly Measured[];

export interface Alteration {
	readonly id: string;
	readonly revision: number;
	readonly fitting: string;
	/** "Alteration 4"; never given twice in one fitting, but for one that was undone as if never made. */
	readonly number: number;
	/** Order of carrying within its fitting. */
	readonly position: number;
	/** What the dressmaker chose to do, in the page's words (`took-in`, `let-out` …). */
	readonly act: string;
	/** The engine's alteration; its `id` is the record's. Amounts are per layer; absent while not read. */
	readonly intent: EngineAlteration;
	readonly readings: Readings;
	readonly measured: Measured | null;
	/** `unplaced`: it found no place, or was refused, when its fitting was carried, and waits. */
	readonly state: 'not-read' | 'standing' | 'withdrawn' | 'unplaced';
	/** Why it is unplaced or withdrawn, as a sentence. */
	readonly reason: string;
	readonly note: string;
	/** The observation that it answers. */
	readonly answers: string | null;
	/** The query that it settles. */
	readonly settles: { readonly code: string; readonly where: string; readonly sentence: string } | null;
	/** The other side of the same act, where right and left were given their own amounts. */
	readonly pairedWith: string | null;
	/** The waiting alteration that it places again. */
	readonly replaces: string | null;
	readonly addedAt: Instant;
	/** Set when it was taken back out after its fitting was closed. */
	readonly withdrawal: { readonly at: Instant; readonly note: string; readonly version: number | null } | null;
}
