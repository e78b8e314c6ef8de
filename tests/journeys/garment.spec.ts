import { expect, test } from '@playwright/test';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

test.describe('the demo’s garment', () => {
	test('shows the strip of its life: each station a drawing in its material, what is to come dotted', async ({
		page,
		request
	}) => {
		await page.goto(await demoGarment(request));
		const life = page.getByRole('list', { name: 'The life of this garment' });
		await expect(life.locator('.heading')).toHaveText([
			/^Draft/,
			/^Toile 1/,
			/^Fitting 1/,
			/^Version 1/,
			/^Toile 2/,
			/^Fitting 2/,
			/^Version 2/,
			/^Lining/
		]);
		await expect(life.locator('svg.drawing-thin')).toHaveCount(8);
		const materials = await life
			.locator('svg.drawing-thin')
			.evaluateAll((drawings) =>
				drawings.map((drawing) => /material-([\w-]+)/.exec(drawing.querySelector('.piece')!.getAttribute('class')!)![1])
			);
		expect(materials).toEqual(['paper', 'calico', 'calico', 'white', 'calico', 'calico', 'white', 'to-come']);
		await expect(life.locator('[aria-current=step]')).toContainText('Version 2');
	});

	test('says what each fitting did, the latest first, with the greatest amount of each alteration', async ({
		page,
		request
	}) => {
		await page.goto(await demoGarment(request));
		const did = page.getByRole('region', { name: 'What each fitting did' });
		const rows = await did.getByRole('listitem').allInnerTexts();
		const words = rows.map((row) => row.replace(/\s+/g, ' ').trim());
		expect(words[0]).toMatch(/^Fitting 2, 10 March/);
		// As they were pinned: 1/4″ out at the hem of the side back, a new dart of 3/8″, the neck 3/8″ lower.
		expect(words.find((row) => row.includes('Side-back seam'))).toMatch(/out 1\/4/);
		expect(words.find((row) => row.includes('New dart'))).toMatch(/in 3\/8/);
		expect(words.find((row) => row.includes('Front neck'))).toMatch(/lower 3\/8/);
		expect(words.findIndex((row) => row.startsWith('Fitting 1'))).toBeGreaterThan(3);
	});

	test('has one thing to do next, and the ease that is wanted', async ({ page, request }) => {
		await page.goto(await demoGarment(request));
		await expect(page.locator('.button-ink')).toHaveCount(1);
		await expect(
			page.getByRole('img', { name: /^Waist: body 25″, ease .*, wanted 0″ to 1″, version 1 / })
		).toBeVisible();
		await expect(page.getByText(/Body as measured on 2 March over chemise/)).toBeVisible();
	});
});

test.describe('what can be changed', () => {
	const server = ownServer();

	test('details: a wrong field gets its sentence, the others stay; then they are kept', async ({ page, request }) => {
		await page.goto(`${server.address()}${await demoGarment(request, server.address())}/details`);
		await page.getByLabel('Name', { exact: true }).fill(' ');
		await page.getByLabel('Made for').fill('Snow at Nethermoor, Act II');
		await page.getByRole('button', { name: 'Keep the details' }).click();
		await expect(page.getByText('Give the garment a name')).toBeVisible();
		await expect(page.getByLabel('Made for')).toHaveValue('Snow at Nethermoor, Act II');
		await page.getByLabel('Name', { exact: true }).fill('Governess jacket');
		await page.getByLabel('Ease that is wanted').selectOption({ label: 'Jacket over a blouse' });
		await page.getByRole('button', { name: 'Keep the details' }).click();
		await expect(page.getByText('Snow at Nethermoor, Act II')).toBeVisible();
		// Common practice for a jacket over a blouse: 1 1/2 to 3″ at the waist.
		await expect(page.getByRole('img', { name: /^Waist: .*wanted 1 1\/2″ to 3″/ })).toBeVisible();
	});

	test('details that were changed meanwhile are not written over: both are shown', async ({ page, request }) => {
		const details = `${server.address()}${await demoGarment(request, server.address())}/details`;
		await page.goto(details);
		const other = await page.context().newPage();
		await other.goto(details);
		await other.getByLabel('Cloth').fill('black wool serge');
		await other.getByRole('button', { name: 'Keep the details' }).click();
		await expect(other.getByText('black wool serge')).toBeVisible();
		await page.getByLabel('Cloth').fill('brown wool serge');
		await page.getByRole('button', { name: 'Keep the details' }).click();
		await expect(page.getByText('This was changed elsewhere since the form was drawn.')).toBeVisible();
		await expect(page.getByText('Stands now: black wool serge')).toBeVisible();
		await expect(page.getByLabel('Cloth')).toHaveValue('brown wool serge');
		await page.getByRole('button', { name: 'Keep the details' }).click();
		await expect(page.getByText('brown wool serge')).toBeVisible();
	});

	test('a note is kept in the words that it was written in', async ({ page, request }, { project }) => {
		await page.goto(`${server.address()}${await demoGarment(request, server.address())}`);
		await page.getByText('Write a note').click();
		const words = `Ask the props table for the tray, 14 3/8″ wide (${project.name}).`;
		await page.getByRole('textbox', { name: 'Note' }).fill(words);
		await page.getByRole('button', { name: 'Keep the note' }).click();
		await expect(page.getByRole('region', { name: 'Notes' }).getByText(words)).toBeVisible();
	});
});
