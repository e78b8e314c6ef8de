import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';

/** One piece of one open edge after another, from the SVG path data of each. */
export function pieceOf(paths: readonly string[], more: object = {}, edgesMore: readonly object[] = []): Draft {
	const edges = paths.map((path, i) => ({
		id: `edge-${i + 1}`,
		name: `Edge ${i + 1}`,
		kind: 'open',
		path,
		...edgesMore[i]
	}));
	return parseDraft({
		format: 'pin-to-paper/draft@1',
		name: 'One piece',
		pieces: [{ id: 'piece', name: 'Piece', cut: 'single', edges, ...more }],
		seams: []
	});
}

/** A polygon, clockwise as seen with y down, one edge a side. */
export function polygonOf(points: readonly (readonly [number, number])[], more: object = {}): Draft {
	const paths = points.map(([x, y], i) => {
		const [u, v] = points[(i + 1) % points.length];
		return `M ${x} ${y} L ${u} ${v}`;
	});
	return pieceOf(paths, more);
}
