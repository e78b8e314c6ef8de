import type { Path, Point } from './types.ts';

/**
 * The area that a closed path goes round, in mm²: positive clockwise as seen (y down), negative the other way; parts gone
 * round twice count twice. A path whose ends do not meet is closed by a straight line. Exact to rounding, curves too: ½∮(x dy − y dx)
 * of a cubic is a bilinear form in its control points (by the divergence theorem; checked against the shoelace sum).
 */
export function signedArea(closed: Path): number {
	// About the start, so that an outline far from the origin loses nothing.
	const [ox, oy] = closed[0].from;
	let sum = 0;
	for (const segment of closed) {
		const x0 = segment.from[0] - ox;
		const y0 = segment.from[1] - oy;
		const x3 = segment.to[0] - ox;
		const y3 = segment.to[1] - oy;
		if (segment.kind === 'line') {
			sum += 10 * (x0 * y3 - y0 * x3);
			continue;
		}
		const x1 = segment.control1[0] - ox;
		const y1 = segment.control1[1] - oy;
		const x2 = segment.control2[0] - ox;
		const y2 = segment.control2[1] - oy;
		sum +=
			6 * (x0 * y1 - y0 * x1 + x2 * y3 - y2 * x3) +
			3 * (x0 * y2 - y0 * x2 + x1 * y2 - y1 * x2 + x1 * y3 - y1 * x3) +
			(x0 * y3 - y0 * x3);
	}
	return sum / 20;
}

/** The area of polygons taken together, in mm², by the shoelace sum: holes, which run the other way, take off. Positive clockwise as seen. */
export function polygonArea(polygons: readonly (readonly Point[])[]): number {
	let sum = 0;
	for (const polygon of polygons) {
		if (polygon.length === 0) continue;
		const [ox, oy] = polygon[0];
		for (let i = 1; i + 1 < polygon.length; i++) {
			sum += (polygon[i][0] - ox) * (polygon[i + 1][1] - oy) - (polygon[i][1] - oy) * (polygon[i + 1][0] - ox);
		}
	}
	return 0.5 * sum;
}
