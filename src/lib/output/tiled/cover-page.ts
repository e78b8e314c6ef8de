import { inch } from '../../measure/units.ts';
import { movePath } from '../../engine/index.ts';
import type { Point } from '../../engine/index.ts';
import { titleBlock } from '../heading.ts';
import type { PatternSheetInput } from '../pattern-input.ts';
import { pens } from '../pens.ts';
import { closedThrough } from '../plane.ts';
import type { Primitive, Text } from '../primitive.ts';
import { wrappedText } from '../text-width.ts';
import { centredText } from '../words.ts';
import { papers } from '../page/paper.ts';
import { margins } from './tile-size.ts';
import type { TilePlan } from './plan-tiles.ts';

const inchSide = 4 * inch;
const centimetreSide = 100;
const gap = 8;

const steps = [
	'Print at 100 %, not fitted to the page. Measure the squares on this page before anything is cut.',
	'The sheets are numbered row by row, as on the map. Sheets that show nothing are left out.',
	'Trim the right and the lower side of each sheet along the dashed line.',
	'Lay it over the next sheet, crossed tacks on crossed tacks, and tape it down. The numbers in the margins say which sheet that is.'
];

/** The page before the sheets: what the pattern is, two squares to measure, how it goes together, and a map of the sheets. */
export function drawCoverPage(plan: TilePlan, input: PatternSheetInput): Primitive[] {
	const { width, height } = papers[plan.paper];
	const inner = width - margins.left - margins.right;
	const cut = plan.pieces.map((piece) => piece.cut);
	const title = titleBlock(input, cut, [margins.left, margins.top], inner);
	const squaresAt = margins.top + title.height + gap;
	const textAt: Point = [margins.left + inchSide + gap, squaresAt];
	const mapTop = squaresAt + inchSide + gap;
	return [
		...title.texts,
		...drawSquares([margins.left, squaresAt]),
		...instructions(plan, textAt, inner - inchSide - gap),
		...drawMap(plan, [margins.left, mapTop], inner, Math.max(40, height - margins.bottom - mapTop))
	];
}

/** The squares of 100 mm and of 4 in in one another, from one corner, to save room. */
function drawSquares([x, y]: Point): Primitive[] {
	const square = (id: string, side: number): Primitive => ({
		kind: 'line',
		id,
		path: closedThrough([x, y], [x + side, y], [x + side, y + side], [x, y + side]),
		closed: true,
		pen: pens.scale
	});
	return [
		square('square.100-mm', centimetreSide),
		square('square.4-in', inchSide),
		centredText('100 mm each way', 6, 'bold', [x + 50, y + 40]),
		centredText('to the inner lines', 4, 'regular', [x + 50, y + 47]),
		centredText('4″ each way', 6, 'bold', [x + 50, y + 60]),
		centredText('to the outer lines', 4, 'regular', [x + 50, y + 67])
	];
}

function instructions(plan: TilePlan, [x, y]: Point, width: number): Text[] {
	const size = 4;
	const count = `${plan.tiles.length} ${plan.tiles.length === 1 ? 'sheet' : 'sheets'} of ${plan.paper}`;
	const lines: { text: string; weight: 'regular' | 'bold'; before: number }[] = [
		{ text: count, weight: 'bold', before: 0 }
	];
	for (const step of steps) {
		wrappedText(step, width, size, 'regular').forEach((text, i) =>
			lines.push({ text, weight: 'regular', before: i === 0 ? 2.5 : 0 })
		);
	}
	let baseline = y;
	return lines.map(({ text, weight, before }) => {
		baseline += before + size * 1.3;
		return { kind: 'text', text, at: [x, baseline], anchor: 'start', size, weight };
	});
}

/** The whole drawing as small as it must be, with the sheets' own shares of it and their numbers. */
function drawMap(plan: TilePlan, [x, y]: Point, width: number, height: number): Primitive[] {
	const right = Math.max(plan.width, ...plan.tiles.map(({ own }) => own.right));
	const bottom = Math.max(plan.height, ...plan.tiles.map(({ own }) => own.bottom));
	const scale = Math.min(width / right, height / bottom);
	const size = Math.max(3.2, Math.min(6, (scale * papers[plan.paper].width) / 4));
	const at = (px: number, py: number): Point => [x + px * scale, y + py * scale];
	return [
		...plan.pieces.map(({ outline }): Primitive => ({
			kind: 'line',
			path: movePath([scale, 0, 0, scale, x, y], outline),
			closed: true,
			pen: pens.stitching
		})),
		...plan.tiles.flatMap(({ own, number }): Primitive[] => [
			{
				kind: 'line',
				path: closedThrough(
					at(own.left, own.top),
					at(own.right, own.top),
					at(own.right, own.bottom),
					at(own.left, own.bottom)
				),
				closed: true,
				pen: pens.scale
			},
			{
				kind: 'text',
				text: String(number),
				at: [at(own.right, own.bottom)[0] - 1.2, at(own.right, own.bottom)[1] - 1.4],
				anchor: 'end',
				size,
				weight: 'bold'
			}
		])
	];
}
