import type { Path, Point } from './types.ts';
import { lengthOf } from './point.ts';
import { pointOn } from './segment.ts';

const mostChords = 100000;

/**
 * A polyline through points of the path, both ends and every joint among them, no farther than `accuracy` mm from it anywhere.
 * A cubic is cut at equal steps of its parameter; a chord over a step h departs from it by at most h²/8 × the greatest second
 * derivative (G. Wang's bound, as in G. Farin, Curves and Surfaces for CAGD, from memory), which is firm.
 * Thrown: an accuracy that is not above 0. More than 100 000 chords a segment are never made.
 */
export function flatten(path: Path, accuracy: number): Point[] {
	if (!(accuracy > 0)) throw new RangeError('flatten: the accuracy must be above 0');
	const points: Point[] = [path[0].from];
	for (const segment of path) {
		if (segment.kind === 'cubic') {
			const { from, control1, control2, to } = segment;
			const early = lengthOf(from[0] - 2 * control1[0] + control2[0], from[1] - 2 * control1[1] + control2[1]);
			const late = lengthOf(control1[0] - 2 * control2[0] + to[0], control1[1] - 2 * control2[1] + to[1]);
			const chords = Math.min(mostChords, Math.ceil(Math.sqrt((0.75 * Math.max(early, late)) / accuracy)));
			for (let i = 1; i < chords; i++) points.push(pointOn(segment, i / chords));
		}
		points.push(segment.to);
	}
	return points;
}
