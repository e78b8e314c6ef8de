import type { Path, Point } from '../engine/index.ts';

/**
 * What a printed drawing is made of, in mm on the paper, x to the right and y down from the sheet's upper left corner.
 * Every writer draws the same list and decides nothing itself, so that no two kinds of file can differ.
 */
export type Primitive = Line | Tone | Dots | Text | Group;

/** A pen of one width in mm; dashes and gaps in mm by turns. */
export interface Pen {
	readonly width: number;
	readonly dash?: readonly number[];
}

/** A drawn line with round ends and joins. */
export interface Line {
	readonly kind: 'line';
	readonly id?: string;
	readonly path: Path;
	readonly closed?: boolean;
	readonly pen: Pen;
}

/** A flat tone inside a closed path: the share of black, 0 (white paper) to 1. */
export interface Tone {
	readonly kind: 'tone';
	readonly path: Path;
	readonly black: number;
}

/** Round dots along a path, the first on its start. */
export interface Dots {
	readonly kind: 'dots';
	readonly id?: string;
	readonly path: Path;
	/** Holes in a wide black line, not dots of its colour. */
	readonly white?: boolean;
	/** Diameter, and from middle to middle. */
	readonly size: number;
	readonly every: number;
}

export type Weight = 'regular' | 'bold';
export type Anchor = 'start' | 'middle' | 'end';

/** One line of text. */
export interface Text {
	readonly kind: 'text';
	readonly text: string;
	/** Where the baseline starts, has its middle, or ends. */
	readonly at: Point;
	readonly anchor: Anchor;
	/** Height of the em in mm (1 pt is 0.3528 mm). */
	readonly size: number;
	readonly weight: Weight;
	/** Degrees clockwise about `at`; absent for level text. */
	readonly turn?: number;
}

/** What belongs to one piece, or to the sheet itself. */
export interface Group {
	readonly kind: 'group';
	readonly id: string;
	readonly parts: readonly Primitive[];
}
