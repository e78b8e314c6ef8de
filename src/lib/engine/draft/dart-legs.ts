import type { Path, Point, Segment } from '../geometry/types.ts';
import type { Dart, DartWidth, FoldDart, Piece } from './types.ts';
import { add, angleBetween, distance, dot, lerp, outward, scale, subtract, unit } from '../geometry/point.ts';
import { cubic, line } from '../geometry/segment.ts';
import { pointAt, straight } from '../geometry/path.ts';
import { edgeOf } from './find.ts';
import { remembered, rememberedOfPart } from '../geometry/memo.ts';

/*
 * The lines a dart is sewn on. The fold line halves the angle between the two mouth ends as seen from the point. A dart with
 * `widths` has shaped legs: each runs smoothly through its half-widths, measured square from the fold line, `left` and `right`
 * as one looks from the mouth (a fold dart: from its first end) to the point, so that `left` is `outward` of that direction. On a clockwise outline the leg that starts at
 * `from` is then the right one.
 *
 * Shaped legs are piecewise cubics over the fold line with the slopes of F. N. Fritsch & J. Butland, A Method for Constructing
 * Local Monotone Piecewise Cubic Interpolants, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304, and their three-point slopes at
 * the ends: no leg swings wider than the widths that were given, one is level where it is widest, and widths that lie on
 * straight legs give straight legs. A cubic over a line is a Bézier exactly, so nothing is fitted.
 */

export interface DartLegs {
	/** From the mouth's beginning to the point. */
	readonly from: Path;
	/** From the mouth's end to the point. */
	readonly to: Path;
	readonly mouthFrom: Point;
	readonly mouthTo: Point;
	/** Where the fold line comes out between the mouth ends. */
	readonly foldAt: Point;
	/** Between the mouth ends as seen from the point, radians, never negative. */
	readonly angle: number;
	/** Straight width between the mouth ends, mm. */
	readonly intake: number;
}

/** The legs of a dart. Thrown: a dart that opens on no edge of the piece. */
export const dartLegs: (piece: Piece, dart: Dart) => DartLegs = rememberedOfPart((piece: Piece, dart: Dart) => {
	const edge = edgeOf(piece, dart.edge);
	if (edge === undefined) throw new Error(`The dart ${dart.id} opens on no edge of ${piece.id}.`);
	return legsBetween(pointAt(edge.path, dart.from), pointAt(edge.path, dart.to), dart.point, dart.widths);
});

/** The legs of a dart whose mouth runs, along a clockwise outline, from one point to another. */
export function legsBetween(
	mouthFrom: Point,
	mouthTo: Point,
	point: Point,
	widths: readonly DartWidth[] = []
): DartLegs {
	const long = distance(mouthFrom, point);
	const short = distance(mouthTo, point);
	// A halving line divides the side opposite in the ratio of the sides beside it (Euclid VI.3).
	const foldAt = long + short > 0 ? lerp(mouthFrom, mouthTo, long / (long + short)) : point;
	return {
		from: shapedLeg(mouthFrom, point, foldAt, point, halfWidths(widths, 'right')),
		to: shapedLeg(mouthTo, point, foldAt, point, halfWidths(widths, 'left')),
		mouthFrom,
		mouthTo,
		foldAt,
		angle: Math.abs(angleBetween(subtract(mouthFrom, point), subtract(mouthTo, point))),
		intake: distance(mouthFrom, mouthTo)
	};
}

export interface FoldDartLegs {
	/** Both from the first end to the second. */
	readonly left: Path;
	readonly right: Path;
}

/** A width said this close to the widest, as a fraction of the fold line, takes its place. */
const sameFraction = 0.02;

/**
 * The legs of a fold dart: without `widths` straight from end to widest to end, half the intake on either side; with them smooth
 * through those half-widths, and through the widest unless one of them says the width there.
 */
export const foldDartLegs: (foldDart: FoldDart) => FoldDartLegs = remembered((foldDart: FoldDart) => {
	const [first, second] = foldDart.ends;
	const { at, intake } = foldDart.widest;
	if (foldDart.widths.length === 0) {
		const along = unit(subtract(second, first));
		const middle = lerp(first, second, at);
		const leg = (offset: number): Path => {
			const widest = add(middle, scale(outward(along), offset));
			return [line(first, widest), line(widest, second)];
		};
		return { left: leg(intake / 2), right: leg(-intake / 2) };
	}
	const said = foldDart.widths.some((width) => Math.abs(width.at - at) < sameFraction);
	const widths = said
		? foldDart.widths
		: [...foldDart.widths, { at, left: intake / 2, right: intake / 2 }].sort((a, b) => a.at - b.at);
	return {
		left: shapedLeg(first, second, first, second, halfWidths(widths, 'left')),
		right: shapedLeg(first, second, first, second, halfWidths(widths, 'right'))
	};
});

function halfWidths(widths: readonly DartWidth[], side: 'left' | 'right'): { at: number; offset: number }[] {
	return widths.map((width) => ({ at: width.at, offset: side === 'left' ? width.left : -width.right }));
}

/**
 * From `start` to `end` through offsets from the fold line. Widths that do not lie between the two (a mouth that was cut back
 * beyond them) are passed over.
 */
function shapedLeg(
	start: Point,
	end: Point,
	foldStart: Point,
	foldEnd: Point,
	widths: readonly { readonly at: number; readonly offset: number }[]
): Path {
	const length = distance(foldStart, foldEnd);
	if (widths.length === 0 || length === 0) return straight(start, end);
	const along = unit(subtract(foldEnd, foldStart));
	const left = outward(along);
	const inFrame = (p: Point): { x: number; y: number } => {
		const v = subtract(p, foldStart);
		return { x: dot(v, along), y: dot(v, left) };
	};
	const first = inFrame(start);
	const last = inFrame(end);
	const nodes = [first];
	for (const { at, offset } of widths) {
		const x = at * length;
		if (x > nodes[nodes.length - 1].x && x < last.x) nodes.push({ x, y: offset });
	}
	nodes.push(last);
	if (!(last.x > first.x)) return straight(start, end);

	const slopes = monotoneSlopes(nodes);
	const place = (x: number, y: number): Point => add(foldStart, add(scale(along, x), scale(left, y)));
	const leg: Segment[] = [];
	for (let i = 0; i + 1 < nodes.length; i++) {
		const third = (nodes[i + 1].x - nodes[i].x) / 3;
		leg.push(
			cubic(
				i === 0 ? start : leg[i - 1].to,
				place(nodes[i].x + third, nodes[i].y + third * slopes[i]),
				place(nodes[i + 1].x - third, nodes[i + 1].y - third * slopes[i + 1]),
				i + 2 === nodes.length ? end : place(nodes[i + 1].x, nodes[i + 1].y)
			)
		);
	}
	return leg;
}

function monotoneSlopes(nodes: readonly { readonly x: number; readonly y: number }[]): number[] {
	const steps: number[] = [];
	const secants: number[] = [];
	for (let i = 0; i + 1 < nodes.length; i++) {
		steps.push(nodes[i + 1].x - nodes[i].x);
		secants.push((nodes[i + 1].y - nodes[i].y) / steps[i]);
	}
	const last = secants.length - 1;
	if (last === 0) return [secants[0], secants[0]];
	const slopes = [endSlope(steps[0], steps[1], secants[0], secants[1])];
	for (let i = 1; i <= last; i++) {
		if (secants[i - 1] * secants[i] <= 0) {
			slopes.push(0);
			continue;
		}
		const before = 2 * steps[i] + steps[i - 1];
		const after = steps[i] + 2 * steps[i - 1];
		slopes.push((before + after) / (before / secants[i - 1] + after / secants[i]));
	}
	slopes.push(endSlope(steps[last], steps[last - 1], secants[last], secants[last - 1]));
	return slopes;
}

/** Slope at an end of the parabola through the three nodes next to it, held to the sign and three times the size of the first secant. */
function endSlope(step: number, nextStep: number, secant: number, nextSecant: number): number {
	const slope = ((2 * step + nextStep) * secant - step * nextSecant) / (step + nextStep);
	if (slope * secant <= 0) return 0;
	if (secant * nextSecant <= 0 && Math.abs(slope) > 3 * Math.abs(secant)) return 3 * secant;
	return slope;
}
