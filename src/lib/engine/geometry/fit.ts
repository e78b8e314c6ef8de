/**
 * Fits cubic Béziers to a smooth curve that can only be sampled.
 *
 * Each interval gets one cubic (see fit-cubic). An interval that misses is cut at the joint nearest its middle, or else halved.
 * With both tangents given the error falls with the sixth power of the interval, so few pieces are needed.
 *
 * It cannot fit across a corner or a cusp: those must be among the breaks.
 */
import { fitCubic, type CurveSample } from './fit-cubic.ts';
import type { Path, Point, Segment } from './types.ts';

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
 * @param joints ascending parameters at which its curvature may jump: where it is best cut, if it must be
 */
export function fitCurve(
	curve: CurveSample,
	breaks: readonly number[],
	accuracy: number,
	joints: readonly number[] = []
): Fitted {
	const segments: Segment[] = [];
	let deviation = 0;
	let from = curve.pointAt(breaks[0]);
	let most = 0;
	for (let i = 0; i + 1 < breaks.length; i++) {
		most = segments.length + mostSegments;
		fitInterval(breaks[i], breaks[i + 1], from, curve.pointAt(breaks[i + 1]), 0);
		from = segments[segments.length - 1].to;
	}
	return { path: segments, deviation };

	function fitInterval(u0: number, u1: number, start: Point, end: Point, depth: number): void {
		const last = depth >= deepest || segments.length >= most;
		const found = fitCubic(curve, u0, u1, start, end, accuracy, last ? Infinity : accuracy);
		if (found.deviation <= accuracy || last) {
			segments.push(found.segment);
			deviation = Math.max(deviation, found.deviation);
			return;
		}
		const middle = middleOf(u0, u1, joints);
		const point = curve.pointAt(middle);
		fitInterval(u0, middle, start, point, depth + 1);
		fitInterval(middle, u1, point, end, depth + 1);
	}
}

/** The joint nearest the middle of an interval that leaves a twentieth of it on either side, or else the middle. */
function middleOf(u0: number, u1: number, joints: readonly number[]): number {
	const half = (u0 + u1) / 2;
	let least = 0.45 * (u1 - u0);
	let found = half;
	for (const joint of joints) {
		if (Math.abs(joint - half) > least) continue;
		least = Math.abs(joint - half);
		found = joint;
	}
	return found;
}
