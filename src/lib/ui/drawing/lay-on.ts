import { levelSpan } from './engine.ts';
import type { Piece, Point } from './engine.ts';
import { dot, minus, plus, times } from './vectors.ts';

/**
 * How far a piece as it was is to be shifted, in its own mm, to lie on the piece as it is: its balance line on the same
 * balance line, crossing point with the grain on crossing point (without a grain line, middle on middle). Nothing where
 * either has no such line.
 */
export function shiftToLieOn(before: Piece, after: Piece, level: string): Point {
	const [was, is] = [anchorOf(before, level), anchorOf(after, level)];
	return was && is ? minus(is, was) : [0, 0];
}

function anchorOf(piece: Piece, level: string): Point | undefined {
	const part = piece.levels.find((one) => one.level === level);
	const span = part && levelSpan(piece, part)?.points;
	if (!span) return undefined;
	const [start, end] = [span[0], span[span.length - 1]];
	const middle = times(plus(start, end), 0.5);
	if (!piece.grain) return middle;
	const [from, to] = piece.grain;
	const along = minus(to, from);
	const across: Point = [-(end[1] - start[1]), end[0] - start[0]];
	const rate = dot(along, across);
	// A grain line that runs along the balance line crosses it nowhere.
	if (Math.abs(rate) < 0.1 * Math.hypot(...along) * Math.hypot(...across)) return middle;
	return plus(from, times(along, dot(minus(start, from), across) / rate));
}
