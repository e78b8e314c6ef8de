import type { Segment } from './types.ts';
import { distance } from './point.ts';

/*
 * Arc length by adaptive Gauss–Legendre quadrature of the speed. The 8- and 16-point rules are compared; for an analytic
 * integrand the error of the second is about the square of the error of the first, so their difference bounds it amply.
 * Where that is not enough the interval is cut where the curve is slowest: at a cusp the speed has a kink, and is smooth on
 * either side of it. Nodes and weights: Abramowitz & Stegun, Handbook of Mathematical Functions, 1964, table 25.4.
 *
 * `accuracy` bounds the error of the length, in mm, down to a rounding floor of about 1e-14 of the length. At the cap of 40
 * cuts in one another the part left is shorter than rounding can tell, and its estimate is kept.
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
const mostCuts = 40;
const mostSteps = 60;

/** Length of a segment in mm, within `accuracy`. */
export function segmentLength(segment: Segment, accuracy: number): number {
	return segmentLengthBetween(segment, 0, 1, accuracy);
}

/** Length from the segment's start to t, in mm, within `accuracy`. */
export function segmentLengthTo(segment: Segment, t: number, accuracy: number): number {
	return segmentLengthBetween(segment, 0, t, accuracy);
}

/** Length between two parameters, in mm, within `accuracy`; negative where t1 < t0. */
export function segmentLengthBetween(segment: Segment, t0: number, t1: number, accuracy: number): number {
	const { from, to } = segment;
	if (segment.kind === 'line') return distance(from, to) * (t1 - t0);
	if (t0 === t1) return 0;
	const { control1, control2 } = segment;
	// The derivative as a polynomial, constant term first.
	const ax = 3 * (control1[0] - from[0]);
	const ay = 3 * (control1[1] - from[1]);
	const bx = 6 * (from[0] - 2 * control1[0] + control2[0]);
	const by = 6 * (from[1] - 2 * control1[1] + control2[1]);
	const cx = 3 * (to[0] - from[0] - 3 * (control2[0] - control1[0]));
	const cy = 3 * (to[1] - from[1] - 3 * (control2[1] - control1[1]));
	return t1 > t0
		? integrate(ax, ay, bx, by, cx, cy, t0, t1, accuracy, 0)
		: -integrate(ax, ay, bx, by, cx, cy, t1, t0, accuracy, 0);
}

function integrate(
	ax: number,
	ay: number,
	bx: number,
	by: number,
	cx: number,
	cy: number,
	t0: number,
	t1: number,
	accuracy: number,
	cuts: number
): number {
	const middle = 0.5 * (t0 + t1);
	const half = 0.5 * (t1 - t0);
	// The derivative about the middle, in the variable x that runs from −1 to 1.
	const px = ax + (bx + cx * middle) * middle;
	const py = ay + (by + cy * middle) * middle;
	const qx = (bx + 2 * cx * middle) * half;
	const qy = (by + 2 * cy * middle) * half;
	const rx = cx * half * half;
	const ry = cy * half * half;
	let coarse = 0;
	for (let i = 0; i < 4; i++) {
		const x = nodes8[i];
		const evenX = px + rx * x * x;
		const evenY = py + ry * x * x;
		const oddX = qx * x;
		const oddY = qy * x;
		coarse +=
			weights8[i] *
			(Math.sqrt((evenX + oddX) * (evenX + oddX) + (evenY + oddY) * (evenY + oddY)) +
				Math.sqrt((evenX - oddX) * (evenX - oddX) + (evenY - oddY) * (evenY - oddY)));
	}
	let fine = 0;
	let least = Infinity;
	let slowest = 0;
	for (let i = 0; i < 8; i++) {
		const x = nodes16[i];
		const evenX = px + rx * x * x;
		const evenY = py + ry * x * x;
		const oddX = qx * x;
		const oddY = qy * x;
		const ahead = Math.sqrt((evenX + oddX) * (evenX + oddX) + (evenY + oddY) * (evenY + oddY));
		const behind = Math.sqrt((evenX - oddX) * (evenX - oddX) + (evenY - oddY) * (evenY - oddY));
		fine += weights16[i] * (ahead + behind);
		if (ahead < least) {
			least = ahead;
			slowest = x;
		}
		if (behind < least) {
			least = behind;
			slowest = -x;
		}
	}
	coarse *= half;
	fine *= half;
	const difference = Math.abs(fine - coarse);
	if (
		difference <= accuracy ||
		difference * difference <= 0.01 * accuracy * fine ||
		difference <= 1e-14 * fine ||
		cuts === mostCuts ||
		!(difference < Infinity)
	) {
		return fine;
	}
	let at = middle;
	if (least < 0.3 * (fine / (2 * half)) && Math.abs(slowest) < 0.95) {
		at = middle + half * slowestNear(px, py, qx, qy, rx, ry, slowest);
		if (!(at > t0 && at < t1)) at = middle;
	}
	const share = 0.5 * accuracy;
	return (
		integrate(ax, ay, bx, by, cx, cy, t0, at, share, cuts + 1) +
		integrate(ax, ay, bx, by, cx, cy, at, t1, share, cuts + 1)
	);
}

/** Where |p + q x + r x²|² is least, near x, by Newton's method; kept within (−0.95, 0.95). */
function slowestNear(px: number, py: number, qx: number, qy: number, rx: number, ry: number, x: number): number {
	// Half the derivative of the square: p·q + (q·q + 2 p·r) x + 3 q·r x² + 2 r·r x³.
	const k0 = px * qx + py * qy;
	const k1 = qx * qx + qy * qy + 2 * (px * rx + py * ry);
	const k2 = 3 * (qx * rx + qy * ry);
	const k3 = 2 * (rx * rx + ry * ry);
	for (let i = 0; i < 8; i++) {
		const slope = k1 + (2 * k2 + 3 * k3 * x) * x;
		if (!(slope > 0)) break;
		const step = (k0 + (k1 + (k2 + k3 * x) * x) * x) / slope;
		x = Math.min(0.95, Math.max(-0.95, x - step));
		if (Math.abs(step) < 1e-15) break;
	}
	return x;
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
	const { from, control1, control2, to } = segment;
	let low = 0;
	let high = 1;
	let t = s / length;
	// Length to t, carried along by integrating each step only.
	let reached = segmentLengthBetween(segment, 0, t, 0.1 * accuracy);
	for (let step = 0; step < mostSteps; step++) {
		const over = reached - s;
		if (Math.abs(over) <= 0.5 * accuracy) return t;
		if (over > 0) high = t;
		else low = t;
		const u = 1 - t;
		const dx =
			u * u * (control1[0] - from[0]) + 2 * u * t * (control2[0] - control1[0]) + t * t * (to[0] - control2[0]);
		const dy =
			u * u * (control1[1] - from[1]) + 2 * u * t * (control2[1] - control1[1]) + t * t * (to[1] - control2[1]);
		let next = t - over / (3 * Math.sqrt(dx * dx + dy * dy));
		if (!(next > low && next < high)) next = 0.5 * (low + high);
		if (next === t) return t;
		reached += segmentLengthBetween(segment, t, next, 0.01 * accuracy);
		t = next;
	}
	return t;
}
