import { Clipper, FillRule } from 'clipper2-ts';
import type { PathsD } from 'clipper2-ts';
import type { Point } from './types.ts';
import { polygonArea } from './area.ts';

export { polygonArea } from './area.ts';

/*
 * What polygons share and do not share, by the Clipper2 library, which only this module knows. Polygons are lists of points in
 * mm, not repeated at the end. In one list they run one way and their holes the other; what comes back runs clockwise as
 * seen (y down), holes the other way. Points come back rounded to 1e-4 mm, so a result is exact to about that much
 * along its outline, and slivers narrower than that may appear or vanish: never ask whether an area is exactly 0.
 */

const precision = 4;

type Polygons = readonly (readonly Point[])[];

/** What lies in a and not in b. */
export function difference(a: Polygons, b: Polygons): Point[][] {
	return fromClipper(Clipper.differenceD(toClipper(a), toClipper(b), FillRule.NonZero, precision));
}

/** What lies in a or in b. */
export function union(a: Polygons, b: Polygons): Point[][] {
	return fromClipper(Clipper.unionD(toClipper(a), toClipper(b), FillRule.NonZero, precision));
}

/** Whether no more than `tolerance` mm² of inner lies outside outer. */
export function containsWithin(outer: Polygons, inner: Polygons, tolerance: number): boolean {
	return polygonArea(difference(inner, outer)) <= tolerance;
}

function toClipper(polygons: Polygons): PathsD {
	return polygons.map((polygon) => polygon.map(([x, y]) => ({ x, y })));
}

function fromClipper(paths: PathsD): Point[][] {
	return paths.map((path) => path.map(({ x, y }): Point => [x, y]));
}
