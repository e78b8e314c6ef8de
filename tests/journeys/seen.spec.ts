import { expect, test } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

test('a line is tapped, what is seen there noted, and its usual cure taken in the hand with no amount', async ({
	page,
	request
}) => {
	await beginFitting(page, request, server.address());
	await page.getByRole('link', { name: 'Pin Front, Shoulder' }).focus();
	await page.keyboard.press('Enter');
	await expect(page.getByRole('heading', { name: /^Shoulder seam/ })).toBeVisible();
	await page.getByRole('link', { name: 'Only note what I saw' }).click();
	const where = page.getByLabel('Where', { exact: true });
	await expect(where).toBeVisible();
	await expect(where.locator('option:checked')).toHaveText('Shoulder seam');
	await page.getByLabel('What is seen', { exact: true }).selectOption({
		label: 'The front sags in folds below the bust line'
	});
	await page.getByRole('button', { name: 'Keep it', exact: true }).click();

	const seen = page.getByRole('list', { name: 'Seen on the body' });
	await expect(seen).toContainText('The front sags in folds below the bust line');
	await expect(seen).toContainText('Shoulder seam');
	await seen.getByText('What it usually is').click();
	await expect(seen).toContainText('Often too much length in the front between shoulder and waist');
	await seen.getByRole('link', { name: /^Slope: the front shoulder edge/ }).click();
	await expect(page.getByRole('heading', { name: /^Shoulder seam/ })).toBeVisible();
	await expect(page.getByText('Took in a seam')).toBeVisible();
	await expect(page.getByLabel('Answers').locator('option:checked')).toHaveText(
		'a: The front sags in folds below the bust line'
	);
	for (const field of await page.getByLabel(/, how much$/).all()) expect(['', '0']).toContain(await field.inputValue());
	await expect(page.getByText('Nothing is pinned yet.')).toBeVisible();
	await page.getByLabel('Neck, how much', { exact: true }).fill('1/4');
	await page.getByRole('button', { name: 'Keep alteration 1' }).click();
	await expect(seen).toContainText('alteration 1');
});
