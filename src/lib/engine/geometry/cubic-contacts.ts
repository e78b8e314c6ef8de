import type { Cubic } from './types.ts';
import type { Contact, Run } from './segment-contacts.ts';
import { halvesOf, pieceOf, standApart } from './cubic-piece.ts';
import type { Piece } from './cubic-piece.ts';
import { lengthOf } from './point.ts';
import { derivativeOn, pointOn, secondDerivativeOn } from './segment.ts';
import { sideBySide } from './side-by-side.ts';
import type { SideBySide } from './side-by-side.ts';

/*
 * Where two cubics meet. Pairs of pieces are halved until they stand apart (their boxes, or the strips along their chords, do
 * not meet), or the directions of one all differ from those of the other, and they cross at most once: Newton's method finds
 * it to the last bits. Pieces that run nearly the same way are compared side by side instead, which tells long before they are
 * straight whether they are apart, cross once, or keep together within the accuracy.
 * Strips along chords: T. W. Sederberg & T. Nishita, Curve intersection using Bézier clipping, Computer-Aided Design 22 (1990).
 *
 * Work is capped at `mostPairs` pairs; pairs left over are dropped, so that a contact there may go unseen. No pair of
 * curves is known that comes near it.
 */

const mostPairs = 20000;
/** Room for rounding, in parameters and radians. */
const slack = 1e-10;
/** A stretch within the accuracy that is shorter than this, in mm, is one touch. */
const oneTouch = 2;

interface Found {
	readonly contacts: Contact[];
	/** Pieces of stretches within the accuracy. */
	readonly together: Run[];
	pairs: number;
}

/** Contacts of two cubics outside the runs already known, and further runs; one place may be given more than once. */
export function cubicContacts(
	a: Cubic,
	b: Cubic,
	known: readonly Run[],
	accuracy: number
): { contacts: Contact[]; runs: Run[] } {
	const found: Found = { contacts: [], together: [], pairs: 0 };
	const wholeB = pieceOf(b, 0, 1);
	if (known.length === 0) {
		meetPieces(pieceOf(a, 0, 1), wholeB, accuracy, found);
	} else {
		// What a does not share against all of b; what it shares against the rest of b.
		for (const [t0, t1] of gaps(known.map(({ a0, a1 }) => [a0, a1]))) {
			meetPieces(pieceOf(a, t0, t1), wholeB, accuracy, found);
		}
		const restOfB = gaps(known.map(({ b0, b1 }) => [Math.min(b0, b1), Math.max(b0, b1)]));
		for (const { a0, a1 } of known) {
			for (const [t0, t1] of restOfB) meetPieces(pieceOf(a, a0, a1), pieceOf(b, t0, t1), accuracy, found);
		}
	}
	const runs: Run[] = [];
	for (const run of joinedRuns(found.together)) {
		const from = pointOn(a, run.a0);
		const to = pointOn(a, run.a1);
		if (lengthOf(to[0] - from[0], to[1] - from[1]) > oneTouch) runs.push(run);
		else found.contacts.push(touchWithin(a, b, run));
	}
	return { contacts: found.contacts, runs };
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

function joinedRuns(pieces: readonly Run[]): Run[] {
	const joined: Run[] = [];
	for (const piece of [...pieces].sort((p, q) => p.a0 - q.a0)) {
		const before = joined.findIndex(({ a1, b1 }) => Math.abs(piece.a0 - a1) < 1e-7 && Math.abs(piece.b0 - b1) < 1e-7);
		if (before < 0) joined.push(piece);
		else joined[before] = { ...joined[before], a1: piece.a1, b1: piece.b1 };
	}
	return joined;
}

function meetPieces(a: Piece, b: Piece, accuracy: number, found: Found): void {
	if (found.pairs++ > mostPairs || standApart(a, b, accuracy)) return;
	const between = Math.atan2(Math.abs(a.ux * b.uy - a.uy * b.ux), Math.abs(a.ux * b.ux + a.uy * b.uy));
	if (between > a.spread + b.spread + slack) {
		const at = crossingOfChords(a, b);
		if (at !== undefined && within(a, at[0]) && within(b, at[1])) {
			found.contacts.push({ ta: inUnit(at[0]), tb: inUnit(at[1]), through: true });
			return;
		}
	}
	const beside = sideBySide(a, b, accuracy);
	if (beside === undefined) return;
	if (beside !== 'steep') {
		meetBeside(beside, accuracy, found);
		return;
	}
	if (a.size <= accuracy && b.size <= accuracy) {
		// Both are as good as points, and within the accuracy of one another.
		found.contacts.push({ ta: 0.5 * (a.t0 + a.t1), tb: 0.5 * (b.t0 + b.t1), through: false });
	} else if (a.size >= b.size) {
		for (const half of halvesOf(a)) meetPieces(half, b, accuracy, found);
	} else {
		for (const half of halvesOf(b)) meetPieces(a, half, accuracy, found);
	}
}

function meetBeside({ a, b, against, lie, gap0, gap1 }: SideBySide, accuracy: number, found: Found): void {
	if (lie === 'apart') return;
	const [b0, b1] = against ? [b.t1, b.t0] : [b.t0, b.t1];
	if (lie === 'together' || (lie === 'unclear' && a.size <= 0.1 * accuracy)) {
		found.together.push({ a0: a.t0, b0, a1: a.t1, b1 });
	} else if (lie === 'unclear') {
		for (const half of halvesOf(a)) meetPieces(half, b, accuracy, found);
	} else {
		// A crossing at an end of the stretch, to rounding, may look to either side like the other's.
		if (Math.abs(gap0) <= slack) found.contacts.push({ ta: a.t0, tb: b0, through: true });
		if (Math.abs(gap1) <= slack) found.contacts.push({ ta: a.t1, tb: b1, through: true });
		if (lie !== 'cross') return;
		const share = gap0 / (gap0 - gap1);
		const t = a.t0 + share * (a.t1 - a.t0);
		const at = crossingNear(a.curve, t, b.curve, b0 + share * (b1 - b0));
		if (at !== undefined && within(a, at[0]) && within(b, at[1])) {
			found.contacts.push({ ta: inUnit(at[0]), tb: inUnit(at[1]), through: true });
		} else if (a.size > 0.1 * accuracy) {
			for (const half of halvesOf(a)) meetPieces(half, b, accuracy, found);
		} else {
			found.contacts.push({ ta: t, tb: b0 + share * (b1 - b0), through: true });
		}
	}
}

function within(piece: Piece, t: number): boolean {
	return t >= piece.t0 - slack && t <= piece.t1 + slack;
}

function inUnit(t: number): number {
	return Math.min(1, Math.max(0, t));
}

/** `crossingNear` from where the chords cross. */
function crossingOfChords(a: Piece, b: Piece): [number, number] | undefined {
	const ax = a.xs[3] - a.xs[0];
	const ay = a.ys[3] - a.ys[0];
	const bx = b.xs[3] - b.xs[0];
	const by = b.ys[3] - b.ys[0];
	const turning = ax * by - ay * bx;
	if (turning === 0) return undefined;
	const x = b.xs[0] - a.xs[0];
	const y = b.ys[0] - a.ys[0];
	const t = a.t0 + inUnit((x * by - y * bx) / turning) * (a.t1 - a.t0);
	const u = b.t0 + inUnit((x * ay - y * ax) / turning) * (b.t1 - b.t0);
	return crossingNear(a.curve, t, b.curve, u);
}

/** Newton's method for a(t) = b(u); steps that only rounding makes end it. */
function crossingNear(a: Cubic, t: number, b: Cubic, u: number): [number, number] | undefined {
	let last = Infinity;
	for (let step = 0; step < 16; step++) {
		const p = pointOn(a, t);
		const q = pointOn(b, u);
		const dp = derivativeOn(a, t);
		const dq = derivativeOn(b, u);
		const x = q[0] - p[0];
		const y = q[1] - p[1];
		const turning = dp[0] * dq[1] - dp[1] * dq[0];
		if (turning === 0) return undefined;
		const dt = (x * dq[1] - y * dq[0]) / turning;
		const du = (x * dp[1] - y * dp[0]) / turning;
		t += dt;
		u += du;
		if (!(Math.abs(t) < 2 && Math.abs(u) < 2)) return undefined;
		const moved = Math.max(Math.abs(dt), Math.abs(du));
		if (moved <= 1e-14 || (moved <= 1e-8 && moved >= 0.5 * last)) return [t, u];
		last = moved;
	}
	return undefined;
}

/** The touch in a short stretch: where the tangents are parallel and the gap square to them, by Newton's method, else its middle. */
function touchWithin(a: Cubic, b: Cubic, run: Run): Contact {
	const middle = { ta: 0.5 * (run.a0 + run.a1), tb: 0.5 * (run.b0 + run.b1), through: false };
	let { ta: t, tb: u } = middle;
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
		const determinant = squareT * parallelU - squareU * parallelT;
		if (determinant === 0) return middle;
		const dt = (squareU * parallel - parallelU * square) / determinant;
		const du = (parallelT * square - squareT * parallel) / determinant;
		t += dt;
		u += du;
		if (!(Math.abs(t - middle.ta) <= 2 * (run.a1 - run.a0) && t >= 0 && t <= 1 && u >= 0 && u <= 1)) return middle;
		if (Math.abs(dt) <= 1e-13 && Math.abs(du) <= 1e-13) return { ta: t, tb: u, through: false };
	}
	return middle;
}
