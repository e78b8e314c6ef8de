import { drawPiece } from '../draw-piece.ts';
import { versionWords } from '../heading.ts';
import { meetsBox } from '../polygon.ts';
import type { PatternSheetInput } from '../pattern-input.ts';
import { laidAt, loosePieces } from '../placed-piece.ts';
import type { PlacedPiece } from '../placed-piece.ts';
import type { Group } from '../primitive.ts';
import { layOnShelves } from '../shelves.ts';
import { asLine } from '../words.ts';
import { papers } from '../page/paper.ts';
import { margins, overlap } from './tile-size.ts';
import type { PaperName } from '../page/paper.ts';
import type { Box, Point } from '../../engine/index.ts';

/** One sheet of a tiled pattern; boxes in mm on the whole drawing. */
export interface Tile {
	/** From 1, row by row, blank ones left out. */
	readonly number: number;
	/** All that is printed on it. */
	readonly window: Box;
	/** Its own share of the drawing, from joint to joint. */
	readonly own: Box;
	/** The numbers of the sheets that it joins; a blank one has none. */
	readonly joins: Readonly<Partial<Record<TileSide, number>>>;
}

export type TileSide = 'left' | 'above' | 'right' | 'below';

export interface TilePlan {
	readonly paper: PaperName;
	/** Of the whole drawing, mm. */
	readonly width: number;
	readonly height: number;
	readonly pieces: readonly PlacedPiece[];
	readonly groups: readonly Group[];
	readonly tiles: readonly Tile[];
}

/** Clear of the outermost edges of the drawing, and between pieces, mm. */
const border = 4;
const gap = 10;

/** Widths that are tried, in sheets side by side. */
const mostColumns = 12;

/** How many more sheets, as a share, are worth a whole that is less long: it lies on a table, and its map can be read. */
const squareShare = 0.1;

interface Step {
	readonly across: number;
	readonly down: number;
}

interface Layout {
	readonly width: number;
	readonly height: number;
	readonly pieces: readonly PlacedPiece[];
}

/**
 * Lays the pieces for sheets of one size: as many side by side as make few sheets and a whole that is not long. Sheets that
 * show nothing of a piece or of its words are left out and have no number.
 */
export function planTiles(input: PatternSheetInput, paper: PaperName): TilePlan {
	const loose = loosePieces(input);
	const step = stepOf(paper);
	const widest = Math.max(0, ...loose.map(({ box }) => box.right - box.left)) + 2 * border;
	const least = Math.max(1, Math.ceil((widest - overlap) / step.across));
	const layouts = Array.from({ length: Math.max(1, mostColumns - least + 1) }, (_, i) =>
		layoutIn((least + i) * step.across + overlap - 2 * border, loose)
	);
	const costs = layouts.map((layout) => ({ layout, sheets: tilesOf(layout, [], step).length }));
	const fewest = Math.min(...costs.map(({ sheets }) => sheets));
	const { layout } = costs
		.filter(({ sheets }) => sheets <= fewest * (1 + squareShare))
		.reduce((best, one) => (longerSide(one.layout) < longerSide(best.layout) ? one : best));
	const groups = layout.pieces.map((piece) => drawPiece(piece, versionWords(input.title.version)));
	const words = groups.flatMap(({ parts }) => parts.flatMap((part) => (part.kind === 'text' ? [part.at] : [])));
	return { ...layout, paper, groups, tiles: tilesOf(layout, words, step) };
}

function longerSide({ width, height }: Layout): number {
	return Math.max(width, height);
}

/** How far it is from one sheet's window to the next one's, mm. */
function stepOf(paper: PaperName): Step {
	const { width, height } = papers[paper];
	return {
		across: width - margins.left - margins.right - overlap,
		down: height - margins.top - margins.bottom - overlap
	};
}

function layoutIn(room: number, loose: readonly PlacedPiece[]): Layout {
	const sizes = loose.map(({ box }) => ({ width: box.right - box.left, height: box.bottom - box.top }));
	const { corners, width, height } = layOnShelves(sizes, room, gap);
	return {
		width: width + 2 * border,
		height: height + 2 * border,
		pieces: loose.map((piece, i) => laidAt(piece, [border + corners[i][0], border + corners[i][1]]))
	};
}

function tilesOf({ width, height, pieces }: Layout, words: readonly Point[], step: Step): Tile[] {
	const columns = Math.max(1, Math.ceil((width - overlap) / step.across));
	const rows = Math.max(1, Math.ceil((height - overlap) / step.down));
	const outlines = pieces.map(({ outline }) => asLine(outline));
	const places = Array.from({ length: columns * rows }, (_, i) => ({
		column: i % columns,
		row: Math.floor(i / columns)
	}));
	const shown = places
		.map((place) => ({ ...place, own: ownBox(place.column, place.row, columns, rows, step) }))
		.filter(({ own }) => outlines.some((outline) => meetsBox(outline, own)) || words.some((at) => isIn(at, own)));
	const numberAt = (column: number, row: number) => {
		const index = shown.findIndex((tile) => tile.column === column && tile.row === row);
		return index < 0 ? undefined : index + 1;
	};
	return shown.map(({ column, row, own }, i) => {
		const left = column * step.across;
		const top = row * step.down;
		return {
			number: i + 1,
			own,
			window: { left, top, right: left + step.across + overlap, bottom: top + step.down + overlap },
			joins: {
				left: numberAt(column - 1, row),
				above: numberAt(column, row - 1),
				right: numberAt(column + 1, row),
				below: numberAt(column, row + 1)
			}
		};
	});
}

/** From joint to joint; at the outer sides of the drawing there is none, and the window's own side is taken. */
function ownBox(column: number, row: number, columns: number, rows: number, { across, down }: Step): Box {
	return {
		left: column === 0 ? 0 : column * across + overlap / 2,
		top: row === 0 ? 0 : row * down + overlap / 2,
		right: (column + 1) * across + (column === columns - 1 ? overlap : overlap / 2),
		bottom: (row + 1) * down + (row === rows - 1 ? overlap : overlap / 2)
	};
}

function isIn([x, y]: Point, { left, top, right, bottom }: Box): boolean {
	return x >= left && x <= right && y >= top && y <= bottom;
}
