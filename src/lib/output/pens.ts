import type { Pen } from './primitive.ts';

/**
 * The printed line codes: each mark is known by its form alone, in black on white. Widths, dashes and gaps in mm.
 * Common practice, no source.
 */
export const pens = {
	stitching: { width: 0.5 },
	cutting: { width: 0.2 },
	before: { width: 0.35, dash: [2.4, 0.8, 0.6, 0.8] },
	after: { width: 0.9 },
	dartLeg: { width: 0.4 },
	crease: { width: 0.25, dash: [0.8, 0.8] },
	awl: { width: 0.35 },
	snip: { width: 0.4 },
	grain: { width: 0.25 },
	fold: { width: 0.45, dash: [4, 1.4] },
	mark: { width: 0.3 },
	/** Hatching of what is taken in, and the catch stitch of what is let out. */
	band: { width: 0.25 },
	newAwl: { width: 0.7 },
	rule: { width: 0.25 },
	scale: { width: 0.2 },
	/** Where two sheets of a tiled pattern meet. */
	joint: { width: 0.15, dash: [3, 1.5] }
} as const satisfies Record<string, Pen>;

/** Tacks of a balance line or centre line: diameter and distance from middle to middle, mm. */
export const tacks = { size: 0.5, every: 1.4 } as const;

/** The holes of the pricking wheel in the line after: diameter and distance, mm. */
export const prickHoles = { size: 0.35, every: 1.3 } as const;

/** The only tint on paper: the strip of allowance. */
export const allowanceTone = 0.07;
