/** A moved line against the exact one, whose points, normals and lengths another library gives. */
import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitted } from '../../../src/lib/engine/geometry/accuracy.ts';
import { monotoneCubic } from '../../../src/lib/engine/geometry/interpolate.ts';
import { offsetPath } from '../../../src/lib/engine/geometry/offset.ts';
import { pathLength } from '../../../src/lib/engine/geometry/path.ts';
import { roomFor } from '../../../src/lib/engine/geometry/room-for.ts';
import { cubic } from '../../../src/lib/engine/geometry/segment.ts';
import type { Cubic, Path, Point } from '../../../src/lib/engine/geometry/types.ts';
import { away, pathsApart } from '../../support/apart.ts';
import { evenly } from '../../support/curves.ts';

const bezierOf = ({ from, control1, control2, to }: Cubic) =>
	new Bezier([from, control1, control2, to].map(([x, y]) => ({ x, y })));

/** The same curve in pieces, cut by the other library; each starts where the one before ends, to the bit. */
function cutAt(curve: Cubic, places: readonly number[]): Cubic[] {
	const bounds = [0, ...places, 1];
	let start = curve.from;
	return bounds.slice(1).map((to, i) => {
		const { points } = bezierOf(curve).split(bounds[i], to);
		const [, control1, control2, end] = points.map(({ x, y }): Point => [x, y]);
		const piece = cubic(start, control1, control2, to === 1 ? curve.to : end);
		start = piece.to;
		return piece;
	});
}

/** Where points along the curves go: along the normal, by the amount at the length so far. */
function exactly(curves: readonly Cubic[], value: (s: number) => number, steps: number): Point[] {
	const points: Point[] = [];
	let before = 0;
	for (const curve of curves.map(bezierOf)) {
		for (let i = 0; i <= steps; i++) {
			const t = i / steps;
			const at = curve.get(t);
			const normal = curve.normal(t);
			const by = value(before + (t > 0 ? curve.split(0, t).length() : 0));
			// Outward of a path that runs clockwise is the left of the way it goes; the library's normal points right.
			points.push([at.x - by * normal.x, at.y - by * normal.y]);
		}
		before += curve.length();
	}
	return points;
}

const whole = (
	path: Path,
	amount: Parameters<typeof offsetPath>[1],
	breaks: readonly number[],
	accuracy: number
): Path => offsetPath(path, amount, breaks, accuracy).flatMap((part) => part.path);

describe('a seam taken in at its middle and fading to nothing', () => {
	const bend = evenly(-40, 40);
	test('is within the accuracy of the exact line, on curves with old joints in them (seed 20261128)', () => {
		fc.assert(
			fc.property(
				bend,
				bend,
				evenly(-8, 8),
				fc.uniqueArray(evenly(0.05, 0.95), { maxLength: 4 }),
				(a, b, most, cuts) => {
					const path = cutAt(
						cubic([0, 0], [a, 110], [b, 230], [10, 340]),
						[...cuts].sort((x, y) => x - y)
					);
					const length = pathLength(path);
					const amount = monotoneCubic([0, length / 2, length], [0, most, 0]);
					if (roomFor(path, amount, Math.abs(most)) <= 1.2) return;
					const drawn = whole(path, amount, [length / 2], fitted / 4);
					for (const point of exactly(path, amount.value, 12)) expect(away(point, drawn)).toBeLessThan(fitted / 2);
				}
			),
			{ seed: 20261128, numRuns: 60 }
		);
	});
});

describe('joints that are no longer needed', () => {
	const curve = cubic([0, 0], [30, 110], [-20, 230], [10, 340]);
	const cuts = [0.1, 0.11, 0.3, 0.302, 0.31, 0.5, 0.77, 0.771];
	test('leave hardly a trace: the moved line has few more curves than that of the curve as it was', () => {
		for (const amount of [4, -4]) {
			const plain = whole([curve], amount, [], fitted);
			const cut = whole(cutAt(curve, cuts), amount, [], fitted);
			expect(pathsApart(plain, cut)).toBeLessThan(2 * fitted);
			expect(cut.length).toBeLessThanOrEqual(plain.length + 2);
		}
	});
	test('on a straight line leave none', () => {
		const third = (t: number): Point => [30 * t, 40 * t];
		const line = cubic(third(0), third(1 / 3), third(2 / 3), third(1));
		const moved = whole(cutAt(line, [0.2, 0.5, 0.9]), 5, [], fitted);
		expect(moved).toHaveLength(1);
		expect(moved[0].kind).toBe('line');
	});
});
