import { expect, test } from '@playwright/test';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

test('covered, a fitting shows its drawing and nothing that is written of a body; dimmed, it stays dim', async ({
	page,
	request
}) => {
	await page.goto(`${server.address()}${await demoGarment(request, server.address())}/fittings/new`);
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	await page.waitForURL(/\/fittings\/(?!new\b)[^/]+$/);
	const drawing = page.getByRole('group', { name: /all pieces, drawing$/ });
	const wearer = page.getByText('Ines Varrow');
	const shown = (name: string) => page.getByRole('link', { name }).locator('visible=true');
	await expect(wearer.first()).toBeVisible();
	await shown('Cover the page').click();
	await expect(drawing).toBeVisible();
	for (const hidden of [page.getByRole('heading'), wearer, page.getByText('Seen on the body'), page.getByRole('form')])
		await expect(hidden.locator('visible=true')).toHaveCount(0);
	await expect(page.getByText(/″/).locator('visible=true')).toHaveCount(0);
	await shown('Uncover the page').click();
	await expect(wearer.first()).toBeVisible();

	await page.getByRole('button', { name: 'Dim the page' }).locator('visible=true').click();
	await expect(page.locator('.shell')).toHaveClass(/page-dim/);
	await page.reload();
	await expect(page.locator('.shell')).toHaveClass(/page-dim/);
});
