/**
 * The cubic that leaves and reaches two places of a smooth curve as fast as the curve itself does (cubic Hermite interpolation). A
 * drawn cubic moved by an amount m runs as p + m·n: p is met exactly, and what is missed is the little by which m·n is no cubic,
 * so that most stretches of a moved line want nothing better. It is held to the curve at the same parameters, which bounds
 * the distance from above and needs no search.
 */
import type { FittedSegment } from './fit-handles.ts';
import { cross, distance, dot, subtract } from './point.ts';
import { cubic, line } from './segment.ts';
import type { Point } from './types.ts';

/** How many samples of a stretch are held to it, at even steps of the parameter inside it. */
export const held = 7;

/** Where it misses most, first. */
const middleFirst = [3, 1, 5, 2, 4, 0, 6];
const [w0, w1, w2, w3] = [0, 1, 2, 3].map((k) =>
	Float64Array.from({ length: held }, (_, i) => {
		const t = (i + 1) / (held + 1);
		return [1, 3, 3, 1][k] * Math.pow(t, k) * Math.pow(1 - t, 3 - k);
	})
);
const straightness = 1e-9;
const ahead = 1e-6;

/**
 * The cubic, or a line where the curve is one.
 *
 * @param leaving how the curve runs at its two ends, mm over the whole stretch
 * @param xs, ys from `at` on: `held` samples
 * @param enough a deviation beyond this, mm, need not be known exactly: only that it is more
 * Thrown: a curve that has no place at some of its parameters.
 */
export function hermiteCubic(
	start: Point,
	leaving: Point,
	end: Point,
	arriving: Point,
	xs: Float64Array,
	ys: Float64Array,
	at: number,
	enough: number
): FittedSegment {
	const chord = subtract(end, start);
	if (runsAlong(leaving, chord) && runsAlong(arriving, chord)) {
		const length = distance(start, end);
		let bow = 0;
		for (let i = at; i < at + held; i++)
			bow = Math.max(bow, Math.abs(chord[0] * (ys[i] - start[1]) - chord[1] * (xs[i] - start[0])) / length);
		if (bow <= straightness * Math.max(1, length)) return { segment: line(start, end), deviation: bow };
	}
	const x1 = start[0] + leaving[0] / 3;
	const y1 = start[1] + leaving[1] / 3;
	const x2 = end[0] - arriving[0] / 3;
	const y2 = end[1] - arriving[1] / 3;
	let worst = 0;
	for (let j = 0; j < held; j++) {
		const i = middleFirst[j];
		const x = w0[i] * start[0] + w1[i] * x1 + w2[i] * x2 + w3[i] * end[0] - xs[at + i];
		const y = w0[i] * start[1] + w1[i] * y1 + w2[i] * y2 + w3[i] * end[1] - ys[at + i];
		worst = Math.max(worst, x * x + y * y);
		if (worst > enough * enough) break;
	}
	if (!Number.isFinite(worst)) throw new RangeError('hermiteCubic: the curve has no place at some of its parameters');
	return { segment: cubic(start, [x1, y1], [x2, y2], end), deviation: Math.sqrt(worst) };
}

function runsAlong(way: Point, chord: Point): boolean {
	const along = dot(way, chord);
	return along > 0 && Math.abs(cross(way, chord)) <= ahead * along;
}
