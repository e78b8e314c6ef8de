import { pointAt, tangentAt } from './engine.ts';
import type { Path, Point } from './engine.ts';
import { minus, outOf, plus, times } from './vectors.ts';

export type Cuts = 1 | 2 | 3;

/** Between the cuts of a double or triple notch, px. */
const apart = 4.2;
/** How far a cut reaches in over the stitching line, px; outward it goes no farther than the allowance. */
const inward = 3;

/** The cuts of one notch across a line in px, `outward` px out of the cloth. */
export function notchStrokes(
	path: Path,
	s: number,
	count: Cuts,
	outward: number,
	over: boolean
): readonly (readonly [Point, Point])[] {
	const along = tangentAt(path, s);
	const out = outOf(along, over);
	const middle = pointAt(path, s);
	return Array.from({ length: count }, (_, i) => {
		const at = plus(middle, times(along, (i - (count - 1) / 2) * apart));
		return [minus(at, times(out, inward)), plus(at, times(out, outward))] as const;
	});
}

/** Both hooks of a fold, each toward the cloth. */
export function foldHooks(path: Path, over: boolean): readonly (readonly [Point, Point])[] {
	const start = path[0].from;
	const end = path[path.length - 1].to;
	const length = Math.hypot(end[0] - start[0], end[1] - start[1]);
	if (length < 24) return [];
	const along: Point = [(end[0] - start[0]) / length, (end[1] - start[1]) / length];
	const inwards = times(outOf(along, over), -11);
	return [plus(start, times(along, 7)), minus(end, times(along, 7))].map((at) => [at, plus(at, inwards)] as const);
}

/** Grain: a fine line with open points at both ends. */
export function grainLine(from: Point, to: Point): string {
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	if (length === 0) return '';
	const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
	const barb = (at: Point, way: 1 | -1) => {
		const back = minus(at, times(along, way * 8));
		const side: Point = [-along[1] * 4.2, along[0] * 4.2];
		return `M${text(plus(back, side))}L${text(at)}L${text(minus(back, side))}`;
	};
	return `M${text(from)}L${text(to)}${barb(to, 1)}${barb(from, -1)}`;
}

const text = ([x, y]: Point): string => `${x.toFixed(2)} ${y.toFixed(2)}`;
