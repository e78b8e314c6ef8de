/** A path moved at right angles to itself, point by point: the exact line that a drawn one is fitted to (see offset). */
import { measured } from './accuracy.ts';
import { valueAt, type Amount } from './amount.ts';
import { laySpeed, lengthTo, parameterAt, speedRoom } from './arc-length.ts';
import { evenLength, steps } from './even-lengths.ts';
import type { SmoothCurve } from './curve-sample.ts';
import { jointsOf } from './joints.ts';
import { segmentStarts } from './path.ts';
import { lengthOf, midpoint, outward, unit } from './point.ts';
import { derivativeOn, pointOn, secondDerivativeOn, tangentOn } from './segment.ts';
import type { Cubic, Path, Point, Segment } from './types.ts';

/** Whether the path turns at arc length s. */
function isTurn(path: Path, s: number): boolean {
	for (const joint of jointsOf(path)) if (Math.abs(joint.s - s) <= measured) return true;
	return false;
}

/** The point that arc length s moves to: at a turn halfway between those that its two sides move to. */
export function movedHalfway(path: Path, amount: Amount, s: number): Point {
	const before = movedPoint(path, amount, s, 'before');
	return isTurn(path, s) ? midpoint(before, movedPoint(path, amount, s, 'after')) : before;
}

/** The point that arc length s moves to. */
export function movedPoint(path: Path, amount: Amount, s: number, side: 'before' | 'after' = 'before'): Point {
	const starts = segmentStarts(path);
	const index = segmentIndex(starts, s, side);
	const segment = path[index];
	const t = parameterAt(segment, Math.min(Math.max(s - starts[index], 0), starts[index + 1] - starts[index]), measured);
	return moved(segment, t, valueAt(amount, s));
}

/**
 * The moved line over nominal lengths (see nominalAt), from `first` on, whose point is taken on the segment that starts there.
 */
export function movedCurve(path: Path, amount: Amount, first: number): SmoothCurve {
	const starts = segmentStarts(path);
	const constant = typeof amount === 'number';
	const parameterIn = (index: number, u: number) => {
		const span = starts[index + 1] - starts[index];
		return span > 0 ? Math.min(1, Math.max(0, (u - starts[index]) / span)) : 0;
	};
	const lengthAt = (index: number, u: number, t: number) => {
		const segment = path[index];
		if (constant || segment.kind === 'line') return u;
		if (t === 0 || t === 1) return starts[index + t];
		ask(path);
		if (asked.segment !== index) laySpeed(segment, asked.speed);
		asked.segment = index;
		return starts[index] + lengthTo(asked.speed, t, measured);
	};
	const pointIn = (index: number, u: number): Point => {
		const t = parameterIn(index, u);
		return moved(path[index], t, constant ? amount : amount.value(lengthAt(index, u, t)));
	};
	/** Where the curve goes at u and how fast, mm per unit of u: [0, 0] where it stands still, or all but. */
	const velocityAt = (u: number, side: 'before' | 'after'): Point => {
		const index = segmentIndex(starts, u, side);
		const segment = path[index];
		const span = starts[index + 1] - starts[index];
		const t = parameterIn(index, u);
		const [vx, vy] = derivativeOn(segment, t);
		const speed = lengthOf(vx, vy);
		if (!(speed > fast && span > 0)) return nowhere;
		// Just inside the stretch, as the slope may jump at a break.
		const s = constant ? 0 : lengthAt(index, u, t) + (side === 'after' ? measured : -measured);
		const value = constant ? amount : amount.value(s);
		const slope = constant ? 0 : amount.slope(s);
		let along = 1;
		if (value !== 0 && segment.kind === 'cubic') {
			const [bx, by] = secondDerivativeOn(segment, t);
			along += (value * (vx * by - vy * bx)) / (speed * speed * speed);
		}
		return [(along * vx + slope * vy) / span, (along * vy - slope * vx) / span];
	};
	return {
		pointAt: (u) => pointIn(segmentIndex(starts, u, u <= first ? 'after' : 'before'), u),
		jointAt(u) {
			const index = segmentIndex(starts, u, 'before');
			const before = pointIn(index, u);
			return isTurn(path, u) ? midpoint(before, pointIn(segmentIndex(starts, u, 'after'), u)) : before;
		},
		velocityAt,
		tangentAt(u, side) {
			const velocity = velocityAt(u, side);
			if (velocity !== nowhere) return unit(velocity);
			const index = segmentIndex(starts, u, side);
			const t = parameterIn(index, u);
			const tangent = tangentOn(path[index], t);
			if (constant) return tangent;
			const slope = amount.slope(lengthAt(index, u, t) + (side === 'after' ? measured : -measured));
			const normal = outward(tangent);
			return unit([tangent[0] + slope * normal[0], tangent[1] + slope * normal[1]]);
		},
		pointsInside(u0, u1, which, xs, ys, at) {
			const index = segmentIndex(starts, (u0 + u1) / 2, 'before');
			const segment = path[index];
			const t0 = parameterIn(index, u0);
			const step = (parameterIn(index, u1) - t0) / steps;
			const first = which === 'steps' ? 2 : 1;
			if (constant || segment.kind === 'line') {
				for (let half = first; half < 2 * steps; half += 2) {
					const t = t0 + (half / 2) * step;
					const s = starts[index] + t * (starts[index + 1] - starts[index]);
					move(segment, t, constant ? amount : amount.value(s), xs, ys, at++);
				}
				return;
			}
			ask(path);
			if (u0 !== asked.u0 || u1 !== asked.u1) {
				for (let i = 0; i <= steps; i++) asked.speeds[i] = speedOn(segment, t0 + i * step);
				asked.u0 = u0;
				asked.u1 = u1;
				asked.s0 = lengthAt(index, u0, t0);
				const s1 = lengthAt(index, u1, t0 + steps * step);
				asked.known = Math.abs(s1 - asked.s0 - evenLength(asked.speeds, step, 2 * steps)) <= sameLength;
			}
			for (let half = first; half < 2 * steps; half += 2) {
				const t = t0 + (half / 2) * step;
				const s = asked.known ? asked.s0 + evenLength(asked.speeds, step, half) : lengthAt(index, NaN, t);
				move(segment, t, amount.value(s), xs, ys, at++);
			}
		},
		pointsBetween(u0, u1, xs, ys) {
			const count = xs.length;
			let index = segmentIndex(starts, u0 + (u1 - u0) / (count + 1), 'before');
			for (let i = 0; i < count; i++) {
				const u = u0 + ((u1 - u0) * (i + 1)) / (count + 1);
				while (index + 1 < path.length && starts[index + 1] < u - sameJoint) index++;
				const t = parameterIn(index, u);
				move(path[index], t, constant ? amount : amount.value(lengthAt(index, u, t)), xs, ys, i);
			}
		}
	};
}

/** mm: lengths that agree so well are as good as measured ones for the amount there. */
const sameLength = 1e-5;

/**
 * What was laid out for the path that was asked about last: the derivative of one of its segments, and the speeds along one stretch. Curves are
 * fitted one after another, so that this is nearly always the one that is wanted again.
 */
const asked = {
	path: undefined as Path | undefined,
	segment: -1,
	speed: speedRoom(),
	u0: NaN,
	u1: NaN,
	s0: 0,
	known: false,
	speeds: new Float64Array(steps + 1)
};

function ask(path: Path): void {
	if (asked.path === path) return;
	asked.path = path;
	asked.segment = -1;
	asked.u0 = NaN;
}

const nowhere: Point = [0, 0];

/** |dp/dt|, mm per unit of t. */
function speedOn({ from, control1, control2, to }: Cubic, t: number): number {
	const m = 1 - t;
	const d0 = 3 * m * m;
	const d1 = 6 * m * t;
	const d2 = 3 * t * t;
	const x = d0 * (control1[0] - from[0]) + d1 * (control2[0] - control1[0]) + d2 * (to[0] - control2[0]);
	const y = d0 * (control1[1] - from[1]) + d1 * (control2[1] - control1[1]) + d2 * (to[1] - control2[1]);
	return Math.sqrt(x * x + y * y);
}

/** The point of a segment at t, moved by so many mm. */
function moved(segment: Segment, t: number, value: number): Point {
	const point = pointOn(segment, t);
	if (value === 0) return point;
	const tangent = tangentOn(segment, t);
	return [point[0] + value * tangent[1], point[1] - value * tangent[0]];
}

/** A point faster than this, mm per unit of t, runs along its first derivative; others are left to tangentOn. */
const fast = 1e-3;

/** `moved`, but for rounding, put in the lists: no point is made for what is only measured. */
function move(segment: Segment, t: number, value: number, xs: Float64Array, ys: Float64Array, i: number): void {
	if (segment.kind === 'cubic' && t > 0 && t < 1) {
		const { from, control1, control2, to } = segment;
		const m = 1 - t;
		const d0 = 3 * m * m;
		const d1 = 6 * m * t;
		const d2 = 3 * t * t;
		const vx = d0 * (control1[0] - from[0]) + d1 * (control2[0] - control1[0]) + d2 * (to[0] - control2[0]);
		const vy = d0 * (control1[1] - from[1]) + d1 * (control2[1] - control1[1]) + d2 * (to[1] - control2[1]);
		const speed = Math.sqrt(vx * vx + vy * vy);
		if (speed > fast) {
			const k0 = m * m * m;
			const k1 = d0 * t;
			const k2 = 3 * m * t * t;
			const k3 = t * t * t;
			xs[i] = k0 * from[0] + k1 * control1[0] + k2 * control2[0] + k3 * to[0] + value * (vy / speed);
			ys[i] = k0 * from[1] + k1 * control1[1] + k2 * control2[1] + k3 * to[1] - value * (vx / speed);
			return;
		}
	}
	const [x, y] = moved(segment, t, value);
	xs[i] = x;
	ys[i] = y;
}

/** Arc length to the parameter that runs evenly in t inside each segment and agrees with arc length at the joints. */
export function nominalAt(path: Path, starts: readonly number[], s: number): number {
	const index = segmentIndex(starts, s, 'before');
	const segment = path[index];
	if (segment.kind === 'line') return s;
	const span = starts[index + 1] - starts[index];
	const within = s - starts[index];
	if (within <= 0 || within >= span) return s;
	return starts[index] + span * parameterAt(segment, within, measured);
}

/** Lengths along a path less than this apart are one, mm. */
const sameJoint = 1e-9;

function segmentIndex(starts: readonly number[], s: number, side: 'before' | 'after'): number {
	const last = starts.length - 2;
	let low = 0;
	let high = last;
	while (low < high) {
		const middle = (low + high + 1) >> 1;
		if (side === 'after' ? starts[middle] <= s + sameJoint : starts[middle] < s - sameJoint) low = middle;
		else high = middle - 1;
	}
	return low;
}
