import { expect, test, type APIRequestContext, type Page } from '@playwright/test';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** A new fitting of the demo’s jacket, once its page computes by itself. */
async function begin(page: Page, request: APIRequestContext): Promise<string> {
	await page.goto(`${server.address()}${await demoGarment(request, server.address())}/fittings/new`);
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	await page.waitForURL(/\/fittings\/(?!new\b)[^/]+$/);
	return page.url().replace(/[?#].*$/, '');
}

/** The buttons for looking closer come with the engine. */
const ready = (page: Page) => page.getByRole('button', { name: 'Closer' }).first().waitFor();
const howMuch = (page: Page, place: string) => page.getByLabel(`${place}, how much`, { exact: true });
const after = (page: Page) => page.locator('.drawing:visible .after').first();

/** Every request for this page, its data or its forms from now on; what is asked beside it (whether others kept something) is not. */
function requestsOf(page: Page): string[] {
	const asked: string[] = [];
	page.on('request', (request) => {
		const url = request.url();
		if (request.resourceType() === 'document' || /__data\.json|\?\//.test(url)) asked.push(url);
	});
	return asked;
}

test('a step, a letter, a choice and another seam are drawn without asking anybody, and the address follows @scripting', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await ready(page);
	const asked = requestsOf(page);
	await page.getByRole('link', { name: /Took in a seam/ }).click();
	await page.getByRole('link', { name: 'Side seam', exact: true }).click();
	await expect(page.getByRole('heading', { name: 'Side seam, under-arm to front' })).toBeVisible();
	await page.getByRole('button', { name: 'More, Waist line' }).click();
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/16');
	const first = await after(page).getAttribute('d');
	await page.getByRole('button', { name: 'More, Waist line' }).click();
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/8');
	expect(await after(page).getAttribute('d')).not.toBe(first);
	await expect(page.getByText('1/8″ on each layer = 1/4″ at this seam = 1/2″ round the waist').first()).toBeAttached();
	await howMuch(page, 'Hip line').pressSequentially('1/4');
	await expect(howMuch(page, 'Hip line')).toHaveValue('1/4');
	await page.getByRole('radio', { name: 'Right only' }).check({ force: true });
	await expect(page.getByText(/round the (waist|hip), right side only/).first()).toBeAttached();
	await expect(page).toHaveURL(/amount\.level%3Ahip=1%2F4.*sides=right/);
	expect(asked).toEqual([]);

	await page.reload();
	await expect(howMuch(page, 'Hip line')).toHaveValue('1/4');
	await expect(page.getByRole('radio', { name: 'Right only' })).toBeChecked();
	await ready(page);
	await page.goBack();
	await expect(page.getByRole('list', { name: 'Where' })).toBeVisible();
	await page.goBack();
	await expect(page.getByRole('heading', { name: 'What did you do on the body?' })).toBeVisible();
	expect(page.url()).toContain(fitting);
});
