import { expect, it } from 'vitest';
import { cuttingLines } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { parsePathData } from '../../../src/lib/engine/geometry/path-data.ts';
import type { Point } from '../../../src/lib/engine/geometry/types.ts';
import { pieceOf } from './simple-piece.ts';

function cornersOf(...args: Parameters<typeof cuttingLines>): Point[] {
	const parsed = parsePathData(cuttingLines(...args)[0].outline);
	if ('problem' in parsed) throw new Error(parsed.problem);
	return parsed.path.map(({ from }) => from);
}

/** A gore: 100 wide at the top, 180 at the hem, 200 long. */
const gore = (turn: boolean) =>
	pieceOf(['M 40 0 L 140 0', 'M 140 0 L 180 200', 'M 180 200 L 0 200', 'M 0 200 L 40 0'], {}, [{}, {}, { turn }, {}]);

const nearest = (corners: readonly Point[], [x, y]: Point): number =>
	Math.min(...corners.map(([u, v]) => Math.hypot(u - x, v - y)));

// The side's cutting line leans out by 40 in 200 and lies 10·√(1 + 1/25) beside the side, measured level. Turned up, the hem
// must lie on the piece: beyond the turn the line leans in again by as much. Worked by hand.
it('a flared hem that is turned under is cut narrower below its turn, as its mirror image', () => {
	const beside = 10 * Math.sqrt(1.04);
	const corners = cornersOf(gore(true), { default: 10, edges: { 'piece/edge-3': 30 } });
	expect(nearest(corners, [180 + beside, 200])).toBeLessThan(1e-6);
	expect(nearest(corners, [180 + beside - 6, 230])).toBeLessThan(1e-6);
	expect(nearest(corners, [-beside, 200])).toBeLessThan(1e-6);
	expect(nearest(corners, [-beside + 6, 230])).toBeLessThan(1e-6);
});

it('one that is not turned is mitred outward', () => {
	const beside = 10 * Math.sqrt(1.04);
	const corners = cornersOf(gore(false), { default: 10, edges: { 'piece/edge-3': 30 } });
	expect(nearest(corners, [180 + beside + 6, 230])).toBeLessThan(1e-6);
});

it('a curved side is mirrored along its curve', () => {
	const piece = pieceOf(
		['M 0 0 L 100 0', 'M 100 0 C 100 60 120 90 120 120', 'M 120 120 L 0 120', 'M 0 120 L 0 0'],
		{},
		[{}, {}, { turn: true }, {}]
	);
	const [cut] = cuttingLines(piece, { default: 0, edges: { 'piece/edge-3': 40 } });
	const parsed = parsePathData(cut.outline);
	if ('problem' in parsed) throw new Error(parsed.problem);
	const below = parsed.path.filter(({ kind, to }) => kind === 'cubic' && to[1] > 121);
	expect(below.length).toBeGreaterThan(0);
	// At the cut the side is as wide as the piece 40 mm above the turn.
	const at = (path: typeof parsed.path, y: number): number => {
		for (const segment of path) {
			if (segment.kind !== 'cubic') continue;
			for (let i = 0; i <= 10_000; i++) {
				const t = i / 10_000;
				const c = (k: 0 | 1) =>
					(1 - t) ** 3 * segment.from[k] +
					3 * t * (1 - t) ** 2 * segment.control1[k] +
					3 * t * t * (1 - t) * segment.control2[k] +
					t ** 3 * segment.to[k];
				if (Math.abs(c(1) - y) < 0.01) return c(0);
			}
		}
		throw new Error(`nothing at ${y}`);
	};
	expect(Math.abs(at(parsed.path, 80) - at(below, 159.99))).toBeLessThan(0.02);
});
