import { expect, test } from '@playwright/test';

test('what is typed and chosen before the page’s script has come is kept when it comes @scripting', async ({
	page
}) => {
	let scriptsMayCome = () => {};
	const held = new Promise<void>((resolve) => (scriptsMayCome = resolve));
	await page.route(/\.js$/, async (route) => {
		await held;
		await route.continue();
	});
	await page.goto('/garments/new', { waitUntil: 'commit' });
	const name = page.getByLabel('Name', { exact: true });
	await name.fill('Typed early');
	await page.getByLabel('Wearer').selectOption({ label: 'Ines Varrow' });
	await page.getByRole('radio', { name: 'The text of a draft file' }).check();
	await page.getByLabel('Text', { exact: true }).fill('{}');
	scriptsMayCome();
	// Once the page is its script's, it sends the form without being loaded anew.
	await page.waitForLoadState('networkidle');
	await expect(name).toHaveValue('Typed early');
	await expect(page.getByLabel('Text', { exact: true })).toHaveValue('{}');
	await expect(page.getByRole('radio', { name: 'The text of a draft file' })).toBeChecked();
	await page.getByRole('button', { name: 'Lay the draft on the table' }).click();
	await expect(page.getByText('The format is missing')).toBeVisible();
	await expect(name).toHaveValue('Typed early');
	await expect(page.getByLabel('Wearer').locator('option:checked')).toHaveText('Ines Varrow');
});
