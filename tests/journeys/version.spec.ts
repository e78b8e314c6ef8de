import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

test('a version says how its seams walk, what its ease is and what made it, and is printed from', async ({
	page,
	request
}) => {
	await page.goto(`${await demoGarment(request)}/versions/2`);
	await expect(page.getByRole('heading', { level: 1, name: 'Version 2' })).toBeVisible();
	await expect(page.getByText('carried from fitting 2 on 11 March')).toBeVisible();
	await expect(page.getByRole('row', { name: /Shoulder.*1\/4″ fullness/ })).toBeVisible();
	await expect(page.getByRole('img', { name: /^Waist: body 25″, ease 11\/16″, wanted 0″ to 1″/ })).toBeVisible();
	await expect(page.getByText('let out 1/4″ at the hem, both sides')).toBeVisible();
	await expect(page.locator('.button-ink')).toHaveText(['Print the pattern']);
	const drawn = page.getByRole('group', { name: 'Version 2, all pieces', exact: true });
	await expect(drawn.getByRole('group', { name: /, cut 2$/ })).toHaveCount(6);
});

test('only the pieces that changed are shown where that is asked for', async ({ page, request }) => {
	await page.goto(`${await demoGarment(request)}/versions/1`);
	await page.getByRole('link', { name: 'Only those that changed' }).click();
	const drawn = page.getByRole('group', { name: 'Version 1, the pieces that changed', exact: true });
	await expect(drawn.getByRole('group', { name: /, cut 2$/ })).toHaveCount(3);
	await expect(drawn.getByRole('group', { name: 'Side back, cut 2' })).toHaveCount(0);
});

test('printing takes the paper and the lines that were chosen @desktop', async ({ page, request }) => {
	const here = `${await demoGarment(request)}/versions/2`;
	await page.goto(here);
	const form = page.locator(`form[action="${here}/pattern.pdf"]`);
	await form.getByRole('radio', { name: 'one large sheet' }).check();
	await form.getByRole('radio', { name: 'stitching only' }).check();
	const asked = await form.evaluate((element) =>
		new URLSearchParams(new FormData(element as HTMLFormElement) as never).toString()
	);
	const answer = await request.get(`${here}/pattern.pdf?${asked}`);
	expect(answer.status()).toBe(200);
	expect(asked).toBe('paper=one-sheet&lines=stitching');
});

test('a version that there is not is answered with those that there are', async ({ page, request }) => {
	const at = await demoGarment(request);
	for (const number of ['99', '-1', '2.0', 'last']) {
		const answer = await page.goto(`${at}/versions/${number}`);
		expect(answer!.status(), number).toBe(404);
		await expect(page.getByText(/has no version .*0 is the draft/)).toBeVisible();
	}
	expect((await page.goto('/garments/nobody/versions/0'))!.status()).toBe(404);
	await expect(page.getByText('There is no garment here by that name.')).toBeVisible();
});

test('nothing on the page of a version is in the way of anybody @scripting', async ({ page, request }) => {
	await page.goto(`${await demoGarment(request)}/versions/2`);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test.describe('what a version asks', () => {
	const server = ownServer();

	test('is left as it is with a note, once, and is settled by an alteration at the table @desktop', async ({
		page,
		request
	}) => {
		const here = `${server.address()}${await demoGarment(request, server.address())}/versions/2`;
		await page.goto(here);
		const asked = page.locator('#query-A');
		await asked.getByRole('button', { name: /^Share it/ }).click();
		await expect(page).toHaveURL(/\/fittings\/[a-z0-9]+$/);

		await page.goto(here);
		const other = await page.context().newPage();
		await other.goto(here);
		await asked.getByText('Leave it as it is').click();
		await asked.getByLabel('Why, in your words').fill('Eased in at the back of the head');
		await asked.getByRole('button', { name: 'Leave it' }).click();
		await expect(page.getByText(/Left as it is on .*\./).first()).toBeVisible();
		await expect(page.getByText('Eased in at the back of the head')).toBeVisible();
		await expect(page.getByText('all settled')).toBeVisible();

		await other.locator('#query-A').getByText('Leave it as it is').click();
		const [answer] = await Promise.all([
			other.waitForResponse((one) => one.request().method() === 'POST'),
			other.locator('#query-A').getByRole('button', { name: 'Leave it' }).click()
		]);
		expect(await answer.text()).toContain('This query is settled already.');
		await expect(other.getByText('Eased in at the back of the head')).toBeVisible();
	});
});
