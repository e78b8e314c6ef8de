import type { Draft, Place } from '../draft/types.ts';

/** Which half of the wearer an alteration is carried to; right and left are always the wearer's. */
export type On = 'both' | 'left' | 'right';

/** Amounts in mm on one layer, at right angles to the edge, positive outward. Absent: not read yet. */
export interface SeamPin {
	readonly at: Place;
	readonly a?: number;
	readonly b?: number;
}

export interface EdgePin {
	readonly at: Place;
	readonly move?: number;
}

/** A move at one place, mm on each layer (one layer alone of a single edge), positive outward. */
export interface PlacedMove {
	readonly at: Place;
	readonly layers: readonly number[];
}

/** What every alteration has. Each kind's own fields are declared with the kind. */
export interface AlterationBase {
	readonly id: string;
	readonly kind: string;
	readonly on: On;
}

/** What one alteration did. Stitched lengths in mm. */
export interface Step {
	readonly alteration: string;
	readonly touched: readonly Touched[];
	/** Change of the garment's whole round at each level that changed. */
	readonly round: readonly { readonly level: string; readonly change: number }[];
	/** Seams not named by the alteration that it made longer or shorter, by stitched length. */
	readonly neighbours: readonly { readonly seam: string; readonly side: 'a' | 'b'; readonly change: number }[];
}

export interface Touched {
	/** `front/side`, `front/waist-dart`. */
	readonly feature: string;
	readonly before: number;
	readonly after: number;
	readonly greatestMove: number;
}

/** An alteration that was not carried, and why. Nothing is dropped: it waits until it is answered. */
export interface Unplaced {
	readonly alteration: string;
	readonly why: 'no-place' | 'refused' | 'not-read';
	/** The finer reason, for refusals: `no-join`, `too-tight`, … */
	readonly code: string;
	readonly sentence: string;
	readonly place?: Place;
	/** Alterations that would settle it. */
	readonly settle: readonly AlterationBase[];
}

/** What one kind answers when it is asked to alter a draft. */
export type Outcome =
	| {
			readonly draft: Draft;
			/** Edges and darts named whole, as they stand in the result, with the greatest move of each in mm. */
			readonly touched: readonly { readonly feature: string; readonly greatestMove: number }[];
			/** What came of it that needs a look (a notch trimmed off). */
			readonly remarks: readonly Remark[];
	  }
	| { readonly refused: Omit<Unplaced, 'alteration'> };

export interface Remark {
	readonly code: string;
	readonly where: string;
	readonly figure?: number;
	readonly sentence: string;
}
