/**
 * Plane geometry as frozen data. Millimetres; x to the right, y down. Not a word of the trade lives in this folder.
 *
 * A path is a chain of straight lines and cubic Béziers, each starting where the one before ends. Positions on a path
 * are arc lengths in mm from its start, written `s`; positions on one segment are Bézier parameters in [0, 1], written `t`.
 */

export type Point = readonly [x: number, y: number];

export interface Line {
	readonly kind: 'line';
	readonly from: Point;
	readonly to: Point;
}

export interface Cubic {
	readonly kind: 'cubic';
	readonly from: Point;
	readonly control1: Point;
	readonly control2: Point;
	readonly to: Point;
}

export type Segment = Line | Cubic;

/** Never empty; `path[i].to` and `path[i + 1].from` are the same coordinates to the bit. */
export type Path = readonly Segment[];

/** Affine map in SVG matrix order: x' = a·x + c·y + e, y' = b·x + d·y + f. */
export type Motion = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export interface Box {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}
