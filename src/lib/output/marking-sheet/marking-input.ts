import type { Draft } from '../../engine/index.ts';
import type { Unit } from '../../measure/units.ts';

/** What a marking sheet is made from: the draft that the toile is stitched to, and the version that it is marked to. */
export interface MarkingSheetInput {
	readonly before: Draft;
	readonly after: Draft;
	/** The toile's own, mm, as `cuttingLines` takes them. */
	readonly allowances: { readonly default: number; readonly edges?: Readonly<Record<string, number>> };
	readonly title: MarkingTitle;
	/** In the order in which they were pinned. */
	readonly alterations: readonly MarkedAlteration[];
	/** What is still to be tried once it is marked, a sentence each. */
	readonly tries: readonly string[];
	readonly unit: Unit;
}

export interface MarkingTitle {
	readonly garment: string;
	/** Only initials are printed. */
	readonly wearer: string;
	/** `Toile 2`, `version 2`, `fitting 2`. */
	readonly toile: string;
	readonly version: string;
	readonly fitting: string;
	readonly wornUnder?: string;
	/** Calendar day that is printed and that the file is dated with, `2026-03-11`. */
	readonly date: string;
}

export interface MarkedAlteration {
	readonly number: number;
	/** Edges and darts that it moved, named whole. */
	readonly touched: readonly string[];
}
