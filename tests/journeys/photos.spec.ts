import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import sharp from 'sharp';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** A picture whose left half is red and whose right half is blue, with the day and place that a telephone writes into it. */
async function picture(width = 800, height = 1000) {
	const data = Buffer.alloc(width * height * 3, 40);
	for (let pixel = 0; pixel < width * height; pixel++) data[pixel * 3 + (pixel % width < width / 2 ? 0 : 2)] = 230;
	const bytes = await sharp(data, { raw: { width, height, channels: 3 } })
		.withExif({ IFD0: { Make: 'Telephone' }, IFD2: { DateTimeOriginal: '2026:03:10 14:32:05' } })
		.jpeg()
		.toBuffer();
	return { name: 'front.jpg', mimeType: 'image/jpeg', buffer: bytes };
}
const words = { name: 'notes.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('these are only words') };

/** Begins a fitting of the demo's garment and opens its photos. */
async function photosOfNewFitting(page: Page): Promise<string> {
	const garment = await demoGarment(page.request, server.address());
	await page.goto(`${server.address()}${garment}/fittings/new`);
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	await page.waitForURL(/\/fittings\/p[a-z0-9]+$/);
	const photos = `${page.url()}/photos`;
	await page.goto(photos);
	return photos;
}

async function agree(page: Page) {
	await page.getByLabel('Photographs may be taken').check();
	await page.getByLabel('They may be kept here').check();
	await page.getByRole('button', { name: 'Note what was said' }).click();
	await expect(page.getByLabel('From the camera or a file')).toBeVisible();
}

/** Adds files: with scripting they are sent as they are chosen. */
async function add(page: Page, files: (typeof words)[]) {
	const plain = page.getByRole('button', { name: 'Add these photos' });
	await page.getByLabel('From the camera or a file').setInputFiles(files);
	if (await plain.isVisible()) await plain.click();
}

const seen = (page: Page) => page.getByRole('button', { name: /^Put a pin in/ }).locator('visible=true');
const nothingFound = async (page: Page) => expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

test('photographs are off until the wearer was asked; then one is added, marked, turned over and erased', async ({
	page,
	javaScriptEnabled
}) => {
	await photosOfNewFitting(page);
	await expect(page.getByText('Photographs are off until the wearer has been asked')).toBeVisible();
	await expect(page.getByLabel('From the camera or a file')).toHaveCount(0);
	if (javaScriptEnabled) await nothingFound(page);

	await agree(page);
	await add(page, [await picture()]);
	await page.getByRole('link', { name: 'Photo 1' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Photo 1');
	await expect(page.getByText('taken 10 March, 14:32')).toBeVisible();

	const box = (await seen(page).boundingBox())!;
	await seen(page).click({ position: { x: box.width / 4, y: box.height / 2 } });
	const row = page.getByRole('list', { name: 'Pins on Photo 1' }).getByRole('listitem');
	await expect(row).toHaveCount(1);
	await row.getByLabel('Note').fill('hook and eye here');
	await row.getByRole('button', { name: 'Keep it' }).click();
	await expect(row.getByText('hook and eye here').first()).toBeVisible();
	if (javaScriptEnabled) await nothingFound(page);

	// The pin stands where it was put, as far as a pixel goes, and turns with the picture.
	const pinned = async () => {
		const [pin, photo] = [
			await page.locator('a[data-pin] .reach').locator('visible=true').first().boundingBox(),
			await seen(page).boundingBox()
		];
		return {
			x: (pin!.x + pin!.width / 2 - photo!.x) / photo!.width,
			y: (pin!.y + pin!.height / 2 - photo!.y) / photo!.height
		};
	};
	expect((await pinned()).x).toBeCloseTo(0.25, 1.5);
	expect((await pinned()).y).toBeCloseTo(0.5, 1.5);
	await page.getByRole('button', { name: 'It was taken in a mirror: turn it over' }).click();
	await expect(page.getByText('taken in a mirror, turned over')).toBeVisible();
	expect((await pinned()).x).toBeCloseTo(0.75, 1.5);

	// It lies on the table of the fitting as a small print, with its pin, and leads here.
	const here = page.url();
	await page.goto(here.replace(/\/photos\/.*$/, ''));
	await expect(page.getByRole('link', { name: '1 photo: add, or mark' })).toHaveAttribute('href', /\/photos$/);
	await page.getByRole('link', { name: /^Photo 1\. marked: Place 1, hook and eye here/ }).click();
	await expect(page).toHaveURL(here);

	await row.locator('summary').click();
	await row.getByRole('button', { name: 'Move Place 1 up' }).click();
	await expect.poll(async () => (await pinned()).y).toBeLessThan(0.47);

	await page.getByText('Take this photo out').click();
	await page.getByRole('button', { name: 'Erase this photo' }).click();
	await expect(page.getByText('No photo yet.')).toBeVisible();
});

test('a file that is no picture is named with what would be right, and the others are kept', async ({ page }) => {
	await photosOfNewFitting(page);
	await agree(page);
	const whole = await picture();
	await add(page, [words, { ...whole, name: 'half.jpg', buffer: whole.buffer.subarray(0, 3000) }, whole]);
	await expect(page.getByText('This is not a picture of a kind that is taken here')).toBeVisible();
	await expect(page.getByText('part of the file is missing or spoilt')).toBeVisible();
	await expect(page.getByText('notes.jpg')).toBeVisible();
	await expect(page.getByRole('link', { name: /^Photo \d/ })).toHaveCount(1);
});

test('by keyboard alone a pin is put in the middle, moved with the arrows, and stands there when the page is opened again @scripting', async ({
	page
}) => {
	await photosOfNewFitting(page);
	await agree(page);
	await add(page, [await picture()]);
	await page.getByRole('link', { name: 'Photo 1' }).press('Enter');
	await seen(page).focus();
	await page.keyboard.press('Enter');
	const pin = page.locator('a[data-pin]').locator('visible=true');
	await expect(pin).toBeFocused();
	const at = () =>
		pin
			.locator('.reach')
			.last()
			.evaluate((one) => [Number(one.getAttribute('cx')), Number(one.getAttribute('cy'))]);
	const [x, y] = await at();
	await page.keyboard.press('Shift+ArrowRight');
	await page.keyboard.press('ArrowUp');
	const kept = page.waitForResponse(/\/move/);
	const moved = await at();
	expect(moved[0]).toBeGreaterThan(x + 10);
	expect(moved[1]).toBeLessThan(y);
	await kept;
	await page.reload();
	const [left, top] = await at();
	expect(left).toBeCloseTo(moved[0], 3);
	expect(top).toBeCloseTo(moved[1], 3);
});

test('a picture goes to this server’s own pages, bare of what the camera wrote, and is kept by no cache @desktop @scripting', async ({
	page,
	request
}) => {
	const photos = await photosOfNewFitting(page);
	const headers = { origin: server.address(), accept: 'application/json', 'content-type': 'image/jpeg' };
	const send = async (data: Buffer, extra = {}) => request.post(photos, { headers: { ...headers, ...extra }, data });
	const { buffer } = await picture();
	expect((await send(buffer)).status(), 'before the wearer was asked').toBe(403);
	await agree(page);
	expect((await send(buffer, { origin: 'http://example.org' })).status()).toBe(403);
	for (const [data, status, sentence] of [
		[Buffer.alloc(31 * 1024 * 1024, 0xff), 413, 'larger than 30 MB'],
		[Buffer.alloc(33 * 1024 * 1024, 0xff), 413, 'larger than 32 MB'],
		[words.buffer, 415, 'not a picture'],
		[Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'), 415, 'HEIC'],
		[Buffer.alloc(0), 400, 'empty']
	] as const) {
		const answer = await send(data);
		expect(answer.status(), sentence).toBe(status);
		expect(await answer.text()).toContain(sentence);
	}
	expect((await send(buffer)).status()).toBe(201);

	await page.reload();
	const small = await page.locator('image').first().getAttribute('href');
	const address = `${server.address()}${small!.replace('?thumb=1', '')}`;
	const answer = await request.get(address);
	expect(answer.headers()).toMatchObject({
		'content-type': 'image/jpeg',
		'cache-control': 'no-store',
		'cross-origin-resource-policy': 'same-origin',
		'content-security-policy': "default-src 'none'; sandbox"
	});
	const body = await answer.body();
	expect(body.includes('Telephone')).toBe(false);
	const { width, height, exif } = await sharp(body).metadata();
	expect([width, height, exif]).toEqual([800, 1000, undefined]);
	expect((await sharp(await (await request.get(`${address}?thumb=1`)).body()).metadata()).height).toBe(320);
	for (const from of ['cross-site', 'same-site'])
		expect((await request.get(address, { headers: { 'sec-fetch-site': from } })).status()).toBe(404);
	expect((await request.get(`${server.address()}/photos/${'0'.repeat(64)}`)).status()).toBe(404);
});
