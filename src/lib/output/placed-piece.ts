import { cuttingLines, movePath, outlineOf, pathBox } from '../engine/index.ts';
import type { Box, Motion, Path, Piece, Point } from '../engine/index.ts';
import type { CutPiece } from './cut-piece.ts';
import type { PatternSheetInput } from './pattern-input.ts';
import { ownPath } from './plane.ts';

/** One piece as it lies on the sheet. */
export interface PlacedPiece {
	readonly piece: Piece;
	readonly cut: CutPiece;
	/** From the piece's own coordinates to mm on the sheet; a left half is turned over by it. */
	readonly motion: Motion;
	/** On the sheet: the cutting line, or the stitching line where that alone is printed. */
	readonly outline: Path;
	readonly withAllowance: boolean;
	readonly box: Box;
}

/** Where no allowance is printed, notches are as long as if it were this, mm. */
const unprintedAllowance = 4;

/**
 * The pieces of a version before they are laid anywhere, each with its cutting line. Left halves are turned over, since their
 * coordinates are those of the right half.
 */
export function loosePieces({ draft, allowances, lines }: PatternSheetInput): PlacedPiece[] {
	const withAllowance = lines === 'with allowances';
	const cut = cuttingLines(draft, withAllowance ? allowances : { default: unprintedAllowance });
	return draft.pieces.map((piece, i) => {
		const motion: Motion = [piece.side === 'left' ? -1 : 1, 0, 0, 1, 0, 0];
		const outline = movePath(motion, withAllowance ? ownPath(cut[i].outline) : outlineOf(piece));
		return { piece, cut: cut[i], motion, outline, withAllowance, box: pathBox(outline) };
	});
}

/** The same piece with the upper left corner of its box at a point of the sheet. */
export function laidAt(placed: PlacedPiece, [x, y]: Point): PlacedPiece {
	const { motion, outline, box } = placed;
	const [dx, dy] = [x - box.left, y - box.top];
	return {
		...placed,
		motion: [motion[0], motion[1], motion[2], motion[3], motion[4] + dx, motion[5] + dy],
		outline: movePath([1, 0, 0, 1, dx, dy], outline),
		box: { left: x, top: y, right: box.right + dx, bottom: box.bottom + dy }
	};
}
