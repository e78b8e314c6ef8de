import { expect, test, type Page } from '@playwright/test';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** A wearer of this test alone, with one thing worn under it; answers the address of the page. */
async function addWearer(page: Page, name: string): Promise<string> {
	await page.goto(`${server.address()}/wearers/new`);
	await page.getByLabel('Name').fill(name);
	await page.getByLabel('Worn under it').fill('shift and stays');
	await page.getByRole('button', { name: 'Add the wearer' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(name);
	return page.url();
}

async function measure(page: Page, wearer: string, measures: Readonly<Record<string, string>>): Promise<void> {
	await page.goto(`${wearer}/sheets/new`);
	for (const [name, length] of Object.entries(measures)) await page.getByLabel(name, { exact: true }).fill(length);
	await page.getByRole('button', { name: 'Keep the sheet' }).click();
}

test('a wearer needs a name; what else was typed is kept', async ({ page }) => {
	await page.goto(`${server.address()}/wearers/new`);
	await page.getByLabel('Note').fill('left-handed');
	await page.getByRole('button', { name: 'Add the wearer' }).click();
	await expect(page.getByText('Give the wearer a name: initials are enough.')).toBeVisible();
	await expect(page.getByLabel('Note')).toHaveValue('left-handed');
});

test('measures are typed as on a tape; a wrong one gets its sentence and the others stay', async ({ page }, {
	project
}) => {
	const wearer = await addWearer(page, `Tobin A. ${project.name}`);
	await measure(page, wearer, { Bust: '9/8', Waist: '36 1/2', Hip: 'ten', Neck: '15¼' });
	await expect(page.getByText('9/8 is 1 1/8')).toBeVisible();
	await expect(page.getByText('“ten” is not in figures.')).toBeVisible();
	await expect(page.getByLabel('Bust', { exact: true })).toHaveValue('9/8');
	await expect(page.getByLabel('Waist', { exact: true })).toHaveValue('36 1/2');
	await page.getByLabel('Bust', { exact: true }).fill('104 cm');
	await page.getByLabel('Hip', { exact: true }).fill('40');
	await page.getByRole('button', { name: 'Keep the sheet' }).click();
	await expect(page.getByRole('row', { name: /^Waist/ })).toContainText('36 1/2″');
	await expect(page.getByRole('row', { name: /^Bust/ })).toContainText('40 15/16″');
	await expect(page.getByRole('row', { name: /^Neck/ })).toContainText('15 1/4″');
});

test('an empty sheet is not kept; odd figures are, and are asked about', async ({ page }, { project }) => {
	const wearer = await addWearer(page, `Odd figures ${project.name}`);
	await measure(page, wearer, {});
	await expect(page.getByText('Write at least one measure.')).toBeVisible();
	await measure(page, wearer, { Bust: '34', Waist: '44' });
	await expect(page.getByRole('heading', { name: 'Worth asking' })).toBeVisible();
	await expect(page.getByText(/Waist 44″, bust 34″: is that how they were measured/)).toBeVisible();
	await expect(page.getByRole('row', { name: /^Waist/ })).toContainText('44″');
});

test('a later sheet stands beside the first, with what changed', async ({ page }, { project }) => {
	const wearer = await addWearer(page, `Twice ${project.name}`);
	await measure(page, wearer, { Waist: '25', Hip: '37' });
	await page.goto(`${wearer}/sheets/new`);
	await expect(page.getByText(/25″ on \d/)).toBeVisible();
	await page.getByLabel('Worn under it').selectOption({ label: 'Something else, named beside it' });
	await page.getByLabel('Something else, by name').fill('modern bra');
	await page.getByLabel('Waist', { exact: true }).fill('25 1/4');
	await page.getByRole('button', { name: 'Keep the sheet' }).click();
	await expect(page.getByRole('row', { name: /^Waist/ })).toContainText('+1/4');
	await expect(page.getByRole('columnheader')).toHaveCount(3);
	await expect(page.getByRole('columnheader').nth(1)).toContainText('modern bra');
});

test('a sheet that was changed meanwhile is not written over: both are shown', async ({ page }, { project }) => {
	const wearer = await addWearer(page, `Two hands ${project.name}`);
	await measure(page, wearer, { Waist: '25', Hip: '37' });
	await page.getByRole('columnheader').nth(1).getByRole('link').click();
	await expect(page.getByLabel('Waist', { exact: true })).toHaveValue('25″');
	const sheet = page.url();
	const other = await page.context().newPage();
	await other.goto(sheet);
	await other.getByLabel('Waist', { exact: true }).fill('26');
	await other.getByRole('button', { name: 'Keep the sheet' }).click();
	await expect(other.getByRole('row', { name: /^Waist/ })).toContainText('26″');
	await page.getByLabel('Waist', { exact: true }).fill('24 1/2');
	await page.getByRole('button', { name: 'Keep the sheet' }).click();
	await expect(page.getByText('This was changed elsewhere since the form was drawn.')).toBeVisible();
	await expect(page.getByLabel('Waist', { exact: true })).toHaveValue('24 1/2');
	await expect(page.getByText('Stands now: 26″')).toBeVisible();
	await page.getByRole('button', { name: 'Keep the sheet' }).click();
	await expect(page.getByRole('row', { name: /^Waist/ })).toContainText('24 1/2″');
});

test('a wearer is forgotten only by the whole name, and leaves an entry and no name @desktop', async ({ page }, {
	project
}) => {
	const name = `Gone Tomorrow ${project.name}`;
	const wearer = await addWearer(page, name);
	await measure(page, wearer, { Waist: '25' });
	await page.goto(`${wearer}/forget`);
	await expect(
		page.getByText('Copies of the journal that were made before today still hold everything.')
	).toBeVisible();
	await page.getByLabel('To be sure, write the name').fill('Gone');
	await page.getByRole('button', { name: 'Forget this wearer' }).click();
	await expect(page.getByText(`Write the name as it stands here: ${name}.`)).toBeVisible();
	await page.getByLabel('To be sure, write the name').fill(name);
	await page.getByRole('button', { name: 'Forget this wearer' }).click();
	await expect(page.getByText(/Forgotten on .* was forgotten: name, measurement sheets/)).toBeVisible();
	await expect(page.locator('body')).not.toContainText('Gone Tomorrow');
	await page.goto(server.address());
	await expect(page.locator('body')).not.toContainText('Gone Tomorrow');
});
