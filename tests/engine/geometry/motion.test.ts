import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	compose,
	determinant,
	identity,
	movePath,
	movePoint,
	reflection,
	rotation,
	scaling,
	translation
} from '../../../src/lib/engine/geometry/motion.ts';
import { angleBetween, distance, mirrored, outward, rotate, subtract } from '../../../src/lib/engine/geometry/point.ts';
import { pathLength } from '../../../src/lib/engine/geometry/path.ts';
import { signedArea } from '../../../src/lib/engine/geometry/area.ts';
import type { Motion, Point } from '../../../src/lib/engine/geometry/types.ts';
import { evenly, paths, points } from '../../support/curves.ts';

const angles = evenly(-Math.PI, Math.PI);
const motions: fc.Arbitrary<Motion> = fc.oneof(
	points.map(([dx, dy]) => translation(dx, dy)),
	fc.tuple(angles, points).map(([angle, about]) => rotation(angle, about)),
	fc
		.tuple(points, points)
		.filter(([a, b]) => distance(a, b) > 1)
		.map(([a, b]) => reflection(a, b))
);

// "Rigid motions keep lengths, angles and area; two folds make a turn of twice the angle between them": elementary.
test('rigid motions keep distances, angles and lengths, and areas up to their sign (seed 21)', () => {
	fc.assert(
		fc.property(motions, paths, points, points, points, (motion, path, p, q, r) => {
			const [mp, mq, mr] = [p, q, r].map((point) => movePoint(motion, point));
			expect(Math.abs(distance(mp, mq) - distance(p, q))).toBeLessThan(1e-9);
			if (distance(p, q) > 1 && distance(p, r) > 1) {
				const before = angleBetween(subtract(q, p), subtract(r, p));
				const after = determinant(motion) * angleBetween(subtract(mq, mp), subtract(mr, mp));
				expect(Math.abs(Math.sin(after - before))).toBeLessThan(1e-9);
			}
			const moved = movePath(motion, path);
			expect(Math.abs(pathLength(moved) - pathLength(path))).toBeLessThan(2e-6);
			expect(Math.abs(signedArea(moved) - determinant(motion) * signedArea(path))).toBeLessThan(1e-6);
		}),
		{ seed: 21 }
	);
});

test('two folds make a turn of twice the angle between the fold lines, about where they cross (seed 22)', () => {
	fc.assert(
		fc.property(points, angles, angles, points, (apex, first, second, p) => {
			const along = (angle: number): Point => [apex[0] + 100 * Math.cos(angle), apex[1] + 100 * Math.sin(angle)];
			const folded = movePoint(compose(reflection(apex, along(first)), reflection(apex, along(second))), p);
			const turned = rotate(p, 2 * (second - first), apex);
			expect(distance(folded, turned)).toBeLessThan(1e-9);
		}),
		{ seed: 22 }
	);
});

test('a mirror image of a mirror image is the thing itself (seed 23)', () => {
	fc.assert(
		fc.property(points, points, points, (a, b, p) => {
			fc.pre(distance(a, b) > 1);
			expect(distance(mirrored(mirrored(p, a, b), a, b), p)).toBeLessThan(1e-9);
			expect(distance(mirrored(p, a, b), movePoint(reflection(a, b), p))).toBeLessThan(1e-9);
			expect(determinant(reflection(a, b))).toBeCloseTo(-1, 12);
			// The line itself stays where it is.
			expect(distance(mirrored(b, a, b), b)).toBe(0);
		}),
		{ seed: 23 }
	);
});

test('a composition does the first and then the second (seed 24)', () => {
	fc.assert(
		fc.property(motions, motions, points, (first, second, p) => {
			const both = movePoint(compose(first, second), p);
			expect(distance(both, movePoint(second, movePoint(first, p)))).toBeLessThan(1e-8);
			compose(first, identity).forEach((entry, i) => expect(Math.abs(entry - first[i])).toBe(0));
		}),
		{ seed: 24 }
	);
});

test('turning is clockwise as seen, with y down, and outward is to the left of travel', () => {
	const [x, y] = rotate([10, 0], Math.PI / 2, [0, 0]);
	expect(x).toBeCloseTo(0, 12);
	expect(y).toBeCloseTo(10, 12);
	expect(movePoint(rotation(Math.PI / 2, [0, 0]), [10, 0])[1]).toBeCloseTo(10, 12);
	// Along the top of a clockwise outline, to the right, outward is up.
	expect(outward([1, 0])).toEqual([0, -1]);
	expect(angleBetween([1, 0], [0, 1])).toBeCloseTo(Math.PI / 2, 12);
});

test('an eighth-scale drawing read back at full size is the same to 1e-9, with 64 times the area', () => {
	// Lengths × 8, areas × 64, angles unchanged: derived.
	const square = movePath(scaling(1 / 8), [
		{ kind: 'line', from: [0, 0], to: [333, 17] },
		{ kind: 'line', from: [333, 17], to: [250, 411] },
		{ kind: 'line', from: [250, 411], to: [0, 0] }
	]);
	const full = movePath(scaling(8), square);
	expect(distance(full[1].to, [250, 411])).toBeLessThan(1e-9);
	expect(signedArea(full) / signedArea(square)).toBeCloseTo(64, 9);
});
