import type { Point } from './engine.ts';

/** Whether a point lies inside an outline, by the even-odd rule. Points are not taken apart into names: a name is looked for at thousands of places. */
export function isInside(point: Point, outline: readonly Point[]): boolean {
	const x = point[0];
	const y = point[1];
	let inside = false;
	for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
		const a = outline[j];
		const b = outline[i];
		if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
	}
	return inside;
}
