import type { AlterationBase, Remark, Unplaced } from '../alteration/types.ts';
import type { Draft } from '../draft/types.ts';
import type { BandChoice, Bands } from './bands.ts';
import type { Query } from './types.ts';

/** The cloth that a draft is to be fitted with: what it was cut from and how much was left round it. mm. */
export interface CutCloth {
	/** The version that it was cut from. */
	readonly draft: Draft;
	readonly allowances: Allowances;
	/** What is to be left for the seam; 1/4 in if not said. */
	readonly keep?: number;
	/** A toile can be patched with a strip; cut cloth cannot. */
	readonly cut?: 'toile' | 'cloth';
	/** Seams that carry bones, by their ids; cloth that frays wants as much everywhere. */
	readonly boned?: readonly string[];
	readonly frays?: boolean;
	/** How deep the allowance was clipped. */
	readonly clipped?: number;
}

/** Allowances in mm, by edge where they differ: `{ default: 25.4, edges: { 'front/neck': 6.35 } }`. */
export interface Allowances {
	readonly default: number;
	readonly edges?: Readonly<Record<string, number>>;
}

/** A fitting as sentences name it: “fitting 1”, and “over stays, pinned by M. Thorne”, which may be empty. */
export interface FittingMade {
	readonly name: string;
	readonly how: string;
}

/** What a check may be told. Everything may be missing: then what depends on it is not asked. */
export interface CheckOptions {
	readonly bands?: BandChoice;
	/** The body's measures, mm by level. */
	readonly measures?: Readonly<Record<string, number>>;
	/** The measure to which the wearer is used to being laced, mm. */
	readonly accustomed?: number;
	/** The base draft: what it already has is meant. */
	readonly base?: Draft;
	/** The version before this one. */
	readonly before?: Draft;
	readonly toile?: CutCloth;
	/** The pieces that were on this toile, by their undivided ids: a seam to any other is fitted later. All, if not said. */
	readonly pieces?: readonly string[];
	/** What was worn under it at each of the fittings that are carried together. */
	readonly foundations?: readonly string[];
	/** The fitting that is carried, and those before it with what still stands of them: where they go opposite ways is asked. */
	readonly fitting?: FittingMade;
	readonly earlier?: readonly (FittingMade & { readonly alterations: readonly AlterationBase[] })[];
	/** What the carry left over, to be told with the rest. */
	readonly unplaced?: readonly Unplaced[];
	readonly remarks?: readonly (Remark & { readonly alteration: string })[];
	/** The alterations that were carried, so that a query can say which seam or piece waits, or what was done. */
	readonly alterations?: readonly AlterationBase[];
}

/** What every inquiry is handed. */
export interface Inspection {
	readonly draft: Draft;
	readonly options: CheckOptions;
	readonly bands: Bands;
}

/** One thing that is asked of a draft. Adding one is a file in queries/ and a line in its registry. */
export type Inquiry = (inspection: Inspection) => readonly Query[];
