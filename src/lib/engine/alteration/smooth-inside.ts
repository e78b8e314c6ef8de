/** Smooths an edge where it has a corner inside, or a bridge from a slash or a fold. */
import { joined } from '../geometry/accuracy.ts';
import type { MovedEdge } from '../geometry/move-outline.ts';
import { cornersOf } from '../geometry/joints.ts';
import { joinedPaths, pathLength, pointAt, portion, tangentAt } from '../geometry/path.ts';
import { angleBetween, lengthOf } from '../geometry/point.ts';
import { smoothCurve } from '../geometry/smooth-curve.ts';
import { inches } from '../draft/say.ts';
import type { Edge, Piece } from '../draft/types.ts';
import { refused, type Refusal } from './refusal.ts';
import { edgeInWords, sentenceCase } from './ride-edges.ts';
import { smoothReach, turnedEnd } from './turn-end.ts';

export interface SmoothedLine extends MovedEdge {
	/** mm, about. */
	readonly greatestMove: number;
}

/**
 * The edge without the corners within `reach` of arc length `at`. One corner keeps its point, and each side turns by half over
 * the reach; across two or more, as a bridge has, one smooth curve runs from `reach` before the first to `reach` after the last.
 * Corners of dart mouths are left alone. Refused: no corner there, a hollow too tight.
 */
export function smoothedInside(
	piece: Piece,
	edge: Edge,
	at: number,
	reach: number
): SmoothedLine | { readonly refused: Refusal } {
	const { path } = edge;
	const length = pathLength(path);
	const mouths = piece.darts.filter((dart) => dart.edge === edge.id);
	const corners = cornersOf(path).filter(
		(s) => !mouths.some(({ from, to }) => s >= from - joined && s <= to + joined) && Math.abs(s - at) <= reach + joined
	);
	if (corners.length === 0)
		return refused(
			'no-corner',
			`${sentenceCase(edgeInWords(piece, edge.id))} has no corner within ${inches(reach)} of that place. Name the place of the corner, or a wider reach.`
		);
	const [first, last] = [corners[0], corners[corners.length - 1]];
	if (mouths.some(({ from }) => from > first && from < last))
		return refused('mouth-between', 'There is a dart between the corners there. Give a shorter reach.');
	const before = smoothReach(piece, edge, first, 'back', reach);
	const after = smoothReach(piece, edge, last, 'on', reach);
	if (corners.length > 1) return drawnOver(edge, first - before, last + after, first, last);
	const turn = angleBetween(tangentAt(path, first, 'before'), tangentAt(path, first, 'after')) / 2;
	const left = turnedEnd(portion(path, 0, first), 'finish', turn, before);
	const right = turnedEnd(portion(path, first, length), 'start', turn, after);
	if (!left || !right) return tooHollow(piece, edge);
	const middle = pathLength(left.path);
	return {
		path: joinedPaths(left.path, right.path),
		carried: (s) => (s <= first ? left.carried(s) : middle + right.carried(s - first)!),
		greatestMove: greatestTurned(turn, Math.max(before, after))
	};
}

/** One curve from arc length `from` to `to`, over corners from `first` to `last`. */
function drawnOver({ path }: Edge, from: number, to: number, first: number, last: number): SmoothedLine {
	const length = pathLength(path);
	const [start, finish] = [pointAt(path, from), pointAt(path, to)];
	const leaving = tangentAt(path, from, from > joined ? 'before' : 'after');
	const arriving = tangentAt(path, to, to < length - joined ? 'after' : 'before');
	const curve = [smoothCurve(start, leaving, finish, arriving)];
	const drawn = pathLength(curve);
	const whole = joinedPaths(
		...(from > joined ? [portion(path, 0, from)] : []),
		curve,
		...(to < length - joined ? [portion(path, to, length)] : [])
	);
	const chords = [first, (first + last) / 2, last].map((s) => {
		const [x, y] = pointAt(path, s);
		const [cx, cy] = pointAt(curve, ((s - from) * drawn) / (to - from));
		return lengthOf(x - cx, y - cy);
	});
	return {
		path: whole,
		carried: (s) => (s <= from ? s : s >= to ? s + drawn - (to - from) : from + ((s - from) * drawn) / (to - from)),
		greatestMove: Math.max(...chords)
	};
}

/** How far a line moves whose end turns by `angle`, mm. */
export function greatestTurned(angle: number, reach: number): number {
	return (Math.abs(Math.tan(angle)) * reach * 4) / 27;
}

export function tooHollow(piece: Piece, edge: Edge): { readonly refused: Refusal } {
	return refused(
		'too-tight',
		`${sentenceCase(edgeInWords(piece, edge.id))} is too hollow to be smoothed over that reach. Give a shorter one.`
	);
}
