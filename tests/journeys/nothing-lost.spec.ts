import { expect, test, type APIRequestContext, type Page } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive, howMuch, keepButton, notSent, pinned, takeIn } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** A new fitting of the demo’s jacket, open. */
const begin = (page: Page, request: APIRequestContext) => beginFitting(page, request, server.address());

const keep = (page: Page, number: number) => keepButton(page, number).click();
const undo = (page: Page, words: string) => page.getByRole('button', { name: `Undo: ${words}` });
const redo = (page: Page, words: string) => page.getByRole('button', { name: `Do again: ${words}` });

test('a server that dies in the middle of a fitting loses nothing: what is pinned meanwhile is there once, in order @scripting', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await alive(page);
	await takeIn(page, 'Side seam', '1/4');
	await keep(page, 1);
	await expect(pinned(page)).toHaveText([/Side seam/]);
	await expect(page.getByText(/Kept as you go, \d+\.\d\d [ap]m/).first()).toBeAttached();

	await server.kill();
	await takeIn(page, 'Side-back seam', '1/8');
	await keep(page, 2);
	await expect(notSent(page)).toHaveText([/took in the side-back seam/]);
	await expect(pinned(page)).toHaveCount(2);
	await expect(pinned(page).nth(1)).toContainText('not sent yet');
	await takeIn(page, 'Under-arm seam', '1/16');
	await keep(page, 3);
	await expect(notSent(page)).toHaveCount(2);
	await expect(
		page
			.getByText(/^2 not sent/)
			.locator('visible=true')
			.first()
	).toBeVisible();

	await server.startAgain();
	await expect(notSent(page)).toHaveCount(0, { timeout: 45_000 });
	await expect(pinned(page)).toHaveCount(3);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveText([/Side seam/, /Side-back seam/, /Under-arm seam/]);
	expect(await page.evaluate(() => localStorage.length)).toBe(0);
});

test('what was not sent when the page was closed is sent when it is opened again @scripting', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await alive(page);
	await page.route('**/fittings/**', (route) =>
		route.request().method() === 'POST' ? route.abort() : route.continue()
	);
	await takeIn(page, 'Side seam', '1/4');
	await keep(page, 1);
	await expect(notSent(page)).toHaveCount(1);
	await page.close();
	const again = await page.context().newPage();
	await again.goto(fitting);
	await expect(notSent(again)).toHaveCount(0);
	await expect(pinned(again)).toHaveText([/Side seam/]);
});

test('a page that is closed half-way has the hand again when it is opened, here and nowhere else @scripting', async ({
	page,
	request,
	browser
}) => {
	const fitting = await begin(page, request);
	await alive(page);
	await takeIn(page, 'Side seam', '3/16');
	const typed = page.url();
	expect(typed).toContain(fitting);
	await page.close();

	const again = await page.context().newPage();
	await again.goto(fitting);
	await expect(howMuch(again, 'Waist line')).toHaveValue('3/16');
	await again.goto(server.address());
	await expect(again.getByText(/alteration 1 in the hand/).first()).toBeVisible();

	const other = await (await browser.newContext()).newPage();
	await other.goto(fitting);
	await expect(other.getByText('Alteration 1 is in the hand on another device')).toBeVisible();
	await expect(howMuch(other, 'Waist line')).toHaveCount(0);

	// Two that hold the same, since the same minute, are told to a third.
	await other.goto(typed);
	await alive(other);
	await howMuch(other, 'Waist line').fill('3/8');
	const third = await (await browser.newContext()).newPage();
	await expect(async () => {
		await third.goto(fitting);
		await expect(third.getByText('Alteration 1 is in the hand on another device')).toHaveCount(2, { timeout: 500 });
	}).toPass();
	await alive(third);
	await expect(third.getByText('Alteration 1 is in the hand on another device')).toHaveCount(2);
	await third.context().close();
	await other.context().close();

	await again.goto(fitting);
	await alive(again);
	await keep(again, 1);
	await expect(pinned(again)).toHaveText([/took in 3\/16″/]);
	await again.goto(fitting);
	await expect(howMuch(again, 'Waist line')).toHaveCount(0);
});

test('where a fitting is closed on another device, what was in the hand here is told @scripting', async ({
	page,
	request,
	browser
}) => {
	const fitting = await begin(page, request);
	await alive(page);
	await takeIn(page, 'Side seam', '1/4');
	const other = await (await browser.newContext()).newPage();
	await other.goto(fitting);
	await alive(other);
	await other.getByRole('button', { name: /Close it/ }).click();
	await expect(other.getByRole('heading', { name: /is closed$/ })).toBeVisible();
	await expect(other.getByText(/was not kept before it was closed/)).toHaveCount(0);
	await other.context().close();
	// It comes by itself.
	await expect(page.getByRole('heading', { name: /is closed$/ })).toBeVisible();
	await expect(page.getByText(/was not kept before it was closed: .*took in 1\/4″ at the waist/)).toBeVisible();
});

test('two devices at one fitting: what both add is there, and what both change is shown on both @scripting', async ({
	page,
	request,
	browser
}) => {
	const fitting = await begin(page, request);
	const other = await (await browser.newContext()).newPage();
	await other.goto(fitting);
	await Promise.all([alive(page), alive(other)]);
	await takeIn(other, 'Side-back seam', '1/8');
	await takeIn(page, 'Side seam', '1/4');
	await keep(page, 1);
	// It comes by itself, and what is in the hand stays there.
	await expect(pinned(other).first()).toContainText('Side seam');
	await expect(howMuch(other, 'Waist line')).toHaveValue('1/8');
	await keep(other, 2);
	await expect(pinned(page)).toHaveText([/Side seam/, /Side-back seam/]);

	for (const one of [page, other]) await one.getByRole('link', { name: /^Change ?, alteration 1$/ }).click();
	await howMuch(page, 'Waist line').fill('3/8');
	await howMuch(other, 'Waist line').fill('1/2');
	await keep(page, 1);
	await expect(pinned(page).first()).toContainText('took in 3/8″');
	await keep(other, 1);
	await expect(other.getByText(/It stands now: Side seam, took in 3\/8″/)).toBeVisible();
	await expect(howMuch(other, 'Waist line')).toHaveValue('1/2');
	await keep(other, 1);
	await expect(pinned(page).first()).toContainText('took in 1/2″');

	await other.getByRole('link', { name: /^Change ?, alteration 2$/ }).click();
	await howMuch(other, 'Waist line').fill('1/4');
	await page.getByRole('button', { name: /^Leave it out ?, alteration 2$/ }).click();
	await expect(pinned(page).nth(1)).toContainText('left out');
	await keep(other, 2);
	await expect(other.getByText(/alteration 2 was left out elsewhere/)).toBeVisible();
	await other.context().close();
});

test('what was done is undone and done again, by its name', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await howMuch(page, 'Waist line').fill('1/4');
	await keep(page, 1);
	await expect(pinned(page)).toHaveText([/Side seam/]);
	await page.goto(`${fitting}?act=let-out&seam=shoulder`);
	await howMuch(page, 'Neck').fill('1/8');
	await keep(page, 2);
	await undo(page, 'let out the shoulder seam').click();
	await expect(pinned(page)).toHaveText([/Side seam/]);
	await undo(page, 'took in the side seam').click();
	await expect(pinned(page)).toHaveText(['Nothing is pinned yet.']);
	await redo(page, 'took in the side seam').click();
	await expect(pinned(page)).toHaveText([/took in 1\/4″/]);
	await redo(page, 'let out the shoulder seam').click();
	await expect(pinned(page)).toHaveText([/Side seam/, /let out 1\/8″/]);
	await undo(page, 'let out the shoulder seam').click();
	await expect(redo(page, 'let out the shoulder seam')).toBeVisible();
	await page.goto(`${fitting}?act=let-out&seam=side-back`);
	await howMuch(page, 'Waist line').fill('1/8');
	await keep(page, 2);
	await expect(redo(page, '')).toHaveCount(0);
});

test('a step that is no longer the last is not undone, and both are told @desktop', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await howMuch(page, 'Waist line').fill('1/4');
	await keep(page, 1);
	await expect(pinned(page)).toHaveText([/Side seam/]);
	const step = (await undo(page, 'took in the side seam').locator('..').locator('[name=step]').inputValue()) ?? '';
	const form = { act: 'let-out', seam: 'shoulder', places: 'end:start', 'amount.end:start': '1/8' };
	await post(request, `${fitting}?/keep`, form);
	const answer = await post(request, `${fitting}?/undo`, { step });
	expect(answer.status).toBe(409);
	expect(answer.text).toContain('Nothing was undone: meanwhile something else was done');
	expect(answer.text).toContain('let out the shoulder seam');
});

test('a form that is sent twice is done once, and answered the same @desktop', async ({ page, request }) => {
	const fitting = await begin(page, request);
	const form = {
		once: 'f'.repeat(32),
		act: 'took-in',
		seam: 'side',
		places: 'level:waist',
		'amount.level:waist': '1/4'
	};
	const [first, second] = [
		await post(request, `${fitting}?/keep`, form),
		await post(request, `${fitting}?/keep`, form)
	];
	expect([first.status, second.status]).toEqual([303, 303]);
	expect(second.location).toBe(first.location);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(1);
	await post(request, `${fitting}?/keep`, { ...form, once: '' });
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(2);
});

test('an answer that was lost on the way does not make two of one @scripting @desktop', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await alive(page);
	let lost = 0;
	await page.route('**/fittings/**', async (route) => {
		if (route.request().method() !== 'POST' || lost > 0) return route.continue();
		lost++;
		await route.fetch();
		await route.abort();
	});
	await takeIn(page, 'Side seam', '1/4');
	await keep(page, 1);
	await expect(notSent(page)).toHaveCount(0);
	await expect(pinned(page)).toHaveText([/Side seam/]);
	expect(lost).toBe(1);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveCount(1);
});

/** A form as a browser without scripting sends it. */
async function post(request: APIRequestContext, url: string, form: Record<string, string>) {
	const headers = { origin: server.address(), accept: 'text/html' };
	const answer = await request.post(url, { form, headers, maxRedirects: 0 });
	const text = (await answer.text()).replace(/<[^>]+>/g, '');
	return { status: answer.status(), text, location: answer.headers().location };
}
