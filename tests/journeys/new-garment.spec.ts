import { expect, test, type Page } from '@playwright/test';
import { ownServer } from '../support/own-server.ts';
import { plainBodiceFile } from '../support/plain-bodice.ts';

const server = ownServer();

const file = (text: string, name = 'plain-bodice.json') => ({
	name,
	mimeType: 'application/json',
	buffer: Buffer.from(text)
});
const plainBodice = JSON.stringify(plainBodiceFile);

async function begin(page: Page, name: string): Promise<void> {
	await page.goto(`${server.address()}/garments/new`);
	await page.getByLabel('Name', { exact: true }).fill(name);
	await page.getByLabel('Wearer').selectOption({ label: 'Ines Varrow' });
}

async function layText(page: Page, text: string): Promise<void> {
	await page.getByRole('radio', { name: 'The text of a draft file' }).check();
	await page.getByLabel('Text', { exact: true }).fill(text);
	await page.getByRole('button', { name: 'Lay the draft on the table' }).click();
}

test('a draft file is shown true, with its rounds against the body, before anything is kept', async ({ page }, {
	project
}) => {
	const name = `Bodice by file ${project.name}`;
	await begin(page, name);
	await page.getByLabel('File', { exact: true }).setInputFiles(file(plainBodice));
	await page.getByRole('button', { name: 'Lay the draft on the table' }).click();
	await expect(page.getByText('2 pieces, 3 seams, 0 darts, not kept yet')).toBeVisible();
	await expect(page.getByRole('group', { name: 'Front, cut 2' })).toBeVisible();
	// The waist of both halves of front and back, less the lap of 20 mm on each side: 2 × (250 − 20) + 2 × 250 mm, 37 13/16″.
	await expect(page.getByRole('row', { name: /^Waist/ })).toContainText('37 3/4″');
	await expect(page.getByRole('row', { name: /^Waist/ })).toContainText('25″');
	const workroom = await page.context().newPage();
	await workroom.goto(server.address());
	await expect(workroom.locator('body')).not.toContainText(name);
	await page.getByRole('button', { name: 'Begin the garment' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(name);
	await expect(page.getByRole('listitem').filter({ hasText: 'Draft' }).first()).toContainText('from a draft file');
});

test.describe('a file that cannot be taken in gets a sentence, and what was typed is kept', () => {
	const cases: readonly [what: string, text: string, said: string | RegExp][] = [
		['malformed JSON', '{"format": "pin-to-paper/draft@1",,}', /This is not JSON\. At line 1, column 35/],
		['another format', '{"format": "pin-to-paper/draft@9", "pieces": []}', /this release reads draft@1/],
		['a number that is infinite', plainBodice.replace('"ease":0', '"ease":1e999'), /seams\[0\]\.ease/],
		['edges that do not close', plainBodice.replace('M 250 450 L 0 450', 'M 250 450 L 0 440'), /pieces\[0\]\.edges/],
		['an unknown seam’s edge', plainBodice.replace('"front/side"', '"front/sleeve"'), /seams\[0\]\.a/]
	];
	for (const [what, text, said] of cases)
		test(`${what} @desktop`, async ({ page }) => {
			await begin(page, 'Kept as typed');
			await layText(page, text);
			await expect(page.locator('main').getByText(said).first()).toBeVisible();
			await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Kept as typed');
			await expect(page.getByLabel('Text', { exact: true })).toHaveValue(text);
			await expect(page.locator('.button-ink')).toHaveText('Lay the draft on the table');
		});
});

test('every problem of a draft is listed with its path @desktop', async ({ page }) => {
	await begin(page, 'Three things wrong');
	const wrong = JSON.parse(plainBodice);
	wrong.pieces[0].cut = 'twice';
	wrong.pieces[1].edges[0].kind = 'sewn';
	wrong.seams[1].a[0].edge = 'front/nowhere';
	await layText(page, JSON.stringify(wrong));
	await expect(page.getByText('3 things in it cannot be right')).toBeVisible();
	for (const path of ['pieces[0].cut', 'pieces[1].edges[0].kind', 'seams[1].a[0].edge'])
		await expect(page.getByText(path, { exact: true })).toBeVisible();
});

test('more than 5 MB is refused with 413, and the fields are kept @desktop', async ({ page }) => {
	await begin(page, 'Too large');
	await page.getByLabel('File', { exact: true }).setInputFiles(file(' '.repeat(5 * 1024 * 1024 + 1), 'scan.json'));
	const [answer] = await Promise.all([
		page.waitForResponse((response) => response.request().method() === 'POST'),
		page.getByRole('button', { name: 'Lay the draft on the table' }).click()
	]);
	await expect(page.getByText('scan.json is 5.0 MB. A draft file is 5 MB at the most')).toBeVisible();
	await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Too large');
	// With scripting the page itself is answered with 200 and says so inside.
	const status = answer.status() === 200 ? ((await answer.json()) as { status: number }).status : answer.status();
	expect(status).toBe(413);
});

test('a garment needs a name and a wearer; the draft stays on the table meanwhile', async ({ page }, { project }) => {
	await page.goto(`${server.address()}/garments/new`);
	await page.getByRole('radio', { name: 'The draft of the demo' }).check();
	await page.getByRole('button', { name: 'Lay the draft on the table' }).click();
	await expect(page.getByText('6 pieces, 8 seams, 2 darts, not kept yet')).toBeVisible();
	await page.getByLabel('Name', { exact: true }).fill('');
	await page.getByLabel('Wearer').selectOption({ label: 'Someone new, named below' });
	await page.getByRole('button', { name: 'Begin the garment' }).click();
	await expect(page.getByText('Give the garment a name, for example “Governess jacket”.')).toBeVisible();
	await expect(page.getByText('Give the wearer a name: initials are enough.')).toBeVisible();
	await expect(page.getByRole('group', { name: 'Front, cut 2' })).toBeVisible();
	await page.getByLabel('Name', { exact: true }).fill(`Second jacket ${project.name}`);
	await page.getByLabel('Someone new').fill(`N. N. ${project.name}`);
	await page.getByRole('button', { name: 'Begin the garment' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(`Second jacket ${project.name}`);
	await expect(page.getByRole('link', { name: `N. N. ${project.name}`, exact: true })).toBeVisible();
	await expect(page.getByText('is not measured yet')).toBeVisible();
});

test('a version of another garment is taken as it stands, and that one stays as it is @desktop', async ({ page }, {
	project
}) => {
	await begin(page, `From version 2 ${project.name}`);
	await page.getByRole('radio', { name: 'A version of another garment' }).check();
	await page.getByLabel('Version', { exact: true }).selectOption({ label: 'Governess jacket, version 2' });
	await page.getByRole('button', { name: 'Lay the draft on the table' }).click();
	await expect(page.getByText('6 pieces, 8 seams, 3 darts, not kept yet')).toBeVisible();
	await page.getByRole('button', { name: 'Begin the garment' }).click();
	await expect(page.getByText('from another garment')).toBeVisible();
	await page.goto(server.address());
	await page.getByRole('link', { name: 'Governess jacket', exact: true }).first().click();
	await expect(page.getByText('What each fitting did')).toBeVisible();
	await expect(page.getByRole('link', { name: 'Version 3' })).toHaveCount(0);
});
