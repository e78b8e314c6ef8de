/** Curves that are known only by what they answer, for those that fit Béziers to them. */
import type { Point } from './types.ts';

export interface CurveSample {
	/** The curve at parameter u. */
	pointAt(u: number): Point;
	/** Unit direction of travel at u; at a break, as seen from inside the interval on that side. */
	tangentAt(u: number, side: 'before' | 'after'): Point;
	/** If that is less work than one by one: puts as many points as there is room for in the lists, at even steps inside (u0, u1). */
	pointsBetween?(u0: number, u1: number, xs: Float64Array, ys: Float64Array): void;
}

/** A curve that is smooth in its parameter from joint to joint, not only as a line. */
export interface SmoothCurve extends CurveSample {
	/** The curve at a joint: halfway between its two sides, where a turn there has brought them apart. */
	jointAt(u: number): Point;
	/** Where it goes at u and how fast, mm per unit of the parameter, on the same sides; [0, 0] where it all but stands still. */
	velocityAt(u: number, side: 'before' | 'after'): Point;
	/** Puts the points at the seven even steps inside (u0, u1), which has no joint, or the eight halfway between them and its ends, in the lists. */
	pointsInside(
		u0: number,
		u1: number,
		which: 'steps' | 'halfway',
		xs: Float64Array,
		ys: Float64Array,
		at: number
	): void;
}
