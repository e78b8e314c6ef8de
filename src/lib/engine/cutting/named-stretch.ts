/** Stretches of an edge said by the names of the places on it, as a dressmaker says them: from the hip to the hem. */
import { measured } from '../geometry/accuracy.ts';
import { movePoint } from '../geometry/motion.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { pathEnd, pathLength, pathStart } from '../geometry/path.ts';
import type { Motion, Path, Point } from '../geometry/types.ts';
import type { CutPiece } from './cutting-lines.ts';
import { readLine } from './read-line.ts';

/** From one named place to another: `start`, a level, a notch, `finish`. */
export interface NamedStretch {
	readonly from: string;
	readonly to: string;
}

/** A stretch may run over its last named place by this much, mm. */
const within = 2;

export interface NamedPlace {
	readonly name: string;
	/** mm along the edge. */
	readonly s: number;
}

/** A level or notch this near to an edge lies on it, mm. */
const onEdge = 0.1;

/** The places on an edge that have a name, in order. */
export function placesOn(piece: CutPiece, edge: string, line: Path, moved: Motion): NamedPlace[] {
	const inner: NamedPlace[] = [];
	const note = (name: string, point: Point) => {
		const { s, distance } = nearestOn(line, movePoint(moved, point), measured);
		if (distance <= onEdge) inner.push({ name, s });
	};
	for (const notch of piece.notches) if (notch.edge === edge) note(notch.id, notch.at);
	for (const { level, line: drawn } of piece.levels) {
		const path = readLine(drawn);
		for (const end of [pathStart(path), pathEnd(path)]) note(level, end);
	}
	inner.sort((a, b) => a.s - b.s);
	return [{ name: 'start', s: 0 }, ...inner, { name: 'finish', s: pathLength(line) }];
}

/** From the last named place before the points to the first after them, as they lie along the edge. */
export function stretchOn(line: Path, places: readonly NamedPlace[], points: readonly Point[]): NamedStretch {
	const along = points.map((point) => nearestOn(line, point, measured).s);
	const [first, last] = [Math.min(...along), Math.max(...along)];
	const before = places.filter(({ s }) => s <= first + within);
	const after = places.filter(({ s }) => s >= last - within);
	return { from: before[before.length - 1].name, to: after[0].name };
}
