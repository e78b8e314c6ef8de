import { cuttingLines, levelSpan, movePath, pathBox, undividedName } from '../../engine/index.ts';
import type { Box, Motion, Piece } from '../../engine/index.ts';
import type { CutPiece } from '../cut-piece.ts';
import { ownPath } from '../plane.ts';
import type { MarkingSheetInput } from './marking-input.ts';
import type { MarkingTable } from './marking-tables.ts';

/** A piece that is marked, as it was and as it becomes, laid on the page. */
export interface MarkedPiece {
	readonly before: Piece;
	readonly after: Piece;
	readonly cutBefore: CutPiece;
	readonly cutAfter: CutPiece;
	/** From the piece's own coordinates to mm on the page; a left half is turned over by it. */
	readonly motion: Motion;
	readonly turnedOver: boolean;
	/** Of its cutting line before, on the page. */
	readonly box: Box;
}

export interface MarkedLayout {
	readonly pieces: readonly MarkedPiece[];
	/** The pieces are drawn so many times smaller than true. */
	readonly scale: number;
	readonly bottom: number;
	/** The level that all pieces stand on in line, if they have one in common. */
	readonly sharedLevel?: string;
}

const scales = [6, 8, 10, 12, 16, 20, 24, 32] as const;

/** Room between pieces for pins and letters, mm on the page. */
const between = 11;

interface Loose {
	readonly before: Piece;
	readonly after: Piece;
	readonly cutBefore: CutPiece;
	readonly cutAfter: CutPiece;
	readonly turnedOver: boolean;
	/** Of the cutting line, in mm of the piece, turned over if it is. */
	readonly box: Box;
}

/**
 * The pieces with something to mark, in the order of the draft in one row, standing level on the first balance line that
 * they all have (the waist before others), at the first of the usual scales at which they fit.
 */
export function layMarkedPieces(input: MarkingSheetInput, tables: readonly MarkingTable[], area: Box): MarkedLayout {
	const loose = loosePieces(input, tables);
	const shared = sharedLevel(loose.map(({ before }) => before));
	const rise = (piece: Loose) => (shared === undefined ? 0 : levelHeight(piece.before, shared) - piece.box.top);
	const highest = Math.max(0, ...loose.map(rise));
	const heights = loose.map((piece) => highest - rise(piece) + piece.box.bottom - piece.box.top);
	const width = loose.reduce((sum, { box }) => sum + box.right - box.left, 0);
	const height = Math.max(0, ...heights);
	const room = area.right - area.left - between * loose.length;
	const fits = (scale: number) => width / scale <= room && height / scale <= area.bottom - area.top;
	const scale = scales.find(fits) ?? Math.ceil(Math.max(width / room, height / (area.bottom - area.top)));
	let x = area.left + between / 2;
	const pieces = loose.map((piece): MarkedPiece => {
		const { box, turnedOver, before, after, cutBefore, cutAfter } = piece;
		const y = area.top + (highest - rise(piece)) / scale;
		const motion: Motion = [(turnedOver ? -1 : 1) / scale, 0, 0, 1 / scale, x - box.left / scale, y - box.top / scale];
		const laid = {
			left: x,
			top: y,
			right: x + (box.right - box.left) / scale,
			bottom: y + (box.bottom - box.top) / scale
		};
		x = laid.right + between;
		return { before, after, cutBefore, cutAfter, motion, turnedOver, box: laid };
	});
	return { pieces, scale, bottom: area.top + height / scale, ...(shared === undefined ? {} : { sharedLevel: shared }) };
}

function loosePieces({ before, after, allowances }: MarkingSheetInput, tables: readonly MarkingTable[]): Loose[] {
	const named = new Set(tables.flatMap(({ features }) => features.map((feature) => feature.split('/')[0])));
	const was = cuttingLines(before, allowances);
	const becomes = cuttingLines(after, allowances);
	return after.pieces.flatMap((piece, i) => {
		const parent = before.pieces.findIndex(({ id }) => id === piece.id || id === undividedName(piece.id));
		const marked = named.has(piece.id) || named.has(undividedName(piece.id));
		if (!marked || parent < 0) return [];
		const turnedOver = piece.side === 'left';
		const box = pathBox(movePath([turnedOver ? -1 : 1, 0, 0, 1, 0, 0], ownPath(was[parent].outline)));
		const from = before.pieces[parent];
		return [{ before: from, after: piece, cutBefore: was[parent], cutAfter: becomes[i], turnedOver, box }];
	});
}

function sharedLevel(pieces: readonly Piece[]): string | undefined {
	const [first] = pieces;
	if (first === undefined) return undefined;
	const drawn = first.levels.flatMap((level) => ('line' in level ? [level.level] : []));
	const inAll = drawn.filter((level) => pieces.every((piece) => Number.isFinite(levelHeight(piece, level))));
	return inAll.find((level) => level === 'waist') ?? inAll[0];
}

function levelHeight(piece: Piece, level: string): number {
	const part = piece.levels.find((candidate) => candidate.level === level && 'line' in candidate);
	return (part && levelSpan(piece, part)?.points[0][1]) ?? NaN;
}
