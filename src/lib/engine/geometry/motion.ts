import type { Motion, Path, Point, Segment } from './types.ts';

export const identity: Motion = [1, 0, 0, 1, 0, 0];

export function translation(dx: number, dy: number): Motion {
	return [1, 0, 0, 1, dx, dy];
}

/** A turn about a point, radians, clockwise as seen. */
export function rotation(angle: number, about: Point): Motion {
	const cos = Math.cos(angle);
	const sin = Math.sin(angle);
	return [cos, sin, -sin, cos, about[0] - cos * about[0] + sin * about[1], about[1] - sin * about[0] - cos * about[1]];
}

/** The mirror image in the line through a and b, which must be two points. */
export function reflection(a: Point, b: Point): Motion {
	const x = b[0] - a[0];
	const y = b[1] - a[1];
	const k = 2 / (x * x + y * y);
	const xx = 1 - k * y * y;
	const xy = k * x * y;
	const yy = 1 - k * x * x;
	return [xx, xy, xy, yy, a[0] - xx * a[0] - xy * a[1], a[1] - xy * a[0] - yy * a[1]];
}

/** Larger or smaller by k about the origin. */
export function scaling(k: number): Motion {
	return [k, 0, 0, k, 0, 0];
}

/** The motion that does `first` and then `second`. */
export function compose(first: Motion, second: Motion): Motion {
	const [a, b, c, d, e, f] = second;
	return [
		a * first[0] + c * first[1],
		b * first[0] + d * first[1],
		a * first[2] + c * first[3],
		b * first[2] + d * first[3],
		a * first[4] + c * first[5] + e,
		b * first[4] + d * first[5] + f
	];
}

/** How areas change: 1 for a rigid motion, −1 for a mirror image. */
export function determinant(motion: Motion): number {
	return motion[0] * motion[3] - motion[1] * motion[2];
}

export function movePoint(motion: Motion, p: Point): Point {
	return [motion[0] * p[0] + motion[2] * p[1] + motion[4], motion[1] * p[0] + motion[3] * p[1] + motion[5]];
}

export function moveSegment(motion: Motion, segment: Segment): Segment {
	const from = movePoint(motion, segment.from);
	const to = movePoint(motion, segment.to);
	if (segment.kind === 'line') return { kind: 'line', from, to };
	return {
		kind: 'cubic',
		from,
		control1: movePoint(motion, segment.control1),
		control2: movePoint(motion, segment.control2),
		to
	};
}

/** Ends that met to the bit still do. */
export function movePath(motion: Motion, path: Path): Path {
	return path.map((segment) => moveSegment(motion, segment));
}
