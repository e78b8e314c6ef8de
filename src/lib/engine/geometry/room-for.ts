import { valueAt, type Amount } from './amount.ts';
import { segmentStarts } from './path.ts';
import { cross, distance, dot, norm, subtract, unit } from './point.ts';
import { curvatureOn, derivativeOn, slowestOn } from './segment.ts';
import type { Cubic, Path, Segment } from './types.ts';

const curvatureSamples = 24;

/**
 * Whether a line may be moved: the factor by which the amount could be multiplied before the moved line turns back on itself, 0
 * where a cusp would move. More than 1 if it does not turn back, and then no more is known than that. Curvature is asked
 * at 24 places of each segment, at its ends and where its hodograph comes nearest to nothing, which is where a bend shorter than those
 * lies; not at all on a segment that surely bends less than `greatest` would need.
 *
 * @param greatest the greatest amount along the path, mm, without sign
 */
export function roomFor(path: Path, amount: Amount, greatest: number): number {
	const starts = segmentStarts(path);
	let factor = Infinity;
	for (let index = 0; index < path.length; index++) {
		const segment = path[index];
		if (segment.kind === 'line' || greatest * bendLimit(segment) < safely || isStraight(segment)) continue;
		const span = starts[index + 1] - starts[index];
		const roomAt = (t: number, curvature: number): number => {
			if (curvature === 0) return Infinity;
			const value = valueAt(amount, starts[index] + t * span);
			if (value === 0) return Infinity;
			if (!Number.isFinite(curvature)) return 0;
			return curvature * value < 0 ? -1 / (curvature * value) : Infinity;
		};
		for (let i = 0; i < curvatureSamples; i++) {
			const t = (i + 0.5) / curvatureSamples;
			factor = Math.min(factor, roomAt(t, curvatureOn(segment, t)));
		}
		if (!isCusp(segment, 0)) factor = Math.min(factor, roomAt(0, curvatureOn(segment, 0)));
		if (!isCusp(segment, 1)) factor = Math.min(factor, roomAt(1, curvatureOn(segment, 1)));
		for (const t of slowestOn(segment)) {
			const stands = isCusp(segment, t);
			if (!(stands && isEnd(t))) factor = Math.min(factor, roomAt(t, stands ? Infinity : curvatureOn(segment, t)));
		}
	}
	return factor;
}

/** Below 1 by more than rounding. */
const safely = 0.999;

/**
 * A curvature that a cubic nowhere exceeds, 1/mm: |p′ × p″| / |p′|³ ≤ |p″| / |p′|², with p″ no greater than at its ends and p′, a
 * mean of the legs of the control polygon, running along the chord at least as far as the least of them. Infinity where one
 * of them does not run forward.
 */
function bendLimit({ from, control1, control2, to }: Cubic): number {
	const x0 = control1[0] - from[0];
	const y0 = control1[1] - from[1];
	const x1 = control2[0] - control1[0];
	const y1 = control2[1] - control1[1];
	const x2 = to[0] - control2[0];
	const y2 = to[1] - control2[1];
	const x = to[0] - from[0];
	const y = to[1] - from[1];
	const chord = Math.sqrt(x * x + y * y);
	const least = (3 * Math.min(x0 * x + y0 * y, x1 * x + y1 * y, x2 * x + y2 * y)) / chord;
	if (!(least > 0)) return Infinity;
	const early = (x1 - x0) * (x1 - x0) + (y1 - y0) * (y1 - y0);
	const late = (x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1);
	return (6 * Math.sqrt(Math.max(early, late))) / (least * least);
}

/** How far the control points of a curve that is a straight line may lie from it by rounding, mm. */
const straightness = 1e-9;

/** Whether a curve runs straight from end to end without turning back, whatever the lengths of its handles. */
function isStraight({ from, control1, control2, to }: Cubic): boolean {
	const length = distance(from, to);
	if (length === 0) return false;
	const ahead = unit(subtract(to, from));
	return [control1, control2].every((control) => {
		const reached = subtract(control, from);
		const along = dot(ahead, reached);
		return Math.abs(cross(ahead, reached)) <= straightness && along >= -straightness && along <= length + straightness;
	});
}

/** A point slower than this, mm per unit of t, stands still. */
const standstill = 1e-6;

function isCusp(segment: Segment, t: number): boolean {
	return norm(derivativeOn(segment, t)) < standstill;
}

/** A curve without a handle stands still at its end, where there is nothing to turn back. */
function isEnd(t: number): boolean {
	return t < 1e-6 || t > 1 - 1e-6;
}
