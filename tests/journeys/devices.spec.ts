import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import Database from 'better-sqlite3';
import config from '../../playwright.config.ts';
import { journalFile } from '../../src/lib/server/journal-file.ts';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer('--lan');
const words = 'seven pins in a pumpkin';

// An address of a local network, which the browser finds on this machine: what a phone would send, over the loopback.
const address = '192.168.77.20';
const { launchOptions } = config.use!;
test.use({
	launchOptions: {
		...launchOptions,
		args: [...(launchOptions?.args ?? []), `--host-resolver-rules=MAP ${address} 127.0.0.1`]
	}
});

const own = () => server.address();
const fromNetwork = () => own().replace('127.0.0.1', address);
const nothingFound = async (page: Page) => expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

async function signIn(page: Page, given: string) {
	await page.getByRole('textbox', { name: /passphrase/i }).fill(given);
	await page.getByRole('button', { name: 'Sign in' }).click();
}

test('another device is turned away until a passphrase is set on the machine itself; then it signs in, and out again', async ({
	page,
	request,
	javaScriptEnabled
}) => {
	const garment = await demoGarment(request, own());
	await page.goto(`${fromNetwork()}${garment}`);
	await expect(page.getByText('No passphrase has been set yet.')).toBeVisible();
	await expect(page.getByRole('textbox', { name: /passphrase/i })).toHaveCount(0);

	await page.goto(own());
	await page.getByRole('link', { name: 'Other devices' }).locator('visible=true').click();
	await expect(page.getByText('Only on a network of your own')).toBeVisible();
	await page.getByRole('textbox', { name: /passphrase/i }).fill('too short');
	await page.getByRole('button', { name: 'Set it' }).click();
	await expect(page.getByText('Take at least 12 letters')).toBeVisible();
	await page.getByRole('textbox', { name: /passphrase/i }).fill(words);
	await page.getByRole('button', { name: 'Set it' }).click();
	await expect(page.getByText('one is set')).toBeVisible();
	await expect(page.getByText('No device is signed in.')).toBeVisible();
	if (javaScriptEnabled) await nothingFound(page);

	await page.goto(`${fromNetwork()}${garment}/details?x=1`);
	await expect(page).toHaveURL(/\/sign-in\?back=/);
	if (javaScriptEnabled) await nothingFound(page);
	await signIn(page, 'seven pins in a squash');
	await expect(page.getByText('That is not the passphrase.')).toBeVisible();
	expect(await page.content()).not.toContain('squash');
	await signIn(page, `${words} `);
	await expect(page).toHaveURL(`${fromNetwork()}${garment}/details?x=1`);
	await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Governess jacket');

	await page.goto(`${fromNetwork()}/devices`);
	await expect(page.getByText(': this device')).toBeVisible();
	await expect(page.getByRole('textbox', { name: /passphrase/i })).toHaveCount(0);
	if (javaScriptEnabled) await page.evaluate(() => localStorage.setItem('typed', 'not sent yet'));
	await page.getByRole('button', { name: /^Sign out/ }).click();
	await expect(page.getByText('This device is signed out.')).toBeVisible();
	if (javaScriptEnabled) {
		await expect(page.getByText('was wiped from this device')).toBeVisible();
		expect(await page.evaluate(() => localStorage.length)).toBe(0);
	}
	await page.goto(`${fromNetwork()}${garment}`);
	await expect(page).toHaveURL(/\/sign-in/);
});

/** On the machine itself, whether one was set before or not. */
async function setPassphrase(page: Page) {
	await page.goto(`${own()}/devices`);
	await page.getByRole('textbox', { name: /passphrase/i }).fill(words);
	await page.getByRole('button', { name: /^(Set|Change) it$/ }).click();
	await expect(page.getByText('one is set')).toBeVisible();
}

test('a fitting left open on a device asks what others did, and is signed out for want of use all the same @desktop @scripting', async ({
	page,
	request
}) => {
	await setPassphrase(page);
	await page.goto(`${fromNetwork()}/sign-in`);
	await signIn(page, words);
	await page.waitForURL(`${fromNetwork()}/`);
	await page.goto(`${fromNetwork()}${await demoGarment(request, own())}/fittings/new`);
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	await page.waitForURL(/\/fittings\/(?!new\b)[^/]+$/);
	const asks = `${page.url()}/now`;
	const journal = new Database(journalFile(server.journal()));
	const used = () => journal.prepare('select seen_at from sign_ins where ended_at is null').pluck().all();
	const anHourAgo = new Date(Date.now() - 3_600_000).toISOString();
	journal.prepare('update sign_ins set seen_at = ?').run(anHourAgo);
	for (let asked = 0; asked < 2; asked++)
		expect((await page.waitForResponse((answer) => answer.url() === asks)).status()).toBe(200);
	expect(used()).toEqual([anHourAgo]);
	await page.getByRole('link', { name: /Took in a seam/ }).click();
	await expect.poll(used).not.toEqual([anHourAgo]);
	journal.close();
});

test('the sign-in holds no script’s hand, leads to no other site, slows down, and what is shown is kept by no cache @desktop @scripting', async ({
	page,
	request
}) => {
	await setPassphrase(page);

	const host = new URL(fromNetwork()).host;
	// Each request says itself what the device holds, so that none is sent what an earlier one was given.
	const headers = { host, origin: fromNetwork(), accept: 'text/html', cookie: 'device=x' };
	const give = (passphrase: string, back = '/') =>
		request.post(`${own()}/sign-in`, { headers, form: { passphrase, back }, maxRedirects: 0 });
	const signedIn = await give(words, 'https://example.org/');
	expect([signedIn.status(), signedIn.headers().location]).toEqual([303, '/']);
	const [held, ...attributes] = signedIn.headers()['set-cookie'].split('; ');
	expect(held).toMatch(/^device=[\w-]{43}$/);
	expect(attributes).toEqual(expect.arrayContaining(['HttpOnly', 'SameSite=Strict', 'Path=/']));

	const workroom = await request.get(own(), { headers: { ...headers, cookie: held } });
	expect(workroom.headers()['cache-control']).toBe('no-store');
	expect(await workroom.text()).toContain('Governess jacket');

	for (const path of ['/', '/devices', '/wearers/new', '/unit']) {
		const away = await request.get(`${own()}${path}`, { headers, maxRedirects: 0 });
		expect([away.status(), away.headers().location], path).toEqual([303, `/sign-in?back=${encodeURIComponent(path)}`]);
	}
	const bare = { headers: { ...headers, accept: 'application/json' }, maxRedirects: 0 };
	expect((await request.get(`${own()}/photos/${'0'.repeat(64)}`, bare)).status()).toBe(401);
	expect((await request.post(`${own()}/garments/g/fittings/f/photos`, { ...bare, data: 'x' })).status()).toBe(401);

	const statuses: number[] = [];
	for (let n = 0; n < 5; n++) statuses.push((await give('wrong words here')).status());
	expect(statuses).toEqual([403, 403, 403, 429, 429]);
	const waits = await give(words);
	expect(waits.status()).toBe(429);
	expect(Number(waits.headers()['retry-after'])).toBeGreaterThan(0);
});
