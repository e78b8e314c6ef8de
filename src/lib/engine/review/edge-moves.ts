/**
 * How far a line lies from where it lay before, measured as it is on the table: square across the old line.
 */
import { distance, dot, outward, subtract } from '../geometry/point.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { line } from '../geometry/segment.ts';
import { measured } from '../geometry/accuracy.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { pathEnd, pathLength, pathStart, pointAt, startTangent, endTangent, tangentAt } from '../geometry/path.ts';
import { along } from '../geometry/meet.ts';
import type { Path, Point, Segment } from '../geometry/types.ts';

/** One line against another. The later one is taken to run straight on beyond its ends, where corners were trimmed. */
export interface LineMove {
	readonly before: Path;
	readonly after: Path;
	/** `after` with its run-on at both ends. */
	readonly reached: Path;
}

/** mm, positive outward, at arc length `s` of the line before. */
export interface MoveAt {
	readonly s: number;
	readonly move: number;
}

/** The two lines made ready to be measured. */
export function lineMove(before: Path, after: Path): LineMove {
	if (sameLine(before, after)) return { before, after: before, reached: before };
	const start = pathStart(after);
	const end = pathEnd(after);
	const further = 50 + 4 * Math.max(distance(start, pathStart(before)), distance(end, pathEnd(before)));
	const reached: Path = [
		line(along(start, startTangent(after), -further), start),
		...after,
		line(end, along(end, endTangent(after), further))
	];
	return { before, after, reached };
}

/** Whether two paths are the same to the bit. */
export function sameLine(a: Path, b: Path): boolean {
	if (a === b) return true;
	return a.length === b.length && a.every((segment, i) => sameSegment(segment, b[i]));
}

function sameSegment(a: Segment, b: Segment): boolean {
	if (a === b) return true;
	if (!samePlace(a.from, b.from) || !samePlace(a.to, b.to)) return false;
	if (a.kind === 'line' || b.kind === 'line') return a.kind === b.kind;
	return samePlace(a.control1, b.control1) && samePlace(a.control2, b.control2);
}

const samePlace = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

/** What is left when one large number is taken from another, mm. */
const rounding = 1e-9;

/**
 * The move at arc length `s` of the line before, mm along its outward normal there, to the nearest crossing of that normal with
 * the line after or with its straight run-on. Where the normal meets neither, the distance to the nearest point, with the sign of the side that it lies on.
 */
export function moveAt({ before, after, reached }: LineMove, s: number): number {
	if (before === after) return 0;
	const from = pointAt(before, s);
	const normal = outward(tangentAt(before, s, s > measured ? 'before' : 'after'));
	const across = lineCrossings(reached, from, along(from, normal, 1), measured);
	let nearest = Infinity;
	for (const { u } of across) if (Math.abs(u) < Math.abs(nearest)) nearest = u;
	if (!Number.isFinite(nearest)) return sidedDistance(after, from, normal);
	return Math.abs(nearest) < rounding ? 0 : nearest;
}

function sidedDistance(path: Path, from: Point, normal: Point): number {
	const found = nearestOn(path, from, measured);
	return dot(subtract(found.point, from), normal) < 0 ? -found.distance : found.distance;
}

const samples = 48;
const narrowings = 36;
const golden = (Math.sqrt(5) - 1) / 2;

/**
 * The greatest move along the line: by its size (`either`), or the one that lies farthest outward (`outward`, which may be
 * negative if the whole line went in). Looked for at 49 even places and at `places` (arc lengths), then narrowed down between
 * the neighbours of the greatest; a bulge shorter than a forty-eighth of the line may be missed.
 */
export function greatestMove(lines: LineMove, places: readonly number[], by: 'either' | 'outward'): MoveAt {
	if (lines.before === lines.after) return { s: 0, move: 0 };
	const length = pathLength(lines.before);
	const size = (move: number) => (by === 'either' ? Math.abs(move) : move);
	const tried = [...Array.from({ length: samples + 1 }, (_, i) => (i * length) / samples), ...places]
		.sort((a, b) => a - b)
		.map((s) => ({ s, move: moveAt(lines, s) }));
	let best = 0;
	for (let i = 1; i < tried.length; i++) if (size(tried[i].move) > size(tried[best].move)) best = i;
	let low = tried[Math.max(0, best - 1)].s;
	let high = tried[Math.min(tried.length - 1, best + 1)].s;
	let greatest = tried[best];
	// Even moves differ by rounding only: there is nothing to narrow down.
	const steepest = Math.max(
		Math.abs(greatest.move - tried[Math.max(0, best - 1)].move),
		Math.abs(greatest.move - tried[Math.min(tried.length - 1, best + 1)].move)
	);
	if (steepest < measured) return greatest;
	const at = (s: number): MoveAt => ({ s, move: moveAt(lines, s) });
	let one = at(high - golden * (high - low));
	let other = at(low + golden * (high - low));
	for (let i = 0; i < narrowings && high - low > measured; i++) {
		if (size(one.move) > size(greatest.move)) greatest = one;
		if (size(other.move) > size(greatest.move)) greatest = other;
		if (size(one.move) < size(other.move)) {
			low = one.s;
			[one, other] = [other, at(low + golden * (high - low))];
		} else {
			high = other.s;
			[one, other] = [at(high - golden * (high - low)), one];
		}
	}
	return greatest;
}
