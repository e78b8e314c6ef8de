import type { Box, Cubic, Line, Point, Segment } from './types.ts';
import { lengthOf, lerp } from './point.ts';
import { rootsBetween } from './roots.ts';

// `t` is the Bézier parameter in [0, 1]. On a line the derivative is constant and t is the fraction of its length.

/** A leg of the control polygon shorter than this share of the whole polygon has no direction of its own. */
const negligible = 1e-9;

export function line(from: Point, to: Point): Line {
	return { kind: 'line', from, to };
}

export function cubic(from: Point, control1: Point, control2: Point, to: Point): Cubic {
	return { kind: 'cubic', from, control1, control2, to };
}

/** The ends, at t = 0 and t = 1, to the bit. */
export function pointOn(segment: Segment, t: number): Point {
	if (t === 0) return segment.from;
	if (t === 1) return segment.to;
	if (segment.kind === 'line') return lerp(segment.from, segment.to, t);
	const s = 1 - t;
	const w0 = s * s * s;
	const w1 = 3 * s * s * t;
	const w2 = 3 * s * t * t;
	const w3 = t * t * t;
	const { from, control1, control2, to } = segment;
	return [
		w0 * from[0] + w1 * control1[0] + w2 * control2[0] + w3 * to[0],
		w0 * from[1] + w1 * control1[1] + w2 * control2[1] + w3 * to[1]
	];
}

/** d/dt, mm per unit of t. */
export function derivativeOn(segment: Segment, t: number): Point {
	const { from, to } = segment;
	if (segment.kind === 'line') return [to[0] - from[0], to[1] - from[1]];
	const s = 1 - t;
	const w0 = 3 * s * s;
	const w1 = 6 * s * t;
	const w2 = 3 * t * t;
	const { control1, control2 } = segment;
	return [
		w0 * (control1[0] - from[0]) + w1 * (control2[0] - control1[0]) + w2 * (to[0] - control2[0]),
		w0 * (control1[1] - from[1]) + w1 * (control2[1] - control1[1]) + w2 * (to[1] - control2[1])
	];
}

/** d²/dt². */
export function secondDerivativeOn(segment: Segment, t: number): Point {
	if (segment.kind === 'line') return [0, 0];
	const s = 6 * (1 - t);
	const u = 6 * t;
	const { from, control1, control2, to } = segment;
	return [
		s * (from[0] - 2 * control1[0] + control2[0]) + u * (control1[0] - 2 * control2[0] + to[0]),
		s * (from[1] - 2 * control1[1] + control2[1]) + u * (control1[1] - 2 * control2[1] + to[1])
	];
}

/**
 * Direction of travel, of length 1. Where the first derivative vanishes (a control point on its end, a cusp) the next
 * one that does not gives it: the direction in which the curve leaves that point, or, at t = 1, in which it arrives.
 * A segment of no length has none: [0, 0].
 */
export function tangentOn(segment: Segment, t: number): Point {
	const first = derivativeOn(segment, t);
	const firstLength = lengthOf(first[0], first[1]);
	if (segment.kind === 'line') return firstLength > 0 ? [first[0] / firstLength, first[1] / firstLength] : [0, 0];
	const { from, control1, control2, to } = segment;
	const span = Math.max(
		Math.abs(control1[0] - from[0]),
		Math.abs(control1[1] - from[1]),
		Math.abs(control2[0] - control1[0]),
		Math.abs(control2[1] - control1[1]),
		Math.abs(to[0] - control2[0]),
		Math.abs(to[1] - control2[1])
	);
	if (firstLength > negligible * span) return [first[0] / firstLength, first[1] / firstLength];
	if (span === 0) return [0, 0];
	const second = secondDerivativeOn(segment, t);
	const secondLength = lengthOf(second[0], second[1]);
	if (secondLength > negligible * span) {
		const sign = t >= 1 ? -1 : 1;
		return [(sign * second[0]) / secondLength, (sign * second[1]) / secondLength];
	}
	// The third derivative of a cubic is constant, and the curve is then a straight line.
	const x = to[0] - from[0] - 3 * (control2[0] - control1[0]);
	const y = to[1] - from[1] - 3 * (control2[1] - control1[1]);
	const length = lengthOf(x, y);
	return [x / length, y / length];
}

/**
 * Curvature in 1/mm, positive where the path bends clockwise as seen (so a clockwise outline is positive where it is
 * convex, and moving it outward by d stretches it by 1 + d × curvature). Infinite at a cusp; 0 on a segment of no length.
 */
export function curvatureOn(segment: Segment, t: number): number {
	if (segment.kind === 'line') return 0;
	const { from, control1, control2, to } = segment;
	const m = 1 - t;
	const ax = control1[0] - from[0];
	const ay = control1[1] - from[1];
	const bx = control2[0] - control1[0];
	const by = control2[1] - control1[1];
	const cx = to[0] - control2[0];
	const cy = to[1] - control2[1];
	const dx = 3 * (m * m * ax + 2 * m * t * bx + t * t * cx);
	const dy = 3 * (m * m * ay + 2 * m * t * by + t * t * cy);
	const turning = 6 * (dx * (m * (by - ay) + t * (cy - by)) - dy * (m * (bx - ax) + t * (cx - bx)));
	const speed = Math.sqrt(dx * dx + dy * dy);
	return turning === 0 ? 0 : turning / (speed * speed * speed);
}

/**
 * The parameters inside (0, 1) at which a point running evenly in t is slowest or fastest: where the bend of a curve is
 * sharpest, one of them is near; a cusp is one of them.
 */
export function slowestOn(segment: Segment): number[] {
	if (segment.kind === 'line') return [];
	const [ax, ay] = derivativeOn(segment, 0);
	const [bx, by] = secondDerivativeOn(segment, 0);
	const [ex, ey] = secondDerivativeOn(segment, 1);
	// p′ = a + b t + c t², so that p′ · p″ is a cubic.
	const cx = (ex - bx) / 2;
	const cy = (ey - by) / 2;
	return rootsBetween(
		[ax * bx + ay * by, bx * bx + by * by + 2 * (ax * cx + ay * cy), 3 * (bx * cx + by * cy), 2 * (cx * cx + cy * cy)],
		0,
		1
	).filter((t) => t > 0 && t < 1);
}

/** The two parts before and after t; they meet to the bit at `pointOn(segment, t)`. By de Casteljau's construction. */
export function splitSegment(segment: Segment, t: number): [Segment, Segment] {
	const at = pointOn(segment, t);
	if (segment.kind === 'line') return [line(segment.from, at), line(at, segment.to)];
	const { from, control1, control2, to } = segment;
	const first = lerp(from, control1, t);
	const middle = lerp(control1, control2, t);
	const last = lerp(control2, to, t);
	return [cubic(from, first, lerp(first, middle, t), at), cubic(at, lerp(middle, last, t), last, to)];
}

/** The part from t0 to t1 (t0 < t1); its ends are `pointOn` of them to the bit. Control points by blossoming. */
export function segmentPortion(segment: Segment, t0: number, t1: number): Segment {
	if (t0 === 0 && t1 === 1) return segment;
	const from = pointOn(segment, t0);
	const to = pointOn(segment, t1);
	if (segment.kind === 'line') return line(from, to);
	const first = blossom(segment, t0, t0, t1);
	return cubic(from, first, blossom(segment, t0, t1, t1), to);
}

function blossom(segment: Cubic, u: number, v: number, w: number): Point {
	const { from, control1, control2, to } = segment;
	const u1 = 1 - u;
	const v1 = 1 - v;
	const w1 = 1 - w;
	const b0 = u1 * v1 * w1;
	const b1 = u * v1 * w1 + u1 * v * w1 + u1 * v1 * w;
	const b2 = u1 * v * w + u * v1 * w + u * v * w1;
	const b3 = u * v * w;
	return [
		b0 * from[0] + b1 * control1[0] + b2 * control2[0] + b3 * to[0],
		b0 * from[1] + b1 * control1[1] + b2 * control2[1] + b3 * to[1]
	];
}

export function reversedSegment(segment: Segment): Segment {
	const { from, to } = segment;
	if (segment.kind === 'line') return line(to, from);
	return cubic(to, segment.control2, segment.control1, from);
}

/** The smallest upright box that holds the segment: ends and the extremes between them, exact to rounding. */
export function segmentBox(segment: Segment): Box {
	const { from, to } = segment;
	let left = Math.min(from[0], to[0]);
	let right = Math.max(from[0], to[0]);
	let top = Math.min(from[1], to[1]);
	let bottom = Math.max(from[1], to[1]);
	if (segment.kind === 'cubic') {
		const { control1, control2 } = segment;
		if (Math.min(control1[0], control2[0]) < left || Math.max(control1[0], control2[0]) > right) {
			for (const t of extremes(from[0], control1[0], control2[0], to[0])) {
				const x = pointOn(segment, t)[0];
				left = Math.min(left, x);
				right = Math.max(right, x);
			}
		}
		if (Math.min(control1[1], control2[1]) < top || Math.max(control1[1], control2[1]) > bottom) {
			for (const t of extremes(from[1], control1[1], control2[1], to[1])) {
				const y = pointOn(segment, t)[1];
				top = Math.min(top, y);
				bottom = Math.max(bottom, y);
			}
		}
	}
	return { left, top, right, bottom };
}

/** Where one coordinate of a cubic is stationary strictly inside (0, 1). */
function extremes(p0: number, p1: number, p2: number, p3: number): number[] {
	const a = p3 - p0 - 3 * (p2 - p1);
	const b = p0 - 2 * p1 + p2;
	const c = p1 - p0;
	// a t² + 2 b t + c = 0, the stable form: q first, the second root as c / q.
	const discriminant = b * b - a * c;
	if (discriminant < 0) return [];
	const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant));
	const found: number[] = [];
	for (const t of [q / a, c / q]) if (t > 0 && t < 1) found.push(t);
	return found;
}
