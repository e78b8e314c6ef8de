import type { Path, Point } from '../geometry/types.ts';

/**
 * The trade's things as plain frozen data. All lengths in mm; piece coordinates as the piece lies on the table, right side
 * up, for the wearer's right half: x to the right, y down, neck at the top. Outlines run clockwise as seen.
 *
 * Ids are unique in their piece; `piece/id` names an edge, dart, notch or mark in the whole draft.
 */

export type EdgeKind = 'seam' | 'open' | 'fold';
export type Cut = 'pair' | 'fold' | 'single';
export type Side = 'both' | 'left' | 'right';

export interface Edge {
	readonly id: string;
	readonly name: string;
	readonly kind: EdgeKind;
	readonly path: Path;
	/** Width of cloth between an open edge and the centre line it closes on; negative for a lacing gap. */
	readonly lap: number;
	/** The allowance beyond this edge is turned under (a hem, a cuff, a facing). */
	readonly turn: boolean;
}

/** Half-widths of a shaped dart, each leg measured from the fold line, at a fraction of the way from the mouth (or first end) to the point. */
export interface DartWidth {
	readonly at: number;
	readonly left: number;
	readonly right: number;
}

export interface Dart {
	readonly id: string;
	readonly name: string;
	/** Id of the edge it opens on. */
	readonly edge: string;
	/** Where its mouth begins and ends, mm along that edge. */
	readonly from: number;
	readonly to: number;
	readonly point: Point;
	readonly widths: readonly DartWidth[];
	/** The leg that the cloth is pressed towards; towards the grain if not said. */
	readonly press?: 'from' | 'to';
}

/** A double-pointed dart inside a piece. */
export interface FoldDart {
	readonly id: string;
	readonly name: string;
	readonly ends: readonly [Point, Point];
	/** `at` is a fraction from the first end; `intake` the whole width there. */
	readonly widest: { readonly at: number; readonly intake: number };
	readonly widths: readonly DartWidth[];
}

export interface Notch {
	readonly id: string;
	readonly edge: string;
	/** mm along the edge from its start. */
	readonly at: number;
	/** The notch it meets when the seam is sewn, named whole: `side-back/n1`. */
	readonly mate?: string;
}

/** A balance line: drawn across the piece, or lying on one of its edges. */
export type Level =
	{ readonly level: string; readonly line: readonly Point[] } | { readonly level: string; readonly edge: string };

export type MarkKind = 'bust-point' | 'button' | 'buttonhole' | 'point';

export interface Mark {
	readonly id: string;
	readonly kind: MarkKind;
	readonly at: Point;
	/** The other end of a mark that has a length: a buttonhole. */
	readonly to?: Point;
}

/** Cloth laid in pleats or gathers along an edge: `turned` mm of it between `from` and `to` are folded away. */
export interface Pleat {
	readonly id: string;
	readonly edge: string;
	readonly from: number;
	readonly to: number;
	readonly turned: number;
	readonly stitchedDown?: number;
}

export interface Piece {
	readonly id: string;
	readonly name: string;
	readonly cut: Cut;
	readonly side: Side;
	/** A sleeve: counted once at its levels, apart from the body. */
	readonly limb: boolean;
	/** In order, closing the outline clockwise as seen. */
	readonly edges: readonly Edge[];
	readonly darts: readonly Dart[];
	readonly foldDarts: readonly FoldDart[];
	readonly notches: readonly Notch[];
	readonly levels: readonly Level[];
	readonly marks: readonly Mark[];
	readonly pleats: readonly Pleat[];
	readonly grain?: readonly [Point, Point];
}

/** One edge of a seam's run, named whole (`back/side`); `reversed` when the seam walks it from its end to its start. */
export interface RunEdge {
	readonly edge: string;
	readonly reversed: boolean;
}

export interface Seam {
	readonly id: string;
	readonly name: string;
	readonly a: readonly RunEdge[];
	/** `'mirror'`: a centre seam, sewn to the piece's own mirror image. */
	readonly b: readonly RunEdge[] | 'mirror';
	/** How much longer side b is meant to be, in mm. */
	readonly ease: number;
}

export interface Draft {
	readonly name: string;
	readonly pieces: readonly Piece[];
	readonly seams: readonly Seam[];
}

/** A place on an edge or a seam, as a dressmaker names it. */
export type Place =
	| { readonly end: 'start' | 'finish'; readonly offset?: number }
	| { readonly level: string; readonly offset?: number; readonly nth?: number }
	| { readonly notch: string; readonly offset?: number }
	| { readonly fraction: number; readonly offset?: number };

/** A place on one named edge: `{ "edge": "front/side", "level": "waist" }`. */
export type EdgePlace = { readonly edge: string } & Place;

/** A point inside a piece: bare coordinates in the draft as it stands, short of a mark, or square in from a place on an edge. */
export type InnerPoint =
	| Point
	| { readonly mark: string; readonly toward: EdgePlace; readonly short?: number }
	| { readonly from: EdgePlace; readonly in: number };
