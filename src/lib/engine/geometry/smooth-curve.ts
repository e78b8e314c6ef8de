import type { Cubic, Point } from './types.ts';
import { add, angleBetween, distance, scale, subtract } from './point.ts';
import { cubic } from './segment.ts';

/**
 * The one cubic that leaves `from` and arrives at `to` in the unit directions given, its handles as long as a pleasing line
 * asks: near an arc of a circle where the two directions turn from the chord alike. `from` and `to` must be two points.
 *
 * Source: J. D. Hobby, Smooth, Easy to Compute Interpolating Splines, Discrete & Computational Geometry 1 (1986) 123–140, with
 * tension 1.
 */
export function smoothCurve(from: Point, leaving: Point, to: Point, arriving: Point): Cubic {
	const chord = subtract(to, from);
	const length = distance(from, to);
	const theta = angleBetween(chord, leaving);
	const phi = angleBetween(arriving, chord);
	return cubic(
		from,
		add(from, scale(leaving, length * handle(theta, phi))),
		subtract(to, scale(arriving, length * handle(phi, theta))),
		to
	);
}

/** A handle's length as a share of the chord. */
function handle(theta: number, phi: number): number {
	const [st, ct, sp, cp] = [Math.sin(theta), Math.cos(theta), Math.sin(phi), Math.cos(phi)];
	const alpha = Math.SQRT2 * (st - sp / 16) * (sp - st / 16) * (ct - cp);
	const root = Math.sqrt(5);
	return (2 + alpha) / (3 * (1 + ((root - 1) * ct + (3 - root) * cp) / 2));
}
