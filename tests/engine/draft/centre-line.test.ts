import { describe, expect, it } from 'vitest';
import { centreLine } from '../../../src/lib/engine/draft/centre-line.ts';
import type { Edge } from '../../../src/lib/engine/draft/types.ts';
import { parsePathData } from '../../../src/lib/engine/geometry/path-data.ts';
import { cornersOf, pathEnd, pathLength, pathStart, pointAt } from '../../../src/lib/engine/geometry/path.ts';

/** An edge that runs up the left of its piece, so that the cloth lies to its right. */
function edge(data: string, lap: number): Edge {
	const read = parsePathData(data);
	if ('problem' in read) throw new Error(read.problem);
	return { id: 'centre', name: 'Centre', kind: 'open', path: read.path, lap, turn: false };
}

describe('the centre line of a closing', () => {
	it('lies the lap inside a straight edge, and outside it for a lacing gap', () => {
		const inside = centreLine(edge('M 0 400 L 0 60', 20));
		expect([pathStart(inside), pathEnd(inside)]).toEqual([
			[20, 400],
			[20, 60]
		]);
		expect(pathStart(centreLine(edge('M 0 400 L 0 60', -15)))).toEqual([-15, 400]);
		const meeting = edge('M 0 400 L 0 60', 0);
		expect(centreLine(meeting)).toBe(meeting.path);
	});

	// A quarter circle by one cubic with k = 0.5522847498 is off by at most 0.0273 %: from memory, checked in the arc-length tests.
	it('of an edge round a circle is a circle whose radius is less by the lap', () => {
		const k = 200 * 0.5522847498;
		const line = centreLine(edge(`M 0 200 C 0 ${200 - k} ${200 - k} 0 200 0`, 20));
		for (let s = 0; s <= pathLength(line); s += 10) {
			const [x, y] = pointAt(line, s);
			expect(Math.hypot(x - 200, y - 200)).toBeGreaterThan(179.9);
			expect(Math.hypot(x - 200, y - 200)).toBeLessThan(180.1);
		}
		expect(pathLength(line)).toBeCloseTo((Math.PI / 2) * 180, 0);
	});

	it('is trimmed where the edge turns in and runs on where it turns out', () => {
		const hollow = centreLine(edge('M 0 400 L 0 200 L -100 100', 20));
		const filled = centreLine(edge('M 0 400 L 0 200 L 100 100', 20));
		// Where two lines 20 mm inside meet: tan(22.5°) × 20 before or beyond the corner.
		const off = 20 * Math.tan(Math.PI / 8);
		for (const [line, y] of [
			[hollow, 200 - off],
			[filled, 200 + off]
		] as const) {
			const corners = cornersOf(line);
			expect(corners).toHaveLength(1);
			expect(pointAt(line, corners[0])).toEqual([expect.closeTo(20, 6), expect.closeTo(y, 6)]);
		}
	});
});
