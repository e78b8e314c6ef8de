import type { Cubic, Path, Point, Segment } from './types.ts';
import { segmentLengthTo } from './arc-length.ts';
import { joined } from './accuracy.ts';
import { collect, joinedStretches, settled } from './crossings.ts';
import type { Crossing, Meeting, Stretch } from './crossings.ts';
import { partsOf, pathBox, pointAt, segmentBoxes, segmentStarts } from './path.ts';
import { lengthOf } from './point.ts';
import { pointOn } from './segment.ts';
import { boxesMeet } from './segment-contacts.ts';

export interface SelfCrossing {
	readonly s1: number;
	readonly s2: number;
	readonly point: Point;
}

/**
 * Where a closed path crosses or touches itself within `accuracy` mm, by rising `s1` (s1 < s2): loops of one curve, and any two
 * segments, neighbours too. Two places less than `joined` apart along the path are one place, so the joints themselves
 * do not count. A stretch that it runs twice gives its two ends. A straight curve that doubles back on itself is not seen.
 */
export function selfCrossings(closed: Path, accuracy: number): SelfCrossing[] {
	const boxes = segmentBoxes(closed);
	const starts = segmentStarts(closed);
	const length = starts[closed.length];
	const meetings: Meeting[] = [];
	const stretches: Stretch[] = [];
	const look = (i: number, first: number, end: number): void => {
		const { left, right, top, bottom } = boxes[i];
		for (let j = first; j < end; j++) {
			const other = boxes[j];
			if (left > other.right + accuracy || other.left > right + accuracy) continue;
			if (top > other.bottom + accuracy || other.top > bottom + accuracy) continue;
			const follows = j === i + 1 || (i === 0 && j === closed.length - 1);
			if (follows && runOneWay(closed[i], closed[j])) continue;
			collect(closed, i, closed, j, accuracy, meetings, stretches);
		}
	};
	for (let i = 0; i < closed.length; i++) {
		const segment = closed[i];
		if (segment.kind === 'line') continue;
		const loop = loopOf(segment);
		if (loop === undefined) continue;
		const [sa, sb] = loop.map((t) => starts[i] + segmentLengthTo(segment, t, 0.1 * accuracy));
		meetings.push({ sa, sb, point: pointOn(segment, loop[0]), through: true });
	}
	// Two parts whose boxes are apart have nothing to do with one another.
	const parts = partsOf(closed);
	let first = 0;
	for (let p = 0; p < parts.length; p++) {
		const end = first + parts[p].length;
		for (let i = first; i < end; i++) look(i, i + 1, end);
		let after = end;
		for (let q = p + 1; q < parts.length; q++) {
			const last = after + parts[q].length;
			if (boxesMeet(pathBox(parts[p]), pathBox(parts[q]), accuracy))
				for (let i = first; i < end; i++) look(i, after, last);
			after = last;
		}
		first = end;
	}
	if (meetings.length + stretches.length === 0) return [];
	const apart = ({ sa, sb }: { sa: number; sb: number }) => {
		const along = Math.abs(sb - sa);
		return Math.min(along, length - along) > joined;
	};
	const runs = joinedStretches(stretches, accuracy);
	// The joints stay in until the end, so that a touch that begins at one is known as the same.
	const crossed = settled(closed, closed, meetings, runs, accuracy).filter(apart);
	for (const { from, to } of runs) {
		if (!apart(from) && !apart(to)) crossed.push(between(closed, from, to));
	}
	return crossed
		.map(({ sa, sb, point }) => (sa < sb ? { s1: sa, s2: sb, point } : { s1: sb, s2: sa, point }))
		.sort((p, q) => p.s1 - q.s1 || p.s2 - q.s2);
}

/** Halfway along a stretch that an outline runs there and back, from one turning point to the other. */
function between(closed: Path, from: Crossing, to: Crossing): Crossing {
	const sa = 0.5 * (from.sa + to.sa);
	return { sa, sb: 0.5 * (from.sb + to.sb), point: pointAt(closed, sa) };
}

/** Whether two segments that follow one another both run forward along one direction: then they meet at their joint only. */
function runOneWay(a: Segment, b: Segment): boolean {
	const ax = a.to[0] - a.from[0];
	const ay = a.to[1] - a.from[1];
	const bx = b.to[0] - b.from[0];
	const by = b.to[1] - b.from[1];
	const lengthA = lengthOf(ax, ay);
	const lengthB = lengthOf(bx, by);
	if (!(lengthA > 0 && lengthB > 0)) return false;
	const ux = ax / lengthA + bx / lengthB;
	const uy = ay / lengthA + by / lengthB;
	return runsAlong(a, ux, uy) && runsAlong(b, ux, uy);
}

function runsAlong(segment: Segment, ux: number, uy: number): boolean {
	const { from, to } = segment;
	// A direction only just ahead is not trusted: half a degree at least.
	const least = 0.01 * lengthOf(ux, uy);
	if (segment.kind === 'line') return isAhead(from, to, ux, uy, least);
	const { control1, control2 } = segment;
	return (
		isAhead(from, control1, ux, uy, least) &&
		isAhead(control1, control2, ux, uy, least) &&
		isAhead(control2, to, ux, uy, least)
	);
}

function isAhead(a: Point, b: Point, ux: number, uy: number, least: number): boolean {
	const x = b[0] - a[0];
	const y = b[1] - a[1];
	return (x === 0 && y === 0) || x * ux + y * uy > least * lengthOf(x, y);
}

/**
 * The two parameters at which a cubic passes one point, if it loops. With p = a + b t + c t² + d t³, (p(t) − p(u)) / (t − u) = 0 is
 * linear in t + u and t² + t u + u²; both unknowns follow from cross products (derived).
 */
function loopOf(curve: Cubic): [number, number] | undefined {
	const { from, control1, control2, to } = curve;
	const bx = 3 * (control1[0] - from[0]);
	const by = 3 * (control1[1] - from[1]);
	const cx = 3 * (from[0] - 2 * control1[0] + control2[0]);
	const cy = 3 * (from[1] - 2 * control1[1] + control2[1]);
	const dx = to[0] - from[0] - 3 * (control2[0] - control1[0]);
	const dy = to[1] - from[1] - 3 * (control2[1] - control1[1]);
	const cd = cx * dy - cy * dx;
	if (cd === 0) return undefined;
	const sum = -(bx * dy - by * dx) / cd;
	const squares = (bx * cy - by * cx) / cd;
	// t u = (t + u)² − (t² + t u + u²)
	const product = sum * sum - squares;
	const discriminant = sum * sum - 4 * product;
	if (!(discriminant > 0)) return undefined;
	const larger = 0.5 * (sum + (sum < 0 ? -1 : 1) * Math.sqrt(discriminant));
	const other = product / larger;
	const t = Math.min(larger, other);
	const u = Math.max(larger, other);
	return t >= 0 && u <= 1 ? [t, u] : undefined;
}
