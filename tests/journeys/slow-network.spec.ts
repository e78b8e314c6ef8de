import { expect, test, type Page, type Route } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive, howMuch, keepButton, notSent, pinned, takeIn } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** The side seam in the hand, at an address that says it, on a page whose script has come. */
async function sideSeam(page: Page, fitting: string) {
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await alive(page);
}

/** What is asked by this method at a fitting is done with as is said. */
const meanwhile = (page: Page, method: string, what: (route: Route) => Promise<void> | undefined) =>
	page.route('**/fittings/**', (route) => (route.request().method() === method ? what(route) : route.fallback()));

const asked = (page: Page, method: string) => page.waitForRequest((one) => one.method() === method);

/** Holds back what is asked by this method, until what is answered is called. */
async function heldBack(page: Page, method: string): Promise<() => void> {
	let go = () => {};
	const held = new Promise<void>((resolve) => (go = resolve));
	await meanwhile(page, method, async (route) => {
		await held;
		await route.continue();
	});
	return () => go();
}

test('what was in the hand before is not in it again when the next was kept at once @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	const saved = page.waitForResponse((one) => one.request().method() === 'PUT');
	await page.goto(`${fitting}?act=new-dart&edge=front/neck`);
	await saved;
	await page.goto(`${fitting}?act=took-in&seam=side`);
	// Kept before it was saved: the journal has what was in the hand before.
	await meanwhile(page, 'PUT', (route) => route.abort());
	await alive(page);
	await howMuch(page).fill('1/4');
	await keepButton(page).click();
	await expect(page.getByRole('heading', { name: 'Alteration 1 is kept' })).toBeVisible();
	await page.goto(fitting);
	await expect(page.getByRole('heading', { name: /dart/i })).toHaveCount(0);
	await expect(page.getByRole('button', { name: /^Keep alteration/ })).toHaveCount(0);
});

test('a hand whose saving is slow is not in the hand again once it is kept @scripting', async ({ page, request }) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	const slow = asked(page, 'PUT');
	await meanwhile(page, 'PUT', async (route) => {
		await new Promise((resolve) => setTimeout(resolve, 1500));
		await route.continue();
	});
	await howMuch(page).fill('1/4');
	await slow;
	await keepButton(page).click();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
	await page.waitForTimeout(2000);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(1);
	await expect(howMuch(page)).toHaveCount(0);
});

for (const by of ['its own address', 'the fitting'])
	test(`a page that is closed as soon as Keep is pressed, and opened by ${by}, has kept it once, and nothing in the hand @scripting`, async ({
		page,
		request
	}) => {
		const fitting = await beginFitting(page, request, server.address());
		await sideSeam(page, fitting);
		await howMuch(page).fill('1/4');
		await expect(page).toHaveURL(/amount/);
		const address = page.url();
		// It never arrives.
		await meanwhile(page, 'POST', () => undefined);
		const sent = asked(page, 'POST');
		await keepButton(page).click();
		await sent;
		await page.close();

		const again = await page.context().newPage();
		await again.goto(by === 'the fitting' ? fitting : address);
		await expect(pinned(again)).toHaveText([/took in 1\/4″ at the waist/]);
		await expect(howMuch(again)).toHaveCount(0);
		await again.goto(fitting);
		await expect(pinned(again)).toHaveCount(1);
		await expect(howMuch(again)).toHaveCount(0);
		expect(await again.evaluate(() => localStorage.length)).toBe(0);
	});

/** One is kept, the next of this amount is on its way when one goes on to carry; answers what lets it arrive. */
async function goOnWhileItIsKept(page: Page, amount: string): Promise<() => void> {
	await alive(page);
	await takeIn(page, 'Side seam', '1/4');
	await keepButton(page).click();
	await expect(pinned(page)).toHaveCount(1);
	await takeIn(page, 'Side-back seam', amount);
	const letGo = await heldBack(page, 'POST');
	const sent = asked(page, 'POST');
	await keepButton(page, 2).click();
	await sent;
	await page.getByRole('link', { name: 'Carry to paper' }).click();
	return letGo;
}

test('what is kept as one goes on to carry is there when it is carried, and is waited for @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	const letGo = await goOnWhileItIsKept(page, '1/8');
	await page.waitForTimeout(500);
	expect(page.url()).toContain(fitting);
	expect(page.url()).not.toContain('/carry');
	letGo();
	await expect(page).toHaveURL(`${fitting}/carry`);
	await expect(page.getByText(/Side-back seam.*took in 1\/8″/).first()).toBeVisible();
	await page.goBack();
	await expect(pinned(page)).toHaveCount(2);
	await expect(howMuch(page)).toHaveCount(0);
});

test('one does not go on from what is refused: the page stays and says why @scripting', async ({ page, request }) => {
	const fitting = await beginFitting(page, request, server.address());
	const letGo = await goOnWhileItIsKept(page, '1/0');
	letGo();
	await expect(howMuch(page)).toBeFocused();
	await expect(page.getByText('Nothing can be divided by 0').first()).toBeVisible();
	expect(page.url().replace(/[?#].*$/, '')).toBe(fitting);
	// Asked for once more it is gone to, and what was typed is in the hand still.
	await page.getByRole('link', { name: 'Carry to paper' }).click();
	await expect(page).toHaveURL(`${fitting}/carry`);
	await page.goto(fitting);
	await expect(howMuch(page)).toHaveValue('1/0');
});

test('what a page that was closed had not sent is sent from where it is carried, and is there @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	await howMuch(page).fill('1/4');
	await meanwhile(page, 'POST', () => undefined);
	const sent = asked(page, 'POST');
	await keepButton(page).click();
	await sent;
	await page.close();

	const again = await page.context().newPage();
	// Nothing is carried before it is sent.
	const letGo = await heldBack(again, 'POST');
	await again.goto(`${fitting}/carry`);
	await expect(again.getByText('It is to be in it')).toBeVisible();
	await expect(again.getByRole('button', { name: /Accept it/ })).toHaveCount(0);
	letGo();
	await expect(again.getByText(/Side seam.*took in 1\/4″/).first()).toBeVisible();
	await again.getByRole('button', { name: /Accept it/ }).click();
	await expect(again.getByRole('heading', { level: 1, name: /^Version \d+$/ })).toBeVisible();
	expect(await again.evaluate(() => Object.keys(localStorage).filter((name) => name.startsWith('unsent')))).toEqual([]);
});

test('a second page with the same in the hand is drawn once, however long its engine takes to come @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	await howMuch(page).fill('1/4');
	await keepButton(page).click();
	// What is in the hand is put by in this browser, and not saved.
	const context = page.context();
	await context.route('**/now', (route) => (route.request().method() === 'PUT' ? route.abort() : route.fallback()));
	await page.getByRole('link', { name: /^Change ?, alteration 1$/ }).click();
	await expect(page).toHaveURL(/alteration=/);
	const address = page.url();
	const other = await context.newPage();
	// Its own scripts come, which it names; the engine, which they ask for, does not.
	const sent = await request.get(address, { headers: { accept: 'text/html' } });
	const own = `${sent.headers().link ?? ''} ${await sent.text()}`;
	let engineMayCome = () => {};
	const held = new Promise<void>((resolve) => (engineMayCome = resolve));
	await other.route(/\.js$/, async (route) => {
		if (!own.includes(new URL(route.request().url()).pathname.split('/').pop()!)) await held;
		await route.continue();
	});
	let drawn = 0;
	other.on('framenavigated', () => drawn++);
	await other.goto(address);
	await other.waitForTimeout(1500);
	expect(drawn).toBeLessThan(5);
	await howMuch(other).fill('3/8');
	engineMayCome();
	await alive(other);
	await expect(howMuch(other)).toHaveValue('3/8');
	await keepButton(other).click();
	await expect(pinned(other)).toHaveText([/took in 3\/8″ at the waist/]);
});

test('what was typed last is in the hand again, not what the journal had of it before the network went @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	const saved = page.waitForResponse((one) => one.request().method() === 'PUT');
	await howMuch(page).fill('1/4');
	await saved;
	await meanwhile(page, 'PUT', (route) => route.abort());
	await howMuch(page).fill('3/8');
	await expect(async () => {
		expect(await page.evaluate(() => Object.values(localStorage).join())).toContain('3/8');
	}).toPass();
	await page.close();

	const again = await page.context().newPage();
	await again.goto(fitting);
	await expect(howMuch(again)).toHaveValue('3/8');
	await expect(async () => {
		expect(await again.evaluate(() => localStorage.length)).toBe(0);
	}).toPass();
	const other = await again.context().newPage();
	await other.goto(fitting);
	await expect(howMuch(other)).toHaveValue('3/8');
});

test('what is taken in the hand while the one before is being kept is kept as well @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	const letGo = await heldBack(page, 'POST');
	const sent = asked(page, 'POST');
	await howMuch(page).fill('1/4');
	await keepButton(page).click();
	await sent;
	// Nothing more is typed of what is on its way.
	await expect(page.locator('form.hand')).toHaveAttribute('inert');
	await page.getByRole('link', { name: 'Pin Front, Shoulder' }).focus();
	await page.keyboard.press('Enter');
	await howMuch(page, 'Neck').fill('1/8');
	letGo();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
	await expect(howMuch(page, 'Neck')).toHaveValue('1/8');
	await keepButton(page, 2).click();
	await expect(pinned(page)).toHaveText([/Side seam.*took in 1\/4″/, /Shoulder.*took in 1\/8″/]);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(2);
	await expect(howMuch(page)).toHaveCount(0);
});

test('Back after Keep leads to what was before the hand, not to one that would be kept again @scripting', async ({
	page,
	request
}) => {
	await beginFitting(page, request, server.address());
	await alive(page);
	await takeIn(page, 'Side seam', '1/4');
	await keepButton(page).click();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
	await expect(howMuch(page)).toHaveCount(0);
	await page.goBack();
	await expect(page.getByRole('heading', { name: 'Took in a seam: where?' })).toBeVisible();
	await expect(howMuch(page)).toHaveCount(0);
	await expect(pinned(page)).toHaveCount(1);
});

test('what is taken in the hand while the one before waits is in the hand still when that was sent @scripting', async ({
	page,
	request
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await alive(page);
	await meanwhile(page, 'POST', (route) => route.abort());
	await meanwhile(page, 'PUT', (route) => route.abort());
	await takeIn(page, 'Side seam', '1/4');
	await keepButton(page).click();
	await expect(notSent(page)).toHaveCount(1);
	await takeIn(page, 'Side-back seam', '1/8');
	await page.unrouteAll();
	await expect(notSent(page)).toHaveCount(0, { timeout: 45_000 });
	await expect(howMuch(page)).toHaveValue('1/8');
	await expect(async () => {
		expect(await page.evaluate(() => localStorage.length)).toBe(0);
	}).toPass();
	await page.close();

	const again = await page.context().newPage();
	await again.goto(fitting);
	await expect(pinned(again)).toHaveText([/took in 1\/4″ at the waist/]);
	await expect(howMuch(again)).toHaveValue('1/8');
});

test('a link that was taken back while it was loading leaves the page as it was: what is kept is kept and shown @scripting', async ({
	page,
	request
}) => {
	await beginFitting(page, request, server.address());
	await alive(page);
	await takeIn(page, 'Side seam', '1/4');
	const data = page.waitForRequest(/__data\.json/);
	let letGo = () => {};
	const held = new Promise<void>((resolve) => (letGo = resolve));
	await page.route(/__data\.json/, async (route) => {
		await held;
		await route.continue();
	});
	await page.getByRole('navigation', { name: 'You are here' }).getByRole('link').last().click();
	await data;
	await page.goBack();
	await expect(page.getByRole('heading', { name: 'Took in a seam: where?' })).toBeVisible();
	letGo();
	await page.getByRole('link', { name: 'Side seam', exact: true }).click();
	await howMuch(page).fill('3/8');
	await keepButton(page).click();
	await expect(pinned(page)).toHaveText([/took in 3\/8″ at the waist/]);
	await expect(howMuch(page)).toHaveCount(0);
});

test('what was wrong when it was sent at last is taken in the hand again, as it was typed @scripting', async ({
	page,
	request
}) => {
	await beginFitting(page, request, server.address());
	await alive(page);
	await meanwhile(page, 'POST', (route) => route.abort());
	await takeIn(page, 'Side seam', '1/0');
	await keepButton(page).click();
	await expect(notSent(page)).toHaveText([/took in the side seam/]);
	await page.unrouteAll();
	await expect(notSent(page)).toHaveText([/Nothing can be divided by 0/], { timeout: 45_000 });
	await page.getByRole('link', { name: /Take it in the hand again/ }).click();
	await expect(notSent(page)).toHaveCount(0);
	await expect(howMuch(page)).toHaveValue('1/0');
	await howMuch(page).fill('1/4');
	await keepButton(page).click();
	await expect(pinned(page)).toHaveText([/took in 1\/4″ at the waist/]);
});

test('what waits for a fitting that was closed meanwhile is told there, with why it is not kept @scripting', async ({
	page,
	request,
	browser
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await sideSeam(page, fitting);
	// Of every page of this browser: one that is closed is not held back any more, and might send it yet.
	await page
		.context()
		.route('**/fittings/**', (route) => (route.request().method() === 'POST' ? route.abort() : route.fallback()));
	await howMuch(page).fill('1/4');
	await keepButton(page).click();
	await expect(notSent(page)).toHaveCount(1);
	await page.close();

	const other = await (await browser.newContext()).newPage();
	await other.goto(fitting);
	await alive(other);
	await other.getByRole('button', { name: /Close it/ }).click();
	await expect(other.getByText(/is closed/).first()).toBeVisible();
	await other.context().close();

	await page.context().unrouteAll();
	const again = await page.context().newPage();
	await again.goto(fitting);
	await expect(notSent(again)).toHaveText([/took in the side seam.*closed/]);
	await again.getByRole('button', { name: /Let it go/ }).click();
	await expect(notSent(again)).toHaveCount(0);
});
