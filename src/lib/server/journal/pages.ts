import type { AlterationBase, CheckOptions, Draft, Query, Step, Unplaced } from '../engine.ts';
import type {
	Alteration,
	Day,
	Entry,
	Fitting,
	Foundation,
	Garment,
	LiningChoice,
	MeasurementSheet,
	Note,
	Observation,
	Settlement,
	Toile,
	VersionSummary,
	Wearer
} from './records.ts';

/** What the journal tells for a whole page at once, read in one go so that it fits together. */

/** One station of a garment's life, from left to right. */
export type Station =
	| { readonly kind: 'version'; readonly date: Day; readonly version: VersionSummary }
	| { readonly kind: 'toile'; readonly date: Day; readonly toile: Toile }
	| { readonly kind: 'fitting'; readonly date: Day; readonly fitting: Fitting; readonly alterations: number }
	| { readonly kind: 'lining'; readonly date: Day; readonly lining: LiningChoice };

export interface GarmentSummary {
	readonly garment: Garment;
	readonly wearer: Wearer;
	readonly latest: VersionSummary;
	/** The latest version's draft, for its small drawing. */
	readonly draft: Draft;
	readonly life: readonly Station[];
}

/** Something that waits for a hand, most pressing first. The page has the words; the counts are here. */
export type Waiting = { readonly garment: Garment } & (
	| {
			readonly what: 'fitting-open';
			readonly fitting: Fitting;
			readonly standing: number;
			readonly notRead: number;
			readonly openObservations: number;
			/** Numbers of the alterations that some device has in the hand. */
			readonly inHand: readonly number[];
	  }
	| { readonly what: 'queries'; readonly version: VersionSummary; readonly count: number }
	| { readonly what: 'unplaced'; readonly alterations: readonly Alteration[] }
	| { readonly what: 'toile-to-fit'; readonly toile: Toile }
	| { readonly what: 'toile-to-cut'; readonly version: VersionSummary }
	| { readonly what: 'lining-to-choose'; readonly version: VersionSummary }
);

export interface TodayAndWaiting {
	readonly today: Day;
	readonly waiting: readonly Waiting[];
	/** Today's fittings by hour. */
	readonly fittingsToday: readonly { readonly fitting: Fitting; readonly garment: Garment; readonly wearer: Wearer }[];
	readonly garments: readonly GarmentSummary[];
	/** No body measures here: a list may be seen by others in the room. */
	readonly wearers: readonly {
		readonly wearer: Wearer;
		readonly garments: number;
		readonly lastMeasured: Day | null;
	}[];
	/** The last that was written down about a garment or a wearer. */
	readonly latestNote: Note | null;
}

export interface WearerPage {
	readonly wearer: Wearer;
	readonly foundations: readonly Foundation[];
	/** Newest first. */
	readonly sheets: readonly MeasurementSheet[];
	readonly garments: readonly Garment[];
	readonly notes: readonly Note[];
	readonly entries: readonly Entry[];
}

export interface FittingWithContents {
	readonly fitting: Fitting;
	readonly observations: readonly Observation[];
	/** In the order of carrying, those left out included. */
	readonly alterations: readonly Alteration[];
}

export interface GarmentPage {
	readonly garment: Garment;
	readonly wearer: Wearer;
	readonly foundations: readonly Foundation[];
	/** The wearer's, newest first. */
	readonly sheets: readonly MeasurementSheet[];
	/** The sheet that ease is reckoned from. */
	readonly sheet: MeasurementSheet | null;
	/** By number, from 0. Their drafts come with `version(garmentId, number)`. */
	readonly versions: readonly VersionSummary[];
	readonly toiles: readonly Toile[];
	/** By date: fittings and table work. */
	readonly fittings: readonly FittingWithContents[];
	/** Latest choice; `null` before the first. */
	readonly lining: LiningChoice | null;
	readonly notes: readonly Note[];
	readonly life: readonly Station[];
	/** What is not settled: queries of the latest version, observations still open, alterations that wait for a place. */
	readonly open: {
		readonly queries: readonly Query[];
		readonly observations: readonly Observation[];
		readonly unplaced: readonly Alteration[];
	};
	readonly settled: readonly Settlement[];
	readonly waiting: readonly Waiting[];
}

/** An alteration as it is in the hand: read and shown, not yet kept. Two where each side has its own amounts. */
export interface InHand {
	readonly intents: readonly AlterationBase[];
	/** Id of the kept alteration that it changes; it is carried in that one's place. */
	readonly insteadOf?: string;
}

export interface Preview {
	readonly fitting: Fitting;
	/** Number of the version that is carried onto: the latest. */
	readonly onto: number;
	readonly before: Draft;
	readonly after: Draft;
	readonly steps: readonly Step[];
	/** Not-read ones among them. */
	readonly unplaced: readonly Unplaced[];
	/** Of the draft after. */
	readonly queries: readonly Query[];
	/** What the check was told, for asking again in the browser; empty of a closed fitting, whose queries are frozen. */
	readonly checks: CheckOptions;
	/** Why it cannot be carried as it stands; empty when it can. */
	readonly hindrances: readonly string[];
}

export interface WithdrawalPreview {
	readonly alteration: Alteration;
	/** Number of the latest version, to be handed to `withdraw`. */
	readonly latest: number;
	readonly before: Draft;
	readonly after: Draft;
	readonly steps: readonly Step[];
	/** Alterations that no longer find their place without it. */
	readonly unplaced: readonly Unplaced[];
	readonly queries: readonly Query[];
	readonly hindrances: readonly string[];
}
