import { levelSpan, movePoint } from '../../engine/index.ts';
import type { Box, Path, Point } from '../../engine/index.ts';
import { clearCloth, clearPlace, withLines, withRectangle } from '../clear-cloth.ts';
import type { ClearCloth } from '../clear-cloth.ts';
import { initials } from '../initials.ts';
import { drawAfter, drawBand, drawBefore } from '../marks/change.ts';
import { levelName } from '../marks/level.ts';
import { papers } from '../page/paper.ts';
import type { PaperName } from '../page/paper.ts';
import { drawPageHead, pageMargin, ruleAcross, sizes, tickBox, words } from '../page/page-parts.ts';
import { pens, tacks } from '../pens.ts';
import { through } from '../plane.ts';
import type { Primitive } from '../primitive.ts';
import { printedDate } from '../printed-date.ts';
import { testLine } from '../heading.ts';
import { textWidth, wrappedText } from '../text-width.ts';
import { asLine, centredText, setAlong } from '../words.ts';
import type { Words } from '../words.ts';
import { drawCallouts } from './draw-callouts.ts';
import { drawMarkedPiece } from './draw-marked-piece.ts';
import { drawTable } from './draw-tables.ts';
import type { MarkingSheetInput } from './marking-input.ts';
import { layMarkedPieces } from './marked-pieces.ts';
import type { MarkedLayout } from './marked-pieces.ts';
import { markingTables } from './marking-tables.ts';
import type { MarkingTable } from './marking-tables.ts';
import { inch } from '../../measure/units.ts';

/** The most of a page that the drawing takes, mm high; room at the right for the names of balance lines; between columns. */
const drawingHeight = 104;
const aboveDrawing = 3;
const levelNames = 20;
const gutter = 8;
const footHeight = 21;

const leading = 5;

/** The pages of a marking sheet: what is re-marked on the toile, drawn small and in a table for each line. */
export function drawMarkingSheet(input: MarkingSheetInput, paperName: PaperName): Primitive[][] {
	const paper = papers[paperName];
	const tables = markingTables(input);
	const head = drawHead(input, paperName);
	const right = paper.width - pageMargin;
	const intro = wrappedText(introduction(input, tables), right - pageMargin, sizes.body, 'regular');
	const introAt = head.below + 6.5;
	const top = introAt + intro.length * leading + 2;
	const area = { left: pageMargin, top: top + aboveDrawing, right: right - levelNames, bottom: top + drawingHeight };
	const layout = layMarkedPieces(input, tables, area);
	const drawing = tables.length > 0 ? drawPieces(input, tables, layout, { ...area, right }) : [];
	const below = tables.length > 0 ? layout.bottom + 8 : introAt + 4;
	const scale = tables.length > 0 ? ` Pieces drawn at 1 : ${layout.scale}, as seen from the right side.` : '';
	const introduced = wrappedText(introduction(input, tables) + scale, right - pageMargin, sizes.body, 'regular');
	const first: Primitive[] = [
		...head.parts,
		...introduced.map((text, i) => words(text, [pageMargin, introAt + i * leading], sizes.body)),
		...drawing,
		...(tables.length > 0 ? drawLegend(below) : [])
	];
	const legendBottom = tables.length > 0 ? below + 5 : below;
	const pages = flowTables(tables, input, paperName, [first], legendBottom);
	pages.forEach((page) => page.push(...drawFoot(input, paperName, page === pages[pages.length - 1])));
	return pages;
}

function introduction({ after }: MarkingSheetInput, tables: readonly MarkingTable[]): string {
	if (tables.length === 0) return 'Nothing is to be marked: the version is as the toile is stitched.';
	const uneven = after.pieces.some(({ side }) => side !== 'both');
	const sides = uneven ? 'Right and left differ: mark each from its own table.' : 'Mark right and left alike.';
	return `${sides} Measure from the old stitching line, square to it, on each layer. Join the marks in one smooth line.`;
}

function drawHead(input: MarkingSheetInput, paperName: PaperName) {
	const { title } = input;
	return drawPageHead(
		{
			title: 'Marking sheet',
			under: [title.garment, initials(title.wearer)].filter((part) => part !== '').join(' · '),
			right: `${title.toile} to ${title.version}`,
			rightUnder: [
				title.fitting,
				printedDate(title.date),
				...(title.wornUnder ? [`over ${title.wornUnder}`] : [])
			].join(', ')
		},
		papers[paperName]
	);
}

function drawPieces(
	input: MarkingSheetInput,
	tables: readonly MarkingTable[],
	layout: MarkedLayout,
	area: Box
): Primitive[] {
	const { pieces, scale } = layout;
	const features = tables.flatMap((table) => table.features);
	const drawn = pieces.map((piece) => {
		const own = features.filter((name) => [piece.before.id, piece.after.id].includes(name.split('/')[0]));
		return { piece, ...drawMarkedPiece(piece, new Set(own.map((name) => name.split('/')[1])), scale) };
	});
	const corners: Point[] = [
		[area.left, area.top - aboveDrawing],
		[area.right, area.top - aboveDrawing],
		[area.right, layout.bottom + 6],
		[area.left, layout.bottom + 6]
	];
	const paper = withLines(
		clearCloth(corners),
		drawn.flatMap(({ lines }) => lines),
		0.6
	);
	const callouts = drawCallouts(tables, pieces, input.after, scale, paper);
	const names = drawn.flatMap(({ piece, stitching, lines, grain }): Primitive[] => {
		const cloth = onlyOn(callouts.paper, asLine(stitching), lines);
		const { left, right, bottom } = piece.box;
		const named = nameOn(piece.after.name, piece.after.side, [(left + right) / 2, bottom], cloth);
		return [...named.parts, ...grain.flatMap((word) => clearAlong(word, named.cloth))];
	});
	return [...drawn.map(({ group }) => group), ...callouts.parts, ...names, ...drawLevelNames(layout, area.right)];
}

/** The paper as far as it lies inside one piece. */
function onlyOn(paper: ClearCloth, outline: readonly Point[], lines: readonly (readonly Point[])[]): ClearCloth {
	const cloth = withLines(clearCloth(outline), lines, 0.8);
	const taken = cloth.taken.map((already, i) => {
		const x = cloth.left + (i % cloth.columns) + 0.5;
		const y = cloth.top + Math.floor(i / cloth.columns) + 0.5;
		const [column, row] = [Math.floor(x - paper.left), Math.floor(y - paper.top)];
		const inside = column >= 0 && row >= 0 && column < paper.columns && row < paper.rows;
		return already || (inside && paper.taken[row * paper.columns + column]) ? 1 : 0;
	});
	return { ...cloth, taken };
}

function nameOn(name: string, side: 'both' | 'left' | 'right', foot: Point, cloth: ClearCloth) {
	const lines = side === 'both' ? [name] : [name, side];
	const narrow = lines.flatMap((line) => line.split(/(?<=-)| /));
	for (const size of [3.6, 3]) {
		for (const texts of [lines, narrow]) {
			const width = Math.max(...texts.map((text) => textWidth(text, size, 'bold')));
			const height = texts.length * size * 1.15;
			const near: Point = [cloth.left + cloth.columns / 2, cloth.top + cloth.rows / 3];
			const middle = clearPlace(cloth, width, height, [2, 1, 0.3], near);
			if (!middle) continue;
			const parts = texts.map((text, i) =>
				centredText(text, size, 'bold', [middle[0], middle[1] - height / 2 + (i + 0.5) * size * 1.15])
			);
			return { parts, cloth: withRectangle(cloth, { middle, width, height, turn: 0 }) };
		}
	}
	return { parts: [centredText(lines.join(', '), 3, 'bold', [foot[0], foot[1] + 3])], cloth };
}

/** The names of the balance lines at the right edge, where the last piece that has them shows them, if that is in line. */
function drawLevelNames({ pieces }: MarkedLayout, right: number): Primitive[] {
	const last = pieces.at(-1);
	if (!last) return [];
	return last.after.levels.flatMap((level): Primitive[] => {
		const end = levelSpan(last.after, level)?.points.reduce((a, b) => (b[0] > a[0] ? b : a));
		if (!end) return [];
		const y = movePoint(last.motion, end)[1];
		return [
			{ kind: 'dots', path: through([last.box.right + 2, y], [right, y]), ...tacks },
			words(levelName(level.level), [right, y - 1], sizes.note, 'regular', 'end')
		];
	});
}

/** The word along its line where it lies on nothing; on a small drawing the mark is known without it. */
function clearAlong(word: Words, cloth: ClearCloth): Primitive[] {
	const set = setAlong({ ...word, sizes: [3] }, cloth);
	return set.clear ? [set.text] : [];
}

function drawLegend(y: number): Primitive[] {
	let x = pageMargin;
	const length = 11;
	const item = (said: string, draw: (line: (offset: number) => Path) => Primitive[]): Primitive[] => {
		const from = x;
		x += length + 2 + textWidth(said, sizes.body, 'regular') + 3;
		const line = (offset: number) => through([from, y + offset], [from + length, y + offset]);
		return [...draw(line), words(said, [from + length + 2, y + 1.2], sizes.body)];
	};
	return [
		...item('stays', (line) => [{ kind: 'line', path: line(0), pen: pens.stitching }]),
		...item('old line: unpick', (line) => drawBefore(line(0))),
		...item('new line: mark and sew', (line) => drawAfter(line(0))),
		...item('taken in', (line) => drawBand(line(-1.4), line(1.2), false)),
		...item('let out', (line) => drawBand(line(1.2), line(-1.4), false))
	];
}

/** The tables in two columns, on as many pages as they need. */
function flowTables(
	tables: readonly MarkingTable[],
	input: MarkingSheetInput,
	paperName: PaperName,
	pages: Primitive[][],
	below: number
): Primitive[][] {
	const paper = papers[paperName];
	const width = (paper.width - 2 * pageMargin - gutter) / 2;
	const bottom = paper.height - pageMargin - footHeight;
	let top = below + 3;
	let columns = [top, top];
	if (tables.length > 0) pages[0].push(ruleAcross(pageMargin, paper.width - pageMargin, below, pens.mark.width));
	for (const table of tables) {
		const drawn = drawTable(table, width);
		let column = columns[0] <= columns[1] ? 0 : 1;
		if (columns[column] + drawn.height > bottom) column = 1 - column;
		if (columns[column] + drawn.height > bottom && columns[column] > top) {
			const head = drawHead(input, paperName);
			pages.push([...head.parts]);
			top = head.below + 4;
			columns = [top, top];
			column = 0;
		}
		pages[pages.length - 1].push(...drawn.at(pageMargin + column * (width + gutter), columns[column]));
		columns[column] += drawn.height;
	}
	return pages;
}

function drawFoot(input: MarkingSheetInput, paperName: PaperName, last: boolean): Primitive[] {
	const paper = papers[paperName];
	const right = paper.width - pageMargin;
	const top = paper.height - pageMargin - footHeight + 4;
	const foot = paper.height - pageMargin - 1;
	const parts: Primitive[] = [
		ruleAcross(pageMargin, right, top, pens.stitching.width),
		...testLine('line.1-in', [right - inch, foot - 4.5], inch, 4, '1″')
	];
	if (!last) return parts;
	let x = pageMargin;
	let y = top + 5.5;
	const lead = 'Then try:';
	if (input.tries.length > 0) {
		parts.push(words(lead, [x, y], sizes.body, 'bold'));
		x += textWidth(lead, sizes.body, 'bold') + 1.5;
	}
	for (const said of input.tries) {
		const width = textWidth(said, sizes.body, 'regular') + 7;
		if (x + width > right && x > pageMargin) {
			x = pageMargin;
			y += leading;
		}
		parts.push(words(said, [x, y], sizes.body), tickBox([x + width - 6, y]));
		x += width + 1.5;
	}
	let at = pageMargin;
	for (const said of ['marked by', 'on', 'pins counted out']) {
		parts.push(words(said, [at, foot], sizes.body));
		at += textWidth(said, sizes.body, 'regular') + 1.5;
		parts.push(ruleAcross(at, at + 20, foot + 0.6));
		at += 23;
	}
	return parts;
}
