import { pathLength } from '../../engine/index.ts';
import type { Edge, Path, Piece } from '../../engine/index.ts';
import { nameId } from '../name-id.ts';
import { pens } from '../pens.ts';
import { besideEdge, ownPath, through } from '../plane.ts';
import type { Line } from '../primitive.ts';
import { asLine } from '../words.ts';
import type { Words } from '../words.ts';
import type { Drawn } from './drawn.ts';

/** The hooks of a fold: how far from its ends, and how far into the cloth, mm. */
const hook = { fromEnd: 4, length: 7 };

const shares = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82];

/**
 * One edge of the stitching line: firm; or, on a fold, long dashes with a hook at each end on the side of the cloth and the
 * words; an edge whose allowance is turned under is firm and says so.
 *
 * @param fold the whole length that a fold is laid on, through the allowances at its ends, where these are printed
 */
export function drawEdge(piece: Piece, edge: Edge, fold: string | undefined, move: (path: Path) => Path): Drawn {
	const path = move(edge.path);
	const id = nameId('edge', piece.id, edge.id);
	const said = (text: string): Words => ({ text, sizes: [4, 3.2, 3], along: path, shares });
	if (edge.kind !== 'fold')
		return {
			parts: [{ kind: 'line', id, path, pen: pens.stitching }],
			lines: [asLine(path)],
			words: edge.turn ? [said('turn here')] : []
		};
	const length = pathLength(edge.path);
	const from = Math.min(hook.fromEnd, length / 4);
	const hooks = [from, length - from].map((s): Line => {
		const path = move(through(besideEdge(edge.path, s, 0), besideEdge(edge.path, s, -hook.length)));
		return { kind: 'line', path, pen: { width: pens.fold.width } };
	});
	const ends = fold === undefined ? [] : beyond(edge.path, ownPath(fold)).map(move);
	return {
		parts: [
			{ kind: 'line', id, path, pen: pens.fold },
			...ends.map((path): Line => ({ kind: 'line', path, pen: pens.fold })),
			...hooks
		],
		lines: [path, ...hooks.map((drawn) => drawn.path)].map(asLine),
		words: [said('cut on the fold')]
	};
}

/** What of a straight line lies before the start and after the end of a shorter one on it. */
function beyond(inner: Path, whole: Path): Path[] {
	const gaps = [
		[whole[0].from, inner[0].from],
		[inner[inner.length - 1].to, whole[whole.length - 1].to]
	] as const;
	return gaps.filter(([[x0, y0], [x1, y1]]) => Math.hypot(x1 - x0, y1 - y0) > 0.01).map((gap) => through(...gap));
}
