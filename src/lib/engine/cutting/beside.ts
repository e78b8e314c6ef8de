/** The line that lies an even allowance outside an edge, in the parts where it runs the edge's own way and those where it does not. */
import { cornersOf } from '../geometry/joints.ts';
import { pathLength, segmentStarts, straight } from '../geometry/path.ts';
import { curvatureOn } from '../geometry/segment.ts';
import { movedPoint } from '../geometry/moved-curve.ts';
import { offsetStretch, type MovedPart } from '../geometry/offset.ts';
import { segmentLengthTo } from '../geometry/arc-length.ts';
import { measured } from '../geometry/accuracy.ts';
import type { Cubic, Path } from '../geometry/types.ts';

/** In how many places a curve is asked which way its line runs, and how closely a turning point is found. */
const samples = 32;
const closely = 1e-9;

/** Shorter parts are nothing, mm. */
const nothing = 1e-3;

/**
 * A line that runs on by less than this share of its edge's own length counts as running backwards: close to the cusp where it
 * turns, it moves by a few thousandths of a millimetre in all.
 */
const standstill = 0.02;

/** A smooth part of the line beside an edge. */
export interface BesidePart extends MovedPart {
	/** The edge is hollower here than the allowance is wide: the line would run backwards, and is only bridged. */
	readonly backward: boolean;
}

/**
 * The moved line in smooth parts that follow one another, split at the corners of the edge and where it would turn to run
 * backwards. A hollow shorter than 1/32 of its curve may be missed.
 *
 * @param accuracy greatest distance of a drawn curve from the exact one, mm (see fitCurve)
 */
export function beside(path: Path, allowance: number, accuracy: number): BesidePart[] {
	return stretches(path, allowance).map(({ from, to, backward }) => {
		if (!backward) return { ...offsetStretch(path, from, to, allowance, [], accuracy), backward };
		const [start, end] = [movedPoint(path, allowance, from, 'after'), movedPoint(path, allowance, to, 'before')];
		return { path: straight(start, end), from, to, deviation: 0, backward };
	});
}

interface Stretch {
	readonly from: number;
	readonly to: number;
}

function stretches(path: Path, allowance: number): (Stretch & { readonly backward: boolean })[] {
	const starts = segmentStarts(path);
	const corners = new Set(cornersOf(path));
	const length = pathLength(path);
	const backward = path.flatMap((segment, i) =>
		segment.kind === 'line' ? [] : backwardStretches(segment, starts[i], starts[i + 1], allowance)
	);
	const bounds = [...new Set([0, ...corners, ...backward.flatMap(({ from, to }) => [from, to]), length])];
	bounds.sort((a, b) => a - b);
	const found: (Stretch & { backward: boolean })[] = [];
	for (let i = 0; i + 1 < bounds.length; i++) {
		const [from, to] = [bounds[i], bounds[i + 1]];
		if (to - from < nothing) continue;
		const middle = (from + to) / 2;
		const isBackward = backward.some((one) => one.from < middle && middle < one.to);
		const last = found[found.length - 1];
		if (last && last.backward && isBackward && !corners.has(from)) found[found.length - 1] = { ...last, to };
		else found.push({ from, to, backward: isBackward });
	}
	return found;
}

/** Where the line beside a curve would run backwards: where 1 + curvature × allowance is not positive (Farouki, 2008). */
function backwardStretches(curve: Cubic, start: number, end: number, allowance: number): Stretch[] {
	const runsOn = (t: number) => 1 + curvatureOn(curve, t) * allowance > standstill;
	const turns: number[] = [];
	// Just inside the ends, where a curve's own curvature is asked and not that of a handle of no length.
	const at = (i: number) => Math.min(1 - closely, Math.max(closely, i / samples));
	const first = runsOn(at(0));
	let before = first;
	for (let i = 1; i <= samples; i++) {
		const now = runsOn(at(i));
		if (now !== before) turns.push(turnBetween(runsOn, at(i - 1), at(i), before));
		before = now;
	}
	const bounds = [start, ...turns.map((t) => start + segmentLengthTo(curve, t, measured)), end];
	const stretches: Stretch[] = [];
	for (let i = 0; i + 1 < bounds.length; i++) {
		if (first === (i % 2 === 1)) stretches.push({ from: bounds[i], to: bounds[i + 1] });
	}
	return stretches;
}

function turnBetween(runsOn: (t: number) => boolean, low: number, high: number, before: boolean): number {
	while (high - low > closely) {
		const middle = (low + high) / 2;
		if (runsOn(middle) === before) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}
