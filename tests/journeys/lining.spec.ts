import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

test('whether the toile can become the lining is answered first, then piece by piece with a close look', async ({
	page,
	request
}) => {
	await page.goto(`${await demoGarment(request)}/lining?version=2`);
	await expect(page.getByRole('heading', { name: 'Can toile 2 become the lining?' })).toBeVisible();
	await expect(page.getByText(/are restitched on the new lines\./)).toBeVisible();
	await expect(page.getByText('Lining: the structural layer that the fashion fabric is mounted on')).toHaveCount(1);
	await expect(page.getByRole('listitem').filter({ hasText: 'Back, restitch' }).first()).toContainText(
		'of the 1 1/2″ wanted'
	);
	await expect(page.getByText('A, close to:')).toBeVisible();
	await page.getByRole('navigation', { name: 'Which toile' }).getByRole('link', { name: 'Toile 1' }).click();
	await expect(page.getByRole('heading', { name: 'Can toile 1 become the lining?' })).toBeVisible();
});

test('nothing on the page of the lining is in the way of anybody @scripting', async ({ page, request }) => {
	await page.goto(`${await demoGarment(request)}/lining?version=2`);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test.describe('a lining', () => {
	const server = ownServer();

	test('is chosen with allowances as they are typed; a wrong one is kept with what would be right', async ({
		page,
		request
	}) => {
		const garment = `${server.address()}${await demoGarment(request, server.address())}`;
		await page.goto(`${garment}/lining?version=1`);
		const late = await page.context().newPage();
		await late.goto(`${garment}/lining?version=1`);
		const side = page.getByLabel('Side seam', { exact: true });

		for (const [typed, right] of [
			['-1/4', /below|negative|minus|cannot/i],
			['1/0', /0/],
			['ten', /./],
			['30', /12/]
		] as const) {
			await side.fill(typed);
			const [answer] = await Promise.all([
				page.waitForResponse((one) => one.request().method() === 'POST'),
				page.getByRole('button', { name: 'Choose version 1' }).click()
			]);
			expect(await answer.text(), typed).toMatch(right);
			await expect(side, typed).toHaveValue(typed);
			await expect(page.locator('.field .wrong'), typed).toHaveCount(1);
		}
		await side.fill('1¼');
		await page.getByLabel('Cloth of the lining').fill('cotton sateen');
		await page.getByRole('button', { name: 'Choose version 1' }).click();
		await expect(page.getByText(/^version 1, chosen/)).toBeVisible();
		await expect(page.getByText('Side seam', { exact: true }).first()).toBeVisible();
		const pattern = await request.get(`${garment}/versions/1/pattern.svg`);
		expect(pattern.headers()['content-disposition']).toContain('governess-jacket-lining-version-1-iv.svg');
		// As it is printed: a thin space and the fraction slash.
		expect((await pattern.text()).includes('>1\u20091⁄4″ at Under-arm, Side; Front, Side<')).toBe(true);

		const [stale] = await Promise.all([
			late.waitForResponse((one) => one.request().method() === 'POST'),
			late.getByRole('button', { name: 'Choose version 1' }).click()
		]);
		expect(await stale.text()).toContain('changed elsewhere');
		await expect(late.getByText(/It stands now: version 1, cotton sateen/)).toBeVisible();
	});

	test('takes less where the toile has less, and is then short of nothing there @desktop', async ({
		page,
		request
	}) => {
		const garment = `${server.address()}${await demoGarment(request, server.address())}`;
		await page.goto(`${garment}/lining?version=2`);
		await expect(page.getByText(/hem, at the .*: 1″ left of the 1 1\/2″ wanted/).first()).toBeVisible();
		await page.getByRole('button', { name: 'Take less there' }).click();
		await expect(page.getByText(/^version 2, chosen/)).toBeVisible();
		await expect(page.getByText(/hem, at the .* wanted/)).toHaveCount(0);
		await expect(page.locator('.button-ink')).toHaveText(['Print the lining, A4']);
	});
});
