import type { Path, Piece, Point } from '../../engine/index.ts';
import type { CutNotch } from '../cut-piece.ts';
import { nameId } from '../name-id.ts';
import { pens } from '../pens.ts';
import { stepped, through } from '../plane.ts';
import type { Line } from '../primitive.ts';
import { asLine } from '../words.ts';
import type { Drawn } from './drawn.ts';

/** How far a snip reaches into the cloth, so that it is seen to cross the stitching line; and from snip to snip, mm. */
const inward = 1.2;
const apart = 1.8;

/** A notch as one, two or three snips across the stitching line, square to it and outward, evenly about its place. Drawn smaller
 * than true, `scale` is how many times: what is true on paper and not on the piece is kept by it. */
export function drawNotch(piece: Piece, notch: CutNotch, move: (path: Path) => Path, scale = 1): Drawn {
	const along: Point = [-notch.outward[1], notch.outward[0]];
	const snips = Array.from({ length: notch.count }, (_, i) => {
		const at = stepped(notch.at, along, (i - (notch.count - 1) / 2) * apart * scale);
		return move(through(stepped(at, notch.outward, -inward * scale), stepped(at, notch.outward, notch.length)));
	});
	const parts = snips.map((path, i): Line => {
		const id = nameId('notch', piece.id, notch.id, ...(snips.length > 1 ? [String(i + 1)] : []));
		return { kind: 'line', id, path, pen: pens.snip };
	});
	return { parts, lines: snips.map(asLine), words: [] };
}
