import { flatten, pathLength, remembered } from './engine.ts';
import type { Box, Path, Point } from './engine.ts';

/**
 * A line of a drawing as short straight pieces, for looking along it and across from it many times: places on it are off by a
 * fiftieth of a px at most, which cannot be seen, where the exact ones are sought by the roots of a quintic. Lines that are drawn
 * stay exact: only where they are cut apart, and where strokes begin and end, is found on these.
 */
export interface Polyline {
	readonly points: readonly Point[];
	/** Arc length at each point, px from the start. */
	readonly at: readonly number[];
	readonly length: number;
	readonly runs: readonly Run[];
}

/** Some pieces that follow each other, and the box that they lie in. */
interface Run {
	readonly first: number;
	readonly last: number;
	readonly box: Box;
}

export interface OnPolyline {
	/** px along the line. */
	readonly s: number;
	readonly point: Point;
	readonly distance: number;
}

/** px. */
const fine = 0.05;
const runLength = 12;

export const polylineOf: (path: Path) => Polyline = remembered((path: Path): Polyline => {
	const points = flatten(path, fine);
	const chords = [0];
	for (let i = 1; i < points.length; i++)
		chords.push(chords[i - 1]! + Math.hypot(points[i]![0] - points[i - 1]![0], points[i]![1] - points[i - 1]![1]));
	const length = pathLength(path);
	const whole = chords[chords.length - 1]!;
	const at = whole > 0 ? chords.map((chord) => (chord * length) / whole) : chords;
	return { points, at, length, runs: runsOf(points) };
});

/** The place `s` px along the line, and the unit direction of the line there; at a corner that of the stretch before it. */
export function placeAlong({ points, at }: Polyline, s: number): { readonly point: Point; readonly along: Point } {
	let low = 0;
	let high = points.length - 1;
	while (high - low > 1) {
		const middle = (low + high) >> 1;
		if (at[middle]! < s) low = middle;
		else high = middle;
	}
	const [from, to] = [points[low]!, points[high]!];
	const span = at[high]! - at[low]!;
	const share = span > 0 ? Math.min(1, Math.max(0, (s - at[low]!) / span)) : 0;
	const [x, y] = [to[0] - from[0], to[1] - from[1]];
	const long = Math.hypot(x, y) || 1;
	return { point: [from[0] + x * share, from[1] + y * share], along: [x / long, y / long] };
}

/** The place of a line that is nearest to a point. */
export function nearestAlong({ points, at, runs }: Polyline, point: Point): OnPolyline {
	let least = Infinity;
	let found = 0;
	let share = 0;
	const look = ({ first, last }: Run) => {
		for (let i = first; i < last; i++) {
			const t = shareNearest(points[i]!, points[i + 1]!, point);
			const away = squareFrom(points[i]!, points[i + 1]!, t, point);
			if (away < least) {
				least = away;
				found = i;
				share = t;
			}
		}
	};
	// The run with the nearest box first, so that most others need not be looked at.
	let likely = runs[0];
	let nearest = Infinity;
	for (const run of runs) {
		const away = squareFromBox(run.box, point);
		if (away >= nearest) continue;
		nearest = away;
		likely = run;
	}
	if (likely) look(likely);
	for (const run of runs) if (run !== likely && squareFromBox(run.box, point) < least) look(run);
	const [from, to] = [points[found]!, points[found + 1] ?? points[found]!];
	return {
		s: at[found]! + share * ((at[found + 1] ?? at[found]!) - at[found]!),
		point: [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share],
		distance: Math.sqrt(least)
	};
}

/** Whether a point lies within a distance of a line. */
export function liesOn({ points, runs }: Polyline, point: Point, within: number): boolean {
	const square = within * within;
	for (const { box, first, last } of runs) {
		if (squareFromBox(box, point) > square) continue;
		for (let i = first; i < last; i++)
			if (squareFrom(points[i]!, points[i + 1]!, shareNearest(points[i]!, points[i + 1]!, point), point) <= square)
				return true;
	}
	return false;
}

function squareFromBox(box: Box, point: Point): number {
	const x = Math.max(box.left - point[0], point[0] - box.right, 0);
	const y = Math.max(box.top - point[1], point[1] - box.bottom, 0);
	return x * x + y * y;
}

/** How far along a straight piece, in parts of it, a point is nearest. Taken apart by hand: it is asked thousands of times a step. */
function shareNearest(from: Point, to: Point, point: Point): number {
	const x = to[0] - from[0];
	const y = to[1] - from[1];
	const square = x * x + y * y;
	if (!(square > 0)) return 0;
	const share = ((point[0] - from[0]) * x + (point[1] - from[1]) * y) / square;
	return share < 0 ? 0 : share > 1 ? 1 : share;
}

function squareFrom(from: Point, to: Point, share: number, point: Point): number {
	const x = from[0] + (to[0] - from[0]) * share - point[0];
	const y = from[1] + (to[1] - from[1]) * share - point[1];
	return x * x + y * y;
}

function runsOf(points: readonly Point[]): readonly Run[] {
	const runs: Run[] = [];
	for (let first = 0; first + 1 < points.length; first += runLength) {
		const last = Math.min(first + runLength, points.length - 1);
		const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
		for (let i = first; i <= last; i++) {
			const [x, y] = points[i]!;
			box.left = Math.min(box.left, x);
			box.right = Math.max(box.right, x);
			box.top = Math.min(box.top, y);
			box.bottom = Math.max(box.bottom, y);
		}
		runs.push({ first, last, box });
	}
	return runs;
}
