import type { Path, Point, Segment } from '../geometry/types.ts';

/**
 * A path with its ends put to the bit on points that they already lie on within `joined`; everything between stays, also the
 * control points. An end not given stays too.
 */
export function withEnds(path: Path, start: Point | undefined, end: Point | undefined): Path {
	const last = path.length - 1;
	const startMoves = start !== undefined && !same(path[0].from, start);
	const endMoves = end !== undefined && !same(path[last].to, end);
	if (!startMoves && !endMoves) return path;
	return path.map((segment, index): Segment => {
		const from = startMoves && index === 0 ? start : segment.from;
		const to = endMoves && index === last ? end : segment.to;
		return { ...segment, from, to };
	});
}

function same(a: Point, b: Point): boolean {
	return a[0] === b[0] && a[1] === b[1];
}
