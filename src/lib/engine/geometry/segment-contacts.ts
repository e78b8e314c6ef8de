import type { Box, Cubic, Line, Point, Segment } from './types.ts';
import { cubicContacts } from './cubic-contacts.ts';
import { nearestOnCubic, nearestOnLine } from './nearest.ts';
import { distance } from './point.ts';
import { rootsBetween } from './roots.ts';
import { pointOn } from './segment.ts';

/** Where two segments meet, by their Bézier parameters. `through`: found as a crossing, not only as a touch within the accuracy. */
export interface Contact {
	readonly ta: number;
	readonly tb: number;
	readonly through: boolean;
}

/** A stretch that two segments share, from (a0, b0) to (a1, b1); a0 < a1, b either way. */
export interface Run {
	readonly a0: number;
	readonly b0: number;
	readonly a1: number;
	readonly b1: number;
}

/** Interior samples that tell a shared run from two separate touches. */
const runSamples = [0.5, 0.21, 0.83, 0.07, 0.36, 0.66, 0.95];

/**
 * Every contact of two segments: crossings, and touches of ends or sides within `accuracy` mm. One place may be given more than
 * once. Segments that lie on one another give the run instead; such a run always ends at an end of one of them.
 */
export function segmentContacts(
	a: Segment,
	boxA: Box,
	b: Segment,
	boxB: Box,
	accuracy: number
): { contacts: Contact[]; runs: Run[] } {
	const contacts: Contact[] = [];
	if (!boxesMeet(boxA, boxB, accuracy) || areAbreast(a, b, accuracy) || areAbreast(b, a, accuracy))
		return { contacts, runs: [] };
	endContacts(a, b, boxB, accuracy, (ta, tb) => contacts.push({ ta, tb, through: false }));
	endContacts(b, a, boxA, accuracy, (tb, ta) => contacts.push({ ta, tb, through: false }));
	const runs = contacts.length > 1 ? sharedRuns(a, b, contacts, accuracy) : [];
	if (a.kind === 'line' && b.kind === 'line') {
		if (runs.length === 0) lineLine(a, b, contacts);
	} else if (a.kind === 'line') {
		if (runs.length === 0) lineCubic(a, b as Cubic, accuracy, (ta, tb, through) => contacts.push({ ta, tb, through }));
	} else if (b.kind === 'line') {
		if (runs.length === 0) lineCubic(b, a, accuracy, (tb, ta, through) => contacts.push({ ta, tb, through }));
	} else {
		const more = cubicContacts(a, b, runs, accuracy);
		contacts.push(...more.contacts);
		runs.push(...more.runs);
	}
	return { contacts, runs };
}

/** Whether all of b lies to one side of a: their control points do, seen along a's chord, by more than the accuracy. */
function areAbreast(a: Segment, b: Segment, accuracy: number): boolean {
	const [x0, y0] = a.from;
	const x = a.to[0] - x0;
	const y = a.to[1] - y0;
	const length = Math.sqrt(x * x + y * y);
	if (!(length > 0)) return false;
	const beside = (point: Point) => (x * (point[1] - y0) - y * (point[0] - x0)) / length;
	let [leastA, mostA] = [0, 0];
	if (a.kind === 'cubic') {
		const [first, second] = [beside(a.control1), beside(a.control2)];
		leastA = Math.min(0, first, second);
		mostA = Math.max(0, first, second);
	}
	let leastB = Math.min(beside(b.from), beside(b.to));
	let mostB = Math.max(beside(b.from), beside(b.to));
	if (b.kind === 'cubic') {
		leastB = Math.min(leastB, beside(b.control1), beside(b.control2));
		mostB = Math.max(mostB, beside(b.control1), beside(b.control2));
	}
	// Twice: what is within the accuracy of an end is a touch, and rounding must not decide which.
	return leastB > mostA + 2 * accuracy || mostB < leastA - 2 * accuracy;
}

export function boxesMeet(a: Box, b: Box, tolerance: number): boolean {
	return (
		a.left <= b.right + tolerance &&
		b.left <= a.right + tolerance &&
		a.top <= b.bottom + tolerance &&
		b.top <= a.bottom + tolerance
	);
}

function nearestOnSegment(segment: Segment, point: Point): number {
	return segment.kind === 'line' ? nearestOnLine(segment.from, segment.to, point) : nearestOnCubic(segment, point);
}

/** The ends of a that lie on b. */
function endContacts(
	a: Segment,
	b: Segment,
	boxB: Box,
	accuracy: number,
	meet: (ta: number, tb: number) => void
): void {
	for (const ta of [0, 1]) {
		const end = ta === 0 ? a.from : a.to;
		if (
			end[0] < boxB.left - accuracy ||
			end[0] > boxB.right + accuracy ||
			end[1] < boxB.top - accuracy ||
			end[1] > boxB.bottom + accuracy
		) {
			continue;
		}
		const tb = nearestOnSegment(b, end);
		if (distance(pointOn(b, tb), end) <= accuracy) meet(ta, tb);
	}
}

/** Stretches between end contacts along which a lies on b throughout. */
function sharedRuns(a: Segment, b: Segment, contacts: readonly Contact[], accuracy: number): Run[] {
	const runs: Run[] = [];
	const along = [...contacts].sort((p, q) => p.ta - q.ta);
	for (let i = 0; i + 1 < along.length; i++) {
		const { ta: a0, tb: b0 } = along[i];
		const { ta: a1, tb: b1 } = along[i + 1];
		if (distance(pointOn(a, a0), pointOn(a, a1)) <= 2 * accuracy) continue;
		const low = Math.min(b0, b1) - 1e-9;
		const high = Math.max(b0, b1) + 1e-9;
		const shared = runSamples.every((share) => {
			const point = pointOn(a, a0 + share * (a1 - a0));
			const tb = nearestOnSegment(b, point);
			return tb >= low && tb <= high && distance(pointOn(b, tb), point) <= accuracy;
		});
		if (!shared) continue;
		const before = runs[runs.length - 1];
		if (before !== undefined && before.a1 === a0) runs[runs.length - 1] = { ...before, a1, b1 };
		else runs.push({ a0, b0, a1, b1 });
	}
	return runs;
}

function lineLine(a: Line, b: Line, contacts: Contact[]): void {
	const ax = a.to[0] - a.from[0];
	const ay = a.to[1] - a.from[1];
	const bx = b.to[0] - b.from[0];
	const by = b.to[1] - b.from[1];
	const turning = ax * by - ay * bx;
	if (turning === 0) return;
	const x = b.from[0] - a.from[0];
	const y = b.from[1] - a.from[1];
	const ta = (x * by - y * bx) / turning;
	const tb = (x * ay - y * ax) / turning;
	if (ta >= 0 && ta <= 1 && tb >= 0 && tb <= 1) contacts.push({ ta, tb, through: true });
}

/** The cubic's distance from the line is itself a cubic in t: its roots cross, its extremes may touch. */
function lineCubic(
	line: Line,
	curve: Cubic,
	accuracy: number,
	meet: (tLine: number, tCurve: number, through: boolean) => void
): void {
	const x = line.to[0] - line.from[0];
	const y = line.to[1] - line.from[1];
	const length = Math.sqrt(x * x + y * y);
	if (!(length > 0)) return;
	const ux = x / length;
	const uy = y / length;
	const place = (t: number, through: boolean) => {
		const p = pointOn(curve, t);
		const along = (p[0] - line.from[0]) * ux + (p[1] - line.from[1]) * uy;
		if (along >= 0 && along <= length) meet(along / length, t, through);
	};
	const away = distanceFromLine(curve, line.from, ux, uy);
	for (const t of rootsBetween(away, 0, 1)) place(t, true);
	for (const t of touchesOf(away, accuracy)) place(t, false);
}

/** Signed distance of a cubic from the line through `from` along the unit vector (ux, uy), constant term first. */
export function distanceFromLine(curve: Cubic, from: Point, ux: number, uy: number): number[] {
	const d0 = ux * (curve.from[1] - from[1]) - uy * (curve.from[0] - from[0]);
	const d1 = ux * (curve.control1[1] - from[1]) - uy * (curve.control1[0] - from[0]);
	const d2 = ux * (curve.control2[1] - from[1]) - uy * (curve.control2[0] - from[0]);
	const d3 = ux * (curve.to[1] - from[1]) - uy * (curve.to[0] - from[0]);
	return [d0, 3 * (d1 - d0), 3 * (d0 - 2 * d1 + d2), d3 - d0 - 3 * (d2 - d1)];
}

/** Where a cubic polynomial turns back within `accuracy` of zero. */
export function touchesOf(polynomial: readonly number[], accuracy: number): number[] {
	const [k0, k1, k2, k3] = polynomial;
	return rootsBetween([k1, 2 * k2, 3 * k3], 0, 1).filter(
		(t) => Math.abs(k0 + (k1 + (k2 + k3 * t) * t) * t) <= accuracy
	);
}
