/** How far the edges of two drafts lie apart, measured by plain search, not by the engine's own nearest point. */
import type { Draft } from '../../src/lib/engine/draft/types.ts';
import type { Path, Point, Segment } from '../../src/lib/engine/geometry/types.ts';

/** Points of a path at even steps of each segment's own parameter, both ends among them. */
export function pointsAlong(path: Path, steps = 64): Point[] {
	return path.flatMap((segment) => Array.from({ length: steps + 1 }, (_, i) => pointOf(segment, i / steps)));
}

/** The greatest distance, mm, of points of one path from the other, both ways. */
export function pathsApart(a: Path, b: Path, steps = 64): number {
	return Math.max(
		...pointsAlong(a, steps).map((point) => away(point, b, steps)),
		...pointsAlong(b, steps).map((point) => away(point, a, steps))
	);
}

/** The greatest distance between edges of the same name in two drafts, mm; infinite if they have not the same edges. */
export function draftsApart(one: Draft, other: Draft, steps = 64): number {
	let greatest = one.pieces.length === other.pieces.length ? 0 : Infinity;
	for (const piece of one.pieces)
		for (const edge of piece.edges) {
			const match = other.pieces.find(({ id }) => id === piece.id)?.edges.find(({ id }) => id === edge.id);
			greatest = Math.max(greatest, match ? pathsApart(edge.path, match.path, steps) : Infinity);
		}
	return greatest;
}

/** The distance of a point from a path: the nearest of even steps, then closed in on by thirds between its two neighbours. */
export function away(point: Point, path: Path, steps = 64): number {
	let least = Infinity;
	for (const segment of path) {
		const at = (t: number) => {
			const [x, y] = pointOf(segment, Math.min(1, Math.max(0, t)));
			return Math.hypot(x - point[0], y - point[1]);
		};
		let best = 0;
		for (let i = 1; i <= steps; i++) if (at(i / steps) < at(best / steps)) best = i;
		let [low, high] = [(best - 1) / steps, (best + 1) / steps];
		while (high - low > 1e-9) {
			const third = (high - low) / 3;
			if (at(low + third) < at(high - third)) high -= third;
			else low += third;
		}
		least = Math.min(least, at((low + high) / 2));
	}
	return least;
}

function pointOf(segment: Segment, t: number): Point {
	const mix = (a: Point, b: Point): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
	if (segment.kind === 'line') return mix(segment.from, segment.to);
	const { from, control1, control2, to } = segment;
	const [ab, bc, cd] = [mix(from, control1), mix(control1, control2), mix(control2, to)];
	return mix(mix(ab, bc), mix(bc, cd));
}
