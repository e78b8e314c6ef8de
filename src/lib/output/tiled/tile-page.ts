import { inch } from '../../measure/units.ts';
import type { Point } from '../../engine/index.ts';
import { documentTitle } from '../document-title.ts';
import { testLine } from '../heading.ts';
import type { PatternSheetInput } from '../pattern-input.ts';
import { pens } from '../pens.ts';
import { through } from '../plane.ts';
import type { Primitive } from '../primitive.ts';
import { printedDate } from '../printed-date.ts';
import { textWidth } from '../text-width.ts';
import { centredText } from '../words.ts';
import { papers } from '../page/paper.ts';
import { margins } from './tile-size.ts';
import type { Tile, TilePlan, TileSide } from './plan-tiles.ts';

/** Half the width of a crossed tack, mm: it must lie wholly in what both sheets show. */
const tack = 4;

/** Where on a joint the tacks are, as shares of its length. */
const tackShares = [0.25, 0.75];

/** From the middle of the words in a margin to the drawing, mm. */
const beside = 3.2;

interface Joint {
	readonly side: TileSide;
	/** On the page. */
	readonly from: Point;
	readonly to: Point;
	/** The middle of the words in the margin, and their turn in degrees. */
	readonly words: Point;
	readonly turn: number;
}

/** From mm on the drawing to mm on the page of a tile: added to both coordinates. */
export function pageShift({ window }: Tile): Point {
	return [margins.left - window.left, margins.top - window.top];
}

/**
 * What a sheet has beside its part of the drawing: its number and what it belongs to, two lines to measure, and for each
 * sheet that it joins the joint, crossed tacks that come to lie on each other, and that sheet's number in the margin.
 */
export function drawTilePage(tile: Tile, plan: TilePlan, input: PatternSheetInput): Primitive[] {
	const { width, height } = papers[plan.paper];
	const foot = height - 6;
	const number = String(tile.number);
	const beyondNumber = margins.left + textWidth(number, 10, 'bold') + 2;
	return [
		...joints(tile).flatMap((joint) => drawJoint(joint, tile.joins[joint.side])),
		{ kind: 'text', text: number, at: [margins.left, foot], anchor: 'start', size: 10, weight: 'bold' },
		{
			kind: 'text',
			text: `of ${plan.tiles.length} · ${documentTitle(input)} · ${printedDate(input.title.date)}`,
			at: [beyondNumber, foot],
			anchor: 'start',
			size: 3.5,
			weight: 'regular'
		},
		...testLine('line.2-cm', [width - margins.right - inch - 12 - 20, height - 11], 20, 2, '2 cm'),
		...testLine('line.1-in', [width - margins.right - inch, height - 11], inch, 4, '1″')
	];
}

function joints(tile: Tile): Joint[] {
	const [dx, dy] = pageShift(tile);
	const { own, window } = tile;
	const [left, right] = [own.left + dx, own.right + dx];
	const [top, bottom] = [own.top + dy, own.bottom + dy];
	const [middleX, middleY] = [(left + right) / 2, (top + bottom) / 2];
	return [
		{ side: 'left', from: [left, top], to: [left, bottom], words: [margins.left - beside, middleY], turn: -90 },
		{ side: 'above', from: [left, top], to: [right, top], words: [middleX, margins.top - beside], turn: 0 },
		{ side: 'right', from: [right, top], to: [right, bottom], words: [window.right + dx + beside, middleY], turn: -90 },
		{ side: 'below', from: [left, bottom], to: [right, bottom], words: [middleX, window.bottom + dy + beside], turn: 0 }
	];
}

function drawJoint({ side, from, to, words, turn }: Joint, neighbour: number | undefined): Primitive[] {
	if (neighbour === undefined) return [];
	const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
	const tacks = tackShares.map((share): Point => [from[0] + share * dx, from[1] + share * dy]);
	return [
		{ kind: 'line', id: `joint.${side}`, path: through(from, to), pen: pens.joint },
		...tacks.flatMap(([x, y], i): Primitive[] => [
			{
				kind: 'line',
				id: `tack.${side}.${i + 1}`,
				path: through([x - tack, y - tack], [x + tack, y + tack]),
				pen: pens.mark
			},
			{ kind: 'line', path: through([x - tack, y + tack], [x + tack, y - tack]), pen: pens.mark }
		]),
		centredText(`joins ${neighbour}`, 3.5, 'regular', words, turn)
	];
}
