/**
 * The outer contour of a closed line that may cross itself, as the offset of a hollow narrower than its allowance does.
 *
 * The line is cut where it crosses itself; kept is what has nothing of the inside to its left, told by counting what a ray to
 * the left crosses (the winding number of the place beside it). Of the loops that these stretches make, the largest is
 * the contour: holes, and hollows that closed up, are lost. The kept stretches are parts of the line itself, so nothing is approximated.
 */
import { distance, dot, outward } from '../geometry/point.ts';
import { flatten } from '../geometry/flatten.ts';
import { along } from '../geometry/meet.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { cut, measured } from '../geometry/accuracy.ts';
import { pathEnd, pathLength, pathStart, pointAt, portion, straight, tangentAt } from '../geometry/path.ts';
import { polygonArea, union } from '../geometry/polygon.ts';
import { selfCrossings } from '../geometry/self-crossing.ts';
import { signedArea } from '../geometry/area.ts';
import type { Path, Point, Segment } from '../geometry/types.ts';

/** Crossings nearer to one another than this are one place, mm. */
const onePlace = 1e-3;

interface Stretch {
	readonly path: Path;
	/** Which of the places it begins and ends at. */
	readonly from: number;
	readonly to: number;
}

/**
 * The contour, clockwise for a clockwise line; the same object if it does not cross itself. Where stretches lie so close together that
 * they cannot be told apart, a polygon within `cut` mm of it.
 */
export function outerContour(closed: Path): Path {
	const found = selfCrossings(closed, measured);
	if (found.length === 0) return closed;
	const places: Point[] = [];
	const placeOf = (point: Point): number => {
		const known = places.findIndex((place) => distance(place, point) < onePlace);
		return known >= 0 ? known : places.push(point) - 1;
	};
	const cuts = found
		.flatMap(({ s1, s2, point }) => [
			{ s: s1, place: placeOf(point) },
			{ s: s2, place: placeOf(point) }
		])
		.sort((a, b) => a.s - b.s);
	const outer: Stretch[] = [];
	for (let i = 0; i < cuts.length; i++) {
		const [from, to] = [cuts[i], cuts[(i + 1) % cuts.length]];
		const path = stretchOf(closed, from.s, to.s);
		if (path && windingBeside(closed, path) === 0) outer.push({ path, from: from.place, to: to.place });
	}
	return largestLoop(outer, places) ?? polygonContour(closed);
}

/** From one arc length on to another, over the start of the line if need be; undefined where nothing lies between. */
function stretchOf(closed: Path, from: number, to: number): Path | undefined {
	const length = pathLength(closed);
	if (to > from) return to - from > onePlace ? portion(closed, from, to) : undefined;
	const parts = [
		...(length - from > measured ? portion(closed, from, length) : []),
		...(to > measured ? portion(closed, 0, to) : [])
	];
	return length - from + to > onePlace ? parts : undefined;
}

/** A share of a stretch at which no corner is likely to lie. */
const odd = 0.4637;

/** How often the line runs round the place just left of a stretch's middle, clockwise counted positive. */
function windingBeside(closed: Path, stretch: Path): number {
	const s = odd * pathLength(stretch);
	const from = pointAt(stretch, s);
	const left = outward(tangentAt(stretch, s));
	let winding = 0;
	for (const crossing of lineCrossings(closed, from, along(from, left, 1), measured)) {
		if (crossing.u <= onePlace / 10) continue;
		winding += dot(outward(tangentAt(closed, crossing.s)), left) > 0 ? 1 : -1;
	}
	return winding;
}

function largestLoop(stretches: readonly Stretch[], places: readonly Point[]): Path | undefined {
	const left = new Set(stretches);
	let largest: Path | undefined;
	let area = 0;
	for (const first of stretches) {
		if (!left.delete(first)) continue;
		const loop = [first];
		for (let last = first; last.to !== first.from;) {
			const next = [...left].find(({ from }) => from === last.to);
			if (!next) break;
			left.delete(next);
			loop.push(next);
			last = next;
		}
		if (loop[loop.length - 1].to !== first.from) continue;
		const path = loop.flatMap((stretch) => endingAt(stretch.path, places[stretch.from], places[stretch.to]));
		const inside = signedArea(path);
		if (inside > area) [largest, area] = [path, inside];
	}
	return largest;
}

/** The path with its ends moved the last thousandth to the places where it meets others. */
function endingAt(path: Path, start: Point, end: Point): Path {
	const moved: Segment[] = [...path];
	if (pathStart(path) !== start) moved[0] = { ...moved[0], from: start };
	if (pathEnd(path) !== end) moved[moved.length - 1] = { ...moved[moved.length - 1], to: end };
	return moved;
}

function polygonContour(closed: Path): Path {
	const polygons = union([flatten(closed, cut)], []);
	const [largest] = [...polygons].sort((a, b) => Math.abs(polygonArea([b])) - Math.abs(polygonArea([a])));
	return largest.flatMap((point, i) => straight(point, largest[(i + 1) % largest.length]));
}
