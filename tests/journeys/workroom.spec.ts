import { expect, test } from '@playwright/test';

test('the workroom shows the garments true, what waits, and its wearers without a measure of their bodies', async ({
	page
}) => {
	await page.goto('/');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('On the table');
	await expect(page.locator('.garment svg.drawing-thin').first()).toBeVisible();
	await expect(page.getByRole('link', { name: 'Ines Varrow', exact: true })).toBeVisible();
	await expect(page.locator('main')).not.toContainText('38 1/4');
	await expect(page.locator('main')).not.toContainText('37 1/4');
	// What a corset is laced to is a measure too.
	await expect(page.locator('main')).not.toContainText('corset');
	await expect(page.locator('.button-ink')).toHaveCount(1);
});

test('each thing that waits leads to the page where it is done', async ({ page }) => {
	await page.goto('/');
	const first = page.locator('.ledger-here').first();
	const what = await first.locator('.heading').innerText();
	await first.getByRole('link').click();
	await expect(page, what).toHaveURL(/\/(garments|wearers)\//);
	await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});

test('on a phone what waits comes first, then the wearers, then the garments @phone', async ({ page }) => {
	await page.goto('/');
	const tops = await Promise.all(
		[
			page.getByRole('heading', { name: 'What is waiting' }),
			page.getByRole('heading', { name: 'Wearers' }),
			page.getByRole('heading', { name: 'On the table' })
		].map(async (heading) => (await heading.boundingBox())!.y)
	);
	expect([...tops].sort((a, b) => a - b)).toEqual(tops);
});

test('lengths are shown in the unit that was chosen, on the page that one was on', async ({ page }) => {
	await page.goto('/');
	await page.getByRole('link', { name: 'Ines Varrow', exact: true }).click();
	await expect(page.getByRole('row', { name: /^Bust/ })).toContainText('38 1/4″');
	await page.getByRole('button', { name: 'cm' }).filter({ visible: true }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ines Varrow');
	await expect(page.getByRole('row', { name: /^Bust/ })).toContainText('97.15 cm');
	await page.getByRole('button', { name: 'inches, eighths' }).filter({ visible: true }).click();
	await expect(page.getByRole('row', { name: /^Bust/ })).toContainText('38 1/4″');
});

test('what is not there says where everything is, with its status', async ({ page }) => {
	for (const address of ['/garments/none', '/garments/none/details', '/wearers/none', '/garments/none/toiles/new']) {
		const answer = await page.goto(address);
		expect(answer!.status(), address).toBe(404);
		await expect(page.locator('main'), address).toContainText('The workroom lists');
	}
});
