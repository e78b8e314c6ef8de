import { parsePathData, pointAt, tangentAt } from '../engine/index.ts';
import type { Path, Point } from '../engine/index.ts';

/*
 * The little geometry that drawing needs on top of what the engine's door offers. mm; x to the right, y down; no unit
 * vectors but where said.
 */

/** Path data that the engine itself wrote. */
export function ownPath(data: string): Path {
	const parsed = parsePathData(data);
	if ('problem' in parsed) throw new Error(`path data of our own does not read: ${parsed.problem}`);
	return parsed.path;
}

/** `by` times a step away from a point. */
export function stepped(from: Point, step: Point, by = 1): Point {
	return [from[0] + by * step[0], from[1] + by * step[1]];
}

/** A straight line from point to point through all of them, two or more. */
export function through(...points: readonly Point[]): Path {
	return points.slice(1).map((to, i) => ({ kind: 'line', from: points[i], to }));
}

/** A closed polygon. */
export function closedThrough(...points: readonly Point[]): Path {
	return through(...points, points[0]);
}

/** The point `out` mm outward of the place at arc length s on the edge of a clockwise outline, square to it. */
export function besideEdge(path: Path, s: number, out: number, side?: 'before' | 'after'): Point {
	const [tx, ty] = tangentAt(path, s, side);
	return stepped(pointAt(path, s), [ty, -tx], out);
}

/**
 * Control arm of a quarter circle drawn as one cubic, in radii: off the circle by 0.03 % of the radius at the most
 * (4/3·tan(π/8); Goldapp, “Approximation of circular arcs by cubic polynomials”, 1991, gives this and closer ones).
 */
const arm = (4 / 3) * Math.tan(Math.PI / 8);

/** A circle about a point, as a closed path of four cubics. */
export function ring(middle: Point, radius: number): Path {
	const quarter = ([x, y]: Point): Path[number] => {
		const at = (along: number, across: number) =>
			stepped(middle, [x * along - y * across, y * along + x * across], radius);
		return { kind: 'cubic', from: at(1, 0), control1: at(1, arm), control2: at(arm, 1), to: at(0, 1) };
	};
	return [quarter([1, 0]), quarter([0, 1]), quarter([-1, 0]), quarter([0, -1])];
}
