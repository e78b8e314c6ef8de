import type { Cubic } from './types.ts';
import { segmentPortion } from './segment.ts';

type Four = readonly [number, number, number, number];

/** A part of a cubic, with what tests for crossings ask of it. */
export interface Piece {
	readonly curve: Cubic;
	/** Its ends, as parameters of the curve. */
	readonly t0: number;
	readonly t1: number;
	/** Its own control points. */
	readonly xs: Four;
	readonly ys: Four;
	/** The box of its control points, and the longer side of that. */
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
	readonly size: number;
	/** Unit vector along the chord; [0, 0] where it has none. */
	readonly ux: number;
	readonly uy: number;
	/** The strip about the chord: least and greatest signed distance of the control points from it. */
	readonly under: number;
	readonly over: number;
	/** The most that a direction on it differs from the chord's, in radians; Infinity where that is a right angle or more. */
	readonly spread: number;
	halves?: readonly [Piece, Piece];
}

/** The part of a cubic between two of its parameters. */
export function pieceOf(curve: Cubic, t0: number, t1: number): Piece {
	const { from, control1, control2, to } = segmentPortion(curve, t0, t1) as Cubic;
	return described(
		curve,
		t0,
		t1,
		[from[0], control1[0], control2[0], to[0]],
		[from[1], control1[1], control2[1], to[1]]
	);
}

/** The two halves of a piece, made once. By de Casteljau's construction. */
export function halvesOf(piece: Piece): readonly [Piece, Piece] {
	if (piece.halves !== undefined) return piece.halves;
	const { curve, t0, t1 } = piece;
	const middle = 0.5 * (t0 + t1);
	const [x0, x01, x012, x, x123, x23, x3] = halved(piece.xs);
	const [y0, y01, y012, y, y123, y23, y3] = halved(piece.ys);
	return (piece.halves = [
		described(curve, t0, middle, [x0, x01, x012, x], [y0, y01, y012, y]),
		described(curve, middle, t1, [x, x123, x23, x3], [y, y123, y23, y3])
	]);
}

function halved([p0, p1, p2, p3]: Four): [number, number, number, number, number, number, number] {
	const p01 = 0.5 * (p0 + p1);
	const p12 = 0.5 * (p1 + p2);
	const p23 = 0.5 * (p2 + p3);
	const p012 = 0.5 * (p01 + p12);
	const p123 = 0.5 * (p12 + p23);
	return [p0, p01, p012, 0.5 * (p012 + p123), p123, p23, p3];
}

function described(curve: Cubic, t0: number, t1: number, xs: Four, ys: Four): Piece {
	const [x0, x1, x2, x3] = xs;
	const [y0, y1, y2, y3] = ys;
	const left = Math.min(x0, x1, x2, x3);
	const right = Math.max(x0, x1, x2, x3);
	const top = Math.min(y0, y1, y2, y3);
	const bottom = Math.max(y0, y1, y2, y3);
	const chord = Math.sqrt((x3 - x0) * (x3 - x0) + (y3 - y0) * (y3 - y0));
	const ux = chord > 0 ? (x3 - x0) / chord : 0;
	const uy = chord > 0 ? (y3 - y0) / chord : 0;
	const d1 = ux * (y1 - y0) - uy * (x1 - x0);
	const d2 = ux * (y2 - y0) - uy * (x2 - x0);
	const steepest = chord > 0 ? steepestLeg(xs, ys, ux, uy) : Infinity;
	return {
		curve,
		t0,
		t1,
		xs,
		ys,
		left,
		right,
		top,
		bottom,
		size: Math.max(right - left, bottom - top),
		ux,
		uy,
		under: Math.min(0, d1, d2),
		over: Math.max(0, d1, d2),
		spread: steepest < Infinity ? Math.atan(steepest) : Infinity
	};
}

/** The greatest slope against a direction of the legs of a control polygon; Infinity where one does not run forward. */
export function steepestLeg(xs: Four, ys: Four, ux: number, uy: number): number {
	let steepest = 0;
	for (let i = 0; i < 3; i++) {
		const x = xs[i + 1] - xs[i];
		const y = ys[i + 1] - ys[i];
		if (x === 0 && y === 0) continue;
		const along = x * ux + y * uy;
		if (!(along > 0)) return Infinity;
		steepest = Math.max(steepest, Math.abs(x * uy - y * ux) / along);
	}
	return steepest;
}

/** Whether two pieces stand farther apart than the tolerance, by their boxes or by the strip along either chord. */
export function standApart(a: Piece, b: Piece, tolerance: number): boolean {
	return (
		a.left > b.right + tolerance ||
		b.left > a.right + tolerance ||
		a.top > b.bottom + tolerance ||
		b.top > a.bottom + tolerance ||
		outsideStrip(a, b, tolerance) ||
		outsideStrip(b, a, tolerance)
	);
}

/** Whether b lies wholly to one side of the strip along a's chord. */
function outsideStrip(a: Piece, b: Piece, tolerance: number): boolean {
	const { ux, uy } = a;
	if (ux === 0 && uy === 0) return false;
	const x = a.xs[0];
	const y = a.ys[0];
	const d0 = ux * (b.ys[0] - y) - uy * (b.xs[0] - x);
	const d1 = ux * (b.ys[1] - y) - uy * (b.xs[1] - x);
	const d2 = ux * (b.ys[2] - y) - uy * (b.xs[2] - x);
	const d3 = ux * (b.ys[3] - y) - uy * (b.xs[3] - x);
	return Math.min(d0, d1, d2, d3) > a.over + tolerance || Math.max(d0, d1, d2, d3) < a.under - tolerance;
}
