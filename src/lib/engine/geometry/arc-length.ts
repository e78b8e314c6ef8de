import type { Cubic, Segment } from './types.ts';
import { distance } from './point.ts';

/*
 * Arc length by Gauss–Legendre quadrature of the speed, with a firm error bound. Taken as a complex number the derivative of a
 * cubic is a quadratic Z(t), and the speed is |Z|: analytic but at the roots of Z and their conjugates. With the least ρ of
 * those ellipses about the interval that reach a root, and M ≥ |Z| on it, n points are wrong by at most
 * 64/15 · M · ρ^(−2n) / (1 − ρ^(−2)) (L. N. Trefethen, Approximation Theory and Approximation Practice, 2013, theorem 19.3).
 * Where 8 or 16 points do not suffice the interval is cut: beside a root at the root's real part, so that a cusp (a real
 * root, where the speed has a kink) falls between two intervals and disturbs neither. Nodes and weights: M. Abramowitz &
 * I. A. Stegun, Handbook of Mathematical Functions, 1964, table 25.4.
 *
 * `accuracy` bounds the error of the length, in mm, down to a rounding floor of about 1e-15 of the control polygon. Cuts in
 * one another are capped at 60, where the part left is shorter than rounding can tell.
 */

const nodes8 = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
const weights8 = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];
const nodes16 = [
	0.0950125098376374, 0.2816035507792589, 0.4580167776572274, 0.6178762444026438, 0.755404408355003, 0.8656312023878318,
	0.9445750230732326, 0.9894009349916499
];
const weights16 = [
	0.1894506104550685, 0.1826034150449236, 0.1691565193950025, 0.1495959888165767, 0.1246289712555339,
	0.0951585116824928, 0.0622535239386479, 0.0271524594117541
];
const mostCuts = 60;
const mostSteps = 60;
/** Ellipses wider than this gain nothing. */
const widest = 50;

/**
 * The derivative of a cubic, a + b t + c t², and its two complex roots; a root at infinity is NaN or Infinity. In one list, as
 * it is made for every length that is asked for: ax, ay, bx, by, cx, cy, then each root's real and imaginary part.
 */
export type Speed = Float64Array;

export const speedRoom = (): Speed => new Float64Array(10);
/** For lengths that are asked for once. */
const passing = speedRoom();

/** Length of a segment in mm, within `accuracy`. */
export function segmentLength(segment: Segment, accuracy: number): number {
	return segmentLengthBetween(segment, 0, 1, accuracy);
}

/** Length from the segment's start to t, in mm, within `accuracy`. */
export function segmentLengthTo(segment: Segment, t: number, accuracy: number): number {
	return segmentLengthBetween(segment, 0, t, accuracy);
}

/** The same of a cubic whose speed is at hand. */
export function lengthTo(speed: Speed, t: number, accuracy: number): number {
	return lengthBetween(speed, 0, t, accuracy);
}

/** Length between two parameters, in mm, within `accuracy`; negative where t1 < t0. */
export function segmentLengthBetween(segment: Segment, t0: number, t1: number, accuracy: number): number {
	if (segment.kind === 'line') return distance(segment.from, segment.to) * (t1 - t0);
	if (t0 === t1) return 0;
	return lengthBetween(laySpeed(segment, passing), t0, t1, accuracy);
}

function lengthBetween(speed: Speed, t0: number, t1: number, accuracy: number): number {
	if (t0 === t1) return 0;
	return t1 > t0 ? integrate(speed, t0, t1, accuracy, 0) : -integrate(speed, t1, t0, accuracy, 0);
}

/** Puts the derivative of a cubic in a list and gives it back. */
export function laySpeed({ from, control1, control2, to }: Cubic, speed: Speed): Speed {
	const ax = 3 * (control1[0] - from[0]);
	const ay = 3 * (control1[1] - from[1]);
	const bx = 6 * (from[0] - 2 * control1[0] + control2[0]);
	const by = 6 * (from[1] - 2 * control1[1] + control2[1]);
	const cx = 3 * (to[0] - from[0] - 3 * (control2[0] - control1[0]));
	const cy = 3 * (to[1] - from[1] - 3 * (control2[1] - control1[1]));
	// Complex square root of b² − 4 a c, on b's side so that nothing cancels in q = −(b + root) / 2.
	const dx = bx * bx - by * by - 4 * (ax * cx - ay * cy);
	const dy = 2 * bx * by - 4 * (ax * cy + ay * cx);
	const size = Math.sqrt(dx * dx + dy * dy);
	let wx = Math.sqrt(Math.max(0, 0.5 * (size + dx)));
	let wy = Math.sqrt(Math.max(0, 0.5 * (size - dx))) * (dy < 0 ? -1 : 1);
	if (bx * wx + by * wy < 0) {
		wx = -wx;
		wy = -wy;
	}
	const qx = -0.5 * (bx + wx);
	const qy = -0.5 * (by + wy);
	const cc = cx * cx + cy * cy;
	const qq = qx * qx + qy * qy;
	const atStart = ax === 0 && ay === 0;
	speed[0] = ax;
	speed[1] = ay;
	speed[2] = bx;
	speed[3] = by;
	speed[4] = cx;
	speed[5] = cy;
	speed[6] = (qx * cx + qy * cy) / cc;
	speed[7] = (qy * cx - qx * cy) / cc;
	speed[8] = atStart ? 0 : (ax * qx + ay * qy) / qq;
	speed[9] = atStart ? 0 : (ay * qx - ax * qy) / qq;
	return speed;
}

function integrate(speed: Speed, t0: number, t1: number, accuracy: number, cuts: number): number {
	const ax = speed[0];
	const ay = speed[1];
	const bx = speed[2];
	const by = speed[3];
	const cx = speed[4];
	const cy = speed[5];
	const middle = 0.5 * (t0 + t1);
	const half = 0.5 * (t1 - t0);
	// The derivative about the middle, in the variable x that runs from −1 to 1.
	const px = ax + (bx + cx * middle) * middle;
	const py = ay + (by + cy * middle) * middle;
	const qx = (bx + 2 * cx * middle) * half;
	const qy = (by + 2 * cy * middle) * half;
	const rx = cx * half * half;
	const ry = cy * half * half;
	const p = Math.sqrt(px * px + py * py);
	const q = Math.sqrt(qx * qx + qy * qy);
	const r = Math.sqrt(rx * rx + ry * ry);

	// Half the long axis of the ellipse through each root.
	const kink = accuracy / (200 * half * (q + 5 * r));
	const axis1 = reach(speed[6], speed[7], middle, half, kink);
	const axis2 = reach(speed[8], speed[9], middle, half, kink);
	const axis = Math.min(axis1, axis2, widest);
	const rho = axis + Math.sqrt(axis * axis - 1);
	const greatest = half * (p + (q + r * axis) * axis);
	const enough = Math.max(accuracy, 1e-15 * greatest);
	const inverse2 = 1 / (rho * rho);
	const inverse4 = inverse2 * inverse2;
	const inverse16 = inverse4 * inverse4 * inverse4 * inverse4;
	const factor = ((64 / 15) * greatest) / (1 - inverse2);
	if (factor * inverse16 <= enough) return half * weighted(nodes8, weights8, px, py, qx, qy, rx, ry);
	if (factor * inverse16 * inverse16 <= enough || cuts >= mostCuts) {
		return half * weighted(nodes16, weights16, px, py, qx, qy, rx, ry);
	}
	const nearest = axis1 <= axis2 ? speed[6] : speed[8];
	const inside = Math.abs(nearest - middle) < 0.999 * half;
	const at = inside ? nearest : middle;
	return integrate(speed, t0, at, 0.5 * accuracy, cuts + 1) + integrate(speed, at, t1, 0.5 * accuracy, cuts + 1);
}

/**
 * Half the long axis of the ellipse about an interval that reaches a root. A root that is real to within what the accuracy
 * can tell (the square of its distance from the real axis against `kink`), and not inside, is no singularity here.
 */
function reach(real: number, imaginary: number, middle: number, half: number, kink: number): number {
	const x = Math.abs(real - middle) / half;
	const y = Math.abs(imaginary) / half;
	if (!(x < widest && y < widest)) return widest;
	const within = Math.max(0, 1 - x);
	if (y * y + within * within <= kink && within < 1e-6) return widest;
	return Math.max(1, 0.5 * (Math.sqrt((x - 1) * (x - 1) + y * y) + Math.sqrt((x + 1) * (x + 1) + y * y)));
}

/** Gauss–Legendre sum of |p + q x + r x²| over [−1, 1]. */
function weighted(
	nodes: readonly number[],
	weights: readonly number[],
	px: number,
	py: number,
	qx: number,
	qy: number,
	rx: number,
	ry: number
): number {
	let sum = 0;
	for (let i = 0; i < nodes.length; i++) {
		const x = nodes[i];
		const evenX = px + rx * x * x;
		const evenY = py + ry * x * x;
		const oddX = qx * x;
		const oddY = qy * x;
		const ahead = Math.sqrt((evenX + oddX) * (evenX + oddX) + (evenY + oddY) * (evenY + oddY));
		const behind = Math.sqrt((evenX - oddX) * (evenX - oddX) + (evenY - oddY) * (evenY - oddY));
		sum += weights[i] * (ahead + behind);
	}
	return sum;
}

/**
 * The parameter t at arc length s from the segment's start, such that the length to t is s within `accuracy`; s beyond
 * either end gives that end. Newton's method, each step kept inside the bracket or else replaced by a bisection.
 */
export function parameterAt(segment: Segment, s: number, accuracy: number): number {
	return parameterAtKnown(segment, s, segmentLength(segment, 0.25 * accuracy), accuracy);
}

/** `parameterAt` for a segment whose length is already known. */
export function parameterAtKnown(segment: Segment, s: number, length: number, accuracy: number): number {
	if (s <= 0 || !(length > 0)) return 0;
	if (s >= length) return 1;
	if (segment.kind === 'line') return s / length;
	const speed = laySpeed(segment, passing);
	let low = 0;
	let high = 1;
	let t = s / length;
	// Length to t, carried along by integrating each step only.
	let reached = lengthBetween(speed, 0, t, 0.1 * accuracy);
	for (let step = 0; step < mostSteps; step++) {
		const over = reached - s;
		if (Math.abs(over) <= 0.5 * accuracy) return t;
		if (over > 0) high = t;
		else low = t;
		const dx = speed[0] + (speed[2] + speed[4] * t) * t;
		const dy = speed[1] + (speed[3] + speed[5] * t) * t;
		let next = t - over / Math.sqrt(dx * dx + dy * dy);
		if (!(next > low && next < high)) next = 0.5 * (low + high);
		if (next === t) return t;
		reached += lengthBetween(speed, t, next, 0.01 * accuracy);
		t = next;
	}
	return t;
}
