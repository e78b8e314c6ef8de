import type { Motion, Point } from './engine.ts';

export const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]];
export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
export const times = (v: Point, k: number): Point => [v[0] * k, v[1] * k];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];
export const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
export const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

export function unit(v: Point): Point {
	const length = Math.hypot(v[0], v[1]);
	return length > 0 ? [v[0] / length, v[1] / length] : [0, 0];
}

/** Turned clockwise as seen, radians. */
export function turned([x, y]: Point, angle: number): Point {
	return [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
}

/** Whether a motion turns things over, so that outlines run anticlockwise afterwards. */
export const turnsOver = (motion: Motion): boolean => motion[0] * motion[3] - motion[1] * motion[2] < 0;

/**
 * The direction out of the cloth, for a direction of travel along its outline: to the left of it, or to the right where the
 * piece was turned over.
 */
export function outOf([x, y]: Point, over: boolean): Point {
	return over ? [-y, x] : [y, -x];
}
