import { drawHeading, versionWords } from './heading.ts';
import { drawPiece } from './draw-piece.ts';
import type { Primitive } from './primitive.ts';
import type { PatternSheet } from './sheet.ts';

/** Everything on the sheet, in the order it is drawn; the one description that every kind of file is written from. */
export function drawSheet({ input, heading, pieces }: PatternSheet): Primitive[] {
	const version = versionWords(input.title.version);
	return [...drawHeading(heading), ...pieces.map((placed) => drawPiece(placed, version))];
}
