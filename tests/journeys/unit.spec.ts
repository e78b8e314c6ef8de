import { expect, test } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { howMuch, keepButton, pinned } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

test('what was typed in inches is the same length when the page is in centimetres, and when another page of the browser is', async ({
	page,
	request,
	context
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await howMuch(page).fill('1/4');
	await page.getByRole('button', { name: 'Show the line' }).click();
	await expect(page).toHaveURL(/amount/);
	await page.getByRole('button', { name: 'cm', exact: true }).click();
	await expect(howMuch(page)).toHaveValue('1/4 in');
	await expect(page.getByText(/about 6\.5 mm on each layer/).first()).toBeAttached();
	await page.getByRole('button', { name: 'inches, eighths' }).click();
	await expect(page.getByText('1/4″ on each layer').first()).toBeAttached();

	await howMuch(page).fill('3/8');
	const other = await context.newPage();
	await other.goto(server.address());
	await other.getByRole('button', { name: 'cm', exact: true }).click();
	await expect(other.getByRole('button', { name: 'cm', exact: true })).toHaveAttribute('aria-pressed', 'true');
	await keepButton(page).click();
	await expect(pinned(page)).toHaveCount(1);
	await other.getByRole('button', { name: 'inches, eighths' }).click();
	await expect(other.getByRole('button', { name: 'inches, eighths' })).toHaveAttribute('aria-pressed', 'true');
	await page.goto(fitting);
	await expect(pinned(page)).toContainText('took in 3/8″ at the waist');
});
