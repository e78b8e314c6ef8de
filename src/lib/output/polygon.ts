import type { Box, Point } from '../engine/index.ts';

/** Whether a closed polygon and an upright box have a point in common. */
export function meetsBox(polygon: readonly Point[], box: Box): boolean {
	const middle: Point = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
	return (
		polygon.some((from, i) => crossesBox(from, polygon[(i + 1) % polygon.length], box)) || isInside(middle, polygon)
	);
}

/** A straight line between two points has a stretch in the box (Liang and Barsky, “A new concept and method for line clipping”, 1984). */
export function crossesBox([x0, y0]: Point, [x1, y1]: Point, { left, top, right, bottom }: Box): boolean {
	let [from, to] = [0, 1];
	for (const [step, room] of [
		[x0 - x1, x0 - left],
		[x1 - x0, right - x0],
		[y0 - y1, y0 - top],
		[y1 - y0, bottom - y0]
	]) {
		if (step === 0 && room < 0) return false;
		if (step < 0) from = Math.max(from, room / step);
		if (step > 0) to = Math.min(to, room / step);
	}
	return from <= to;
}

/** Even–odd rule. */
export function isInside([x, y]: Point, polygon: readonly Point[]): boolean {
	return polygon.reduce((inside, from, i) => {
		const to = polygon[(i + 1) % polygon.length];
		const crosses = from[1] > y !== to[1] > y && x < from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
		return crosses ? !inside : inside;
	}, false);
}
