/**
 * One cubic Bézier for a smooth stretch of a curve that can only be sampled: it starts and ends on the curve along its
 * tangents, with the handles that bring it nearest to the samples (see fit-handles).
 */
import type { CurveSample } from './curve-sample.ts';
import { fitHandles, sampled, samplesRoom, type FittedSegment } from './fit-handles.ts';
import { cross, distance, dot, norm, subtract } from './point.ts';
import { line } from './segment.ts';
import type { Point } from './types.ts';

const own = samplesRoom();
const straightness = 1e-9;

/**
 * The cubic (or straight line) from `start` to `end`, which are the curve at u0 and u1. Every second sample is fitted, all are
 * measured. Thrown: a curve that has no place at some of its parameters.
 *
 * @param accuracy mm; with it the work ends as soon as handles no longer matter
 * @param enough a deviation beyond this, mm, need not be known exactly: only that it is more
 */
export function fitCubic(
	curve: CurveSample,
	u0: number,
	u1: number,
	start: Point,
	end: Point,
	accuracy: number,
	enough: number
): FittedSegment {
	const { xs, ys, ts } = own;
	const chord = subtract(end, start);
	const chordLength = norm(chord);
	if (curve.pointsBetween) curve.pointsBetween(u0, u1, xs, ys);
	else for (let i = 0; i < sampled; i++) [xs[i], ys[i]] = curve.pointAt(u0 + ((u1 - u0) * (i + 1)) / (sampled + 1));
	let [x, y] = start;
	let length = 0;
	let bow = 0;
	for (let i = 0; i < sampled; i++) {
		const dx = xs[i] - x;
		const dy = ys[i] - y;
		length += Math.sqrt(dx * dx + dy * dy);
		x = xs[i];
		y = ys[i];
		ts[i] = length;
		bow = Math.max(bow, Math.abs(chord[0] * (y - start[1]) - chord[1] * (x - start[0])));
	}
	length += distance([x, y], end);
	const out = curve.tangentAt(u0, 'after');
	const into = curve.tangentAt(u1, 'before');
	if (!Number.isFinite(length + out[0] + out[1] + into[0] + into[1]))
		throw new RangeError('fitCubic: the curve has no place at some of its parameters');
	if (chordLength > 0) bow /= chordLength;
	if (
		bow <= straightness * Math.max(1, chordLength) &&
		dot(out, chord) > 0 &&
		Math.abs(cross(out, chord)) <= 1e-6 * chordLength &&
		Math.abs(cross(into, chord)) <= 1e-6 * chordLength
	)
		return { segment: line(start, end), deviation: bow };
	for (let i = 0; i < sampled; i++) ts[i] /= length;
	return fitHandles(own, start, out, end, into, length / 3, length / 3, accuracy, enough);
}
