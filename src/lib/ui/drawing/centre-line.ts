import { flatten, movePath, outlineOf, pathLength, pointAt, tangentAt } from './engine.ts';
import type { Edge, Motion, Piece, Point } from './engine.ts';
import { moved } from './frame.ts';
import { pointsText } from './path-text.ts';
import { minus, outOf, plus, times } from './vectors.ts';
import { isInside } from './is-inside.ts';

/** Chords of the line, mm. */
const step = 4;

/**
 * The centre line that an edge with a lap closes on: `lap` mm inside the edge, as far as the cloth goes, as path text in px.
 * Empty for a lacing gap, whose centre lies off the cloth.
 */
export function centreLine(piece: Piece, edge: Edge, motion: Motion): string {
	if (edge.lap <= 0) return '';
	const length = pathLength(edge.path);
	const steps = Math.max(2, Math.ceil(length / step));
	const inside: Point[] = Array.from({ length: steps + 1 }, (_, i) => {
		const s = (i * length) / steps;
		return minus(
			pointAt(edge.path, s),
			times(outOf(tangentAt(edge.path, s, i === 0 ? 'after' : 'before'), false), edge.lap)
		);
	});
	const beyond = times(tangentAt(edge.path, 0), -edge.lap);
	const after = times(tangentAt(edge.path, length, 'before'), edge.lap);
	const line = moved(motion, [plus(inside[0], beyond), ...inside, plus(inside[steps], after)]);
	const outline = flatten(movePath(motion, outlineOf(piece)), 0.3);
	const kept = line.filter((point) => isInside(point, outline));
	return kept.length > 1 ? pointsText(kept) : '';
}
