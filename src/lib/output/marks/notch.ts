import { pathLength } from '../../engine/index.ts';
import type { Edge, Notch, Path, Piece } from '../../engine/index.ts';
import { nameId } from '../name-id.ts';
import { pens } from '../pens.ts';
import { besideEdge, through } from '../plane.ts';
import type { Line } from '../primitive.ts';
import { asLine } from '../words.ts';
import type { Drawn } from './drawn.ts';

/** Reach of a snip on either side of the stitching line, and from one snip to the next, mm. */
const outwardReach = 6;
const inwardReach = 1.2;
const apart = 1.8;

/**
 * A notch as one, two or three snips across the stitching line, square to it, outward as far as 6 mm but never farther than
 * the allowance goes. Several snips stand evenly about the notch's place.
 */
export function drawNotch(
	piece: Piece,
	notch: Notch,
	edge: Edge,
	snips: number,
	allowance: number,
	move: (path: Path) => Path
): Drawn {
	const length = pathLength(edge.path);
	const cuts = Array.from({ length: snips }, (_, i) => {
		const s = Math.min(length, Math.max(0, notch.at + (i - (snips - 1) / 2) * apart));
		return move(
			through(besideEdge(edge.path, s, -inwardReach), besideEdge(edge.path, s, Math.min(outwardReach, allowance)))
		);
	});
	const parts: Line[] = cuts.map((path, i) => ({
		kind: 'line',
		id: nameId('notch', piece.id, notch.id, ...(snips > 1 ? [String(i + 1)] : [])),
		path,
		pen: pens.snip
	}));
	return { parts, lines: cuts.map(asLine), words: [] };
}
