/**
 * Fits cubic Béziers to a smooth curve that can only be sampled.
 *
 * Each interval gets one cubic that starts and ends on the curve along its tangents; the two handle lengths are found by
 * least squares on the distances at right angles (Gauss–Newton with re-projected parameters, after Schneider, "An Algorithm
 * for Automatically Fitting Digitized Curves", Graphics Gems, 1990). An interval that misses is cut at the joint nearest its
 * middle, or else halved. With both tangents given the error falls with the sixth power of the interval, so few pieces are needed.
 *
 * It cannot fit across a corner or a cusp: those must be among the breaks.
 */
import { add, cross, distance, dot, norm, scale, subtract } from './point.ts';
import { cubic, line } from './segment.ts';
import type { Cubic, Path, Point, Segment } from './types.ts';

export interface CurveSample {
	/** The curve at parameter u. */
	pointAt(u: number): Point;
	/** Unit direction of travel at u; at a break, as seen from inside the interval on that side. */
	tangentAt(u: number, side: 'before' | 'after'): Point;
}

export interface Fitted {
	readonly path: Path;
	/** Greatest distance found between the samples and the path, in mm. */
	readonly deviation: number;
}

const fitSamples = 7;
const iterations = 8;
/** An interval that after three rounds misses by this many times the accuracy will not be fitted by one cubic. */
const hopeless = 100;
const deepest = 12;
const mostSegments = 32;
const straightness = 1e-9;

/**
 * A path within `accuracy` mm of the curve, measured at samples between those that were fitted (a firm bound for curves
 * that do not wiggle between samples). Halving stops after twelve levels, and when one interval has come to 32 pieces; then the deviation that
 * was reached is returned.
 *
 * @param breaks ascending parameters, first and last included, between which the curve is smooth
 * @param joints ascending parameters at which its curvature may jump: where it is best cut, if it must be
 */
export function fitCurve(
	curve: CurveSample,
	breaks: readonly number[],
	accuracy: number,
	joints: readonly number[] = []
): Fitted {
	const segments: Segment[] = [];
	let deviation = 0;
	let from = curve.pointAt(breaks[0]);
	let most = 0;
	for (let i = 0; i + 1 < breaks.length; i++) {
		most = segments.length + mostSegments;
		fitInterval(breaks[i], breaks[i + 1], from, curve.pointAt(breaks[i + 1]), 0);
		from = segments[segments.length - 1].to;
	}
	return { path: segments, deviation };

	function fitInterval(u0: number, u1: number, start: Point, end: Point, depth: number): void {
		const found = fitOne(curve, u0, u1, start, end, accuracy);
		if (Number.isNaN(found.deviation))
			throw new RangeError('fitCurve: the curve has no place at some of its parameters');
		if (found.deviation <= accuracy || depth >= deepest || segments.length >= most) {
			segments.push(found.segment);
			deviation = Math.max(deviation, found.deviation);
			return;
		}
		const middle = middleOf(u0, u1, joints);
		const point = curve.pointAt(middle);
		fitInterval(u0, middle, start, point, depth + 1);
		fitInterval(middle, u1, point, end, depth + 1);
	}
}

/** The joint nearest the middle of an interval that leaves a twentieth of it on either side, or else the middle. */
function middleOf(u0: number, u1: number, joints: readonly number[]): number {
	const half = (u0 + u1) / 2;
	let least = 0.45 * (u1 - u0);
	let found = half;
	for (const joint of joints) {
		if (Math.abs(joint - half) > least) continue;
		least = Math.abs(joint - half);
		found = joint;
	}
	return found;
}

function fitOne(
	curve: CurveSample,
	u0: number,
	u1: number,
	start: Point,
	end: Point,
	accuracy: number
): { segment: Segment; deviation: number } {
	const count = 2 * fitSamples + 1;
	const points: Point[] = [];
	const lengths: number[] = [];
	let length = 0;
	let last = start;
	let bow = 0;
	const chord = subtract(end, start);
	const chordLength = norm(chord);
	for (let i = 1; i <= count; i++) {
		const point = curve.pointAt(u0 + ((u1 - u0) * i) / (count + 1));
		length += distance(last, point);
		points.push(point);
		lengths.push(length);
		last = point;
		if (chordLength > 0) bow = Math.max(bow, Math.abs(cross(chord, subtract(point, start))) / chordLength);
	}
	length += distance(last, end);
	const startTangent = curve.tangentAt(u0, 'after');
	const endTangent = curve.tangentAt(u1, 'before');
	if (bow <= straightness * Math.max(1, chordLength) && dot(startTangent, chord) > 0) {
		if (
			Math.abs(cross(startTangent, chord)) <= 1e-6 * chordLength &&
			Math.abs(cross(endTangent, chord)) <= 1e-6 * chordLength
		)
			return { segment: line(start, end), deviation: bow };
	}
	const parameters = lengths.map((at) => at / length);
	let a = length / 3;
	let b = length / 3;
	let candidate = withHandles(start, end, startTangent, endTangent, a, b);
	const even = { segment: candidate, deviation: farthest(candidate, points, parameters) };
	// Handles hardly matter where the curve is nearly straight, and could not be told from rounding.
	if (even.deviation <= accuracy / 4) return even;
	for (let round = 0; round < iterations; round++) {
		let aa = 0;
		let ab = 0;
		let bb = 0;
		let ra = 0;
		let rb = 0;
		let missed = 0;
		for (let i = 0; i < count; i += 2) {
			const t = project(candidate, points[i], parameters[i]);
			parameters[i] = t;
			const frame = at(candidate, t);
			const residual = (points[i][0] - frame.x) * frame.nx + (points[i][1] - frame.y) * frame.ny;
			missed = Math.max(missed, Math.abs(residual));
			const ga = 3 * (1 - t) * (1 - t) * t * (startTangent[0] * frame.nx + startTangent[1] * frame.ny);
			const gb = -3 * (1 - t) * t * t * (endTangent[0] * frame.nx + endTangent[1] * frame.ny);
			aa += ga * ga;
			ab += ga * gb;
			bb += gb * gb;
			ra += ga * residual;
			rb += gb * residual;
		}
		if (round >= 3 && missed > hopeless * accuracy) break;
		// A touch of damping keeps nearly straight curves, whose handles hardly matter, where they are.
		const damping = 1e-9 + 1e-7 * (aa + bb);
		const determinant = (aa + damping) * (bb + damping) - ab * ab;
		const da = (ra * (bb + damping) - rb * ab) / determinant;
		const db = (rb * (aa + damping) - ra * ab) / determinant;
		a = Math.min(Math.max(a + da, length * 0.02), length * 1.2);
		b = Math.min(Math.max(b + db, length * 0.02), length * 1.2);
		candidate = withHandles(start, end, startTangent, endTangent, a, b);
		if (Math.abs(da) + Math.abs(db) < accuracy * 0.01) break;
	}
	const deviation = farthest(candidate, points, parameters);
	return deviation <= even.deviation ? { segment: candidate, deviation } : even;
}

/** The greatest distance of the points from the cubic, each near its parameter. */
function farthest(candidate: Cubic, points: readonly Point[], parameters: readonly number[]): number {
	let worst = 0;
	for (let i = 0; i < points.length; i++) {
		const t = project(candidate, points[i], project(candidate, points[i], parameters[i]));
		const frame = at(candidate, t);
		worst = Math.max(worst, Math.hypot(points[i][0] - frame.x, points[i][1] - frame.y));
	}
	return worst;
}

function withHandles(start: Point, end: Point, startTangent: Point, endTangent: Point, a: number, b: number): Cubic {
	return cubic(start, add(start, scale(startTangent, a)), subtract(end, scale(endTangent, b)), end);
}

/** Point and unit normal of the cubic at t. */
function at(c: Cubic, t: number): { x: number; y: number; nx: number; ny: number } {
	const m = 1 - t;
	const k0 = m * m * m;
	const k1 = 3 * m * m * t;
	const k2 = 3 * m * t * t;
	const k3 = t * t * t;
	const d0 = 3 * m * m;
	const d1 = 6 * m * t;
	const d2 = 3 * t * t;
	const dx = d0 * (c.control1[0] - c.from[0]) + d1 * (c.control2[0] - c.control1[0]) + d2 * (c.to[0] - c.control2[0]);
	const dy = d0 * (c.control1[1] - c.from[1]) + d1 * (c.control2[1] - c.control1[1]) + d2 * (c.to[1] - c.control2[1]);
	const speed = Math.hypot(dx, dy) || 1;
	return {
		x: k0 * c.from[0] + k1 * c.control1[0] + k2 * c.control2[0] + k3 * c.to[0],
		y: k0 * c.from[1] + k1 * c.control1[1] + k2 * c.control2[1] + k3 * c.to[1],
		nx: dy / speed,
		ny: -dx / speed
	};
}

/** One Newton step of the parameter towards the foot of the perpendicular from `point`, kept inside [0, 1]. */
function project(c: Cubic, point: Point, t: number): number {
	const m = 1 - t;
	const d0 = 3 * m * m;
	const d1 = 6 * m * t;
	const d2 = 3 * t * t;
	const k0 = m * m * m;
	const k1 = 3 * m * m * t;
	const k2 = 3 * m * t * t;
	const k3 = t * t * t;
	let first = 0;
	let second = 0;
	for (let axis = 0; axis < 2; axis++) {
		const p0 = c.from[axis];
		const p1 = c.control1[axis];
		const p2 = c.control2[axis];
		const p3 = c.to[axis];
		const away = k0 * p0 + k1 * p1 + k2 * p2 + k3 * p3 - point[axis];
		const speed = d0 * (p1 - p0) + d1 * (p2 - p1) + d2 * (p3 - p2);
		const bend = 6 * m * (p2 - 2 * p1 + p0) + 6 * t * (p3 - 2 * p2 + p1);
		first += away * speed;
		second += speed * speed + away * bend;
	}
	if (second <= 0) return t;
	return Math.min(1, Math.max(0, t - first / second));
}
