import type { Measured } from '../../measure/fold.ts';
import type {
	Allowances,
	AsSewn,
	Day,
	DraftSource,
	Measures,
	Observation,
	Posture,
	Readings,
	SeenAt,
	StateOfToile,
	TimeOfDay,
	ToileState,
	TriedOn,
	verdicts
} from './records.ts';

/** What is asked of the journal: the arguments of its writing functions. Fields that may be left out have the default named beside them. */

/** Fields that are left out stay as they are. */
export type Change<T> = Partial<T>;

export interface NewWearer {
	readonly name: string;
	readonly note?: string;
}

export interface NewFoundation {
	readonly name: string;
	readonly note?: string;
}

export interface NewSheet {
	readonly date: Day;
	/** Id of one of the wearer's foundations. */
	readonly foundation: string;
	readonly takenBy?: string;
	readonly note?: string;
	/** Replaces all measures when revised. Each is above 0 and below 5 m. */
	readonly measures: Measures;
}

export interface GarmentFields {
	readonly name: string;
	readonly madeFor?: string;
	readonly neededOn?: Day | null;
	readonly cloth?: string;
	readonly easePreset?: string | null;
	/** Id of one of the wearer's sheets; `null`: the latest. */
	readonly sheet?: string | null;
	readonly note?: string;
}

export interface NewGarment extends GarmentFields {
	/** Id of a wearer. */
	readonly wearer: string;
	/** The draft file's JSON, not yet parsed into a draft. */
	readonly draft: unknown;
	readonly source: DraftSource;
	/** The file's name, or words. */
	readonly sourceName?: string;
}

export interface ToileFields {
	readonly cloth?: string;
	/** mm, not negative; default 25.4 (1″). */
	readonly allowance?: number;
	readonly allowances?: Allowances;
	readonly note?: string;
}

export interface NewToile extends ToileFields {
	/** Number of the version that it is cut from. */
	readonly cutFrom: number;
	/** Default: today. */
	readonly date?: Day;
}

export interface ToileStep {
	readonly state: ToileState;
	/** Default: today. */
	readonly date?: Day;
	readonly note?: string;
	/** For `restitched`: the number of the version whose lines it is sewn on now. */
	readonly stitchedTo?: number;
}

export interface FittingFields {
	readonly date: Day;
	readonly from?: TimeOfDay | null;
	readonly to?: TimeOfDay | null;
	readonly tried?: TriedOn | null;
	/** Id of one of the garment's toiles. */
	readonly toile?: string | null;
	/** Id of one of the wearer's foundations. */
	readonly foundation?: string | null;
	readonly worn?: 'outside' | 'inside' | null;
	readonly stateOfToile?: StateOfToile;
	readonly asSewn?: AsSewn;
	readonly checkMeasures?: Measures;
	readonly shoes?: string;
	readonly heel?: number | null;
	readonly pinnedBy?: string;
	readonly note?: string;
	readonly bring?: string;
	readonly pinsIn?: number | null;
	readonly pinsOut?: number | null;
}

export interface NewFitting extends FittingFields {
	readonly kind: 'fitting' | 'table';
	/** Number of the version on the body; default: what the toile is sewn to, else the latest. */
	readonly on?: number;
}

export interface NewObservation {
	readonly where?: SeenAt;
	readonly what: string;
	/** Default 2. */
	readonly howBad?: 1 | 2 | 3;
	/** Default standing. */
	readonly posture?: Posture;
	/** Default open. */
	readonly state?: Observation['state'];
	readonly answeredBy?: string;
	readonly note?: string;
}

export interface NewVerdict {
	/** The later fitting, still open, at which it is said. */
	readonly fitting: string;
	readonly verdict: (typeof verdicts)[number];
	readonly note?: string;
}

export interface NewAlteration {
	readonly act?: string;
	/**
	 * The engine's alteration as JSON; an `id` is not needed and is replaced by the record's. Amounts are per layer, mm,
	 * and left out altogether while the pins are not read.
	 */
	readonly intent: Readonly<Record<string, unknown>> & { readonly kind: string };
	readonly readings?: Readings;
	readonly measured?: Measured | null;
	readonly note?: string;
	/** Id of an observation of the same garment. */
	readonly answers?: string | null;
	/** The query of the preview that it settles. */
	readonly settles?: { readonly code: string; readonly where: string; readonly sentence: string } | null;
	/** Id of the alteration of the same fitting that is the other side of this act. */
	readonly pairedWith?: string | null;
	/** Id of an unplaced alteration of an earlier fitting that this one places again. */
	readonly replaces?: string | null;
}

/** A query that is left as it is, on purpose. */
export interface LeftQuery {
	readonly code: string;
	readonly where: string;
	readonly note?: string;
}

export interface CarryInput {
	/** Queries of the preview that are left as they are; those not named stay open on the version. */
	readonly left?: readonly LeftQuery[];
	/** Ids of unplaced alterations that are to wait; the others must be placed again or left out first. */
	readonly waiting?: readonly string[];
}

export interface NewLining {
	readonly version: number;
	readonly cloth?: string;
	/** mm, not negative. */
	readonly allowance: number;
	readonly allowances?: Allowances;
	readonly note?: string;
}

export interface NewNote {
	readonly garment?: string;
	readonly wearer?: string;
	readonly feature?: string;
	readonly text: string;
}
