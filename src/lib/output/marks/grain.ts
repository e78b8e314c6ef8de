import type { Path, Piece, Point } from '../../engine/index.ts';
import { nameId } from '../name-id.ts';
import { pens } from '../pens.ts';
import { stepped, through } from '../plane.ts';
import { asLine } from '../words.ts';
import { nothing } from './drawn.ts';
import type { Drawn } from './drawn.ts';

/** Length of the strokes of an open point, and the share of it that they stand off to the side. */
const stroke = 5;
const spread = 0.36;

/** The grain: a fine line with open points at both ends, and the word. Drawn `scale` times smaller, the points keep their size. */
export function drawGrain(piece: Piece, move: (path: Path) => Path, scale = 1): Drawn {
	if (!piece.grain) return nothing;
	const [from, to] = piece.grain;
	const [dx, dy] = stepped(to, from, -1);
	const length = Math.hypot(dx, dy);
	if (length === 0) return nothing;
	const along: Point = [dx / length, dy / length];
	const shaft = move(through(from, to));
	const points = [
		move(openPoint(from, along, stroke * scale)),
		move(openPoint(to, [-along[0], -along[1]], stroke * scale))
	];
	return {
		parts: [
			{ kind: 'line', id: nameId('grain', piece.id), path: shaft, pen: pens.grain },
			...points.map((path) => ({ kind: 'line' as const, path, pen: pens.grain }))
		],
		lines: [shaft, ...points].map(asLine),
		words: [{ text: 'grain', sizes: [5, 4, 3.2], along: shaft, shares: [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8] }]
	};
}

function openPoint(tip: Point, inwards: Point, reach: number): Path {
	const across: Point = [-inwards[1], inwards[0]];
	const [one, other] = [spread, -spread].map((side) => stepped(tip, stepped(inwards, across, side), reach));
	return through(one, tip, other);
}
