/** How far lines lie apart, measured by plain search, not by the engine's own nearest point. */
import type { Draft, Piece } from '../../src/lib/engine/draft/types.ts';
import type { Path, Point, Segment } from '../../src/lib/engine/geometry/types.ts';

/** Points of a path at even steps of each segment's own parameter, both ends among them. */
export function pointsAlong(path: Path, steps = 64): Point[] {
	return path.flatMap((segment) => Array.from({ length: steps + 1 }, (_, i) => pointOf(segment, i / steps)));
}

/** The greatest distance, mm, of points of one path from the other, both ways. */
export function pathsApart(a: Path, b: Path, steps = 64): number {
	return Math.max(
		...pointsAlong(a, steps).map((point) => away(point, b)),
		...pointsAlong(b, steps).map((point) => away(point, a))
	);
}

/** The greatest distance between edges of the same name on two pieces, mm; infinite if they have not the same edges. */
export function piecesApart(one: Piece, other: Piece, steps = 64): number {
	if (one.edges.length !== other.edges.length) return Infinity;
	return Math.max(
		...one.edges.map(({ id, path }) => {
			const match = other.edges.find((edge) => edge.id === id);
			return match ? pathsApart(path, match.path, steps) : Infinity;
		})
	);
}

/** The same over all pieces of two drafts. */
export function draftsApart(one: Draft, other: Draft, steps = 64): number {
	if (one.pieces.length !== other.pieces.length) return Infinity;
	return Math.max(
		...one.pieces.map((piece) => {
			const match = other.pieces.find(({ id }) => id === piece.id);
			return match ? piecesApart(piece, match, steps) : Infinity;
		})
	);
}

/** The distance of a point from a path: the nearest of even steps, then closed in on by thirds between its two neighbours. */
export function away(point: Point, path: Path, steps = 64): number {
	const from = (segment: Segment, t: number) => {
		const [x, y] = pointOf(segment, t);
		return Math.hypot(x - point[0], y - point[1]);
	};
	const coarse = path.map((segment) => {
		let best = 0;
		let nearest = Infinity;
		for (let i = 0; i <= steps; i++) {
			const distance = from(segment, i / steps);
			if (distance < nearest) [best, nearest] = [i, distance];
		}
		// No step of a Bézier is longer than three times its control polygon's longest leg, shared out.
		return { segment, best, nearest, step: (3 * longestLeg(segment)) / steps };
	});
	let least = Math.min(...coarse.map(({ nearest }) => nearest));
	for (const { segment, best, nearest, step } of coarse) {
		if (nearest - step > least) continue;
		let [low, high] = [Math.max(0, best - 1) / steps, Math.min(steps, best + 1) / steps];
		while (high - low > 1e-8) {
			const third = (high - low) / 3;
			if (from(segment, low + third) < from(segment, high - third)) high -= third;
			else low += third;
		}
		least = Math.min(least, from(segment, (low + high) / 2));
	}
	return least;
}

function longestLeg(segment: Segment): number {
	const points =
		segment.kind === 'line'
			? [segment.from, segment.to]
			: [segment.from, segment.control1, segment.control2, segment.to];
	return Math.max(...points.slice(1).map(([x, y], i) => Math.hypot(x - points[i][0], y - points[i][1])));
}

function pointOf(segment: Segment, t: number): Point {
	const mix = (a: Point, b: Point): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
	if (segment.kind === 'line') return mix(segment.from, segment.to);
	const { from, control1, control2, to } = segment;
	const [ab, bc, cd] = [mix(from, control1), mix(control1, control2), mix(control2, to)];
	return mix(mix(ab, bc), mix(bc, cd));
}
