import { joined } from '../geometry/accuracy.ts';
import { joinedPaths, pathLength, pointAt, portion, straight } from '../geometry/path.ts';
import type { Path } from '../geometry/types.ts';
import type { Edge, Piece } from './types.ts';

/**
 * An edge's line with every dart mouth drawn straight across: the peak of a trued mouth is cloth that folds under with its
 * dart, not cloth beyond the line. The same path if no dart opens on the edge.
 */
export function straightMouths(piece: Piece, edge: Edge): Path {
	const darts = piece.darts.filter((dart) => dart.edge === edge.id).sort((a, b) => a.from - b.from);
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
}
