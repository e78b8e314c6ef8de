import type { Path } from '../geometry/types.ts';
import { fitted, joined } from '../geometry/accuracy.ts';
import { along, meet } from '../geometry/meet.ts';
import { offsetWithoutLoops } from '../geometry/offset.ts';
import {
	endTangent,
	joinedPaths,
	pathEnd,
	pathLength,
	pathStart,
	pointAt,
	portion,
	startTangent,
	straight
} from '../geometry/path.ts';
import { distance } from '../geometry/point.ts';
import { remembered } from './memo.ts';
import type { Edge } from './types.ts';

/**
 * The line that an open edge closes on: it lies the edge's lap inside the edge and runs the same way, from square in at the
 * edge's start to square in at its finish. At a corner of the edge its two parts are trimmed or run on to meet.
 */
export const centreLine: (edge: Edge) => Path = remembered(({ path, lap }: Edge): Path => {
	if (lap === 0) return path;
	const [first, ...rest] = offsetWithoutLoops(path, -lap, [], fitted / 10);
	return rest.reduce<Path>((line, part) => {
		const met = meet(line, part.path, pointAt(path, part.from), 3 * Math.abs(lap) + 1);
		const before = met ? endedBy(line, met.before) : line;
		const after = met ? begunBy(part.path, met.after) : part.path;
		const gap = distance(pathEnd(before), pathStart(after));
		return joinedPaths(before, ...(gap > joined ? [straight(pathEnd(before), pathStart(after))] : []), after);
	}, first.path);
});

/** The line less so much of its end, or run straight on by it if negative, mm. */
function endedBy(line: Path, less: number): Path {
	const end = pathEnd(line);
	if (less > joined) return portion(line, 0, pathLength(line) - less);
	return less < -joined ? [...line, ...straight(end, along(end, endTangent(line), -less))] : line;
}

/** The same at its start. */
function begunBy(line: Path, less: number): Path {
	const start = pathStart(line);
	if (less > joined) return portion(line, less, pathLength(line));
	return less < -joined ? [...straight(along(start, startTangent(line), less), start), ...line] : line;
}
