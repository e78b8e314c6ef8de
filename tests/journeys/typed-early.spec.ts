import { expect, test, type Page } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive, howMuch, keepButton, pinned } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** Holds every script back; answers what lets them come. */
async function holdScripts(page: Page): Promise<() => void> {
	let mayCome = () => {};
	const held = new Promise<void>((resolve) => (mayCome = resolve));
	await page.route(/\.js$/, async (route) => {
		await held;
		await route.continue();
	});
	return () => mayCome();
}

test('what is typed and chosen before the page’s script has come is kept when it comes @scripting', async ({
	page
}) => {
	const scriptsMayCome = await holdScripts(page);
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

test('what is pinned before the page’s script has come is in the hand when it comes, and is kept @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	const scriptsMayCome = await holdScripts(page);
	await page.goto(`${fitting}?act=took-in&seam=side&sides=each`, { waitUntil: 'commit' });
	const right = page.getByLabel('Waist line, how much', { exact: true });
	const left = page.getByLabel('Waist line, how much, left, under-arm', { exact: true });
	await right.fill('1/4');
	await page.getByText('A note, and what it answers').click();
	await page.getByLabel('Note', { exact: true }).fill('Pinned in haste');
	scriptsMayCome();
	await alive(page);
	await expect(right).toHaveValue('1/4');
	// The hand has it too, not only the field: the line is drawn of it.
	await expect(page.getByText('1/4″ on each layer').first()).toBeAttached();
	await left.fill('1/8');
	await page.getByRole('button', { name: 'Keep alteration 1' }).click();
	await expect(pinned(page)).toContainText(['1/4″ at the waist, right side only', '1/8″ at the waist, left side only']);
	await expect(page.getByText('Pinned in haste').first()).toBeVisible();
});

test('what was sent before the page’s script has come, and came back as wrong, is in the hand when it comes @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	const scriptsMayCome = await holdScripts(page);
	await page.goto(`${fitting}?act=took-in&seam=side`, { waitUntil: 'commit' });
	await howMuch(page).fill('1/0');
	await keepButton(page).click();
	await expect(page.getByText('Nothing can be divided by 0').first()).toBeVisible();
	await expect(howMuch(page)).toHaveValue('1/0');
	scriptsMayCome();
	await alive(page);
	// The address says it too: loaded again, nothing would be sent once more.
	await expect(page).toHaveURL(/amount\.level%3Awaist=1%2F0/);
	await expect(howMuch(page)).toHaveValue('1/0');
	await expect(page.getByText('Nothing can be divided by 0').first()).toBeVisible();
	await howMuch(page).fill('1/4');
	await expect(page.getByText('Nothing can be divided by 0')).toHaveCount(0);
	await keepButton(page).click();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
});
