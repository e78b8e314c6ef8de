import type { Cubic, Point } from './types.ts';
import type { Run } from './segment-contacts.ts';
import { derivativeOn, pointOn, secondDerivativeOn, segmentPortion } from './segment.ts';

/*
 * Where two cubics meet. Pairs of pieces are halved until either they are apart (their boxes, or the strips along their
 * chords, do not meet), or the directions of one all differ from those of the other: then they cross at most once, and
 * Newton's method finds it to the last bits. Pairs that stay nearly parallel are halved until both are straight to a quarter of
 * the accuracy; there a touch is looked for, polished where the tangents are parallel and the gap is square to them.
 * Strips along chords: T. W. Sederberg & T. Nishita, Curve intersection using Bézier clipping, Computer-Aided Design 22 (1990).
 *
 * Work is capped at `mostPairs` pairs (met only by curves that run within the accuracy of one another without being
 * the same curve); pairs left over are then dropped, so a further contact inside such a stretch may go unseen.
 */

const mostPairs = 20000;
/** Room for rounding, in parameters and radians. */
const slack = 1e-10;

type Meet = (ta: number, tb: number, through: boolean) => void;

/** A part of a cubic with what the tests ask for: box of its control points, chord, strip about it, spread of directions. */
interface Piece {
	readonly curve: Cubic;
	readonly t0: number;
	readonly t1: number;
	readonly xs: readonly [number, number, number, number];
	readonly ys: readonly [number, number, number, number];
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
	/** The most that a direction on it differs from the chord's, in radians; Infinity where it is a right angle or more. */
	readonly spread: number;
	halves?: readonly [Piece, Piece];
}

/** Contacts of two cubics outside the runs that they share; one place may be given more than once. */
export function cubicContacts(a: Cubic, b: Cubic, runs: readonly Run[], accuracy: number, meet: Meet): void {
	const visited = { pairs: 0 };
	const wholeB = pieceOf(b, b, 0, 1);
	if (runs.length === 0) {
		meetPieces(pieceOf(a, a, 0, 1), wholeB, accuracy, meet, visited);
		return;
	}
	// What a does not share against all of b; what it shares against the rest of b.
	for (const [t0, t1] of gaps(runs.map(({ a0, a1 }) => [a0, a1]))) {
		meetPieces(pieceOf(a, segmentPortion(a, t0, t1) as Cubic, t0, t1), wholeB, accuracy, meet, visited);
	}
	const restOfB = gaps(runs.map(({ b0, b1 }) => [Math.min(b0, b1), Math.max(b0, b1)]));
	for (const { a0, a1 } of runs) {
		const shared = pieceOf(a, segmentPortion(a, a0, a1) as Cubic, a0, a1);
		for (const [t0, t1] of restOfB) {
			meetPieces(shared, pieceOf(b, segmentPortion(b, t0, t1) as Cubic, t0, t1), accuracy, meet, visited);
		}
	}
}

function gaps(taken: number[][]): number[][] {
	const free: number[][] = [];
	let from = 0;
	for (const [t0, t1] of taken.sort((p, q) => p[0] - q[0])) {
		if (t0 > from) free.push([from, t0]);
		from = Math.max(from, t1);
	}
	if (from < 1) free.push([from, 1]);
	return free;
}

function pieceOf(curve: Cubic, part: Cubic, t0: number, t1: number): Piece {
	const { from, control1, control2, to } = part;
	return measured(
		curve,
		t0,
		t1,
		[from[0], control1[0], control2[0], to[0]],
		[from[1], control1[1], control2[1], to[1]]
	);
}

function measured(curve: Cubic, t0: number, t1: number, xs: Piece['xs'], ys: Piece['ys']): Piece {
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
	let steepest = chord > 0 ? 0 : Infinity;
	for (let i = 0; i < 3; i++) {
		const lx = xs[i + 1] - xs[i];
		const ly = ys[i + 1] - ys[i];
		if (lx === 0 && ly === 0) continue;
		const along = lx * ux + ly * uy;
		const across = Math.abs(lx * uy - ly * ux);
		steepest = along > 0 ? Math.max(steepest, across / along) : Infinity;
	}
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

function halvesOf(piece: Piece): readonly [Piece, Piece] {
	if (piece.halves !== undefined) return piece.halves;
	const { curve, t0, t1, xs, ys } = piece;
	const middle = 0.5 * (t0 + t1);
	const x01 = 0.5 * (xs[0] + xs[1]);
	const x12 = 0.5 * (xs[1] + xs[2]);
	const x23 = 0.5 * (xs[2] + xs[3]);
	const xa = 0.5 * (x01 + x12);
	const xb = 0.5 * (x12 + x23);
	const x = 0.5 * (xa + xb);
	const y01 = 0.5 * (ys[0] + ys[1]);
	const y12 = 0.5 * (ys[1] + ys[2]);
	const y23 = 0.5 * (ys[2] + ys[3]);
	const ya = 0.5 * (y01 + y12);
	const yb = 0.5 * (y12 + y23);
	const y = 0.5 * (ya + yb);
	return (piece.halves = [
		measured(curve, t0, middle, [xs[0], x01, xa, x], [ys[0], y01, ya, y]),
		measured(curve, middle, t1, [x, xb, x23, xs[3]], [y, yb, y23, ys[3]])
	]);
}

function meetPieces(a: Piece, b: Piece, accuracy: number, meet: Meet, visited: { pairs: number }): void {
	if (visited.pairs++ > mostPairs) return;
	if (
		a.left > b.right + accuracy ||
		b.left > a.right + accuracy ||
		a.top > b.bottom + accuracy ||
		b.top > a.bottom + accuracy ||
		outsideStrip(a, b, accuracy) ||
		outsideStrip(b, a, accuracy)
	) {
		return;
	}
	const between = Math.atan2(Math.abs(a.ux * b.uy - a.uy * b.ux), Math.abs(a.ux * b.ux + a.uy * b.uy));
	if (between > a.spread + b.spread + slack) {
		const at = crossingNear(a, b);
		if (at !== undefined && within(a, at[0]) && within(b, at[1])) {
			meet(inUnit(at[0]), inUnit(at[1]), true);
			return;
		}
		// They cross beyond one of these pieces, or touch where both end.
		if (a.size <= accuracy && b.size <= accuracy) {
			meetNearlyParallel(a, b, accuracy, meet);
			return;
		}
	} else {
		const flat = 0.25 * accuracy;
		if ((a.over - a.under <= flat && b.over - b.under <= flat) || (a.size <= accuracy && b.size <= accuracy)) {
			meetNearlyParallel(a, b, accuracy, meet);
			return;
		}
	}
	if (a.size >= b.size) {
		const [first, second] = halvesOf(a);
		meetPieces(first, b, accuracy, meet, visited);
		meetPieces(second, b, accuracy, meet, visited);
	} else {
		const [first, second] = halvesOf(b);
		meetPieces(a, first, accuracy, meet, visited);
		meetPieces(a, second, accuracy, meet, visited);
	}
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

function within(piece: Piece, t: number): boolean {
	return t >= piece.t0 - slack && t <= piece.t1 + slack;
}

function inUnit(t: number): number {
	return Math.min(1, Math.max(0, t));
}

/** Newton's method for p(t) = q(u) from where the chords cross. */
function crossingNear(a: Piece, b: Piece): [number, number] | undefined {
	const ax = a.xs[3] - a.xs[0];
	const ay = a.ys[3] - a.ys[0];
	const bx = b.xs[3] - b.xs[0];
	const by = b.ys[3] - b.ys[0];
	const turning = ax * by - ay * bx;
	if (turning === 0) return undefined;
	const x = b.xs[0] - a.xs[0];
	const y = b.ys[0] - a.ys[0];
	let t = a.t0 + inUnit((x * by - y * bx) / turning) * (a.t1 - a.t0);
	let u = b.t0 + inUnit((x * ay - y * ax) / turning) * (b.t1 - b.t0);
	for (let step = 0; step < 12; step++) {
		const p = pointOn(a.curve, t);
		const q = pointOn(b.curve, u);
		const dp = derivativeOn(a.curve, t);
		const dq = derivativeOn(b.curve, u);
		const gapX = q[0] - p[0];
		const gapY = q[1] - p[1];
		const det = dp[0] * dq[1] - dp[1] * dq[0];
		if (det === 0) return undefined;
		const dt = (gapX * dq[1] - gapY * dq[0]) / det;
		const du = (gapX * dp[1] - gapY * dp[0]) / det;
		t += dt;
		u += du;
		if (!(Math.abs(t) < 2 && Math.abs(u) < 2)) return undefined;
		if (Math.abs(dt) <= 1e-14 && Math.abs(du) <= 1e-14) return [t, u];
		// Past quadratic convergence only rounding moves it.
		if (step > 7 && Math.abs(dt) <= 1e-11 && Math.abs(du) <= 1e-11) return [t, u];
	}
	return undefined;
}

/** Two straight pieces that are nearly parallel and within the accuracy of one another: a touch, or a crossing too shallow to tell apart from one. */
function meetNearlyParallel(a: Piece, b: Piece, accuracy: number, meet: Meet): void {
	const t = 0.5 * (a.t0 + a.t1);
	const u = parameterBeside(b, pointOn(a.curve, t));
	const touch = touchNear(a.curve, t, b.curve, u);
	if (touch !== undefined) {
		const [at, bt, gap] = touch;
		const reachA = 2 * (a.t1 - a.t0);
		const reachB = 2 * (b.t1 - b.t0);
		if (
			gap <= accuracy &&
			Math.abs(at - t) <= reachA &&
			Math.abs(bt - u) <= reachB &&
			at >= 0 &&
			at <= 1 &&
			bt >= 0 &&
			bt <= 1
		) {
			meet(at, bt, false);
			return;
		}
	}
	const crossing = crossingNear(a, b);
	if (crossing !== undefined && within(a, crossing[0]) && within(b, crossing[1])) {
		meet(inUnit(crossing[0]), inUnit(crossing[1]), true);
		return;
	}
	const p = pointOn(a.curve, t);
	const q = pointOn(b.curve, u);
	if (Math.hypot(p[0] - q[0], p[1] - q[1]) <= accuracy) meet(t, u, false);
}

/** The parameter on a straight piece beside a point. */
function parameterBeside(piece: Piece, point: Point): number {
	const { xs, ys, ux, uy, t0, t1 } = piece;
	const along = (point[0] - xs[0]) * ux + (point[1] - ys[0]) * uy;
	const whole = (xs[3] - xs[0]) * ux + (ys[3] - ys[0]) * uy;
	return whole > 0 ? t0 + inUnit(along / whole) * (t1 - t0) : t0;
}

/** Where two curves come closest with parallel tangents, and the gap there: Newton on (p − q)·p′ = 0 and p′ × q′ = 0. */
function touchNear(a: Cubic, t: number, b: Cubic, u: number): [number, number, number] | undefined {
	for (let step = 0; step < 12; step++) {
		const p = pointOn(a, t);
		const q = pointOn(b, u);
		const dp = derivativeOn(a, t);
		const dq = derivativeOn(b, u);
		const ddp = secondDerivativeOn(a, t);
		const ddq = secondDerivativeOn(b, u);
		const x = p[0] - q[0];
		const y = p[1] - q[1];
		const square = x * dp[0] + y * dp[1];
		const parallel = dp[0] * dq[1] - dp[1] * dq[0];
		const squareT = dp[0] * dp[0] + dp[1] * dp[1] + x * ddp[0] + y * ddp[1];
		const squareU = -(dq[0] * dp[0] + dq[1] * dp[1]);
		const parallelT = ddp[0] * dq[1] - ddp[1] * dq[0];
		const parallelU = dp[0] * ddq[1] - dp[1] * ddq[0];
		const det = squareT * parallelU - squareU * parallelT;
		if (det === 0) return undefined;
		const dt = (squareU * parallel - parallelU * square) / det;
		const du = (parallelT * square - squareT * parallel) / det;
		t += dt;
		u += du;
		if (!(Math.abs(t) < 2 && Math.abs(u) < 2)) return undefined;
		if (Math.abs(dt) <= 1e-13 && Math.abs(du) <= 1e-13) {
			const [px, py] = pointOn(a, t);
			const [qx, qy] = pointOn(b, u);
			return [t, u, Math.hypot(px - qx, py - qy)];
		}
	}
	return undefined;
}
