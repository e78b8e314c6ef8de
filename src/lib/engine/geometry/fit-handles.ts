/**
 * The handle lengths of one cubic Bézier by least squares on the distances of samples at right angles (Gauss–Newton with re-projected
 * parameters, after Schneider, "An Algorithm for Automatically Fitting Digitized Curves", Graphics Gems, 1990).
 *
 * It is done for most stretches of every moved edge, so its loops make no objects: samples and the cubic's control points lie in
 * lists that are laid out once for all. Nothing in them outlives a call.
 */
import { cubic } from './segment.ts';
import type { Point, Segment } from './types.ts';

export interface FittedSegment {
	readonly segment: Segment;
	/** Greatest distance found between the samples and the segment, mm. */
	readonly deviation: number;
}

/** How many samples a cubic is fitted and held to. */
export const sampled = 15;

/** Samples of a stretch, in order, and where on the cubic each is thought to lie. Laid out once and filled anew. */
export interface Samples {
	readonly xs: Float64Array;
	readonly ys: Float64Array;
	readonly ts: Float64Array;
}

export const samplesRoom = (): Samples => ({
	xs: new Float64Array(sampled),
	ys: new Float64Array(sampled),
	ts: new Float64Array(sampled)
});

/** Where each sample was thought to lie at first. */
const first = new Float64Array(sampled);
/** Where a sample's foot is looked for without forgetting where it was thought to be. */
const feet = new Float64Array(sampled);
/** The cubic's four control points, the three steps between them and their two bends: first all in x, then all in y. */
const k = new Float64Array(18);

const iterations = 8;
/** What is left of the greatest distance after a round that helps no more, where it is still many times the accuracy. */
const lasting = 0.8;
const near = 8;
/** Handles that change by less than this share of the accuracy are as they will be. */
const settled = 0.05;
/** Those that are only measured, and all, in the order in which they are looked at for one that is missed: where cubics miss most, first. */
const between = [2, 12, 4, 10, 6, 8, 0, 14];
const all = [...between, 7, 3, 11, 5, 9, 1, 13];

/**
 * The cubic through both ends along their tangents that comes nearest to the samples, from handles of a and b mm on. Every second
 * sample is fitted, all are measured. The samples' parameters are left where they were found to lie.
 */
export function fitHandles(
	samples: Samples,
	start: Point,
	out: Point,
	end: Point,
	into: Point,
	a: number,
	b: number,
	accuracy: number,
	enough: number
): FittedSegment {
	const { xs, ys, ts } = samples;
	const longest = 1.8 * (a + b);
	const shortest = longest / 60;
	first.set(ts);
	let before = Infinity;
	let least = Infinity;
	let bestA = a;
	let bestB = b;
	for (let round = 0; round < iterations; round++) {
		layCubic(start, end, out, into, a, b);
		let aa = 0;
		let ab = 0;
		let bb = 0;
		let ra = 0;
		let rb = 0;
		let missed = 0;
		for (let i = 1; i < sampled; i += 2) {
			foot(samples, i, ts, ts);
			const t = ts[i];
			const m = 1 - t;
			const vx = slopeAt(t, 4);
			const vy = slopeAt(t, 13);
			const speed = Math.sqrt(vx * vx + vy * vy) || 1;
			const nx = vy / speed;
			const ny = -vx / speed;
			const awayX = xs[i] - placeAt(t, 0);
			const awayY = ys[i] - placeAt(t, 9);
			const residual = awayX * nx + awayY * ny;
			missed = Math.max(missed, Math.abs(residual));
			const ga = 3 * m * m * t * (out[0] * nx + out[1] * ny);
			const gb = -3 * m * t * t * (into[0] * nx + into[1] * ny);
			aa += ga * ga;
			ab += ga * gb;
			bb += gb * gb;
			ra += ga * residual;
			rb += gb * residual;
		}
		// Handles hardly matter where the curve is nearly straight, and could not be told from rounding.
		if (missed <= accuracy / 4) {
			follow(samples);
			return {
				segment: withHandles(start, end, out, into, a, b),
				deviation: farthest(samples, between, missed, enough)
			};
		}
		if (round >= 2 && missed > near * accuracy && missed > lasting * before) {
			if (enough < missed) return { segment: withHandles(start, end, out, into, a, b), deviation: missed };
			break;
		}
		before = missed;
		if (missed < least) {
			least = missed;
			bestA = a;
			bestB = b;
		}
		// A touch of damping keeps nearly straight curves, whose handles hardly matter, where they are.
		const damping = 1e-9 + 1e-7 * (aa + bb);
		const determinant = (aa + damping) * (bb + damping) - ab * ab;
		const da = (ra * (bb + damping) - rb * ab) / determinant;
		const db = (rb * (aa + damping) - ra * ab) / determinant;
		a = Math.min(Math.max(a + da, shortest), longest);
		b = Math.min(Math.max(b + db, shortest), longest);
		if (Math.abs(da) + Math.abs(db) < accuracy * settled) break;
	}
	layCubic(start, end, out, into, a, b);
	follow(samples);
	const found = { segment: withHandles(start, end, out, into, a, b), deviation: farthest(samples, all, 0, enough) };
	// Where handles hardly matter a step may have led far astray: an earlier one was nearer.
	if (found.deviation <= Math.max(accuracy, least)) return found;
	layCubic(start, end, out, into, bestA, bestB);
	ts.set(first);
	for (let i = 0; i < sampled; i++) foot(samples, i, ts, ts);
	const earlier = farthest(samples, all, 0, enough);
	return earlier < found.deviation
		? { segment: withHandles(start, end, out, into, bestA, bestB), deviation: earlier }
		: found;
}

function withHandles(start: Point, end: Point, out: Point, into: Point, a: number, b: number): Segment {
	return cubic(
		start,
		[start[0] + out[0] * a, start[1] + out[1] * a],
		[end[0] - into[0] * b, end[1] - into[1] * b],
		end
	);
}

/** The cubic with these handles. */
function layCubic(start: Point, end: Point, out: Point, into: Point, a: number, b: number): void {
	for (let axis = 0; axis < 2; axis++) {
		const p0 = start[axis];
		const p1 = p0 + out[axis] * a;
		const p3 = end[axis];
		const p2 = p3 - into[axis] * b;
		const at = 9 * axis;
		k[at] = p0;
		k[at + 1] = p1;
		k[at + 2] = p2;
		k[at + 3] = p3;
		k[at + 4] = p1 - p0;
		k[at + 5] = p2 - p1;
		k[at + 6] = p3 - p2;
		k[at + 7] = p2 - 2 * p1 + p0;
		k[at + 8] = p3 - 2 * p2 + p1;
	}
}

/** Samples that were only measured are thought to have gone with those before and after them, which were fitted. */
function follow({ ts }: Samples): void {
	for (let i = 0; i < sampled; i += 2) {
		const before = i > 0 ? ts[i - 1] - first[i - 1] : 0;
		const after = i + 1 < sampled ? ts[i + 1] - first[i + 1] : 0;
		ts[i] = first[i] + (before + after) / 2;
	}
}

/**
 * The greatest distance of these samples from the cubic, each near its parameter, and no less than what is known; one beyond
 * `enough` ends the search.
 */
function farthest(samples: Samples, which: readonly number[], known: number, enough: number): number {
	const { xs, ys, ts } = samples;
	let worst = known;
	for (let j = 0; j < which.length; j++) {
		const i = which[j];
		foot(samples, i, ts, feet);
		const t = feet[i];
		const x = placeAt(t, 0) - xs[i];
		const y = placeAt(t, 9) - ys[i];
		worst = Math.max(worst, Math.sqrt(x * x + y * y));
		if (worst > enough) break;
	}
	return worst;
}

/** One coordinate of the cubic at t, from its four control points in `k`. */
function placeAt(t: number, at: number): number {
	const m = 1 - t;
	return m * m * m * k[at] + 3 * m * m * t * k[at + 1] + 3 * m * t * t * k[at + 2] + t * t * t * k[at + 3];
}

/** How fast it changes there, from the three steps between them. */
function slopeAt(t: number, at: number): number {
	const m = 1 - t;
	return 3 * m * m * k[at] + 6 * m * t * k[at + 1] + 3 * t * t * k[at + 2];
}

/** One Newton step of a sample's parameter towards the foot of its perpendicular, kept inside [0, 1]. */
function foot({ xs, ys }: Samples, i: number, seen: Float64Array, found: Float64Array): void {
	const t = seen[i];
	const m = 1 - t;
	const awayX = placeAt(t, 0) - xs[i];
	const awayY = placeAt(t, 9) - ys[i];
	const vx = slopeAt(t, 4);
	const vy = slopeAt(t, 13);
	const bendX = 6 * m * k[7] + 6 * t * k[8];
	const bendY = 6 * m * k[16] + 6 * t * k[17];
	const slope = vx * vx + awayX * bendX + (vy * vy + awayY * bendY);
	const next = slope > 0 ? t - (awayX * vx + awayY * vy) / slope : t;
	found[i] = next > 1 ? 1 : next > 0 ? next : 0;
}
