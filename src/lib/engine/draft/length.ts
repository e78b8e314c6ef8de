import type { Draft, Edge, Piece } from './types.ts';
import { pathLength } from '../geometry/path.ts';
import { findEdge } from './find.ts';
import { rememberedOfPart } from '../geometry/memo.ts';

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

const nothing: readonly FoldedAway[] = [];

/** What is folded away on an edge, in order along it. */
function foldedOn(piece: Piece, edge: Edge): readonly FoldedAway[] {
	const isOn = (one: { readonly edge: string }) => one.edge === edge.id;
	return piece.darts.some(isOn) || piece.pleats.some(isOn) ? foldedAway(piece, edge) : nothing;
}

const foldedAway = rememberedOfPart((piece: Piece, edge: Edge): readonly FoldedAway[] => {
	const folded: FoldedAway[] = [];
	for (const dart of piece.darts) {
		if (dart.edge === edge.id) folded.push({ from: dart.from, to: dart.to, turned: dart.to - dart.from });
	}
	for (const pleat of piece.pleats) {
		if (pleat.edge === edge.id) folded.push({ from: pleat.from, to: pleat.to, turned: pleat.turned });
	}
	return folded.sort((a, b) => a.from - b.from);
});

/** Arc length of an edge, dart mouths included. Thrown: a name that is no edge of the draft. */
export function edgeLength(draft: Draft, name: string): number {
	return pathLength(expectEdge(draft, name).edge.path);
}

/** Length of an edge as it is sewn: its arc length less dart mouths and the cloth turned in pleats. Thrown: a name that is no edge of the draft. */
export function stitchedLength(draft: Draft, name: string): number {
	const { piece, edge } = expectEdge(draft, name);
	return edgeStitchedLength(piece, edge);
}

/** The same of an edge that is at hand; it must be one of the piece's own. */
export function edgeStitchedLength(piece: Piece, edge: Edge): number {
	return foldedOn(piece, edge).reduce((rest, part) => rest - part.turned, pathLength(edge.path));
}

/** Stitched length from the edge's start to arc length s. Inside a mouth: that of the mouth. */
export function toStitched(piece: Piece, edge: Edge, s: number): number {
	return stitchedTo(foldedOn(piece, edge), s);
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
	const folded = foldedOn(piece, edge);
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

/**
 * Arc length at a stitched length. Where a mouth is: the end of it that is met first, counted from the start of the edge or from
 * its finish; but the edge's stitched ends are always its drawn ends.
 */
export function fromStitched(
	piece: Piece,
	edge: Edge,
	stitched: number,
	countedFrom: 'start' | 'finish' = 'start'
): number {
	const folded = foldedOn(piece, edge);
	if (folded.length === 0) return stitched;
	const whole = edgeStitchedLength(piece, edge);
	if (stitched >= whole - rounding) return pathLength(edge.path) + (stitched - whole);
	if (stitched <= rounding) return stitched;
	// A hair back from a mouth that is met from the finish it is not passed, and the other way about.
	const slack = countedFrom === 'start' ? rounding : -rounding;
	let s = stitched;
	for (const part of folded) {
		if (s <= part.from + slack) break;
		const left = part.to - part.from - part.turned;
		s =
			s >= part.from + left - rounding ? s + part.turned : part.from + ((s - part.from) * (part.to - part.from)) / left;
	}
	return s;
}

function expectEdge(draft: Draft, name: string): { readonly piece: Piece; readonly edge: Edge } {
	const found = findEdge(draft, name);
	if (found === undefined) throw new Error(`There is no edge ${name} in this draft.`);
	return found;
}
