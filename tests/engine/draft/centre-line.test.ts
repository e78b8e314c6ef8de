import { describe, expect, it } from 'vitest';
import { centreLine } from '../../../src/lib/engine/draft/centre-line.ts';
import type { MovedEdge } from '../../../src/lib/engine/geometry/move-outline.ts';
import { parsePathData } from '../../../src/lib/engine/geometry/path-data.ts';
import { cornersOf } from '../../../src/lib/engine/geometry/joints.ts';
import { pathEnd, pathLength, pathStart, pointAt } from '../../../src/lib/engine/geometry/path.ts';

/** The centre line of an edge that runs up the left of its piece, so that the cloth lies to its right. */
function lineOf(data: string, lap: number): MovedEdge {
	const read = parsePathData(data);
	if ('problem' in read) throw new Error(read.problem);
	const line = centreLine({ id: 'front', name: 'Front', kind: 'open', path: read.path, lap, turn: false });
	if (!line) throw new Error('there is a centre line');
	return line;
}

describe('the centre line of a closing', () => {
	it('lies the lap inside a straight edge', () => {
		const { path, carried } = lineOf('M 0 400 L 0 60', 20);
		expect(pathStart(path)).toEqual([expect.closeTo(20, 9), expect.closeTo(400, 9)]);
		expect(pathEnd(path)).toEqual([expect.closeTo(20, 9), expect.closeTo(60, 9)]);
		expect(carried(140)).toBeCloseTo(140, 6);
	});

	it('lies outside the edge for a lacing gap, and is the edge itself without a lap', () => {
		expect(pathStart(lineOf('M 0 400 L 0 60', -15).path)[0]).toBeCloseTo(-15, 9);
		expect(lineOf('M 0 400 L 0 60', 0).path).toHaveLength(1);
	});

	// A quarter circle by one cubic with k = 0.5522847498 is off by at most 0.0273 %: from memory, checked in the arc-length tests.
	it('of an edge round a circle is a circle whose radius is less by the lap', () => {
		const k = 200 * 0.5522847498;
		const { path, carried } = lineOf(`M 0 260 C 0 ${260 - k} ${200 - k} 60 200 60`, 20);
		for (let s = 0; s <= pathLength(path); s += 5) {
			const [x, y] = pointAt(path, s);
			expect(Math.hypot(x - 200, y - 260)).toBeGreaterThan(179.9);
			expect(Math.hypot(x - 200, y - 260)).toBeLessThan(180.1);
		}
		expect(pathLength(path)).toBeCloseTo((Math.PI / 2) * 180, 0);
		expect(carried(100)).toBeCloseTo(90, 0);
	});

	it('runs on where the edge turns away from the cloth and is trimmed where it turns into it', () => {
		// Two lines 20 mm inside meet tan(22.5°) × 20 beyond the corner, or before it.
		const off = 20 * Math.tan(Math.PI / 8);
		for (const [front, y] of [
			['M 0 400 L 0 200 L -100 100', 200 - off],
			['M 0 400 L 0 200 L 100 100', 200 + off]
		] as const) {
			const { path } = lineOf(front, 20);
			const corners = cornersOf(path);
			expect(corners).toHaveLength(1);
			expect(pointAt(path, corners[0])).toEqual([expect.closeTo(20, 6), expect.closeTo(y, 6)]);
		}
	});

	it('is the same line whichever way the edge is walked, also past a corner shorter than the lap', () => {
		const forth = 'M 135.2 91.2 L 66.9 89 L 64.6 85 L 0 107.2';
		const back = 'M 0 107.2 L 64.6 85 L 66.9 89 L 135.2 91.2';
		const [one, other] = [lineOf(forth, 15).path, lineOf(back, -15).path];
		for (let s = 0; s < pathLength(one); s += 2) {
			const [x, y] = pointAt(one, s);
			const [bx, by] = pointAt(other, pathLength(other) - s);
			expect(Math.hypot(x - bx, y - by)).toBeLessThan(1e-6);
		}
	});

	it('is not there where the edge bends round more sharply than its lap', () => {
		const read = parsePathData('M 0 100 C -30 90 -30 70 0 60');
		if ('problem' in read) throw new Error(read.problem);
		const edge = { id: 'front', name: 'Front', kind: 'open', path: read.path, lap: 40, turn: false } as const;
		expect(centreLine(edge)).toBeUndefined();
	});
});
