/** A line across a piece beside a balance line, as cloth is folded or slashed: parallel to it, so far above or below. */
import type { Point } from '../geometry/types.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { pathLength, pointAt } from '../geometry/path.ts';
import { add, distance, dot, scale, subtract, unit } from '../geometry/point.ts';
import { edgeOf, nameOf, neighbouringEdges } from './find.ts';
import { edgeStitchedLength, toStitched } from './length.ts';
import { levelOnEdge, levelParts, levelSpan } from './level.ts';
import { spanOf } from './level-span.ts';
import { undividedName } from './undivided-name.ts';
import type { Edge, EdgePlace, Piece, Place } from './types.ts';

export interface EndAcross {
	/** The edge that the line ends on; at a corner the one that it does not only touch there. */
	readonly edge: Edge;
	/** All that it meets there: two at a corner. */
	readonly met: readonly Edge[];
	/** The same as a place, its edge named whole and undivided, found again where the shape has changed. */
	readonly place: EdgePlace;
	readonly point: Point;
}

/** From the left end to the right as the piece lies; mm. */
export interface LineAcross {
	readonly ends: readonly [EndAcross, EndAcross];
	readonly width: number;
}

/** A straight line through the two ends of a balance line, from left to right, and the way up from it. */
interface Axis {
	readonly from: Point;
	readonly to: Point;
	readonly up: Point;
	/** The edge that the level lies on, if it does. */
	readonly along?: Edge;
}

/** Undefined where the piece has no such level, or has it standing upright: then nothing is above it. */
function axisOf(piece: Piece, level: string): Axis | undefined {
	for (const part of levelParts(piece, level)) {
		const along = 'line' in part ? undefined : edgeOf(piece, part.edge);
		const points = 'line' in part ? levelSpan(piece, part)?.points : along && endsOf(along);
		if (!points || distance(points[0], points[points.length - 1]) <= joined) continue;
		const [one, other] = [points[0], points[points.length - 1]];
		const [from, to] = one[0] <= other[0] ? [one, other] : [other, one];
		const [x, y] = unit(subtract(to, from));
		if (x > 0.1) return { from, to, up: [y, -x], ...(along && { along }) };
	}
	return undefined;
}

const endsOf = ({ path }: Edge): readonly Point[] => [pointAt(path, 0), pointAt(path, pathLength(path))];

/** How far a point lies above a level of a piece (below it: negative), mm; undefined where the piece has none. */
export function heightAbove(piece: Piece, level: string, point: Point): number | undefined {
	const axis = axisOf(piece, level);
	return axis && dot(subtract(point, axis.from), axis.up);
}

/**
 * Where the line `height` mm above a level (negative: below) crosses a piece, on the stretch that lies abreast of the level.
 * Exact to `measured`. Undefined where the piece has no such level or the line passes it by.
 */
export function lineAcross(piece: Piece, level: string, height: number): LineAcross | undefined {
	const axis = axisOf(piece, level);
	if (!axis) return undefined;
	if (axis.along && Math.abs(height) <= joined) return lineOnEdge(piece, axis.along, level);
	const line = [axis.from, axis.to].map((point) => add(point, scale(axis.up, height)));
	const found = spanOf(piece, { level, line });
	if (!found) return undefined;
	const { points } = found.span;
	const [left, right] = found.ends.map(({ touches }, i): EndAcross => {
		const inner = touches.find(({ edge, s }) => s > joined && s < pathLength(edge.path) - joined) ?? touches[0];
		return {
			edge: inner.edge,
			met: touches.map(({ edge }) => edge),
			place: placeBeside(piece, inner.edge, level, inner.s),
			point: points[i === 0 ? 0 : points.length - 1]
		};
	});
	return { ends: [left, right], width: distance(left.point, right.point) };
}

/** Where a line straight down from a point first meets the outline, so far from that edge's start; undefined where it never does. */
export function plumbBelow(piece: Piece, point: Point): EdgePlace | undefined {
	const met = piece.edges.flatMap((edge) =>
		lineCrossings(edge.path, point, add(point, [0, 1]), measured).map(({ s, u }) => ({ edge, s, u }))
	);
	const below = met.filter(({ u }) => u > joined).sort((one, other) => one.u - other.u);
	if (below.length === 0) return undefined;
	const [{ edge, s }] = below;
	return { edge: undividedName(nameOf(piece, edge.id)), end: 'start', offset: rounded(toStitched(piece, edge, s)) };
}

/** To `measured`: an offset is written and read again. */
const rounded = (mm: number): number => Number(mm.toFixed(6));

/** Along a level that lies on an edge: it ends where the edges beside that one begin. */
function lineOnEdge(piece: Piece, edge: Edge, level: string): LineAcross | undefined {
	const beside = neighbouringEdges(piece, edge.id);
	if (!beside) return undefined;
	const { before, after } = beside;
	const met: readonly (readonly [Edge, number])[] = [
		[before, pathLength(before.path)],
		[after, 0]
	];
	const ends = met.map(([one, s]): EndAcross => ({
		edge: one,
		met: [one, edge],
		place: placeBeside(piece, one, level, s),
		point: pointAt(one.path, s)
	}));
	const [left, right] = ends[0].point[0] <= ends[1].point[0] ? ends : [ends[1], ends[0]];
	return { ends: [left, right], width: distance(left.point, right.point) };
}

/**
 * A place on an edge, `s` mm along it, so far from where a level crosses the edge, along the stitched line; from the nearer end
 * where it does not cross it.
 */
export function placeBeside(piece: Piece, edge: Edge, level: string, s: number): EdgePlace {
	const at = toStitched(piece, edge, s);
	const met = levelOnEdge(piece, edge, level).map((one) => toStitched(piece, edge, one));
	const length = edgeStitchedLength(piece, edge);
	const name = undividedName(nameOf(piece, edge.id));
	const offset = (mm: number) => (Math.abs(mm) <= joined ? {} : { offset: rounded(mm) });
	const nearest = met.reduce<number | undefined>(
		(best, one, i) => (best === undefined || Math.abs(one - at) < Math.abs(met[best] - at) ? i : best),
		undefined
	);
	const place: Place =
		nearest === undefined
			? at <= length / 2
				? { end: 'start', ...offset(at) }
				: { end: 'finish', ...offset(length - at) }
			: { level, ...(met.length > 1 && { nth: nearest + 1 }), ...offset(at - met[nearest]) };
	return { edge: name, ...place };
}
