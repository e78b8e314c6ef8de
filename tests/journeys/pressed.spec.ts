import { expect, test, type Page } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive, howMuch, keepButton, pinned } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** The side seam in the hand, at an address that says it, on a page whose script has come. */
async function sideSeam(page: Page, fitting: string, sides = 'both') {
	await page.goto(`${fitting}?act=took-in&seam=side&sides=${sides}`);
	await alive(page);
}

test('a press is a press: what comes meanwhile does not move the button from under the finger @scripting @desktop', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	// So tall that nothing of it is below the screen, and the button stands at the end of what it keeps.
	await page.setViewportSize({ width: 1400, height: 2400 });
	await sideSeam(page, fitting, 'each');
	await howMuch(page).fill('1/4');
	// The whole page is drawn; the next step draws less at first, and then the left side makes what it does longer.
	await page.waitForTimeout(1000);
	const { x, y, height } = (await keepButton(page).boundingBox())!;
	await page.mouse.move(x + 40, y + height / 2);
	await page.mouse.down();
	await page.getByLabel('Waist line, how much, left, under-arm', { exact: true }).fill('1/8');
	await page.waitForTimeout(600);
	await page.mouse.up();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/, /took in 1\/8″ at the waist/]);
});

test('a button that is pressed twice asks once @scripting', async ({ page, request }) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	await howMuch(page).fill('1/4');
	await keepButton(page).dblclick();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(1);

	await page.goto(`${server.address()}/wearers/new`);
	await page.waitForLoadState('networkidle');
	await page.getByLabel('Name', { exact: true }).fill(`Pressed twice ${test.info().project.name}`);
	await page.getByRole('button', { name: /wearer/i }).dblclick();
	await page.waitForURL(/\/wearers\/(?!new)/);
	await page.goto(server.address());
	await expect(page.getByText(`Pressed twice ${test.info().project.name}`, { exact: true })).toHaveCount(1);
});
