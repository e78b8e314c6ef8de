import { headingWidth, layHeading } from './heading.ts';
import type { Heading } from './heading.ts';
import type { PatternSheetInput } from './pattern-input.ts';
import { laidAt, loosePieces } from './placed-piece.ts';
import type { PlacedPiece } from './placed-piece.ts';
import { layOnShelves } from './shelves.ts';
import type { Laid } from './shelves.ts';

/** All pieces of a version on one sheet, true to size. mm, from the upper left corner. */
export interface PatternSheet {
	readonly input: PatternSheetInput;
	readonly width: number;
	readonly height: number;
	readonly heading: Heading;
	readonly pieces: readonly PlacedPiece[];
}

/** A version that no one sheet can hold; the message is a sentence for the user. */
export class SheetTooLarge extends Error {}

/** White border of the sheet, and room between pieces, mm. */
const border = 15;
const gap = 16;

/** The width of an A0 sheet, which also lies on a 36 in roll. Wider only if a piece is, or the sheet would be too long. */
const usualWidth = 841;

/** No side may be longer: 200 in, the greatest page of a PDF (ISO 32000-1, annex C.2: 14 400 units of 1/72 in). */
export const longestSide = 5080;

/**
 * Lays out a version: the heading, and below it the pieces on shelves by height, each as it lies on the table; left halves
 * are turned over.
 *
 * @throws SheetTooLarge if the pieces cannot be laid on a sheet of `longestSide` by `longestSide`
 */
export function layPatternSheet(input: PatternSheetInput): PatternSheet {
	const loose = loosePieces(input);
	const sizes = loose.map(({ box }) => ({ width: box.right - box.left, height: box.bottom - box.top }));
	const widest = Math.max(0, ...sizes.map(({ width }) => width));
	for (let width = usualWidth; ; width *= 1.25) {
		const room = Math.max(widest, Math.min(width, longestSide) - 2 * border);
		const sheet = sheetOf(input, loose, layOnShelves(sizes, room, gap));
		if (sheet.width <= longestSide && sheet.height <= longestSide) return sheet;
		if (width >= longestSide) throw new SheetTooLarge(tooLarge(sheet));
	}
}

function sheetOf(input: PatternSheetInput, loose: readonly PlacedPiece[], laid: Laid): PatternSheet {
	const inner = Math.max(laid.width, headingWidth);
	const cut = loose.map((piece) => piece.cut);
	const heading = layHeading(input, cut, [border, border], inner);
	const top = border + heading.height + gap;
	return {
		input,
		width: Math.ceil(inner + 2 * border),
		height: Math.ceil(top + laid.height + border),
		heading,
		pieces: loose.map((piece, i) => laidAt(piece, [border + laid.corners[i][0], top + laid.corners[i][1]]))
	};
}

function tooLarge({ width, height }: PatternSheet): string {
	const metres = (mm: number) => (mm / 1000).toFixed(2);
	return `The pieces want a sheet of ${metres(width)} by ${metres(height)} m, and no page may be longer than ${metres(longestSide)} m. Print it tiled, or divide the longest piece.`;
}
