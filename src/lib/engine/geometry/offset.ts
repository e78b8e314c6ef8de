/**
 * Moves a path at right angles to itself by an amount that may vary along it (a generalised offset curve).
 *
 * With unit tangent T, outward normal n, curvature k and amount m at arc length s, the moved point is p + m·n and its
 * derivative (1 + k·m)·T + m′·n (Farouki, Pythagorean-Hodograph Curves, 2008, on offset curves). Where 1 + k·m ≤ 0 the moved
 * line would turn back on itself.
 */
import { cornerAngle, measured } from './accuracy.ts';
import { parameterAt, segmentLengthTo } from './arc-length.ts';
import { fitCurve, type Fitted } from './fit.ts';
import { curvatureAt, jointsOf, pathLength, portion, segmentStarts } from './path.ts';
import { norm, outward, unit } from './point.ts';
import { curvatureOn, derivativeOn, pointOn, slowestOn, tangentOn } from './segment.ts';
import type { Path, Point, Segment } from './types.ts';

/** mm along the outward normal at arc length s: the same everywhere, or a function with its slope. */
export type Amount = number | ((s: number) => { readonly value: number; readonly slope: number });

/** One smooth stretch of a path, moved. */
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

function bendsOf(path: Path, amount: Amount, accuracy: number): number[] {
	return jointsOf(path)
		.filter(({ s, turn }) => turn > cornerAngle || turn * Math.abs(amountAt(amount, s).value) > accuracy / 2)
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
	return [from, (from + to) / 2, to].every((s) => amountAt(amount, s).value === 0);
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
	const constant = typeof amount === 'number';
	const frame = (u: number, side: 'before' | 'after') => {
		const index = segmentIndex(starts, u, side);
		const segment = path[index];
		const span = starts[index + 1] - starts[index];
		const t = span > 0 ? Math.min(1, Math.max(0, (u - starts[index]) / span)) : 0;
		const s = constant || segment.kind === 'line' ? u : starts[index] + segmentLengthTo(segment, t, measured);
		return { segment, t, s };
	};
	return fitCurve(
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
				// Just inside the interval, as the slope may jump at a break.
				const { value, slope } = amountAt(amount, side === 'after' ? s + measured : s - measured);
				const tangent = tangentOn(segment, t);
				if (constant || slope === 0) return tangent;
				const along = segment.kind === 'line' ? 1 : 1 + curvatureOn(segment, t) * value;
				const normal = outward(tangent);
				return unit([along * tangent[0] + slope * normal[0], along * tangent[1] + slope * normal[1]]);
			}
		},
		nominal,
		accuracy,
		starts
	);
}

/** Both ends and the breaks between them, rising, none beside another. */
function boundsBetween(from: number, to: number, breaks: readonly number[]): number[] {
	const bounds = [from];
	for (const s of breaks) if (s > bounds[bounds.length - 1] + sameBreak && s < to - sameBreak) bounds.push(s);
	bounds.push(to);
	return bounds;
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
	const corners = bendsOf(path, amount, accuracy);
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

/**
 * The factor by which the amount could be multiplied before the moved line turns back on itself: 1 or more if it does not; 0
 * where a cusp would move. Curvature is asked at 24 places of each segment and where its hodograph comes nearest to nothing,
 * which is where a bend shorter than those lies.
 */
export function roomFor(path: Path, amount: Amount): number {
	const starts = segmentStarts(path);
	let factor = Infinity;
	for (let index = 0; index < path.length; index++) {
		const segment = path[index];
		if (segment.kind === 'line') continue;
		const span = starts[index + 1] - starts[index];
		for (const { t, curvature } of curvaturesOf(segment)) {
			if (curvature === 0) continue;
			const { value } = amountAt(amount, starts[index] + t * span);
			if (value === 0) continue;
			if (!Number.isFinite(curvature)) return 0;
			const turn = -curvature * value;
			if (turn > 0) factor = Math.min(factor, 1 / turn);
		}
	}
	return factor;
}

/** A point slower than this, mm per unit of t, stands still. */
const standstill = 1e-6;

function isCusp(segment: Path[number], t: number): boolean {
	return norm(derivativeOn(segment, t)) < standstill;
}

const curvatureSamples = 24;
const curvatures = new WeakMap<object, readonly { readonly t: number; readonly curvature: number }[]>();

function curvaturesOf(segment: Path[number]) {
	let found = curvatures.get(segment);
	if (!found) {
		const even = Array.from({ length: curvatureSamples }, (_, i) => (i + 0.5) / curvatureSamples);
		found = [
			...even.map((t) => ({ t, curvature: curvatureOn(segment, t) })),
			...slowestOn(segment).map((t) => ({ t, curvature: isCusp(segment, t) ? Infinity : curvatureOn(segment, t) }))
		];
		curvatures.set(segment, found);
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
