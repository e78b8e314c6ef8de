import { expect, test, type Page } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive, howMuch, keepButton, notSent, pinned, takeIn } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** The side seam in the hand, at an address that says it, on a page whose script has come. */
async function sideSeam(page: Page, fitting: string, sides = 'both') {
	await page.goto(`${fitting}?act=took-in&seam=side&sides=${sides}`);
	await alive(page);
}

test('a press is a press: what comes meanwhile does not move the button from under the finger @scripting @desktop', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	// So tall that nothing of it is below the screen, and the button stands at the end of what it keeps.
	await page.setViewportSize({ width: 1400, height: 2400 });
	await sideSeam(page, fitting, 'each');
	await howMuch(page).fill('1/4');
	// The whole page is drawn; the next step draws less at first, and then the left side makes what it does longer.
	await page.waitForTimeout(1000);
	const { x, y, height } = (await keepButton(page).boundingBox())!;
	await page.mouse.move(x + 40, y + height / 2);
	await page.mouse.down();
	await page.getByLabel('Waist line, how much, left, under-arm', { exact: true }).fill('1/8');
	await page.waitForTimeout(600);
	await page.mouse.up();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/, /took in 1\/8″ at the waist/]);
});

test('a button that is pressed twice asks once @scripting', async ({ page, request }) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	await howMuch(page).fill('1/4');
	await keepButton(page).dblclick();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(1);

	await page.goto(`${server.address()}/wearers/new`);
	await page.waitForLoadState('networkidle');
	await page.getByLabel('Name', { exact: true }).fill(`Pressed twice ${test.info().project.name}`);
	await page.getByRole('button', { name: /wearer/i }).dblclick();
	await page.waitForURL(/\/wearers\/(?!new)/);
	await page.goto(server.address());
	await expect(page.getByText(`Pressed twice ${test.info().project.name}`, { exact: true })).toHaveCount(1);
});

test('Keep that is pressed twice before it is answered keeps once, with scripting off as well', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await howMuch(page).fill('1/4');
	await keepButton(page).dblclick();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
	await page.getByText('Note what you see').click();
	await page.getByLabel('or in your words').fill('Drag lines from the under-arm');
	await page.getByRole('button', { name: 'Keep it', exact: true }).dblclick();
	const seen = page.getByRole('list', { name: 'Seen on the body' }).getByRole('listitem');
	await expect(seen).toHaveText([/Drag lines/]);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(1);
	await expect(seen).toHaveCount(1);
});

test('Keep that was pressed before the page’s script had come, and once more after, keeps once @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	await howMuch(page).fill('1/4');
	// As the browser itself sends it, word for word; its answer never came.
	const form = await page
		.locator('form.hand')
		.evaluate((one: HTMLFormElement) => Object.fromEntries([...new FormData(one)].map(([k, v]) => [k, String(v)])));
	const headers = { origin: server.address(), accept: 'text/html' };
	const sent = await page.request.post(`${fitting}?/keep`, { form, headers, maxRedirects: 0 });
	expect(sent.status()).toBe(303);
	await keepButton(page).click();
	await expect(page.getByRole('heading', { name: 'Alteration 1 is kept' })).toBeVisible();
	await page.goto(fitting);
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
});

test('the same is kept twice where it is meant twice, though the page was not drawn anew between @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await alive(page);
	await page.route('**/fittings/**', (route) =>
		route.request().method() === 'POST' ? route.abort() : route.fallback()
	);
	for (const number of [1, 2]) {
		await takeIn(page, 'Side seam', '1/8');
		await keepButton(page, number).click();
		await expect(notSent(page)).toHaveCount(number);
	}
	await page.unrouteAll();
	await expect(notSent(page)).toHaveCount(0, { timeout: 45_000 });
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(2);
});
