import type { Unit } from '../../measure/units.ts';
import type { Motion, Point } from './engine.ts';

/**
 * A drawing as plain data: everything in px of the drawing at its own size, x to the right and y down; lines as SVG path
 * text. It holds true geometry at one true scale and no colours: those belong to the codes that the lines are drawn in.
 */

/** What the pieces are made of: a draft is brown paper, a toile calico, a version white; not yet made, only dotted. */
export type Material = 'paper' | 'calico' | 'white' | 'to-come';

/** Which way a line moved: cloth taken away, or cloth added. */
export type Way = 'in' | 'out';

export interface Scene {
	readonly width: number;
	readonly height: number;
	/** px to a mm. */
	readonly scale: number;
	readonly unit: Unit;
	readonly material: Material;
	/** Thin lines, no words: for the life strip and the workroom. */
	readonly thin: boolean;
	/** Crosses on the table, true inches (or 2 cm) apart, or as many of them as stay 14 px apart. */
	readonly crosses?: { readonly step: number; readonly x: number; readonly y: number };
	readonly measure?: Measure;
	/** Balance lines as they run across the table, under the pieces, with their names at its edge. */
	readonly balance: readonly BalanceLine[];
	readonly pieces: readonly PieceScene[];
	/** Over everything else, so that no line covers a number. */
	readonly pins: readonly PinScene[];
	/** Free table above the pieces, in twentieths of the width, where a caption can stand. */
	readonly captionGap?: { readonly at: number; readonly wide: number };
}

export interface Measure {
	/** Where the strip begins, px from the top; it ends at the foot of the drawing. */
	readonly top: number;
	readonly ticks: readonly { readonly x: number; readonly height: number; readonly label?: string }[];
}

export interface BalanceLine {
	readonly level: string;
	readonly name: string;
	readonly path: string;
	readonly label: Point;
	readonly anchor: 'start' | 'middle';
}

export interface PieceScene {
	/** The piece's id, `front@left` where it is divided. */
	readonly id: string;
	/** “Front, cut 2”. */
	readonly title: string;
	/** The cut outline, where allowances are shown. */
	readonly strip?: string;
	/** Inside the stitching line, before and after. */
	readonly cloth: readonly string[];
	readonly balance: string;
	/** The centre line of an edge with a lap. */
	readonly centre: string;
	readonly darts: readonly DartScene[];
	readonly halo: string;
	readonly grain?: { readonly path: string; readonly word?: Word };
	readonly bands: readonly Band[];
	readonly before: string;
	readonly cutting: string;
	/** The line that is to be cut on, where the cloth was cut on another; and where the cloth falls short of it. */
	readonly wanted?: string;
	readonly short?: ShortScene;
	readonly stitching: string;
	readonly after: string;
	readonly folds: string;
	readonly hooks: string;
	readonly notches: string;
	readonly marks: string;
	readonly words: readonly Word[];
	/** From the piece's own mm to px; absent in thin drawings, where nothing is tapped. */
	readonly motion?: Motion;
	/** Each edge as a line to be tapped. */
	readonly edges: readonly { readonly edge: string; readonly name: string; readonly path: string }[];
}

/** Cloth that is wanted and not there, beyond the edge of what was cut. */
export interface ShortScene {
	readonly area: string;
	/** Crosses between the edge of the cloth and the line wanted. */
	readonly strokes: string;
}

export interface DartScene {
	readonly id: string;
	/** “Front, First dart”. */
	readonly name: string;
	readonly state: 'as it was' | 'new' | 'changed' | 'gone';
	readonly area: string;
	readonly legs: string;
	/** The legs before, of a changed dart. */
	readonly before?: string;
	readonly crease: string;
	readonly awls: readonly Point[];
	/** Hatch (new) or zigzag (gone) between the legs. */
	readonly strokes?: string;
}

export interface Band {
	/** The edge it lies along, `front/side`. */
	readonly edge: string;
	readonly way: Way;
	readonly area: string;
	/** Hatch or zigzag, from the line before to the line after. */
	readonly strokes: string;
	readonly count: number;
}

/** Words in the drawing, one line each, the first in the firm weight if `firm`. */
export interface Word {
	readonly text: string;
	/** Middle of the baseline. */
	readonly at: Point;
	readonly kind: 'name' | 'note' | 'grain' | 'level';
	readonly anchor: 'start' | 'middle' | 'end';
	/** Quarter turns, for words along an upright line. */
	readonly upright?: boolean;
}

/** A pin asked for: which alteration, through what, which way and how much. */
export interface PinOnDrawing {
	readonly number: number;
	/** An edge, a dart or a marked point: `front/side`, `front/armhole-dart`, `front/bust-point`. */
	readonly feature: string;
	readonly way: Way;
	/** “in”, “out”, “lower”, “longer”. */
	readonly word: string;
	/** mm, without sign; a mark that was only set has none. */
	readonly amount?: number;
	/** Where on the edge, mm along the line before; the middle if left out. */
	readonly s?: number;
}

export interface PinScene {
	readonly number: number;
	readonly feature: string;
	readonly way: Way;
	/** Two strokes: over, (under the line,) over. */
	readonly shaft: string;
	/** Where it goes through the line. */
	readonly at: Point;
	readonly head: Point;
	readonly radius: number;
	/** “in 1/4”; empty only in thin drawings, whose lists say it. */
	readonly label: string;
	readonly labelAt: Point;
	readonly labelAnchor: 'start' | 'middle' | 'end';
	/** A short arrow in the way of the move, where the band itself is narrow. */
	readonly arrow?: string;
}

/** A place of the line in the hand, to be chosen on the drawing. */
export interface Spot {
	/** As the fields name it. */
	readonly key: string;
	/** “Waist line”; and with what is pinned there, “Waist line, in 1/4 inch”. */
	readonly name: string;
	readonly says: string;
	/** mm, without sign. */
	readonly amount: number;
	readonly here: boolean;
	/** `front/side` */
	readonly edge: string;
	/** px; and a tick across the line there. */
	readonly at: Point;
	readonly across: readonly [Point, Point];
}
