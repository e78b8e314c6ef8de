/** One cubic for two that follow one another on a smooth curve, where it stays as near to the curve's samples. */
import { fitHandles, sampled, samplesRoom, type FittedSegment, type Samples } from './fit-handles.ts';
import { held } from './hermite-cubic.ts';
import { cross, distance, dot, lerp, norm, subtract } from './point.ts';
import { line, tangentOn } from './segment.ts';
import type { Point, Segment } from './types.ts';

/** A fitted stretch with `held` samples of the curve and where on the segment each lies, from `at` on in lists shared by many. */
export interface HeldStretch extends FittedSegment {
	readonly at: number;
}

/** The samples of many stretches, `held` of each, and where on its segment each lies. */
export type HeldSamples = Samples;

const room = samplesRoom();
/** Stretches that turn by more than this together (cosine) are not tried. */
const leastCosine = Math.cos(1);
/** A first guess that misses by more times the accuracy than this at the joint is given up. */
const hopeless = 100;
const straightness = 1e-9;

/**
 * Two pieces of one cubic, cut at λ, leave the cut with handles as λ to 1 − λ, and the whole has their outer handles over λ and
 * over 1 − λ (de Casteljau's construction backwards). From there the handles are fitted to the samples of both.
 * Undefined where no cubic stays within `accuracy` mm; else `one`'s samples become those of the whole.
 */
export function merged(
	one: HeldStretch,
	other: HeldStretch,
	lists: HeldSamples,
	accuracy: number
): HeldStretch | undefined {
	if (one.segment.kind === 'line' && other.segment.kind === 'line') return mergedLines(one, other, lists);
	const h1 = lastHandle(one.segment);
	const share = h1 / (h1 + firstHandle(other.segment));
	if (!(share > 0 && share < 1)) return undefined;
	const { from: start } = one.segment;
	const { from: joint, to: end } = other.segment;
	const m = 1 - share;
	const first = reach(start, control(one.segment, 'first'), 1 / share);
	const last = reach(end, control(other.segment, 'last'), 1 / m);
	const k0 = m * m * m;
	const k1 = 3 * m * m * share;
	const k2 = 3 * m * share * share;
	const k3 = share * share * share;
	const x = k0 * start[0] + k1 * first[0] + k2 * last[0] + k3 * end[0] - joint[0];
	const y = k0 * start[1] + k1 * first[1] + k2 * last[1] + k3 * end[1] - joint[1];
	if (!(x * x + y * y <= (hopeless * accuracy) ** 2)) return undefined;
	const out = tangentOn(one.segment, 0);
	const into = tangentOn(other.segment, 1);
	if (dot(out, into) < leastCosine) return undefined;
	for (let i = 0; i < held; i++) {
		room.xs[i] = lists.xs[one.at + i];
		room.ys[i] = lists.ys[one.at + i];
		room.ts[i] = share * lists.ts[one.at + i];
		room.xs[held + 1 + i] = lists.xs[other.at + i];
		room.ys[held + 1 + i] = lists.ys[other.at + i];
		room.ts[held + 1 + i] = share + m * lists.ts[other.at + i];
	}
	room.xs[held] = joint[0];
	room.ys[held] = joint[1];
	room.ts[held] = share;
	const found = fitHandles(
		room,
		start,
		out,
		end,
		into,
		distance(start, first),
		distance(last, end),
		accuracy,
		accuracy
	);
	if (found.deviation > accuracy) return undefined;
	// Those nearest to even steps are kept.
	for (let i = 0, j = 0; i < held; i++) {
		const t = (i + 1) / (held + 1);
		while (j + 1 < sampled && Math.abs(room.ts[j + 1] - t) <= Math.abs(room.ts[j] - t)) j++;
		lists.xs[one.at + i] = room.xs[j];
		lists.ys[one.at + i] = room.ys[j];
		lists.ts[one.at + i] = room.ts[j];
	}
	return { segment: found.segment, deviation: found.deviation, at: one.at };
}

/** Two lines that are one, but for rounding. */
function mergedLines(one: HeldStretch, other: HeldStretch, lists: HeldSamples): HeldStretch | undefined {
	const { from: start } = one.segment;
	const { from: joint, to: end } = other.segment;
	const chord = subtract(end, start);
	const length = norm(chord);
	const away = Math.abs(cross(chord, subtract(joint, start))) / length;
	if (!(away <= straightness * Math.max(1, length) && dot(subtract(joint, start), subtract(end, joint)) > 0))
		return undefined;
	for (let i = 0; i < held; i++) {
		const t = (i + 1) / (held + 1);
		[lists.xs[one.at + i], lists.ys[one.at + i]] = lerp(start, end, t);
		lists.ts[one.at + i] = t;
	}
	return { segment: line(start, end), deviation: Math.max(one.deviation, other.deviation, away), at: one.at };
}

/** A line's control points lie at its thirds. */
function control(segment: Segment, which: 'first' | 'last'): Point {
	if (segment.kind === 'cubic') return which === 'first' ? segment.control1 : segment.control2;
	return lerp(segment.from, segment.to, which === 'first' ? 1 / 3 : 2 / 3);
}

const firstHandle = (segment: Segment): number => distance(segment.from, control(segment, 'first'));
const lastHandle = (segment: Segment): number => distance(control(segment, 'last'), segment.to);

/** So many times as far from `from` as `to` is, the same way. */
const reach = (from: Point, to: Point, times: number): Point => [
	from[0] + (to[0] - from[0]) * times,
	from[1] + (to[1] - from[1]) * times
];
