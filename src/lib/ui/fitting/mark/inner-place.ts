import { lineAcross, nearestOn, pathLength, placeBeside } from '../../../engine/index.ts';
import type { InnerPoint, Piece, Point } from '../../../engine/index.ts';

/** How near the nearest point of an edge is found, mm. */
const accuracy = 1e-6;

/**
 * A point inside a piece as so far square in from a place on an edge, so that it is found again where the shape has changed: the
 * edge that a level beside it ends on, the nearer first; bare coordinates where it lies square in from none.
 */
export function innerPlace(piece: Piece, point: Point, toward: 1 | -1): InnerPoint {
	const level = piece.levels[0]?.level;
	const ends = level === undefined ? [] : [...(lineAcross(piece, level, 0)?.ends ?? [])];
	const ordered = toward === 1 ? ends.reverse() : ends;
	const others = piece.edges.filter((edge) => !ordered.some((end) => end.edge === edge));
	for (const edge of [...ordered.map((end) => end.edge), ...others]) {
		const { s, distance } = nearestOn(edge.path, point, accuracy);
		const inner = s > 1e-3 && s < pathLength(edge.path) - 1e-3;
		const inMouth = piece.darts.some((dart) => dart.edge === edge.id && s > dart.from && s < dart.to);
		if (inner && !inMouth) return { from: placeBeside(piece, edge, level ?? '', s), in: Number(distance.toFixed(6)) };
	}
	return point;
}
