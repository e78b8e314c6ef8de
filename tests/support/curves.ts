import fc from 'fast-check';
import { cubic, line } from '../../src/lib/engine/geometry/segment.ts';
import type { Cubic, Path, Point, Segment } from '../../src/lib/engine/geometry/types.ts';

/** Curves that break geometry code, each with what is nasty about it. Millimetres. */
export const nastyCurves: readonly { readonly remark: string; readonly curve: Cubic }[] = [
	{ remark: 'a cusp in the middle', curve: cubic([0, 0], [100, 100], [0, 100], [100, 0]) },
	{ remark: 'a hair short of a cusp', curve: cubic([0, 0], [100.0001, 100], [-0.0001, 100], [100, 0]) },
	{
		remark: 'a hair past a cusp: a loop too small to see',
		curve: cubic([0, 0], [100, 99.9999], [0, 99.9999], [100, 0])
	},
	{ remark: 'a plain loop', curve: cubic([0, 0], [200, 150], [-100, 150], [100, 0]) },
	{ remark: 'nearly straight', curve: cubic([0, 0], [100, 1e-7], [200, -1e-7], [300, 0]) },
	{ remark: 'exactly straight, evenly run', curve: cubic([10, 20], [110, 60], [210, 100], [310, 140]) },
	{ remark: 'exactly straight, unevenly run', curve: cubic([0, 0], [1, 2], [2, 4], [100, 200]) },
	{ remark: 'straight, and back over itself twice', curve: cubic([0, 0], [400, 0], [-300, 0], [100, 0]) },
	{ remark: 'first control point on the start', curve: cubic([0, 0], [0, 0], [60, 90], [120, 100]) },
	{ remark: 'second control point on the end', curve: cubic([0, 0], [30, 80], [120, 100], [120, 100]) },
	{ remark: 'both control points on their ends: a straight line', curve: cubic([0, 0], [0, 0], [120, 50], [120, 50]) },
	{ remark: 'both control points in one place', curve: cubic([0, 0], [70, 120], [70, 120], [140, 0]) },
	{
		remark: 'a control point a millionth of a millimetre from its end',
		curve: cubic([0, 0], [1e-6, 0], [60, 90], [120, 100])
	},
	{ remark: 'start and end in one place', curve: cubic([0, 0], [100, 30], [30, 100], [0, 0]) },
	{ remark: 'an S', curve: cubic([0, 0], [150, 0], [-50, 200], [100, 200]) },
	{ remark: 'three metres long', curve: cubic([0, 0], [900, 300], [2000, -300], [3000, 100]) },
	{ remark: 'two millimetres long', curve: cubic([500, 500], [500.5, 500.7], [501.2, 500.9], [501.9, 500.4]) },
	{ remark: 'a hairpin', curve: cubic([0, 0], [300, 1], [300, -1], [0, 0.5]) },
	{ remark: 'an armhole, deep and round', curve: cubic([0, 0], [-5, 90], [20, 150], [95, 160]) }
];

/** A cubic that runs over the parabola through a quadratic Bézier's three points, exactly (degree raised). */
export function raised(from: Point, control: Point, to: Point): Cubic {
	const toward = (end: Point): Point => [
		end[0] + (2 / 3) * (control[0] - end[0]),
		end[1] + (2 / 3) * (control[1] - end[1])
	];
	return cubic(from, toward(from), toward(to), to);
}

/** Numbers spread evenly (those of `fc.double` crowd about zero), to a millionth. */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
	return fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((millionths) => millionths / 1e6);
}

const coordinate = evenly(-300, 300);

export const points: fc.Arbitrary<Point> = fc.tuple(coordinate, coordinate);

/** Any cubic in a square of 600 mm: loops, cusps and all. */
export const cubics: fc.Arbitrary<Cubic> = fc
	.tuple(points, points, points, points)
	.map(([from, control1, control2, to]) => cubic(from, control1, control2, to));

/** Chains of one to five lines and cubics. */
export const paths: fc.Arbitrary<Path> = fc
	.tuple(points, fc.array(fc.oneof(fc.tuple(points), fc.tuple(points, points, points)), { minLength: 1, maxLength: 5 }))
	.map(([start, parts]) => {
		const path: Segment[] = [];
		let at = start;
		for (const part of parts) {
			path.push(part.length === 1 ? line(at, part[0]) : cubic(at, part[0], part[1], part[2]));
			at = path[path.length - 1].to;
		}
		return path;
	});

/** Points of a segment by de Casteljau's construction, written out apart from the code under test. */
export function casteljau(segment: Segment, t: number): Point {
	let row: Point[] =
		segment.kind === 'line'
			? [segment.from, segment.to]
			: [segment.from, segment.control1, segment.control2, segment.to];
	while (row.length > 1) {
		row = row.slice(1).map((p, i): Point => [row[i][0] * (1 - t) + p[0] * t, row[i][1] * (1 - t) + p[1] * t]);
	}
	return row[0];
}

/** Length of a smooth segment by the sums of 2^k chords, extrapolated to none (Romberg); independent of any quadrature of the speed. */
export function rombergLength(segment: Segment, levels = 12): number {
	let row: number[] = [];
	for (let level = 0; level <= levels; level++) {
		const chords = 2 ** level;
		let sum = 0;
		let at = casteljau(segment, 0);
		for (let i = 1; i <= chords; i++) {
			const next = casteljau(segment, i / chords);
			sum += Math.hypot(next[0] - at[0], next[1] - at[1]);
			at = next;
		}
		const better = [sum];
		for (let k = 1; k <= level; k++) better.push(better[k - 1] + (better[k - 1] - row[k - 1]) / (4 ** k - 1));
		row = better;
	}
	return row[row.length - 1];
}

/** A polyline of equal parameter steps over a whole path. */
export function sampled(path: Path, steps: number): Point[] {
	const samples: Point[] = [path[0].from];
	for (const segment of path) for (let i = 1; i <= steps; i++) samples.push(casteljau(segment, i / steps));
	return samples;
}

/** How many chords of one polyline properly cross chords of another. */
export function chordCrossings(a: readonly Point[], b: readonly Point[]): number {
	const side = (p: Point, q: Point, r: Point) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
	let count = 0;
	for (let i = 0; i + 1 < a.length; i++) {
		const left = Math.min(a[i][0], a[i + 1][0]);
		const right = Math.max(a[i][0], a[i + 1][0]);
		const top = Math.min(a[i][1], a[i + 1][1]);
		const bottom = Math.max(a[i][1], a[i + 1][1]);
		for (let j = 0; j + 1 < b.length; j++) {
			if (Math.min(b[j][0], b[j + 1][0]) > right || Math.max(b[j][0], b[j + 1][0]) < left) continue;
			if (Math.min(b[j][1], b[j + 1][1]) > bottom || Math.max(b[j][1], b[j + 1][1]) < top) continue;
			if (side(a[i], a[i + 1], b[j]) > 0 === side(a[i], a[i + 1], b[j + 1]) > 0) continue;
			if (side(b[j], b[j + 1], a[i]) > 0 === side(b[j], b[j + 1], a[i + 1]) > 0) continue;
			count++;
		}
	}
	return count;
}

/** Distance of a point from a polyline. */
export function distanceToPolyline(point: Point, polyline: readonly Point[]): number {
	let least = Infinity;
	for (let i = 0; i + 1 < polyline.length; i++) {
		const [ax, ay] = polyline[i];
		const x = polyline[i + 1][0] - ax;
		const y = polyline[i + 1][1] - ay;
		const square = x * x + y * y;
		const t = square > 0 ? Math.min(1, Math.max(0, ((point[0] - ax) * x + (point[1] - ay) * y) / square)) : 0;
		least = Math.min(least, Math.hypot(ax + t * x - point[0], ay + t * y - point[1]));
	}
	return least;
}
