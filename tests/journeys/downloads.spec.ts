import { expect, test } from '@playwright/test';
import { parseDraft } from '../../src/lib/engine/index.ts';
import { readPdf, type PaintedPath } from '../output/support/read-pdf.ts';
import { byId, readSvg } from '../output/support/read-svg.ts';
import { demoGarment } from '../support/demo-garment.ts';

const perMm = 72 / 25.4;

test('the large PDF is one page, with squares of 100 mm and 4 in true to size @desktop', async ({ request }) => {
	const answer = await request.get(`${await demoGarment(request)}/versions/2/pattern.pdf`);
	expect(answer.headers()['content-type']).toBe('application/pdf');
	expect(answer.headers()['content-disposition']).toBe('inline; filename="governess-jacket-version-2-iv.pdf"');
	const { pages } = await readPdf(new Uint8Array(await answer.body()));
	expect(pages).toHaveLength(1);
	const [page] = pages;
	expect(page.width / perMm).toBeGreaterThan(800);
	for (const [id, mm] of [
		['square.100-mm', 100],
		['square.4-in', 101.6]
	] as const) {
		const { width, height } = sizeOf(page.paths.find(({ marks }) => marks.includes(id))!);
		expect(width / perMm, id).toBeCloseTo(mm, 2);
		expect(height / perMm, id).toBeCloseTo(mm, 2);
	}
	expect(page.fonts.every(({ embedded }) => embedded)).toBe(true);
	expect(page.texts.join(' ')).toContain('I. V.');
	expect(page.texts.join(' ')).not.toContain('Varrow');
});

test('printed at home it is a cover and sheets of A4, or of Letter @desktop', async ({ request }) => {
	const at = `${await demoGarment(request)}/versions/2/pattern.pdf`;
	for (const [paper, width, height] of [
		['a4', 210, 297],
		['letter', 215.9, 279.4]
	] as const) {
		const { pages } = await readPdf(new Uint8Array(await (await request.get(`${at}?paper=${paper}`)).body()));
		expect(pages.length, paper).toBeGreaterThan(10);
		for (const page of pages) {
			expect(page.width / perMm).toBeCloseTo(width, 2);
			expect(page.height / perMm).toBeCloseTo(height, 2);
		}
	}
});

test('the SVG is in mm, one unit to the mm; without allowances it has no cutting line @desktop', async ({
	request
}) => {
	const at = `${await demoGarment(request)}/versions/2/pattern.svg`;
	const answer = await request.get(at);
	expect(answer.headers()['content-disposition']).toBe('attachment; filename="governess-jacket-version-2-iv.svg"');
	const elements = readSvg(await answer.text());
	const { width, height, viewBox } = elements[0].attributes;
	expect(viewBox).toBe(`0 0 ${parseFloat(width)} ${parseFloat(height)}`);
	expect(width).toMatch(/^\d+(\.\d+)?mm$/);
	expect(byId(elements, 'square.100-mm').attributes.d).toMatch(/^M[\d. ]+(L[\d. ]+){3,4}Z$/);
	const cutting = (file: string) => readSvg(file).filter(({ attributes }) => attributes.id?.startsWith('cutting.'));
	expect(cutting(await answer.text()).length).toBeGreaterThan(0);
	expect(cutting(await (await request.get(`${at}?lines=stitching`)).text())).toEqual([]);
});

test('the draft file is read again by the reader that drafts are brought in with @desktop', async ({ request }) => {
	const answer = await request.get(`${await demoGarment(request)}/versions/2/draft.json`);
	expect(answer.headers()['content-disposition']).toBe('attachment; filename="governess-jacket-version-2-iv.json"');
	const draft = parseDraft(await answer.json());
	expect(draft.pieces.map(({ id }) => id)).toContain('under-arm');
	expect(draft.pieces.find(({ id }) => id === 'front')!.darts.length).toBe(3);
});

test('what there is not is answered with a sentence and the right status @desktop', async ({ request }) => {
	const at = await demoGarment(request);
	for (const file of ['draft.json', 'pattern.svg', 'pattern.pdf', 'cutting-list.pdf']) {
		const nobody = await request.get(`/garments/nobody/versions/0/${file}`);
		expect(nobody.status(), file).toBe(404);
		expect((await nobody.json()).message).toContain('There is no garment here by that name.');
		for (const number of ['3000', '-1', '1.5', 'two', '%20'])
			expect((await request.get(`${at}/versions/${number}/${file}`)).status(), `${number} ${file}`).toBe(404);
	}
	const paper = await request.get(`${at}/versions/2/pattern.pdf?paper=a9`);
	expect(paper.status()).toBe(400);
	expect((await paper.json()).message).toContain('one-sheet, a4, letter');
	expect((await request.get(`${at}/versions/2/pattern.svg?lines=dotted`)).status()).toBe(400);
});

function sizeOf({ steps }: PaintedPath): { width: number; height: number } {
	const points = steps.flatMap((step) => step.points);
	const extent = (axis: 0 | 1) =>
		Math.max(...points.map((point) => point[axis])) - Math.min(...points.map((point) => point[axis]));
	return { width: extent(0), height: extent(1) };
}
