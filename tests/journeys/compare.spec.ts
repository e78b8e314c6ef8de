import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

test('what moved between two versions is told by station, with the alteration that did it', async ({
	page,
	request
}) => {
	await page.goto(`${await demoGarment(request)}/compare?from=0&to=2`);
	await expect(page.getByRole('heading', { level: 1, name: 'Draft, and version 2' })).toBeVisible();
	const row = page.getByRole('row', { name: /^Side / });
	await expect(row).toContainText('in 1/8');
	await expect(row.getByRole('img', { name: 'Alteration 1' })).toBeVisible();
	await expect(page.getByRole('row', { name: /^Front armhole dart/ })).toContainText(/new, 3 .*in 3\/8/);
	await expect(page.getByRole('row', { name: /^Waist/ })).toContainText('in 1');
});

test('a line tells its whole story: what was seen, what was altered, and the version that came of it', async ({
	page,
	request
}) => {
	await page.goto(`${await demoGarment(request)}/compare?from=0&to=2`);
	await page
		.getByRole('row', { name: /^Under-arm/ })
		.first()
		.getByRole('link')
		.click();
	await expect(page).toHaveURL(/seam=under-arm-back/);
	const story = page.locator('#story');
	await expect(story.getByText('“The under-arm seam swings back at the waist”')).toBeVisible();
	await expect(story.getByText('moved 1/8″ towards the under-arm at the waist')).toBeVisible();
	await expect(story.getByText(/left as it is, 11 March: eased in between the notches/)).toBeVisible();
	await expect(story.getByRole('link', { name: /^Version 2: hip larger by/ })).toBeVisible();
});

test('any line of the drawing leads to its story, and both versions are laid on what is chosen @desktop', async ({
	page,
	request
}) => {
	await page.goto(`${await demoGarment(request)}/compare?from=0&to=2`);
	await page.getByRole('link', { name: 'Story of Front, Neck' }).focus();
	await page.keyboard.press('Enter');
	await expect(page.locator('#story').getByText('chalked 3/8″ lower at the front edge')).toBeVisible();
	await page.getByRole('link', { name: 'nape' }).click();
	await expect(page.getByText('laid on the nape')).toBeVisible();
	await expect(page).toHaveURL(/edge=front%2Fneck/);
	await page.getByRole('navigation', { name: 'The later of the two' }).getByRole('link', { name: 'Version 1' }).click();
	await expect(page.getByRole('heading', { level: 1, name: 'Draft, and version 1' })).toBeVisible();
	await expect(page.locator('#story').getByText('no alteration was made to this line')).toBeVisible();
});

test('an address that names what there is not shows what there is, or says so @desktop', async ({ page, request }) => {
	const at = `${await demoGarment(request)}/compare`;
	expect((await page.goto(`${at}?from=0&to=77`))!.status()).toBe(404);
	await expect(page.getByText(/has no version “77”/)).toBeVisible();
	expect((await page.goto(`${at}?from=2&to=0&on=ankle&seam=none&edge=a/b&out=zzz`))!.status()).toBe(200);
	await expect(page.getByText('laid on the waist line and grain')).toBeVisible();
	expect((await page.goto(`${at}?from=2&to=2`))!.status()).toBe(200);
	await expect(page.getByText('Nothing moved: the lines of the two lie on one another.')).toBeVisible();
});

test('nothing on the page of a comparison is in the way of anybody @scripting', async ({ page, request }) => {
	await page.goto(`${await demoGarment(request)}/compare?from=0&to=2&seam=side`);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test.describe('an alteration', () => {
	const server = ownServer();

	test('is taken back out as a version of its own; a page that was drawn before writes nothing', async ({
		page,
		request
	}) => {
		const garment = `${server.address()}${await demoGarment(request, server.address())}`;
		await page.goto(`${garment}/compare?from=0&to=2&seam=side`);
		await expect(page.locator('#withdraw').getByText(/waist larger by 1\/2″/i)).toBeVisible();
		const late = await page.context().newPage();
		await late.goto(`${garment}/compare?from=0&to=2&seam=centre-back`);

		await page.getByLabel('Why, in your words').fill('The folds were the petticoat');
		await page.getByRole('button', { name: 'Withdraw alteration 1' }).click();
		await expect(page).toHaveURL(/\/versions\/3$/);
		await expect(page.getByText(/^made on .* without alteration 1 of fitting 1$/)).toBeVisible();

		await late.getByLabel('Why, in your words').fill('And this one');
		const [answer] = await Promise.all([
			late.waitForResponse((one) => one.request().method() === 'POST'),
			late.getByRole('button', { name: 'Withdraw alteration 2' }).click()
		]);
		expect(await answer.text()).toContain('changed elsewhere');
		await expect(late.getByText('Version 4 would be made without it; version 3 stays.')).toBeVisible();
		await expect(late.getByLabel('Why, in your words')).toHaveValue('And this one');
		expect((await request.get(`${garment}/versions/4`)).status()).toBe(404);

		await page.goto(`${garment}/compare?from=2&to=3&seam=side`);
		await expect(page.locator('#story').getByText(/taken back out/)).toBeVisible();
		await expect(page.getByText('The folds were the petticoat')).toBeVisible();
		await expect(page.locator('#withdraw')).toHaveCount(0);
	});
});
