import { joined } from '../geometry/accuracy.ts';
import { cornersOf } from '../geometry/joints.ts';
import { joinedPaths, pathLength, pointAt, portion, straight } from '../geometry/path.ts';
import type { Path } from '../geometry/types.ts';
import { rememberedOfPart } from '../geometry/memo.ts';
import type { Edge, Piece } from './types.ts';

/**
 * An edge's line with the mouth of every trued dart drawn straight across: its peak is cloth that folds under with the dart, not
 * cloth beyond the line. A mouth without a corner is not trued, and stays as drawn. The same path if there is none.
 */
export const straightMouths: (piece: Piece, edge: Edge) => Path = rememberedOfPart((piece: Piece, edge: Edge) => {
	const corners = cornersOf(edge.path);
	const darts = piece.darts
		.filter(({ edge: id, from, to }) => id === edge.id && corners.some((s) => s > from + joined && s < to - joined))
		.sort((a, b) => a.from - b.from);
	if (darts.length === 0) return edge.path;
	const parts: Path[] = [];
	let done = 0;
	for (const dart of darts) {
		if (dart.from - done > joined) parts.push(portion(edge.path, done, dart.from));
		parts.push(straight(pointAt(edge.path, dart.from), pointAt(edge.path, dart.to)));
		done = dart.to;
	}
	const length = pathLength(edge.path);
	if (length - done > joined) parts.push(portion(edge.path, done, length));
	return joinedPaths(...parts);
});
