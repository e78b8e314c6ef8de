/**
 * Brings two moved lines together again where they used to share a corner: they are trimmed where they cross, or run
 * straight on along their end tangents until they meet, whichever trims and adds least.
 */
import { crossings, lineCrossings } from './crossings.ts';
import { endTangent, pathEnd, pathLength, pathStart, portion, startTangent } from './path.ts';
import { joined, measured } from './accuracy.ts';
import { cross, distance, subtract } from './point.ts';
import type { Path, Point } from './types.ts';

/** Where two lines meet: how much of each is used up (positive) or added (negative), in mm. */
export interface Meeting {
	readonly point: Point;
	/** Trimmed off the end of the line before; negative when it runs straight on. */
	readonly before: number;
	/** Trimmed off the start of the line after; negative when it runs straight on. */
	readonly after: number;
}

/**
 * The meeting nearest in trimmed plus added length, or undefined if the lines do not meet within `reach` mm of the old
 * corner without using one of them up.
 *
 * @param through whether a straight line may also be met beyond its other end, where its corner there may yet let it run on
 */
export function meet(before: Path, after: Path, corner: Point, reach: number, through = false): Meeting | undefined {
	const end = pathEnd(before);
	const start = pathStart(after);
	if (distance(end, start) <= joined) return { point: end, before: 0, after: 0 };
	const window = 3 * reach;
	const beforeLength = pathLength(before);
	const afterLength = pathLength(after);
	const beforeFrom = Math.max(0, beforeLength - window);
	const tail = beforeFrom > 0 ? portion(before, beforeFrom, beforeLength) : before;
	const head = afterLength > window ? portion(after, 0, window) : after;
	const onward = endTangent(before);
	const backward = startTangent(after);
	const straightBefore = through && isStraight(before);
	const straightAfter = through && isStraight(after);
	const found: Meeting[] = [];
	for (const { sa, sb, point } of crossings(tail, head, measured))
		found.push({ point, before: beforeLength - beforeFrom - sa, after: sb });
	for (const { s, u, point } of lineCrossings(head, end, along(end, onward, 1), measured))
		if (u > 0 || (straightBefore && u < -beforeLength)) found.push({ point, before: -u, after: s });
	for (const { s, u, point } of lineCrossings(tail, start, along(start, backward, -1), measured))
		if (u > 0 || (straightAfter && u < -afterLength))
			found.push({ point, before: beforeLength - beforeFrom - s, after: -u });
	const turn = cross(onward, backward);
	if (Math.abs(turn) > 1e-6) {
		const gap = subtract(start, end);
		const u = cross(gap, backward) / turn;
		const v = cross(gap, onward) / turn;
		if ((u >= 0 || straightBefore) && (v <= 0 || straightAfter))
			found.push({ point: along(end, onward, u), before: -u, after: v });
	}
	let best: Meeting | undefined;
	let least = Infinity;
	for (const meeting of found) {
		if (distance(meeting.point, corner) > reach) continue;
		if (!straightBefore && meeting.before >= beforeLength - joined) continue;
		if (!straightAfter && meeting.after >= afterLength - joined) continue;
		const cost = Math.abs(meeting.before) + Math.abs(meeting.after);
		if (cost < least) {
			best = meeting;
			least = cost;
		}
	}
	return best;
}

function isStraight(path: Path): boolean {
	return path.length === 1 && path[0].kind === 'line';
}

/** The point `by` mm from `from` in a unit direction. */
export function along(from: Point, direction: Point, by: number): Point {
	return [from[0] + direction[0] * by, from[1] + direction[1] * by];
}
