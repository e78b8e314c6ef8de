/**
 * Moves a path at right angles to itself by an amount that may vary along it (a generalised offset curve).
 *
 * With unit tangent T, outward normal n, curvature k and amount m at arc length s, the moved point is p + m·n and its
 * derivative (1 + k·m)·T + m′·n (Farouki, Pythagorean-Hodograph Curves, 2008, on offset curves). Where 1 + k·m ≤ 0 the moved
 * line would turn back on itself.
 */
import { cornersOf, curvatureAt, pathLength, portion, segmentStarts } from './path.ts';
import { curvatureOn, pointOn, tangentOn } from './segment.ts';
import { measured } from './accuracy.ts';
import { parameterAt, segmentLengthTo } from './arc-length.ts';
import { fitCurve } from './fit.ts';
import { outward, unit } from './point.ts';
import type { Path, Point } from './types.ts';

/** mm along the outward normal at arc length s: the same everywhere, or a function with its slope. */
export type Amount = number | ((s: number) => { readonly value: number; readonly slope: number });

/** One stretch of a path between two corners, moved. */
export interface MovedPart {
	readonly path: Path;
	/** The stretch of the old path that it comes from, arc lengths in mm. */
	readonly from: number;
	readonly to: number;
	readonly deviation: number;
}

/** Amount and slope at s, whichever form the amount has. */
export function amountAt(amount: Amount, s: number): { value: number; slope: number } {
	return typeof amount === 'number' ? { value: amount, slope: 0 } : amount(s);
}

/**
 * The moved line, in parts that are smooth in themselves; the parts of a path with corners do not meet and want joining.
 *
 * @param breaks arc lengths at which the amount is not smooth
 * @param accuracy greatest distance of the drawn line from the exact one, mm (see fitCurve)
 */
export function offsetPath(path: Path, amount: Amount, breaks: readonly number[], accuracy: number): MovedPart[] {
	const length = pathLength(path);
	const bounds = [0, ...cornersOf(path).filter((s) => s > 0 && s < length), length];
	const parts: MovedPart[] = [];
	for (let i = 0; i + 1 < bounds.length; i++)
		parts.push(offsetStretch(path, bounds[i], bounds[i + 1], amount, breaks, accuracy));
	return parts;
}

/** The stretch from arc length `from` to `to`, which must have no corner inside, moved. */
export function offsetStretch(
	path: Path,
	from: number,
	to: number,
	amount: Amount,
	breaks: readonly number[],
	accuracy: number
): MovedPart {
	if (amount === 0) return { path: portion(path, from, to), from, to, deviation: 0 };
	const starts = segmentStarts(path);
	const inner = breaks.filter((s) => s > from + 1e-3 && s < to - 1e-3);
	const nominal = [from, ...inner, to].map((s) => nominalAt(path, starts, s));
	const constant = typeof amount === 'number';
	const frame = (u: number, side: 'before' | 'after') => {
		const index = segmentIndex(starts, u, side);
		const segment = path[index];
		const span = starts[index + 1] - starts[index];
		const t = span > 0 ? Math.min(1, Math.max(0, (u - starts[index]) / span)) : 0;
		const s = constant || segment.kind === 'line' ? u : starts[index] + segmentLengthTo(segment, t, measured);
		return { segment, t, s };
	};
	const fitted = fitCurve(
		{
			pointAt(u) {
				const { segment, t, s } = frame(u, u <= nominal[0] ? 'after' : 'before');
				const { value } = amountAt(amount, s);
				const point = pointOn(segment, t);
				if (value === 0) return point;
				const normal = outward(tangentOn(segment, t));
				return [point[0] + value * normal[0], point[1] + value * normal[1]];
			},
			tangentAt(u, side) {
				const { segment, t, s } = frame(u, side);
				const { value, slope } = amountAt(amount, s);
				const tangent = tangentOn(segment, t);
				if (constant || slope === 0) return tangent;
				const along = segment.kind === 'line' ? 1 : 1 + curvatureOn(segment, t) * value;
				const normal = outward(tangent);
				return unit([along * tangent[0] + slope * normal[0], along * tangent[1] + slope * normal[1]]);
			}
		},
		nominal,
		accuracy
	);
	return { path: fitted.path, from, to, deviation: fitted.deviation };
}

const loopSamples = 32;

/**
 * As offsetPath, but stretches where the moved line would turn back on itself are left out; the turning points are found to
 * 1/32 of a segment and then halved down to 1e-3 mm. The remaining parts cross or nearly meet and want joining.
 */
export function offsetWithoutLoops(
	path: Path,
	amount: Amount,
	breaks: readonly number[],
	accuracy: number
): MovedPart[] {
	if (roomFor(path, amount) > 1) return offsetPath(path, amount, breaks, accuracy);
	const length = pathLength(path);
	const corners = cornersOf(path).filter((s) => s > 0 && s < length);
	const turns = [...turningPoints(path, amount)].filter((s) => corners.every((corner) => Math.abs(corner - s) > 1e-3));
	const bounds = [0, ...corners, ...turns, length].sort((a, b) => a - b);
	const parts: MovedPart[] = [];
	for (let i = 0; i + 1 < bounds.length; i++) {
		if (bounds[i + 1] - bounds[i] < 1e-3 || !runsForward(path, amount, (bounds[i] + bounds[i + 1]) / 2)) continue;
		parts.push(offsetStretch(path, bounds[i], bounds[i + 1], amount, breaks, accuracy));
	}
	return parts;
}

function runsForward(path: Path, amount: Amount, s: number): boolean {
	return 1 + curvatureAt(path, s) * amountAt(amount, s).value > 0;
}

function turningPoints(path: Path, amount: Amount): number[] {
	const starts = segmentStarts(path);
	const found: number[] = [];
	for (let index = 0; index < path.length; index++) {
		if (path[index].kind === 'line') continue;
		const from = starts[index];
		const step = (starts[index + 1] - from) / loopSamples;
		for (let i = 0; i < loopSamples; i++) {
			let low = from + i * step + step * 1e-6;
			let high = from + (i + 1) * step - step * 1e-6;
			const before = runsForward(path, amount, low);
			if (runsForward(path, amount, high) === before) continue;
			while (high - low > 1e-3) {
				const middle = (low + high) / 2;
				if (runsForward(path, amount, middle) === before) low = middle;
				else high = middle;
			}
			found.push((low + high) / 2);
		}
	}
	return found;
}

/** The point that arc length s moves to. */
export function movedPoint(path: Path, amount: Amount, s: number, side: 'before' | 'after' = 'before'): Point {
	const starts = segmentStarts(path);
	const index = segmentIndex(starts, s, side);
	const segment = path[index];
	const t = parameterAt(segment, Math.min(Math.max(s - starts[index], 0), starts[index + 1] - starts[index]), measured);
	const { value } = amountAt(amount, s);
	const point = pointOn(segment, t);
	if (value === 0) return point;
	const normal = outward(tangentOn(segment, t));
	return [point[0] + value * normal[0], point[1] + value * normal[1]];
}

const curvatureSamples = 24;

/**
 * The factor by which the amount could be multiplied before the moved line turns back on itself: 1 or more if it does not.
 * Curvature is sampled 24 times a segment, so a bend shorter than that is not seen.
 */
export function roomFor(path: Path, amount: Amount): number {
	const starts = segmentStarts(path);
	let factor = Infinity;
	for (let index = 0; index < path.length; index++) {
		const segment = path[index];
		if (segment.kind === 'line') continue;
		const curvatures = sampledCurvatures(segment);
		const span = starts[index + 1] - starts[index];
		for (let i = 0; i < curvatures.length; i++) {
			if (curvatures[i] === 0) continue;
			const t = (i + 0.5) / curvatureSamples;
			const { value } = amountAt(amount, starts[index] + t * span);
			const turn = -curvatures[i] * value;
			if (turn > 0) factor = Math.min(factor, 1 / turn);
		}
	}
	return factor;
}

const curvatureMemo = new WeakMap<object, Float64Array>();

function sampledCurvatures(segment: Path[number]): Float64Array {
	let found = curvatureMemo.get(segment);
	if (!found) {
		found = new Float64Array(curvatureSamples);
		for (let i = 0; i < curvatureSamples; i++) found[i] = curvatureOn(segment, (i + 0.5) / curvatureSamples);
		curvatureMemo.set(segment, found);
	}
	return found;
}

/** Arc length to the parameter that runs evenly in t inside each segment and agrees with arc length at the joints. */
function nominalAt(path: Path, starts: readonly number[], s: number): number {
	const index = segmentIndex(starts, s, 'before');
	const segment = path[index];
	if (segment.kind === 'line') return s;
	const span = starts[index + 1] - starts[index];
	const within = s - starts[index];
	if (within <= 0 || within >= span) return s;
	return starts[index] + span * parameterAt(segment, within, measured);
}

function segmentIndex(starts: readonly number[], s: number, side: 'before' | 'after'): number {
	const last = starts.length - 2;
	let low = 0;
	let high = last;
	while (low < high) {
		const middle = (low + high + 1) >> 1;
		if (side === 'after' ? starts[middle] <= s + 1e-9 : starts[middle] < s - 1e-9) low = middle;
		else high = middle - 1;
	}
	return low;
}
