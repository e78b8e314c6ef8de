/** Stretches of a piece's outline between two places on it, going clockwise. */
import { joined } from '../geometry/accuracy.ts';
import { distance } from '../geometry/point.ts';
import { joinedPaths, pathLength, pointAt, portion, straight } from '../geometry/path.ts';
import type { Path, Point } from '../geometry/types.ts';
import type { Piece } from './types.ts';

/** A place on the outline: the position of its edge in the piece and mm along that edge. */
export interface OutlinePlace {
	readonly edge: number;
	readonly s: number;
}

/** The outline from one place clockwise to another, closed through the points given. */
export function closedRegion(piece: Piece, from: OutlinePlace, to: OutlinePlace, through: readonly Point[]): Path {
	const paths = stretchPaths(piece, from, to);
	const start = pointAt(piece.edges[from.edge].path, from.s);
	let last = pointAt(piece.edges[to.edge].path, to.s);
	for (const point of [...through, start]) {
		if (distance(last, point) > joined) paths.push(straight(last, point));
		last = point;
	}
	return joinedPaths(...paths);
}

/** The paths along the outline from one place clockwise to another. */
export function stretchPaths(piece: Piece, from: OutlinePlace, to: OutlinePlace): Path[] {
	const paths: Path[] = [];
	const count = piece.edges.length;
	const add = (edge: number, s0: number, s1: number) => {
		if (s1 - s0 > joined) paths.push(portion(piece.edges[edge].path, s0, s1));
	};
	if (from.edge === to.edge && from.s <= to.s) {
		add(from.edge, from.s, to.s);
		return paths;
	}
	add(from.edge, from.s, pathLength(piece.edges[from.edge].path));
	for (let i = (from.edge + 1) % count; i !== to.edge; i = (i + 1) % count) paths.push(piece.edges[i].path);
	add(to.edge, 0, to.s);
	return paths;
}

/** Whether a place lies on the outline between two others, going clockwise. */
export function isBetween(at: OutlinePlace, after: OutlinePlace, before: OutlinePlace): boolean {
	const order = (a: OutlinePlace, b: OutlinePlace) => a.edge - b.edge || a.s - b.s;
	if (order(after, before) <= 0) return order(at, after) >= 0 && order(at, before) <= 0;
	return order(at, after) >= 0 || order(at, before) <= 0;
}
