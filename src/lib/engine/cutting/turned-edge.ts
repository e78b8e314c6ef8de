/**
 * The allowance beyond an edge that is turned under (a hem, a cuff, a facing): beyond the turn its sides are the mirror
 * image of the piece's own sides, so that it lies flat on them once it is turned.
 */
import { crossings, lineCrossings } from '../geometry/crossings.ts';
import { line } from '../geometry/segment.ts';
import { measured } from '../geometry/accuracy.ts';
import { movePath, reflection } from '../geometry/motion.ts';
import { along } from '../geometry/meet.ts';
import { endTangent, pathEnd, pathLength, pathStart, portion, reversedPath, startTangent } from '../geometry/path.ts';
import type { Beside } from './corner.ts';
import type { Path, Point } from '../geometry/types.ts';

/** How a side's cutting line goes on to the one beyond the turn. */
export interface TurnedCorner {
	/** Trimmed off the end of the side and off the start of the line beyond the turn, mm. */
	readonly before: number;
	readonly after: number;
	/** From where the side meets the turn line to the line beyond. */
	readonly by: Path;
}

/**
 * From a side, which ends at the corner `at`, to the line beside the turned edge, which starts there in direction `turnLine`.
 * Undefined where the mirrored side does not reach the line beyond the turn.
 */
export function turnedCorner(side: Beside, turned: Beside, at: Point, turnLine: Point): TurnedCorner | undefined {
	const end = pathEnd(side.path);
	const length = pathLength(side.path);
	const further = 2 * (side.allowance + turned.allowance) + 10;
	const onTurn = lineCrossings(
		[...side.path, line(end, along(end, endTangent(side.path), further))],
		at,
		along(at, turnLine, 1),
		measured
	);
	let meeting: (typeof onTurn)[number] | undefined;
	for (const one of onTurn) if (!meeting || Math.abs(one.s - length) < Math.abs(meeting.s - length)) meeting = one;
	if (!meeting) return undefined;
	const before = Math.max(0, length - meeting.s);
	const kept = before > 0 ? portion(side.path, 0, meeting.s) : side.path;
	const met = pathEnd(kept);
	const gap =
		before > 0 || (met[0] === meeting.point[0] && met[1] === meeting.point[1]) ? [] : [line(met, meeting.point)];
	const back = movePath(reflection(at, along(at, turnLine, 1)), reversedPath([...kept, ...gap]));
	const over: Path = [...back, line(pathEnd(back), along(pathEnd(back), endTangent(back), further))];
	const start = pathStart(turned.path);
	const runIn = along(start, startTangent(turned.path), -further);
	const [first] = crossings(over, [line(runIn, start), ...turned.path], measured);
	if (!first || first.sa <= measured) return undefined;
	const mirrored = portion(over, 0, first.sa);
	const after = Math.max(0, first.sb - further);
	const rest = after > 0 ? [] : [line(pathEnd(mirrored), start)];
	return { before, after, by: [...gap, ...mirrored, ...rest] };
}

/** The same at the other end of the turned edge: seen from the far side of the table. */
export function turnedBack(turned: Beside, side: Beside, at: Point, turnLine: Point): TurnedCorner | undefined {
	const flipped = turnedCorner(reversed(side), reversed(turned), at, turnLine);
	return flipped && { before: flipped.after, after: flipped.before, by: reversedPath(flipped.by) };
}

function reversed(beside: Beside): Beside {
	return { ...beside, path: reversedPath(beside.path) };
}
