import type { Path, Piece, Pleat } from '../../engine/index.ts';
import { nameId } from '../name-id.ts';
import { pens } from '../pens.ts';
import { besideEdge, through } from '../plane.ts';
import type { Line } from '../primitive.ts';
import { asLine } from '../words.ts';
import { nothing } from './drawn.ts';
import type { Drawn } from './drawn.ts';

/** How far into the cloth the end lines of pleats run where they are not stitched down, mm. */
const loose = 20;

/** Pleats or gathers along an edge: a line into the cloth where they begin and end, and the word between. */
export function drawPleat(piece: Piece, pleat: Pleat, move: (path: Path) => Path): Drawn {
	const edge = piece.edges.find(({ id }) => id === pleat.edge);
	if (!edge) return nothing;
	const inner = (s: number) => besideEdge(edge.path, s, -(pleat.stitchedDown ?? loose));
	const ends = [pleat.from, pleat.to].map((s) => move(through(besideEdge(edge.path, s, 0), inner(s))));
	const between = move(through(inner(pleat.from), inner(pleat.to)));
	return {
		parts: ends.map((path, i): Line => ({
			kind: 'line',
			id: nameId('pleat', piece.id, pleat.id, i === 0 ? 'from' : 'to'),
			path,
			pen: pens.crease
		})),
		lines: ends.map(asLine),
		words: [{ text: 'pleats', sizes: [4, 3.2, 3], along: between, shares: [0.5, 0.4, 0.6] }]
	};
}
