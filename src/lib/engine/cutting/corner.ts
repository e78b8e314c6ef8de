/**
 * What the cutting line does at a corner of the stitching line, between the lines that lie beside its two edges: a mitre, a square
 * end at a long point, a step where two allowances differ, the trimmed crossing in a hollow.
 */
import { add, angleBetween, cross, distance, dot, outward, scale, subtract } from '../geometry/point.ts';
import { joined } from '../geometry/accuracy.ts';
import { along, meet } from '../geometry/meet.ts';
import { endTangent, pathEnd, pathLength, pathStart, startTangent } from '../geometry/path.ts';
import type { Path, Point } from '../geometry/types.ts';

/** A line beside an edge, or beside a smooth part of one. */
export interface Beside {
	readonly path: Path;
	/** mm outward of the stitching line. */
	readonly allowance: number;
	/** Length of the whole edge, mm. */
	readonly edgeLength: number;
	/** Only a bridge across a hollow too narrow for the allowance: its own direction means nothing. */
	readonly bridge: boolean;
}

/** How one line beside an edge goes on to the next. */
export interface Corner {
	/** Trimmed off the end of the line before and off the start of the one after, mm. */
	readonly before: number;
	readonly after: number;
	/** What lies between them, joined by straight lines. */
	readonly by: readonly Point[];
}

/** Mitres reach no farther from the corner than this many times the larger allowance, unless told otherwise. */
export const mitreLimit = 2.5;

/** A bend less than this needs no going back to the corner itself, radians. */
const slight = Math.PI / 6;

/** The corner of the stitching line at `at`, which it comes to and leaves in these unit directions. */
export function cornerBetween(
	before: Beside,
	after: Beside,
	at: Point,
	into: Point,
	outOf: Point,
	mitre: number
): Corner {
	const [end, start] = [pathEnd(before.path), pathStart(after.path)];
	if (distance(end, start) <= joined) return { before: 0, after: 0, by: [] };
	const limit = mitre * Math.max(before.allowance, after.allowance);
	const turn = angleBetween(into, outOf);
	if (before.bridge || after.bridge) return mitreOver(end, start, at, into, outOf, limit) ?? backToCorner(at);
	const meeting = meet(before.path, after.path, at, limit + joined);
	if (meeting) {
		return { before: Math.max(0, meeting.before), after: Math.max(0, meeting.after), by: [meeting.point] };
	}
	if (turn > Math.PI / 2) return { before: 0, after: 0, by: squared(before, after, turn, limit) };
	return turn < -slight ? backToCorner(at) : { before: 0, after: 0, by: [] };
}

/** Both lines run straight on to where they meet, if that lies ahead of both and within the limit. */
function mitreOver(end: Point, start: Point, at: Point, into: Point, outOf: Point, limit: number): Corner | undefined {
	const point = linesMeet(end, into, start, outOf);
	const ahead = dot(subtract(point, end), into) >= 0 && dot(subtract(start, point), outOf) >= 0;
	return ahead && distance(point, at) <= limit ? { before: 0, after: 0, by: [point] } : undefined;
}

/** Round by the corner of the stitching line itself: the loops that this leaves lie inside the contour and are lost with it. */
export function backToCorner(at: Point): Corner {
	return { before: 0, after: 0, by: [at] };
}

/**
 * The end of a long point squared to the seam with the larger allowance, or else to the longer one: cut off at right
 * angles to it where its stitching line, run on, meets the other edge's cutting line, so that the two pieces of the seam
 * lie edge to edge when it is sewn. No farther out than the mitre limit.
 */
function squared(before: Beside, after: Beside, turn: number, limit: number): Point[] {
	const [end, start] = [pathEnd(before.path), pathStart(after.path)];
	const [onward, back] = [endTangent(before.path), scale(startTangent(after.path), -1)];
	const toBefore =
		before.allowance === after.allowance ? before.edgeLength >= after.edgeLength : before.allowance > after.allowance;
	const other = toBefore ? after.allowance : before.allowance;
	const reach = Math.min(other / Math.sin(turn), limit);
	if (toBefore) {
		const outer = along(end, onward, reach);
		return [outer, linesMeet(outer, outward(onward), start, back)];
	}
	const outer = along(start, back, reach);
	return [linesMeet(outer, outward(back), end, onward), outer];
}

function linesMeet(p: Point, along: Point, q: Point, other: Point): Point {
	return add(p, scale(along, cross(subtract(q, p), other) / cross(along, other)));
}

/** Whether nothing of a line is left between two corners. */
export function isSwallowed(path: Path, start: number, end: number): boolean {
	return start + end > 0 && start + end >= pathLength(path) - joined;
}
