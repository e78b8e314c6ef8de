import type { Draft, Edge, Piece } from './types.ts';
import { pathLength } from '../geometry/path.ts';
import { findEdge } from './find.ts';
import { rememberedOfPart } from './memo.ts';

/*
 * Two ways along an edge, both in mm from its start: `s` is the arc length of the drawn line; the stitched length leaves out
 * what is folded away, the mouths of darts and the cloth turned in pleats. Inside a mouth the stitched length stands still;
 * along a pleat or gathers it runs evenly, at (to − from − turned) / (to − from).
 */

interface FoldedAway {
	readonly from: number;
	readonly to: number;
	readonly turned: number;
}

interface Stitched {
	/** In order along the edge. */
	readonly folded: readonly FoldedAway[];
	readonly length: number;
	readonly stitched: number;
}

const stitchedOf = rememberedOfPart((piece: Piece, edge: Edge): Stitched => {
	const folded: FoldedAway[] = [];
	for (const dart of piece.darts) {
		if (dart.edge === edge.id) folded.push({ from: dart.from, to: dart.to, turned: dart.to - dart.from });
	}
	for (const pleat of piece.pleats) {
		if (pleat.edge === edge.id) folded.push({ from: pleat.from, to: pleat.to, turned: pleat.turned });
	}
	folded.sort((a, b) => a.from - b.from);
	const length = pathLength(edge.path);
	return { folded, length, stitched: folded.reduce((rest, part) => rest - part.turned, length) };
});

/** Arc length of an edge, dart mouths included. Thrown: a name that is no edge of the draft. */
export function edgeLength(draft: Draft, name: string): number {
	return pathLength(expectEdge(draft, name).edge.path);
}

/** Length of an edge as it is sewn: its arc length less dart mouths and the cloth turned in pleats. Thrown: a name that is no edge of the draft. */
export function stitchedLength(draft: Draft, name: string): number {
	const { piece, edge } = expectEdge(draft, name);
	return stitchedOf(piece, edge).stitched;
}

/** The same of an edge that is at hand; it must be one of the piece's own. */
export function edgeStitchedLength(piece: Piece, edge: Edge): number {
	return stitchedOf(piece, edge).stitched;
}

/** Stitched length from the edge's start to arc length s. Inside a mouth: that of the mouth. */
export function toStitched(piece: Piece, edge: Edge, s: number): number {
	return stitchedTo(stitchedOf(piece, edge).folded, s);
}

function stitchedTo(folded: readonly FoldedAway[], s: number): number {
	let stitched = s;
	for (const part of folded) {
		if (s <= part.from) break;
		stitched -= s >= part.to ? part.turned : (part.turned * (s - part.from)) / (part.to - part.from);
	}
	return stitched;
}

/** One edge asked at many places. */
export interface StitchedAlong {
	/** As `toStitched`. */
	to(s: number): number;
	/** How fast the stitched length grows at arc length s: 1 on plain cloth, 0 inside a mouth, between them along a pleat. */
	rate(s: number): number;
}

export function stitchedAlong(piece: Piece, edge: Edge): StitchedAlong {
	const { folded } = stitchedOf(piece, edge);
	return {
		to: (s) => stitchedTo(folded, s),
		rate(s) {
			for (const part of folded) if (s >= part.from && s < part.to) return 1 - part.turned / (part.to - part.from);
			return 1;
		}
	};
}

/** Stitched lengths less than this apart are one, mm: a place so near a mouth is in it, from whichever end it was counted. */
const rounding = 1e-9;

/** Arc length at a stitched length. Where a mouth is: its start, except that the edge's stitched end is always its drawn end. */
export function fromStitched(piece: Piece, edge: Edge, stitched: number): number {
	const whole = stitchedOf(piece, edge);
	if (whole.folded.length === 0) return stitched;
	if (stitched >= whole.stitched - rounding) return whole.length + (stitched - whole.stitched);
	let s = stitched;
	for (const part of whole.folded) {
		if (s <= part.from + rounding) break;
		const left = part.to - part.from - part.turned;
		s = s >= part.from + left ? s + part.turned : part.from + ((s - part.from) * (part.to - part.from)) / left;
	}
	return s;
}

function expectEdge(draft: Draft, name: string): { readonly piece: Piece; readonly edge: Edge } {
	const found = findEdge(draft, name);
	if (found === undefined) throw new Error(`There is no edge ${name} in this draft.`);
	return found;
}
