import type { Box, Cubic, Path, Point } from './types.ts';
import { segmentLengthTo } from './arc-length.ts';
import { segmentBoxes, segmentStarts } from './path.ts';
import { distance } from './point.ts';
import { rootsBetween } from './roots.ts';
import { pointOn } from './segment.ts';

export interface Nearest {
	readonly s: number;
	readonly point: Point;
	readonly distance: number;
	readonly index: number;
	readonly t: number;
}

/**
 * The point of a path nearest to a given one: its arc length `s`, its segment and Bézier parameter. Where several are equally
 * near, the first. The distance is exact to rounding (to 1e-8 mm beside a cusp) and the least over the whole path: on
 * lines in closed form, on cubics at the ends and at every root of the quintic (p(t) − point)·p′(t). `accuracy` bounds the error of `s`.
 */
export function nearestOn(path: Path, point: Point, accuracy: number): Nearest {
	const boxes = segmentBoxes(path);
	let least = Infinity;
	let index = 0;
	let t = 0;
	// The segment with the nearest box first, so that most others need not be looked at.
	let likely = 0;
	if (path.length > 1) {
		let leastBox = Infinity;
		for (let i = 0; i < path.length; i++) {
			const away = squaredDistanceToBox(boxes[i], point);
			if (away < leastBox) {
				leastBox = away;
				likely = i;
			}
		}
	}
	for (let k = 0; k < path.length; k++) {
		const i = k === 0 ? likely : k <= likely ? k - 1 : k;
		if (k > 0 && squaredDistanceToBox(boxes[i], point) > least) continue;
		const segment = path[i];
		const at =
			segment.kind === 'line' ? nearestOnLine(segment.from, segment.to, point) : nearestOnCubic(segment, point);
		const on = pointOn(segment, at);
		const away = (on[0] - point[0]) ** 2 + (on[1] - point[1]) ** 2;
		if (away < least || (away === least && i < index)) {
			least = away;
			index = i;
			t = at;
		}
	}
	const nearest = pointOn(path[index], t);
	const starts = segmentStarts(path);
	const s =
		t === 0
			? starts[index]
			: t === 1
				? starts[index + 1]
				: starts[index] + segmentLengthTo(path[index], t, 0.5 * accuracy);
	return { s, point: nearest, distance: distance(nearest, point), index, t };
}

function squaredDistanceToBox(box: Box, point: Point): number {
	const x = Math.max(box.left - point[0], point[0] - box.right, 0);
	const y = Math.max(box.top - point[1], point[1] - box.bottom, 0);
	return x * x + y * y;
}

/** The parameter in [0, 1] of the point of the straight line from a to b nearest to a given one. */
export function nearestOnLine(a: Point, b: Point, point: Point): number {
	const x = b[0] - a[0];
	const y = b[1] - a[1];
	const square = x * x + y * y;
	if (!(square > 0)) return 0;
	return Math.min(1, Math.max(0, ((point[0] - a[0]) * x + (point[1] - a[1]) * y) / square));
}

/** The parameter in [0, 1] of the point of a cubic nearest to a given one. */
export function nearestOnCubic(cubic: Cubic, point: Point): number {
	const { from, control1, control2, to } = cubic;
	// p(t) − point = a + b t + c t² + d t³.
	const ax = from[0] - point[0];
	const ay = from[1] - point[1];
	const bx = 3 * (control1[0] - from[0]);
	const by = 3 * (control1[1] - from[1]);
	const cx = 3 * (from[0] - 2 * control1[0] + control2[0]);
	const cy = 3 * (from[1] - 2 * control1[1] + control2[1]);
	const dx = to[0] - from[0] - 3 * (control2[0] - control1[0]);
	const dy = to[1] - from[1] - 3 * (control2[1] - control1[1]);
	const quintic = [
		ax * bx + ay * by,
		bx * bx + by * by + 2 * (ax * cx + ay * cy),
		3 * (bx * cx + by * cy) + 3 * (ax * dx + ay * dy),
		2 * (cx * cx + cy * cy) + 4 * (bx * dx + by * dy),
		5 * (cx * dx + cy * dy),
		3 * (dx * dx + dy * dy)
	];
	let best = 0;
	let least = ax * ax + ay * ay;
	for (const t of rootsBetween(quintic, 0, 1)) {
		const x = ax + (bx + (cx + dx * t) * t) * t;
		const y = ay + (by + (cy + dy * t) * t) * t;
		const away = x * x + y * y;
		if (away < least) {
			least = away;
			best = t;
		}
	}
	const endX = to[0] - point[0];
	const endY = to[1] - point[1];
	return endX * endX + endY * endY < least ? 1 : best;
}
