import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../src/lib/engine/index.ts';
import { writePdf } from '../../src/lib/output/pdf.ts';
import { layPatternSheet } from '../../src/lib/output/sheet.ts';
import { writeSvg } from '../../src/lib/output/svg.ts';
import { printedDraft } from './support/printed-draft.ts';
import { fontFile, fonts, printedInput } from './support/printed-input.ts';
import { lengthInPoints, readPdf } from './support/read-pdf.ts';
import { readSvg } from './support/read-svg.ts';

const bytes = await writePdf(printedInput, fonts);
const { info, pages } = await readPdf(bytes);
const [page] = pages;

/** 1 pt is 1/72 in, an inch is 25.4 mm (ISO 32000-1, 8.3.2.3, and the agreement of 1959). */
const mm = 25.4 / 72;

const strokes = (id: string) => page.paths.filter(({ marks, paint }) => paint === 'stroke' && marks.at(-1) === id);

describe('the PDF is true to size', () => {
	test('it has one page, as large in points as the sheet is in mm', () => {
		const sheet = layPatternSheet(printedInput);
		expect(pages).toHaveLength(1);
		expect(page.width).toBeCloseTo((sheet.width * 72) / 25.4, 4);
		expect(page.height).toBeCloseTo((sheet.height * 72) / 25.4, 4);
	});

	test.each([
		['square.100-mm', 283.4646],
		['square.4-in', 288]
	])('each side of the %s is %d pt', (id, side) => {
		const [square] = strokes(id);
		expect(square.closed).toBe(true);
		const corners = square.steps.map(({ points }) => points[0]);
		for (let i = 0; i < 4; i++) {
			const [[x0, y0], [x1, y1]] = [corners[i], corners[(i + 1) % 4]];
			expect(Math.hypot(x1 - x0, y1 - y0)).toBeCloseTo(side, 3);
		}
	});

	test.each(printedDraft.pieces.flatMap((piece) => piece.edges.map((edge) => [piece.id, edge.id] as const)))(
		'the edge %s/%s is drawn once and as long as the engine says, to 0.05 mm',
		(piece, edge) => {
			const drawn = strokes(`edge.${piece}.${edge}`);
			expect(drawn).toHaveLength(1);
			expect(Math.abs(lengthInPoints(drawn[0]) * mm - edgeLength(printedDraft, `${piece}/${edge}`))).toBeLessThan(0.05);
		}
	);

	test('the stitching line is 0.5 mm wide and the cutting line 0.2 mm', () => {
		expect(strokes('edge.front.side')[0].lineWidth * mm).toBeCloseTo(0.5, 3);
		expect(strokes('cutting.front')[0].lineWidth * mm).toBeCloseTo(0.2, 3);
	});
});

describe('the PDF and the SVG are one drawing', () => {
	test('they have the same lines at the same places', () => {
		const lines = readSvg(writeSvg(printedInput)).filter(({ attributes }) => attributes.d && attributes.stroke);
		const strokesOfPdf = page.paths.filter(({ paint }) => paint === 'stroke');
		expect(strokesOfPdf).toHaveLength(lines.length);
		lines.forEach(({ attributes }, i) => {
			const figures = attributes.d.match(/-?[\d.]+/g)?.map(Number) ?? [];
			const drawn = strokesOfPdf[i].steps.flatMap(({ points }) =>
				points.flatMap(([x, y]) => [x * mm, (page.height - y) * mm])
			);
			expect(drawn).toHaveLength(figures.length);
			const farthest = Math.max(...figures.map((figure, k) => Math.abs(figure - drawn[k])));
			expect(farthest).toBeLessThan(0.002);
			expect(strokesOfPdf[i].lineWidth * mm).toBeCloseTo(Number(attributes['stroke-width']), 3);
		});
	});

	test('they have the same words', () => {
		const words = readSvg(writeSvg(printedInput)).filter(({ name }) => name === 'text');
		expect(page.texts.filter((text) => text.trim() !== '').map(plain)).toEqual(words.map(({ text }) => plain(text)));
	});
});

/** The reader gives a thin space back as a space. */
function plain(text: string): string {
	return text.replace(/\s/g, ' ');
}

describe('the fonts', () => {
	test('are in the file, each and every one', () => {
		expect(page.fonts.length).toBeGreaterThanOrEqual(2);
		for (const { name, embedded } of page.fonts) expect([name, embedded]).toEqual([name, true]);
	});

	test('are taken letter by letter from the file that holds them', async () => {
		const garment = 'Čapek, Żółw, Жакет, Φόρεμα';
		const named = await writePdf({ ...printedInput, title: { ...printedInput.title, garment } }, fonts);
		const read = (await readPdf(named)).pages[0];
		expect(read.texts.join('')).toContain(garment);
	});

	test('a letter that none of them holds is printed as a question mark', async () => {
		const latin = { regular: [fontFile('latin', 400)], bold: [fontFile('latin', 600)] };
		const named = await writePdf({ ...printedInput, title: { ...printedInput.title, garment: 'Жa' } }, latin);
		expect((await readPdf(named)).pages[0].texts).toContain('?a');
	});

	test('a PDF without a font is not written', async () => {
		await expect(writePdf(printedInput, { regular: [], bold: [] })).rejects.toThrow(/font/);
	});
});

test('the file is dated with the day handed in, and names the wearer by initials only', () => {
	expect(info.CreationDate).toBe('D:20260311000000Z');
	expect(info.Title).toBe('Governess jacket, lining, version 2, I. V.');
	expect(page.texts.join(' ')).not.toMatch(/Ines|Varrow/);
	expect(new TextDecoder('latin1').decode(bytes)).not.toMatch(/Ines|Varrow/);
});

test('the same input gives the same file to the byte', async () => {
	await new Promise((resolve) => setTimeout(resolve, 1100));
	expect(Buffer.compare(await writePdf(structuredClone(printedInput), fonts), bytes)).toBe(0);
});
