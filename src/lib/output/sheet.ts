import { cuttingLines, movePath, outlineOf, pathBox } from '../engine/index.ts';
import type { Motion, Path, Piece, Point } from '../engine/index.ts';
import type { CutPiece } from './cut-piece.ts';
import { headingWidth, layHeading } from './heading.ts';
import type { Heading } from './heading.ts';
import type { PatternSheetInput } from './pattern-input.ts';
import { ownPath } from './plane.ts';
import { layOnShelves } from './shelves.ts';
import type { Laid } from './shelves.ts';

/** One piece on the sheet. Its motion leads from the piece's own coordinates to mm on the sheet. */
export interface PlacedPiece {
	readonly piece: Piece;
	readonly cut: CutPiece;
	readonly motion: Motion;
	/** On the sheet; absent where only stitching lines are printed. */
	readonly cuttingLine?: Path;
	/** The middle of its lower side on the sheet. */
	readonly foot: Point;
}

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

/** Where no allowance is printed, notches are as long as if it were this, mm. */
const unprintedAllowance = 4;

/**
 * Lays out a version: the heading, and below it the pieces on shelves by height, each as it lies on the table; left halves
 * are turned over, since their coordinates are those of the right half.
 *
 * @throws SheetTooLarge if the pieces cannot be laid on a sheet of `longestSide` by `longestSide`
 */
export function layPatternSheet(input: PatternSheetInput): PatternSheet {
	const loose = loosePieces(input);
	const sizes = loose.map(({ outline }) => {
		const { left, top, right, bottom } = pathBox(outline);
		return { width: right - left, height: bottom - top };
	});
	for (let width = usualWidth; ; width *= 1.25) {
		const room = Math.min(width, longestSide) - 2 * border;
		const sheet = sheetOf(input, loose, layOnShelves(sizes, room, gap));
		if (sheet.width <= longestSide && sheet.height <= longestSide) return sheet;
		if (width >= longestSide) throw new SheetTooLarge(tooLarge(sheet));
	}
}

interface LoosePiece {
	readonly piece: Piece;
	readonly cut: CutPiece;
	readonly turnedOver: boolean;
	/** Turned over if it is a left half, but not yet laid anywhere: the cutting line, or the stitching line if that is all. */
	readonly outline: Path;
}

function loosePieces({ draft, allowances, lines }: PatternSheetInput): LoosePiece[] {
	const cut = cuttingLines(draft, lines === 'with allowances' ? allowances : { default: unprintedAllowance });
	return draft.pieces.map((piece, i) => {
		const turnedOver = piece.side === 'left';
		const outline = lines === 'with allowances' ? ownPath(cut[i].outline) : outlineOf(piece);
		return { piece, cut: cut[i], turnedOver, outline: movePath(laid(turnedOver, 0, 0), outline) };
	});
}

function sheetOf(
	input: PatternSheetInput,
	loose: readonly LoosePiece[],
	{ corners, width, height }: Laid
): PatternSheet {
	const inner = Math.max(width, headingWidth);
	const heading = layHeading(
		input,
		loose.map(({ cut }) => cut),
		[border, border],
		inner
	);
	const top = border + heading.height + gap;
	const withAllowances = input.lines === 'with allowances';
	return {
		input,
		width: Math.ceil(inner + 2 * border),
		height: Math.ceil(top + height + border),
		heading,
		pieces: loose.map(({ piece, cut, turnedOver, outline }, i) => {
			const box = pathBox(outline);
			const [x, y] = corners[i];
			const [dx, dy] = [border + x - box.left, top + y - box.top];
			return {
				piece,
				cut,
				motion: laid(turnedOver, dx, dy),
				...(withAllowances ? { cuttingLine: movePath(laid(false, dx, dy), outline) } : {}),
				foot: [border + x + (box.right - box.left) / 2, top + y + box.bottom - box.top]
			};
		})
	};
}

/** Turned over in the line x = 0 or not, and then shifted. */
function laid(turnedOver: boolean, dx: number, dy: number): Motion {
	return [turnedOver ? -1 : 1, 0, 0, 1, dx, dy];
}

function tooLarge({ width, height }: PatternSheet): string {
	const metres = (mm: number) => (mm / 1000).toFixed(2);
	return `The pieces want a sheet of ${metres(width)} by ${metres(height)} m, and no page may be longer than ${metres(longestSide)} m. Print it tiled, or divide the longest piece.`;
}
