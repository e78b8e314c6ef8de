/**
 * Fits cubic Béziers to a smooth curve that can only be sampled.
 *
 * Each interval gets one cubic (see fit-cubic). An interval that misses is halved. With both tangents given the error falls with
 * the sixth power of the interval, so few pieces are needed.
 *
 * It cannot fit across a corner or a cusp: those must be among the breaks.
 */
import type { CurveSample } from './curve-sample.ts';
import { fitCubic } from './fit-cubic.ts';
import type { FittedSegment } from './fit-handles.ts';
import type { Path, Point } from './types.ts';

export interface Fitted {
	readonly path: Path;
	/** Greatest distance found between the samples and the path, in mm. */
	readonly deviation: number;
}

const deepest = 12;
const mostSegments = 32;

/**
 * A path within `accuracy` mm of the curve, measured at samples between those that were fitted (a firm bound for curves
 * that do not wiggle between samples). Halving stops after twelve levels, and when one interval has come to 32 pieces; then the deviation that
 * was reached is returned.
 *
 * @param breaks ascending parameters, first and last included, between which the curve is smooth
 */
export function fitCurve(curve: CurveSample, breaks: readonly number[], accuracy: number): Fitted {
	const pieces: FittedSegment[] = [];
	let from = curve.pointAt(breaks[0]);
	let most = 0;
	for (let i = 0; i + 1 < breaks.length; i++) {
		most = pieces.length + mostSegments;
		const to = curve.pointAt(breaks[i + 1]);
		fitInterval(breaks[i], breaks[i + 1], from, to, 0);
		from = to;
	}
	return fittedOf(pieces);

	function fitInterval(u0: number, u1: number, start: Point, end: Point, depth: number): void {
		const last = depth >= deepest || pieces.length >= most;
		const found = fitCubic(curve, u0, u1, start, end, accuracy, last ? Infinity : accuracy);
		if (found.deviation <= accuracy || last) {
			pieces.push(found);
			return;
		}
		const middle = (u0 + u1) / 2;
		const point = curve.pointAt(middle);
		fitInterval(u0, middle, start, point, depth + 1);
		fitInterval(middle, u1, point, end, depth + 1);
	}
}

/** The path of pieces that follow one another. */
export function fittedOf(pieces: readonly FittedSegment[]): Fitted {
	return {
		path: pieces.map(({ segment }) => segment),
		deviation: pieces.reduce((most, { deviation }) => Math.max(most, deviation), 0)
	};
}
