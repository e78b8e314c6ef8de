import { movePath, outlineOf, pathBox } from '../../engine/index.ts';
import type { Motion } from '../../engine/index.ts';
import { initials } from '../initials.ts';
import { versionWords } from '../heading.ts';
import { allowanceTone, pens } from '../pens.ts';
import { drawPageHead, drawPageTestLines, pageMargin, ruleAcross, sizes, tickBox, words } from '../page/page-parts.ts';
import { papers } from '../page/paper.ts';
import type { PaperName } from '../page/paper.ts';
import type { PatternSheetInput } from '../pattern-input.ts';
import type { Primitive } from '../primitive.ts';
import { printedDate } from '../printed-date.ts';
import { wrappedText } from '../text-width.ts';
import { cuttingRows } from './cutting-rows.ts';
import type { CuttingRow } from './cutting-rows.ts';

/** Where the columns begin, mm from the left margin; the last ends at the right one. */
const columns = { drawing: 0, name: 38, size: 76, allowances: 112, boxes: 158 } as const;

/** The room of a small drawing, mm, and the scales that are tried: all pieces are drawn at one. */
const drawing = { width: 34, height: 30 };
const scales = [10, 12, 16, 20, 24, 32, 40] as const;

const leading = 5;

/** The pages of a cutting list: each piece small but true, how often it is cut, how much cloth it takes, and boxes to tick. */
export function drawCuttingList(input: PatternSheetInput, paperName: PaperName): Primitive[][] {
	const paper = papers[paperName];
	const rows = cuttingRows(input);
	const scale = scaleFor(rows);
	const bottom = paper.height - pageMargin - 14;
	const pages: Primitive[][] = [];
	let page: Primitive[] = [];
	let y = Infinity;
	for (const row of rows) {
		const drawn = drawRow(row, scale, paper.width);
		if (y + drawn.height > bottom) {
			const head = drawHead(input, paperName, scale);
			pages.push((page = [...head.parts, ...drawPageTestLines(paper)]));
			y = head.below;
		}
		page.push(...drawn.at(y));
		y += drawn.height;
	}
	if (pages.length === 0) pages.push([...drawHead(input, paperName, scale).parts, ...drawPageTestLines(paper)]);
	const count = rows.reduce((sum, { boxes }) => sum + boxes.length, 0);
	pages.forEach((parts, i) => {
		const place = pages.length > 1 ? ` · page ${i + 1} of ${pages.length}` : '';
		const said = `${count} ${count === 1 ? 'piece' : 'pieces'} of cloth in all${place}`;
		parts.push(words(said, [pageMargin, paper.height - pageMargin - 3], sizes.body));
	});
	return pages;
}

function drawHead(
	input: PatternSheetInput,
	paperName: PaperName,
	scale: number
): { readonly parts: readonly Primitive[]; readonly below: number } {
	const { title } = input;
	const paper = papers[paperName];
	const worn = title.wornUnder ? `, over ${title.wornUnder}` : '';
	const version = versionWords(title.version);
	const head = drawPageHead(
		{
			title: 'Cutting list',
			under: [title.garment, initials(title.wearer)].filter((part) => part !== '').join(' · '),
			right: title.lining ? `Lining, ${version}` : `${version[0].toUpperCase()}${version.slice(1)}`,
			rightUnder: `${printedDate(title.date)}${worn}`
		},
		paper
	);
	const note = head.below + 7;
	const labels = note + 9;
	const at = (column: number) => pageMargin + column;
	return {
		parts: [
			...head.parts,
			words(
				`Pieces drawn at 1 : ${scale}. Sizes are of the cut piece, along the grain by across it.`,
				[pageMargin, note],
				sizes.body
			),
			words('piece', [at(columns.name), labels], sizes.note),
			words('along × across', [at(columns.size), labels], sizes.note),
			words('allowances', [at(columns.allowances), labels], sizes.note),
			words('cut', [at(columns.boxes), labels], sizes.note),
			ruleAcross(pageMargin, paper.width - pageMargin, labels + 2.5, pens.stitching.width)
		],
		below: labels + 2.5
	};
}

function scaleFor(rows: readonly CuttingRow[]): number {
	const boxes = rows.map(({ outline }) => pathBox(outline));
	const fits = (scale: number) =>
		boxes.every(
			({ left, right, top, bottom }) => right - left <= drawing.width * scale && bottom - top <= drawing.height * scale
		);
	return scales.find(fits) ?? scales[scales.length - 1] * 2;
}

function drawRow(
	row: CuttingRow,
	scale: number,
	pageWidth: number
): { readonly height: number; readonly at: (y: number) => Primitive[] } {
	const box = pathBox(row.outline);
	const names = wrappedText(row.name, columns.size - columns.name - 3, sizes.lead, 'bold');
	const cuts = wrappedText(row.words, columns.size - columns.name - 3, sizes.body, 'regular');
	const allowances = wrappedText(row.allowances, columns.boxes - columns.allowances - 3, sizes.body, 'regular');
	const lines = Math.max(names.length + cuts.length, allowances.length, row.boxes.length);
	const height = Math.max((box.bottom - box.top) / scale + 6, lines * leading + 5);
	const at = (y: number): Primitive[] => {
		const first = y + 6.5;
		const x = (column: number) => pageMargin + column;
		const motion: Motion = [
			1 / scale,
			0,
			0,
			1 / scale,
			pageMargin + columns.drawing - box.left / scale,
			y + 3 - box.top / scale
		];
		const side = row.piece.side === 'left' ? -1 : 1;
		const stitching = movePath([motion[0] * side, 0, 0, motion[3], motion[4], motion[5]], outlineOf(row.piece));
		const cutting = movePath(motion, row.outline);
		return [
			{ kind: 'tone', path: cutting, black: allowanceTone },
			{ kind: 'tone', path: stitching, black: 0 },
			{ kind: 'line', path: stitching, closed: true, pen: pens.mark },
			{ kind: 'line', path: cutting, closed: true, pen: pens.scale },
			...names.map((text, i) => words(text, [x(columns.name), first + i * leading], sizes.lead, 'bold')),
			...cuts.map((text, i) => words(text, [x(columns.name), first + (names.length + i) * leading], sizes.body)),
			words(row.size, [x(columns.size), first], sizes.body),
			...allowances.map((text, i) => words(text, [x(columns.allowances), first + i * leading], sizes.body)),
			...row.boxes.flatMap((text, i) => [
				tickBox([x(columns.boxes), first + i * leading]),
				...(text === '' ? [] : [words(text, [x(columns.boxes) + 5, first + i * leading], sizes.body)])
			]),
			ruleAcross(pageMargin, pageWidth - pageMargin, y + height)
		];
	};
	return { height, at };
}
