/**
 * The main job, whole, as one who has never been here does it: from a draft file of one's own through a toile and a fitting
 * with a taken-in seam, a let-out edge and an added dart to version 1, the comparison, and the lining pattern true to size.
 */
import { expect, test, type Page } from '@playwright/test';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { svgPathProperties } from 'svg-path-properties';
import { parseDraft, stitchedLength } from '../../src/lib/engine/index.ts';
import { plainBodiceFile } from '../support/plain-bodice.ts';

const points = 72 / 25.4;

test('from a draft of one’s own to the lining pattern', async ({ page, request }, info) => {
	const name = `Travelling bodice, ${info.project.name}`;
	const garment = await bringIn(page, name);
	await cutToile(page, garment);
	const fitting = await beginFitting(page, garment);

	await page.goto(`${fitting}?act=took-in&seam=side`);
	await page.getByLabel('Waist line, how much', { exact: true }).fill('ten');
	await page.getByRole('button', { name: 'Keep alteration 1' }).click();
	await expect(page.getByText('“ten” is not in figures. Write a length such as 3/8 or 1 1/4.').first()).toBeVisible();
	await expect(page.getByLabel('Waist line, how much', { exact: true })).toHaveValue('ten');
	await page.getByLabel('Waist line, how much', { exact: true }).fill('1/4');
	await page.getByRole('button', { name: 'Keep alteration 1' }).click();
	await expect(page.getByText('took in 1/4″ at the waist, both sides').first()).toBeVisible();

	await page.goto(`${fitting}?act=open-edge&edge=front/centre`);
	await page.getByRole('radio', { name: 'Added' }).check({ force: true });
	for (const place of ['Hem', 'Waist line', 'Half way', 'Bust line', 'Neck'])
		await page.getByLabel(`${place}, how much`, { exact: true }).fill('3/8');
	await page.getByRole('button', { name: 'Keep alteration 2' }).click();
	await expect(page.getByText(/3\/8″/).first()).toBeVisible();

	await page.goto(`${fitting}?act=new-dart&edge=front/armhole`);
	await page.getByLabel('Where it opens').selectOption('fraction:0.5');
	await page.getByLabel('How wide', { exact: true }).fill('3/8');
	await page.getByLabel('How long').fill('3');
	await page.getByRole('button', { name: 'Keep alteration 3' }).click();
	await expect(page.getByText(/New dart/).first()).toBeVisible();

	await page.goto(`${fitting}/carry`);
	await page.locator('main .button-ink').click();
	await expect(page.getByRole('heading', { level: 1, name: 'Version 1' })).toBeVisible();
	await expect(page.getByRole('row', { name: /Side.*walks/ })).toBeVisible();

	await page.goto(`${garment}/compare?from=0&to=1`);
	await expect(page.getByText(/Side/).first()).toBeVisible();

	await chooseLining(page, garment);
	const version = `${garment}/versions/1`;
	const draft = parseDraft(await (await request.get(`${version}/draft.json`)).json());
	expect(draft.pieces.find((piece) => piece.id === 'front')!.darts).toHaveLength(1);

	// The side seam measured in the file by another reader is as long as the engine says it is sewn, with the dart closed.
	const svg = await (await request.get(`${version}/pattern.svg`)).text();
	expect(svg).toMatch(/<svg[^>]* width="[\d.]+mm"[^>]* height="[\d.]+mm"/);
	const side = /<path id="edge\.back\.side" d="([^"]+)"/.exec(svg)!;
	expect(new svgPathProperties(side[1]).getTotalLength()).toBeCloseTo(stitchedLength(draft, 'back/side'), 1);

	const pdf = await request.get(`${version}/pattern.pdf?paper=one-sheet`);
	expect(pdf.headers()['content-type']).toBe('application/pdf');
	const read = await getDocument({ data: new Uint8Array(await pdf.body()), verbosity: 0 }).promise;
	const first = await read.getPage(1);
	const words = (await first.getTextContent()).items.map((item) => ('str' in item ? item.str : '')).join(' ');
	expect(words).toContain('100 mm');
	expect(first.view[2]).toBeGreaterThan(300 * points);
});

async function bringIn(page: Page, name: string): Promise<string> {
	await page.goto('/');
	await page.getByRole('link', { name: 'Begin' }).click();
	await page.getByLabel('Name', { exact: true }).fill(name);
	await page.getByLabel('Wearer', { exact: true }).selectOption('new');
	await page.getByLabel('Someone new').fill('Tobin Ashgrove');
	await page.getByLabel('File', { exact: true }).setInputFiles({
		name: 'bodice.json',
		mimeType: 'application/json',
		buffer: Buffer.from(JSON.stringify(plainBodiceFile))
	});
	await page.getByRole('button', { name: 'Lay the draft on the table' }).click();
	await page.getByRole('button', { name: 'Begin the garment' }).click();
	await page.waitForURL(/\/garments\/(?!new)[^/?]+$/);
	await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
	return new URL(page.url()).pathname;
}

async function cutToile(page: Page, garment: string): Promise<void> {
	await page.goto(`${garment}/toiles/new?version=0`);
	await page.getByLabel('Cloth', { exact: true }).fill('calico');
	await page.getByRole('button', { name: 'It is cut: keep the toile' }).click();
	await page.waitForURL(/\/toiles\/(?!new)[^/?]+$/);
	await expect(page.getByRole('heading', { level: 1, name: 'Toile 1' })).toBeVisible();
}

async function beginFitting(page: Page, garment: string): Promise<string> {
	await page.goto(`${garment}/fittings/new`);
	await page.getByLabel('or something not in the list').fill('shift and stays');
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	await page.waitForURL(/\/fittings\/(?!new)[^/?]+$/);
	await expect(page.getByRole('heading', { level: 1, name: 'Fitting 1' })).toBeVisible();
	return new URL(page.url()).pathname;
}

async function chooseLining(page: Page, garment: string): Promise<void> {
	await page.goto(`${garment}/lining`);
	await page.getByRole('button', { name: 'Choose version 1' }).click();
	await expect(page.getByRole('heading', { level: 1, name: /Lining/ })).toBeVisible();
}
