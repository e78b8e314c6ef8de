import type { Point } from './types.ts';

// Points double as vectors. Millimetres, x to the right, y down: a positive angle turns clockwise as seen.

export function add(a: Point, b: Point): Point {
	return [a[0] + b[0], a[1] + b[1]];
}

/** a − b: the vector from b to a. */
export function subtract(a: Point, b: Point): Point {
	return [a[0] - b[0], a[1] - b[1]];
}

export function scale(p: Point, k: number): Point {
	return [p[0] * k, p[1] * k];
}

export function dot(a: Point, b: Point): number {
	return a[0] * b[0] + a[1] * b[1];
}

/** Positive where b lies clockwise (as seen) of a. */
export function cross(a: Point, b: Point): number {
	return a[0] * b[1] - a[1] * b[0];
}

export function norm(v: Point): number {
	return Math.sqrt(v[0] * v[0] + v[1] * v[1]);
}

export function distance(a: Point, b: Point): number {
	const x = b[0] - a[0];
	const y = b[1] - a[1];
	return Math.sqrt(x * x + y * y);
}

/**
 * Length of the vector (x, y), safe from overflow. In place of `Math.hypot`, whose last bits the language leaves open: every
 * machine is to draw the same line. (And it lays out a list at each call.)
 */
export function lengthOf(x: number, y: number): number {
	const across = Math.abs(x);
	const down = Math.abs(y);
	const longer = across > down ? across : down;
	if (longer === 0) return 0;
	const a = across / longer;
	const b = down / longer;
	return Math.sqrt(a * a + b * b) * longer;
}

/** The direction of a vector, of length 1; [0, 0] where it has none. */
export function unit(v: Point): Point {
	const length = lengthOf(v[0], v[1]);
	return length > 0 ? [v[0] / length, v[1] / length] : [0, 0];
}

/** a at t = 0 and b at t = 1, both to the bit. */
export function lerp(a: Point, b: Point, t: number): Point {
	const s = 1 - t;
	return [s * a[0] + t * b[0], s * a[1] + t * b[1]];
}

export function midpoint(a: Point, b: Point): Point {
	return [0.5 * (a[0] + b[0]), 0.5 * (a[1] + b[1])];
}

/** p turned about a point, radians, clockwise as seen. */
export function rotate(p: Point, angle: number, about: Point): Point {
	const cos = Math.cos(angle);
	const sin = Math.sin(angle);
	const x = p[0] - about[0];
	const y = p[1] - about[1];
	return [about[0] + cos * x - sin * y, about[1] + sin * x + cos * y];
}

/** p reflected in the line through a and b, which must be two points. */
export function mirrored(p: Point, a: Point, b: Point): Point {
	const x = b[0] - a[0];
	const y = b[1] - a[1];
	const across = (2 * (x * (p[1] - a[1]) - y * (p[0] - a[0]))) / (x * x + y * y);
	return [p[0] + y * across, p[1] - x * across];
}

/** Left of travel as seen, which is out of a clockwise outline. As long as the tangent. */
export function outward(tangent: Point): Point {
	return [tangent[1], -tangent[0]];
}

/** The angle that turns a onto b, in (−π, π], positive clockwise as seen. */
export function angleBetween(a: Point, b: Point): number {
	return Math.atan2(cross(a, b), dot(a, b));
}
