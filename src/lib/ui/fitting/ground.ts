import type { AlterationBase, CheckOptions, Draft, Query } from '../../engine/index.ts';
import type { Measured } from '../../measure/fold.ts';
import type { Unit } from '../../measure/units.ts';
import type { CutPath } from '../drawing/cut-path.ts';
import type { EarlierTold } from './carried/earlier.ts';
import type { Recorded } from './form/form-of-alteration.ts';

/**
 * Everything that a fitting's drawings and words are computed from while something is in the hand: plain data, sent once by the
 * server. What is typed is not part of it. The same functions make the page of it on the server and in the browser.
 */
export interface FittingGround {
	readonly unit: Unit;
	/** What stands over the drawing, a line each, the heading first. */
	readonly caption: readonly string[];
	/** What the fitting is carried onto: the latest version; of a closed one, that which it was carried onto. */
	readonly base: Draft;
	/** In the order of carrying, those left out included. */
	readonly alterations: readonly GroundAlteration[];
	/** What a check is told of the garment, its wearer and its cloth. */
	readonly checks: CheckOptions;
	/** Of a closed fitting: what it came to, frozen. */
	readonly frozen?: { readonly after: Draft; readonly queries: readonly Query[] };
	/** The cutting lines of the toile on the body. */
	readonly cut?: readonly CutPath[];
	/** Pieces that are not on this toile, by their undivided ids. */
	readonly piecesOff: readonly string[];
	/** What the body measures, mm by level, and where that is known from. */
	readonly body?: { readonly measures: Readonly<Record<string, number>>; readonly words: string };
	readonly easePreset?: string;
	/** What stands of earlier fittings. */
	readonly earlier: readonly EarlierTold[];
	/** Letters of the observations of this fitting, by id. */
	readonly letters: Readonly<Record<string, string>>;
}

/** A kept alteration as far as the page shows it. */
export interface GroundAlteration extends Recorded {
	readonly id: string;
	readonly revision: number;
	readonly number: number;
	readonly position: number;
	readonly act: string;
	readonly intent: AlterationBase;
	readonly measured: Measured | null;
	readonly note: string;
	readonly answers: string | null;
	readonly state: 'not-read' | 'standing' | 'withdrawn' | 'unplaced';
	/** Taken back out after its fitting was closed. */
	readonly takenOut: boolean;
	/** The sentence of the query that it settles. */
	readonly settles?: string;
	/** The other side of the same act, where right and left have their own amounts. */
	readonly pairedWith: string | null;
	/** Kept on this device and not yet received by the journal. */
	readonly notSent?: boolean;
}
