import { expect, test } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

test('covered, a fitting shows its drawing and nothing that is written of a body; dimmed, it stays dim', async ({
	page,
	request
}) => {
	await beginFitting(page, request, server.address());
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

test('what stands over the drawing of a fitting covers no piece @desktop', async ({ page, request }) => {
	const garment = await demoGarment(request, server.address());
	const fittings = (await (await request.get(server.address() + garment)).text()).matchAll(
		/href="([^"]*\/fittings\/p[a-z0-9]{9})"/g
	);
	for (const address of new Set([...fittings].map(([, one]) => one)))
		for (const width of [1100, 1400, 1600]) {
			await page.setViewportSize({ width, height: 900 });
			await page.goto(server.address() + address);
			const covered = await page.evaluate(() => {
				const box = document.querySelector('.table-caption')!.getBoundingClientRect();
				return [...document.querySelectorAll<SVGPathElement>('svg.drawing .stitching')].filter((line) => {
					const onScreen = line.getScreenCTM()!;
					return Array.from({ length: 200 }, (_, i) => line.getPointAtLength((i / 199) * line.getTotalLength()))
						.map((point) => point.matrixTransform(onScreen))
						.some(({ x, y }) => x > box.left && x < box.right && y > box.top && y < box.bottom);
				}).length;
			});
			expect(covered, `${address} at ${width}`).toBe(0);
		}
});
