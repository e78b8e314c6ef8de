import type { Draft } from '../engine/index.ts';
import type { Unit } from '../measure/units.ts';

/** Everything that a printed pattern says and shows, handed in: nothing here is looked up or asked of a clock. */
export interface PatternSheetInput {
	readonly draft: Draft;
	/** Seam allowances in mm: one for all edges, and those of single edges by whole name (`front/hem`). */
	readonly allowances: { readonly default: number; readonly edges?: Readonly<Record<string, number>> };
	readonly title: SheetTitle;
	/** The unit that the words on the sheet are in; the drawing is true to size in any. */
	readonly unit: Unit;
	readonly lines: 'with allowances' | 'stitching only';
}

export interface SheetTitle {
	readonly garment: string;
	/** The wearer's name or initials; only initials are ever printed. */
	readonly wearer: string;
	/** 0 is the base draft. */
	readonly version: number;
	/** What is worn under it: the pattern holds over that only. */
	readonly wornUnder?: string;
	/** Calendar day that is printed and that the file is dated with, `2026-03-11`. */
	readonly date: string;
	/** The version is cut in the real lining. */
	readonly lining: boolean;
}
