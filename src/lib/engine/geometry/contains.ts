import { lineCrossings } from './crossings.ts';
import { measured } from './accuracy.ts';
import type { Path, Point } from './types.ts';

/**
 * Whether a point lies inside a closed outline, by the even-odd rule along a ray (a slanted one, so that the usual level and
 * plumb lines of an outline are not touched). A point within `measured` of the outline may be said to lie on either side.
 */
export function contains(closed: Path, point: Point): boolean {
	const toward: Point = [point[0] + 0.7390851, point[1] + 0.673612];
	const ahead = lineCrossings(closed, point, toward, measured).filter(({ u }) => u > 0);
	return ahead.length % 2 === 1;
}
