import { flatten, nearestOn, pathLength, portion, reversedPath } from './engine.ts';
import type { Path, Point } from './engine.ts';
import { pointsText, strokesText } from './path-text.ts';
import type { ShortScene } from './scene.ts';
import { stretchesOf } from './stretches.ts';
import { between, distance } from './vectors.ts';
import { isInside } from './is-inside.ts';

/** From place to place along the wanted line, px: also the width of the crosses. */
const every = 6.5;
/** Outside by less than this is on the edge, px: a quarter of a line's width. */
const onEdge = 0.2;

interface Outside {
	readonly at: Point;
	/** px along the edge of the cloth. */
	readonly s: number;
	readonly edge: Point;
}

/**
 * Where a wanted cutting line lies beyond the edge of the cloth, both closed, in px: the cloth that is not there, crossed out.
 * The places where it leaves the cloth are found to within 6.5 px.
 */
export function fallsShort(cloth: Path, wanted: Path): ShortScene | undefined {
	const around = flatten(cloth, 0.2);
	const places = fromInside(evenly(flatten(wanted, 0.2)), around);
	const outside = places.map((at): Outside | undefined => {
		if (isInside(at, around)) return undefined;
		const nearest = nearestOn(cloth, at, 1e-3);
		return nearest.distance > onEdge ? { at, s: nearest.s, edge: nearest.point } : undefined;
	});
	const stretches = stretchesOf(outside.map((one) => (one ? 'short' : undefined)));
	if (stretches.length === 0) return undefined;
	const runs = stretches.map(({ first, last }) => outside.slice(first, last + 1) as Outside[]);
	return {
		area: runs.map((run) => areaText(run, cloth)).join(''),
		strokes: runs.map(crosses).join('')
	};
}

/** The same closed line begun at a place on the cloth, so that no stretch beyond it is cut in two; as it is if there is none. */
function fromInside(points: readonly Point[], around: readonly Point[]): readonly Point[] {
	const first = points.findIndex((point) => isInside(point, around));
	return first <= 0 ? points : [...points.slice(first), ...points.slice(0, first)];
}

/** Beyond the cloth along the wanted line, and back along the edge of the cloth the shorter way. */
function areaText(run: readonly Outside[], cloth: Path): string {
	const length = pathLength(cloth);
	const [from, to] = [run[0].s, run[run.length - 1].s];
	const [low, high] = [Math.min(from, to), Math.max(from, to)];
	const inner = high - low <= length / 2;
	const way =
		high - low < 0.5 ? [] : inner ? portion(cloth, low, high) : [...rest(cloth, high, length), ...rest(cloth, 0, low)];
	const backwards = inner === from < to;
	const edge = way.length === 0 ? [] : flatten(backwards ? reversedPath(way) : way, 0.3);
	return pointsText([...run.map(({ at }) => at), ...edge], true);
}

const rest = (path: Path, from: number, to: number): Path => (to - from > 0.01 ? portion(path, from, to) : []);

/** A cross from each place to the next, between the edge of the cloth and the wanted line. */
function crosses(run: readonly Outside[]): string {
	const strokes = run.slice(1).flatMap((next, i): [Point, Point][] => [
		[run[i].edge, next.at],
		[run[i].at, next.edge]
	]);
	return strokesText(strokes);
}

/** Places along a closed line, `every` px apart or a little less. */
function evenly(points: readonly Point[]): readonly Point[] {
	const lengths = points.map((point, i) => distance(point, points[(i + 1) % points.length]));
	const whole = lengths.reduce((sum, length) => sum + length, 0);
	const count = Math.max(1, Math.ceil(whole / every));
	const places: Point[] = [];
	let [i, walked] = [0, 0];
	for (let k = 0; k < count; k++) {
		const s = (k * whole) / count;
		while (i < points.length - 1 && walked + lengths[i] < s) walked += lengths[i++];
		places.push(between(points[i], points[(i + 1) % points.length], lengths[i] > 0 ? (s - walked) / lengths[i] : 0));
	}
	return places;
}
