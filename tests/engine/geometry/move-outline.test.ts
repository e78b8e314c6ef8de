import { describe, expect, test } from 'vitest';
import { measured } from '../../../src/lib/engine/geometry/accuracy.ts';
import { moveOutline, type EdgeMove } from '../../../src/lib/engine/geometry/move-outline.ts';
import { pathLength, pointAt, reversedPath } from '../../../src/lib/engine/geometry/path.ts';
import { line } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path, Point } from '../../../src/lib/engine/geometry/types.ts';

/** A square 100 mm wide whose right side has a corner in its middle, pointing out (positive) or into the square. */
const squareWithCorner = (out: number): Path[] => [
	[line([0, 0], [100, 0])],
	[line([100, 0], [100 + out, 50]), line([100 + out, 50], [100, 100])],
	[line([100, 100], [0, 100])],
	[line([0, 100], [0, 0])]
];
const evenly = (amount: number): EdgeMove => ({ amount, breaks: [], greatest: Math.abs(amount) });

describe('what lies in a corner inside a moved edge', () => {
	// Two lines moved alike meet on the line that halves their corner: sqrt(1 + (out/50)²) times the amount farther out (elementary).
	test.each([
		[30, 6],
		[30, -6],
		[-30, 6],
		[-30, -6]
	])('stays in it: a corner %d mm out, moved by %d', (out, amount) => {
		const edges = squareWithCorner(out);
		const half = pathLength(edges[1]) / 2;
		const corner: Point = [100 + out + amount * Math.hypot(1, out / 50), 50];
		for (const way of ['there', 'back']) {
			const turned = way === 'back' ? edges.map(mirrored).reverse() : edges;
			const moved = moveOutline(
				turned,
				turned.map((_, i) => (i === (way === 'back' ? 2 : 1) ? evenly(amount) : undefined)),
				measured
			);
			if ('refused' in moved) throw new Error(moved.refused);
			const edge = moved.edges[way === 'back' ? 2 : 1];
			const [x, y] = pointAt(edge.path, edge.carried(half)!);
			expect(Math.hypot((way === 'back' ? -x : x) - corner[0], y - corner[1])).toBeLessThan(1e-6);
		}
	});
});

/** Turned over, and walked so that it runs clockwise again. */
const mirrored = (path: Path): Path =>
	reversedPath(path.map((segment) => line([-segment.from[0], segment.from[1]], [-segment.to[0], segment.to[1]])));
