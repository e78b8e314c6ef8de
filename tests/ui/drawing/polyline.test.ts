import { expect, test } from 'vitest';
import { nearestOn, pathLength, pointAt, tangentAt } from '../../../src/lib/engine/index.ts';
import type { Path, Point } from '../../../src/lib/engine/index.ts';
import { liesOn, nearestAlong, placeAlong, polylineOf } from '../../../src/lib/ui/drawing/polyline.ts';
import { demoDraft } from '../demo-versions.ts';

const paths: readonly Path[] = demoDraft.pieces.flatMap(({ edges }) => edges.map(({ path }) => path));
const shares = [0, 0.13, 0.5, 0.77, 1];
const away = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Beside what the engine finds exactly. */
test('places along a line, and the nearest to a point beside it, are off by less than can be seen', () => {
	for (const path of paths) {
		const line = polylineOf(path);
		const length = pathLength(path);
		expect(line.length).toBe(length);
		for (const share of shares) {
			const s = share * length;
			const { point, along } = placeAlong(line, s);
			expect(away(point, pointAt(path, s))).toBeLessThan(0.06);
			const [x, y] = tangentAt(path, s, s > 0 ? 'before' : 'after');
			expect(along[0] * x + along[1] * y).toBeGreaterThan(0.98);
			for (const beside of [-9, -0.1, 0, 4]) {
				const from: Point = [point[0] - along[1] * beside, point[1] + along[0] * beside];
				const exact = nearestOn(path, from, 1e-6);
				const found = nearestAlong(line, from);
				expect(Math.abs(found.distance - exact.distance)).toBeLessThan(0.06);
				expect(away(found.point, from)).toBeCloseTo(found.distance, 9);
				expect(liesOn(line, from, exact.distance + 0.06)).toBe(true);
				if (exact.distance > 0.2) expect(liesOn(line, from, exact.distance - 0.06)).toBe(false);
			}
		}
	}
});
