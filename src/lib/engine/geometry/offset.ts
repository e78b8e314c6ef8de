/**
 * Moves a path at right angles to itself by an amount that may vary along it (a generalised offset curve).
 *
 * With unit tangent T, outward normal n, curvature k and amount m at arc length s, the moved point is p + m·n and its
 * derivative (1 + k·m)·T + m′·n (Farouki, Pythagorean-Hodograph Curves, 2008, on offset curves). Where 1 + k·m ≤ 0 the moved
 * line would turn back on itself.
 */
import { cornerAngle, fitted } from './accuracy.ts';
import { steepness, valueAt, type Amount } from './amount.ts';
import type { Fitted } from './fit.ts';
import { fitSmooth } from './fit-smooth.ts';
import { movedCurve, nominalAt } from './moved-curve.ts';
import { jointsOf } from './joints.ts';
import { pathLength, portion, segmentStarts } from './path.ts';
import type { Path, Segment } from './types.ts';

/** One smooth stretch of a path, moved. */
export interface MovedPart {
	readonly path: Path;
	/** The stretch of the old path that it comes from, arc lengths in mm. */
	readonly from: number;
	readonly to: number;
	readonly deviation: number;
}

/**
 * The moved line, in parts that are smooth in themselves. Where the path turns by more than `cornerAngle`, or by so much that
 * its moved sides come apart by more than half the accuracy, one part ends and the next begins: those want joining.
 *
 * @param breaks arc lengths at which the amount is not smooth
 * @param accuracy greatest distance of the drawn line from the exact one, mm (see fitCurve)
 */
export function offsetPath(path: Path, amount: Amount, breaks: readonly number[], accuracy: number): MovedPart[] {
	const bounds = [0, ...bendsOf(path, amount, accuracy), pathLength(path)];
	const parts: MovedPart[] = [];
	for (let i = 0; i + 1 < bounds.length; i++)
		parts.push(offsetStretch(path, bounds[i], bounds[i + 1], amount, breaks, accuracy));
	return parts;
}

/** A turn whose moved sides come apart by no more than this is passed over, if it is small in every other way, mm. */
const closed = fitted;
/** And by no more than this share of what it joins, or what lies between two such turns would run backwards. */
const shareOfShorter = 1 / 4;

/**
 * The sides of a turn come apart along the line, by turn × amount, and so away from it by that times the slope of the amount and half
 * the turn: what the drawn line misses where it passes over the turn.
 */
function bendsOf(path: Path, amount: Amount, accuracy: number): number[] {
	return jointsOf(path)
		.filter(({ s, turn, shorter }) => {
			if (turn > cornerAngle) return true;
			const apart = turn * Math.abs(valueAt(amount, s));
			if (apart > closed || apart > shareOfShorter * shorter) return true;
			return apart > accuracy / 2 && apart * (turn / 2 + steepness(amount, s)) > accuracy / 2;
		})
		.map(({ s }) => s);
}

/** Breaks nearer to one another than this are one, mm. */
const sameBreak = 1e-3;

/**
 * The stretch from arc length `from` to `to`, which must have no corner inside, moved. Between two breaks the amount must rise
 * or fall only; where it is nothing, the path stays as it is to the bit.
 */
export function offsetStretch(
	path: Path,
	from: number,
	to: number,
	amount: Amount,
	breaks: readonly number[],
	accuracy: number
): MovedPart {
	const bounds = boundsBetween(from, to, breaks);
	const segments: Segment[] = [];
	let deviation = 0;
	for (let i = 0; i + 1 < bounds.length;) {
		const still = isStill(amount, bounds[i], bounds[i + 1]);
		let j = i + 1;
		while (j + 1 < bounds.length && isStill(amount, bounds[j], bounds[j + 1]) === still) j++;
		const fitted = still
			? { path: portion(path, bounds[i], bounds[j]), deviation: 0 }
			: fitMoved(path, bounds.slice(i, j + 1), amount, accuracy);
		deviation = Math.max(deviation, fitted.deviation);
		append(segments, fitted.path, still);
		i = j;
	}
	return { path: segments, from, to, deviation };
}

/** Whether an amount that only rises or falls from one place to the other is nothing all along. */
function isStill(amount: Amount, from: number, to: number): boolean {
	return [from, (from + to) / 2, to].every((s) => valueAt(amount, s) === 0);
}

/** Adds a path that starts where the chain ends but for rounding: what stands still keeps its end, the other takes it over. */
function append(segments: Segment[], path: Path, still: boolean): void {
	const last = segments.length - 1;
	const [first, ...rest] = path;
	if (last < 0) segments.push(first);
	else if (still) {
		segments[last] = { ...segments[last], to: first.from };
		segments.push(first);
	} else segments.push({ ...first, from: segments[last].to });
	segments.push(...rest);
}

function fitMoved(path: Path, bounds: readonly number[], amount: Amount, accuracy: number): Fitted {
	const starts = segmentStarts(path);
	const nominal = bounds.map((s) => nominalAt(path, starts, s));
	return fitSmooth(movedCurve(path, amount, nominal[0]), nominal, starts, accuracy);
}

/** Both ends and the breaks between them, rising, none beside another. */
function boundsBetween(from: number, to: number, breaks: readonly number[]): number[] {
	const bounds = [from];
	for (const s of breaks) if (s > bounds[bounds.length - 1] + sameBreak && s < to - sameBreak) bounds.push(s);
	bounds.push(to);
	return bounds;
}
