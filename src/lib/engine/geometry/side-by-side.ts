import { pieceOf, steepestLeg } from './cubic-piece.ts';
import type { Piece } from './cubic-piece.ts';
import { rootsBetween } from './roots.ts';

/**
 * How two pieces that run nearly the same way lie to one another, over the stretch that they have beside one another: `apart`
 * (farther than the accuracy), `together` (within it all along), `cross` (exactly once, at about `share` of the stretch),
 * `pass` (steadily nearing or parting, without crossing), or `unclear`: look at shorter ones.
 */
export interface SideBySide {
	readonly a: Piece;
	readonly b: Piece;
	/** b runs against a. */
	readonly against: boolean;
	readonly lie: 'apart' | 'together' | 'cross' | 'pass' | 'unclear';
	/** Signed gaps, across a's chord, at the two ends of the stretch. */
	readonly gap0: number;
	readonly gap1: number;
}

/** Pieces steeper than this against a's chord are not compared. */
const steepest = 1;

/**
 * Compares two pieces over a's chord; nothing, where one of them does not run forward along it, or they are not beside one
 * another at all. Both are cut to their common stretch and taken by one parameter from 0 to 1; the difference of their control
 * points is then small wherever they nearly coincide, however they bend, and its parts across and along the chord
 * bound the gap and the slope of the gap between them (derived; b as a graph over the chord, with slopes up to `slope`).
 */
export function sideBySide(wholeA: Piece, wholeB: Piece, accuracy: number): SideBySide | 'steep' | undefined {
	const { ux, uy } = wholeA;
	const against = ux * wholeB.ux + uy * wholeB.uy < 0;
	const sign = against ? -1 : 1;
	const slopeA = steepestLeg(wholeA.xs, wholeA.ys, ux, uy);
	const slopeB = steepestLeg(wholeB.xs, wholeB.ys, sign * ux, sign * uy);
	if (!(slopeA <= steepest && slopeB <= steepest)) return 'steep';
	const along = (piece: Piece, i: number) => piece.xs[i] * ux + piece.ys[i] * uy;
	const low = Math.max(along(wholeA, 0), along(wholeB, against ? 3 : 0));
	const high = Math.min(along(wholeA, 3), along(wholeB, against ? 0 : 3));
	if (!(high > low)) return undefined;
	const a = cutTo(wholeA, ux, uy, low, high);
	const b = cutTo(wholeB, ux, uy, low, high);

	const across: number[] = [];
	let leastAcross = Infinity;
	let mostAcross = -Infinity;
	let mostAlong = 0;
	for (let i = 0; i < 4; i++) {
		const j = against ? 3 - i : i;
		const x = a.xs[i] - b.xs[j];
		const y = a.ys[i] - b.ys[j];
		const d = ux * y - uy * x;
		across.push(d);
		leastAcross = Math.min(leastAcross, d);
		mostAcross = Math.max(mostAcross, d);
		mostAlong = Math.max(mostAlong, Math.abs(ux * x + uy * y));
	}
	const slope = steepestLeg(b.xs, b.ys, sign * ux, sign * uy);
	const found = (lie: SideBySide['lie']): SideBySide => ({ a, b, against, lie, gap0: across[0], gap1: across[3] });
	const least = leastAcross > 0 ? leastAcross : mostAcross < 0 ? -mostAcross : 0;
	if (least > slope * mostAlong + (1 + slope) * accuracy) return found('apart');
	if (Math.max(mostAcross, -leastAcross) + slope * mostAlong <= accuracy) return found('together');
	if (steadyGap(a, b, against, across, slope, mostAlong))
		return found(across[0] > 0 === across[3] > 0 ? 'pass' : 'cross');
	return found('unclear');
}

/** Whether the gap between two cut pieces only grows, or only shrinks, along them. */
function steadyGap(
	a: Piece,
	b: Piece,
	against: boolean,
	across: readonly number[],
	slope: number,
	mostAlong: number
): boolean {
	const { ux, uy } = a;
	const [s0, s1, s2] = [across[1] - across[0], across[2] - across[1], across[3] - across[2]];
	const steady = Math.max(Math.min(s0, s1, s2), -Math.max(s0, s1, s2));
	if (!(steady > 0)) return false;
	// Per unit of the common parameter, a third of each derivative: of the difference along, of b along, and b's bend.
	let drift = 0;
	let fastest = 0;
	let slowest = Infinity;
	const legsAlong: number[] = [];
	const legsAcross: number[] = [];
	for (let i = 0; i < 3; i++) {
		const j = against ? 3 - i : i;
		const k = against ? j - 1 : j + 1;
		const bx = b.xs[k] - b.xs[j];
		const by = b.ys[k] - b.ys[j];
		const legAlong = ux * bx + uy * by;
		legsAlong.push(legAlong);
		legsAcross.push(ux * by - uy * bx);
		drift = Math.max(drift, Math.abs(ux * (a.xs[i + 1] - a.xs[i]) + uy * (a.ys[i + 1] - a.ys[i]) - legAlong));
		fastest = Math.max(fastest, legAlong);
		slowest = Math.min(slowest, legAlong);
	}
	if (!(slowest > 0)) return false;
	const bendOf = (legs: readonly number[]) => 2 * Math.max(Math.abs(legs[1] - legs[0]), Math.abs(legs[2] - legs[1]));
	// |f″| of b as a graph, from (x′y″ − y′x″) / x′³ with x′ = 3 × leg, y″ = 3 × bend.
	const bend = (bendOf(legsAcross) + slope * bendOf(legsAlong)) / (3 * slowest * slowest);
	return steady > slope * drift + bend * mostAlong * fastest;
}

/** The part of a piece that lies between two places along a direction in which it runs forward or back throughout. */
function cutTo(piece: Piece, ux: number, uy: number, low: number, high: number): Piece {
	const p = piece.xs.map((x, i) => x * ux + piece.ys[i] * uy);
	const back = p[3] < p[0];
	const [from, to] = back ? [high, low] : [low, high];
	const reached = (place: number, end: 0 | 3): number => {
		const past = back ? p[end] - place : place - p[end];
		if (end === 0 ? past <= 0 : past >= 0) return end === 0 ? 0 : 1;
		const [root] = rootsBetween(
			[p[0] - place, 3 * (p[1] - p[0]), 3 * (p[0] - 2 * p[1] + p[2]), p[3] - p[0] - 3 * (p[2] - p[1])],
			0,
			1
		);
		return root ?? (end === 0 ? 0 : 1);
	};
	const u0 = reached(from, 0);
	const u1 = reached(to, 3);
	if (u0 === 0 && u1 === 1) return piece;
	const width = piece.t1 - piece.t0;
	return pieceOf(piece.curve, piece.t0 + u0 * width, u1 === 1 ? piece.t1 : piece.t0 + u1 * width);
}
