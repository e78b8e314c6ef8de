import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { carry, edgeLength, nearestOn, parseAlteration, parseDraft } from '../../src/lib/engine/index.ts';
import { drawMarkingSheet } from '../../src/lib/output/marking-sheet/draw-marking-sheet.ts';
import type { MarkingSheetInput } from '../../src/lib/output/marking-sheet/marking-input.ts';
import { writeMarkingSheet } from '../../src/lib/output/marking-sheet/marking-sheet-pdf.ts';
import { markingTables } from '../../src/lib/output/marking-sheet/marking-tables.ts';
import { drawBand } from '../../src/lib/output/marks/change.ts';
import { through } from '../../src/lib/output/plane.ts';
import type { Text } from '../../src/lib/output/primitive.ts';
import { fonts } from './support/printed-input.ts';
import { lengthInPoints, readPdf } from './support/read-pdf.ts';
import { all, overlapping } from './support/text-box.ts';

const before = parseDraft(JSON.parse(readFileSync('src/lib/intake/demo-draft.json', 'utf8')));
const inches = (amount: number) => amount * 25.4;
const start = { end: 'start' };
const finish = { end: 'finish' };

const sideBack = {
	id: 'a1',
	kind: 'seam',
	seam: 'side-back',
	on: 'both',
	pins: [
		{ at: { level: 'waist' }, a: 0, b: 0 },
		{ at: finish, a: inches(1 / 4), b: inches(1 / 4) }
	]
};
const dart = {
	id: 'a2',
	kind: 'dart',
	edge: 'front/armhole',
	on: 'both',
	at: { fraction: 0.5 },
	intake: inches(3 / 8),
	point: [175, 150]
};
const neck = {
	id: 'a3',
	kind: 'edge',
	edge: 'front/neck',
	on: 'both',
	pins: [
		{ at: start, move: 0 },
		{ at: finish, move: -inches(3 / 8) }
	]
};
const side = {
	id: 'a4',
	kind: 'seam',
	seam: 'side',
	on: 'both',
	pins: [
		{ at: start, a: -inches(1 / 8), b: -inches(1 / 8) },
		{ at: { level: 'waist' }, a: -inches(1 / 4), b: -inches(1 / 4) },
		{ at: finish, a: 0, b: 0 }
	]
};

function sheetFor(...alterations: object[]): MarkingSheetInput {
	const { draft, applied, unplaced } = carry(before, alterations.map(parseAlteration));
	expect(unplaced).toEqual([]);
	return {
		before,
		after: draft,
		allowances: { default: inches(3 / 4) },
		title: {
			garment: 'Governess jacket',
			wearer: 'Ines Varrow',
			toile: 'Toile 2',
			version: 'version 2',
			fitting: 'fitting 2',
			wornUnder: 'chemise, corset at 25 3/4',
			date: '2026-03-10'
		},
		alterations: applied.map((step, i) => ({ number: i + 1, touched: step.touched.map(({ feature }) => feature) })),
		tries: ['hem runs on'],
		unit: 'in'
	};
}

describe('the tables say what was pinned', () => {
	const tables = markingTables(sheetFor(sideBack, dart, neck, side));
	const rowsOf = (number: number) => tables.filter(({ numbers }) => numbers.includes(number)).map(({ rows }) => rows);

	test('in the order in which it was pinned, both pieces of a seam in one table', () => {
		expect(tables.map(({ numbers, heading, said, boxes }) => [numbers, heading, said, boxes])).toEqual([
			[[1], 'Side-back seam', 'Back and Side back: let out.', ['Back', 'Side back']],
			[[2], 'New dart', 'Front, from the armhole: sew.', ['Front']],
			[[3], 'Neck', 'Front: cut away.', ['Front']],
			[[4], 'Side seam', 'Under-arm and Front: take in.', ['Under-arm', 'Front']]
		]);
	});

	test('a seam let out to ¼ in at the hem is out ¼″ there and nothing at the waist', () => {
		const [rows] = rowsOf(1);
		const byPlace = Object.fromEntries(rows.map(({ cells: [at, , by] }) => [at, by]));
		expect(byPlace).toMatchObject({ 'waist line': '0', hem: 'out 1/4″' });
		expect(rows.filter(({ most }) => most).map(({ cells }) => cells[0])).toContain('hem');
	});

	test('a seam taken in by 1/8 at the armhole and 1/4 at the waist says so, and how far down that is', () => {
		const [rows] = rowsOf(4);
		expect(rows[0].cells).toEqual(['armhole', '0', 'in 1/8″']);
		const waist = rows.find(({ cells }) => cells[0] === 'waist line');
		expect(waist?.cells[2]).toBe('in 1/4″');
		expect(waist?.places.map(({ edge }) => edge)).toEqual(['under-arm/side', 'front/side']);
	});

	test('a dart says its whole width and each leg’s', () => {
		const [rows] = rowsOf(2);
		expect(rows.map(({ cells }) => cells)).toEqual(
			expect.arrayContaining([
				['whole width', '3/8″'],
				['each leg from the middle', '3/16″']
			])
		);
	});

	test('a seam moved forward, out on one piece and in on the other, has a table for each', () => {
		const moved = markingTables(
			sheetFor({
				...side,
				pins: [
					{ at: start, a: 6, b: -6 },
					{ at: finish, a: 6, b: -6 }
				]
			})
		).filter(({ numbers }) => numbers.includes(1));
		expect(moved.map(({ said }) => said)).toEqual(['Under-arm only: let out.', 'Front only: take in.']);
	});

	test('one side alone is marked on that side’s piece', () => {
		const oneSided = markingTables(sheetFor({ ...neck, on: 'left' }));
		expect(oneSided.map(({ features }) => features)).toEqual([['front/neck']]);
	});
});

describe('the sheet', async () => {
	const input = sheetFor(sideBack, dart, neck, side);
	const bytes = await writeMarkingSheet(input, 'A4', fonts);
	const { pages, info } = await readPdf(bytes);
	const [page] = pages;
	const mm = 25.4 / 72;

	test('is one A4 page for four alterations, with a line of 1 in', () => {
		expect(pages).toHaveLength(1);
		expect([page.width * mm, page.height * mm].map(Math.round)).toEqual([210, 297]);
		const [line] = page.paths.filter(({ marks }) => marks.at(-1) === 'line.1-in');
		expect(lengthInPoints(line)).toBeCloseTo(72, 3);
	});

	test('names the wearer by initials only', () => {
		expect(page.texts.join(' ')).toContain('Governess jacket · I. V.');
		expect(`${page.texts.join(' ')} ${info.Title as string}`).not.toMatch(/Ines|Varrow/);
	});

	test('draws the new line true at the scale that it names', () => {
		const scale = Number(/at 1 : (\d+)/.exec(page.texts.join(' '))?.[1]);
		expect(scale).toBeGreaterThan(1);
		for (const edge of ['side', 'neck']) {
			const own = page.paths.filter(({ marks, paint }) => paint === 'stroke' && marks.at(-1) === `edge.front.${edge}`);
			const wide = (width: number) => own.filter(({ lineWidth }) => Math.abs(lineWidth * mm - width) < 0.01);
			const [stays, pricked] = [wide(0.5), wide(0.9)];
			expect(pricked.length).toBeGreaterThan(0);
			const length = [...stays, ...pricked].reduce((sum, path) => sum + lengthInPoints(path) * mm * scale, 0);
			expect(length).toBeCloseTo(edgeLength(input.after, `front/${edge}`), 1);
		}
	});

	test('draws heavily only what moved: of the side-back seam nothing above the waist', () => {
		const own = page.paths.filter(({ marks }) => marks.at(-1) === 'edge.back.side-back');
		const top = (width: number) =>
			Math.max(
				...own
					.filter(({ lineWidth }) => Math.abs(lineWidth * mm - width) < 0.01)
					.flatMap(({ steps }) => steps.flatMap(({ points }) => points.map(([, y]) => y)))
			);
		expect(top(0.5) - top(0.9)).toBeGreaterThan(50);
	});

	test('lays no word on another', () => {
		for (const paper of ['A4', 'Letter'] as const) {
			const texts = all(drawMarkingSheet(input, paper)[0]).filter((part): part is Text => part.kind === 'text');
			expect(texts.length).toBeGreaterThan(60);
			expect(overlapping(texts)).toBeUndefined();
		}
	});

	test('keeps every line off the edges of the paper', () => {
		for (const paths of page.paths)
			for (const [x, y] of paths.steps.flatMap(({ points }) => points)) {
				expect(x * mm).toBeGreaterThan(8);
				expect(x * mm).toBeLessThan(202);
				expect(y * mm).toBeGreaterThan(8);
				expect(y * mm).toBeLessThan(289);
			}
	});

	test('is the same to the byte when it is made again', async () => {
		expect(Buffer.compare(await writeMarkingSheet(structuredClone(input), 'A4', fonts), bytes)).toBe(0);
	});

	test('goes on over more pages when there is more to mark than one holds', () => {
		const seams = ['side-back', 'under-arm-back', 'side', 'shoulder', 'fore-sleeve', 'hind-sleeve'];
		const pins = [
			{ at: start, a: 5, b: 4 },
			{ at: finish, a: -5, b: -3 }
		];
		const much = sheetFor(...seams.map((seam, i) => ({ id: `m${i}`, kind: 'seam', seam, on: 'both', pins })));
		expect(drawMarkingSheet(much, 'Letter').length).toBeGreaterThan(1);
	});

	test('says so where nothing is to be marked', async () => {
		const nothing = await readPdf(await writeMarkingSheet(sheetFor(), 'A4', fonts));
		expect(nothing.pages[0].texts.join(' ')).toContain('Nothing is to be marked');
	});
});

describe('between the line before and the line after', () => {
	const low = through([0, 10], [60, 10]);
	const high = through([0, 7], [60, 7]);

	test('cloth let out is caught back and forth: one line whose turns lie on the two by turns', () => {
		// A level edge walked to the right has the outside above it.
		const [stitch, ...others] = drawBand(low, high, false);
		expect(others).toEqual([]);
		if (stitch.kind !== 'line') throw new Error('no line');
		const turns = [stitch.path[0].from, ...stitch.path.map(({ to }) => to)];
		turns.forEach((turn, i) => expect(nearestOn(i % 2 === 0 ? low : high, turn, 0.001).distance).toBeLessThan(1e-6));
		expect(turns.length).toBeGreaterThan(40);
	});

	test('cloth taken in is hatched past both lines', () => {
		const strokes = drawBand(high, low, false);
		expect(strokes.length).toBeGreaterThan(40);
		for (const stroke of strokes) {
			if (stroke.kind !== 'line') throw new Error('no line');
			const ys = [stroke.path[0].from[1], stroke.path[0].to[1]];
			expect(Math.min(...ys)).toBeLessThan(7);
			expect(Math.max(...ys)).toBeGreaterThan(10);
		}
	});

	test('on a piece turned over the same lines change places', () => {
		expect(drawBand(low, high, true).length).toBeGreaterThan(40);
		expect(drawBand(high, low, true)).toHaveLength(1);
	});
});
