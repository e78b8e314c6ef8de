/**
 * Fits cubic Béziers to a curve that tells how fast it runs, from joint to joint: it is first drawn as it runs (see
 * hermite-cubic); a stretch that this misses gets the best cubic (see fit-cubic), or else is halved. Stretches that meet at a joint
 * are made one where that stays as near (see merge-cubics), so that a line moved many times does not come to more and more pieces.
 *
 * It cannot fit across a corner or a cusp: those must be among the breaks.
 */
import { fittedOf, type Fitted } from './fit.ts';
import type { SmoothCurve } from './curve-sample.ts';
import { fitCubic } from './fit-cubic.ts';
import { fitHandles, sampled, samplesRoom, type FittedSegment } from './fit-handles.ts';
import { held, hermiteCubic } from './hermite-cubic.ts';
import { merged, type HeldStretch, type HeldSamples } from './merge-cubics.ts';
import { distance, scale } from './point.ts';
import type { Cubic, Point } from './types.ts';

const deepest = 12;
const mostSegments = 32;
/** A stretch drawn as it runs that misses by more times the accuracy than this is halved: the best cubic would miss as well. */
const hopeless = 200;
/** A joint so near a break, in units of the parameter, is no place of its own. */
const beside = 1e-3;
const even = Float64Array.from({ length: held }, (_, i) => (i + 1) / (held + 1));

/** Samples of the stretches on the pile. Filled anew for each curve, and made larger where that is not enough. */
let lists: HeldSamples = roomFor(64);

function roomFor(stretches: number): HeldSamples {
	const [xs, ys, ts] = [0, 1, 2].map(() => new Float64Array(stretches * held));
	return { xs, ys, ts };
}

/**
 * A path within `accuracy` mm of the curve, measured at samples (a firm bound for curves that do not wiggle between them).
 * Halving stops after twelve levels, and when one interval has come to 32 pieces more than it has joints; then the deviation that was reached is returned.
 *
 * @param breaks ascending parameters, first and last included, between which the curve is smooth
 * @param joints ascending parameters at which its curvature may jump and its speed in the parameter may
 */
export function fitSmooth(
	curve: SmoothCurve,
	breaks: readonly number[],
	joints: readonly number[],
	accuracy: number
): Fitted {
	const pile: HeldStretch[] = [];
	let start = curve.pointAt(breaks[0]);
	let next = 0;
	for (let i = 0; i + 1 < breaks.length; i++) {
		const u0 = breaks[i];
		const u1 = breaks[i + 1];
		const first = pile.length;
		let from = u0;
		while (next < joints.length && joints[next] <= u0 + beside) next++;
		for (; next < joints.length && joints[next] < u1 - beside; next++) {
			start = stretch(from, joints[next], start, curve.jointAt(joints[next]), first);
			from = joints[next];
		}
		start = stretch(from, u1, start, curve.pointAt(u1), first);
	}
	return fittedOf(pile);

	/** Fits one stretch, makes it one with what is before it down to the break `first` where it can, and gives its end. */
	function stretch(u0: number, u1: number, from: Point, to: Point, first: number): Point {
		const before = pile.length;
		fitInterval(u0, u1, from, to, 0, before + mostSegments);
		for (let at = before; at > first && at < pile.length; at--) {
			const found = merged(pile[at - 1], pile[at], lists, accuracy);
			if (!found) break;
			pile.splice(at - 1, 2, found);
		}
		return to;
	}

	function fitInterval(u0: number, u1: number, from: Point, to: Point, depth: number, most: number): void {
		const last = depth >= deepest || pile.length >= most;
		const at = pile.length > 0 ? pile[pile.length - 1].at + held : 0;
		if (at + held > lists.xs.length) lists = grown(lists);
		const leaving = curve.velocityAt(u0, 'after');
		const arriving = curve.velocityAt(u1, 'before');
		curve.pointsInside(u0, u1, 'steps', lists.xs, lists.ys, at);
		lists.ts.set(even, at);
		let found: FittedSegment | undefined;
		if (isSomewhere(leaving) && isSomewhere(arriving)) {
			const span = u1 - u0;
			found = hermiteCubic(
				from,
				scale(leaving, span),
				to,
				scale(arriving, span),
				lists.xs,
				lists.ys,
				at,
				hopeless * accuracy
			);
			if (found.deviation > accuracy && (last || found.deviation <= hopeless * accuracy))
				found = bestFrom(found.segment as Cubic, u0, u1, at, last ? Infinity : accuracy);
		} else found = fitCubic(curve, u0, u1, from, to, accuracy, last ? Infinity : accuracy);
		if (found.deviation <= accuracy || last) {
			pile.push({ segment: found.segment, deviation: found.deviation, at });
			return;
		}
		const middle = (u0 + u1) / 2;
		const point = curve.pointAt(middle);
		fitInterval(u0, middle, from, point, depth + 1, most);
		fitInterval(middle, u1, point, to, depth + 1, most);
	}

	/** The best cubic along the tangents of one that is nearly right, whose samples are in the lists. */
	function bestFrom(
		{ from, control1, control2, to }: Cubic,
		u0: number,
		u1: number,
		at: number,
		enough: number
	): FittedSegment {
		const { xs, ys, ts } = room;
		curve.pointsInside(u0, u1, 'halfway', halfway.xs, halfway.ys, 0);
		for (let i = 0; i < sampled; i++) {
			xs[i] = i % 2 ? lists.xs[at + (i >> 1)] : halfway.xs[i >> 1];
			ys[i] = i % 2 ? lists.ys[at + (i >> 1)] : halfway.ys[i >> 1];
			ts[i] = (i + 1) / (sampled + 1);
		}
		const a = distance(from, control1);
		const b = distance(control2, to);
		const found = fitHandles(
			room,
			from,
			direction(from, control1, a),
			to,
			direction(control2, to, b),
			a,
			b,
			accuracy,
			enough
		);
		for (let i = 0; i < held; i++) lists.ts[at + i] = ts[2 * i + 1];
		return found;
	}
}

const room = samplesRoom();
const halfway = { xs: new Float64Array(held + 1), ys: new Float64Array(held + 1) };

const direction = (from: Point, to: Point, length: number): Point => [
	(to[0] - from[0]) / length,
	(to[1] - from[1]) / length
];

const isSomewhere = ([x, y]: Point): boolean => x !== 0 || y !== 0;

function grown(small: HeldSamples): HeldSamples {
	const large = roomFor((2 * small.xs.length) / held);
	for (const list of ['xs', 'ys', 'ts'] as const) large[list].set(small[list]);
	return large;
}
