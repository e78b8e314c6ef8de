import AxeBuilder from '@axe-core/playwright';
import { expect, test, type APIRequestContext, type Page } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { pinned } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** A new fitting of the demo’s jacket, open. */
const begin = (page: Page, request: APIRequestContext) => beginFitting(page, request, server.address());

const keep = (page: Page, number: number) => page.getByRole('button', { name: `Keep alteration ${number}` }).click();
const show = (page: Page) => page.getByRole('button', { name: 'Show the line' }).click();
const choose = (page: Page, group: string, name: string) =>
	page.getByRole('group', { name: group, exact: true }).getByRole('radio', { name, exact: true }).check();
const told = (page: Page, words: string | RegExp) => expect(page.getByText(words).first()).toBeAttached();

test('folded across above the waist: every piece that it crosses is ticked, seen before it is kept', async ({
	page,
	request
}) => {
	await begin(page, request);
	await page.getByRole('link', { name: /Folded across/ }).click();
	await page.getByRole('link', { name: 'Waist line', exact: true }).click();
	await expect(
		page.getByRole('heading', { name: /Waist line, across back, side back, under-arm and front/ })
	).toBeVisible();
	await expect(page.getByLabel('How far from the line')).toHaveValue('2 1/2');
	for (const piece of ['Back', 'Side back', 'Under-arm', 'Front'])
		await expect(page.getByRole('checkbox', { name: piece, exact: true })).toBeChecked();
	await page.getByLabel('Centre-back seam, how much', { exact: true }).fill('1/2');
	await show(page);
	await told(page, '1/2″ shorter');
	await told(page, '2 1/2″ above the waist, on the back, side back, under-arm and front');
	await told(page, 'The centre-back seam is shorter by 1/2″.');
	await expect(pinned(page)).toHaveText(['Nothing is pinned yet.']);
	await keep(page, 1);
	await expect(pinned(page)).toContainText('folded across 1/2″, 2 1/2″ above the waist, both sides');

	await page.getByRole('link', { name: /^Change ?, alteration 1$/ }).click();
	await choose(page, 'What was measured', 'Depth of the tuck');
	await show(page);
	await told(page, '1/2″ deep, laid double = 1″ taken out');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('folded across 1″');
});

test('a swayback wedge from the centre back to nothing at the side seam', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=folded-across&across=waist`);
	await page.getByRole('checkbox', { name: 'Front', exact: true }).uncheck();
	await choose(page, 'Its shape', 'A wedge');
	await page.getByLabel('Centre-back seam, how much', { exact: true }).fill('3/8');
	await show(page);
	await page.getByLabel('Side seam, how much', { exact: true }).fill('0');
	await keep(page, 1);
	await expect(pinned(page)).toContainText(
		'folded across 3/8″ at the centre-back seam, to nothing at the side seam, 2 1/2″ above the waist'
	);
	await page.getByRole('link', { name: /^Change ?, alteration 1$/ }).click();
	await expect(page.getByRole('checkbox', { name: 'Front', exact: true })).not.toBeChecked();
	await expect(page.getByLabel('Side seam, how much', { exact: true })).toHaveValue('0');
});

test('slashed across the sleeve at the elbow, pinned now and read later', async ({ page, request }) => {
	await begin(page, request);
	await page.getByRole('link', { name: /Slashed across/ }).click();
	await page.getByRole('link', { name: 'Elbow line', exact: true }).click();
	await page.getByRole('button', { name: 'Pinned, read it later' }).click();
	await expect(pinned(page)).toContainText('slashed and opened, not read yet');
	await page.getByRole('link', { name: /^Read it ?, alteration 1$/ }).click();
	await page.getByLabel('Hind sleeve seam, how much', { exact: true }).fill('1/4');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('slashed and opened 1/4″, 2″ above the elbow, both sleeves');
});

test('slashed for a fuller bust', async ({ page, request }) => {
	await begin(page, request);
	await page.getByRole('link', { name: /Slashed across/ }).click();
	await page.getByRole('link', { name: 'Front', exact: true }).click();
	await page.getByLabel('At the bust point, how much', { exact: true }).fill('1/2');
	await show(page);
	await told(page, '1/2″ wider at the bust point, on each half = 1″ wider in all');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('slashed for a fuller bust, 1/2″');
});

test('marked: the bust point moved, a notch on both pieces of a seam, buttonholes along the front', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.getByRole('link', { name: /Marked a point/ }).click();
	await page.getByRole('link', { name: 'Front', exact: true }).click();
	await page.getByLabel('Up or down by').fill('1/2');
	await choose(page, 'Up or down', 'Down');
	await show(page);
	await told(page, '1/2″ down');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('moved the bust point 1/2″ down');

	await page.goto(`${fitting}?act=marked&seam=side`);
	await page.getByLabel('The notch').selectOption({ label: 'Waist line' });
	await page.getByLabel('or this far from there').fill('1');
	await keep(page, 2);
	await expect(pinned(page).nth(1)).toContainText('snipped a notch on the side, 1″ below the waist');
	await expect(pinned(page).nth(2)).toContainText('snipped a notch on the side, 1″ below the waist');

	await page.goto(`${fitting}?act=marked&edge=front/front-edge`);
	await page.getByLabel('The first').selectOption({ label: 'Neck' });
	await page.getByLabel('or this far from there').nth(1).fill('1/2');
	await page.getByLabel('The last').selectOption({ label: 'Waist line' });
	await page.getByLabel('How many').fill('6');
	await page.getByLabel('The button, how wide').fill('5/8');
	await page.getByLabel('and how thick').fill('1/8');
	await show(page);
	await told(page, /6 buttonholes, .* apart, each 3\/4″ long/);
	await keep(page, 4);
	await expect(pinned(page).nth(3)).toContainText('marked 6 buttonholes on the front edge, for a button 5/8″ wide');
});

for (const [typed, right] of [
	['1/0', 'Nothing can be divided by 0'],
	['deep', '“deep” is not in figures'],
	['0', 'That changes nothing']
] as const)
	test(`“${typed}” is kept as it was typed, with what would be right, and nothing is written`, async ({
		page,
		request
	}) => {
		const fitting = await begin(page, request);
		await page.goto(`${fitting}?act=folded-across&across=waist`);
		await page.getByLabel('Centre-back seam, how much', { exact: true }).fill(typed);
		await keep(page, 1);
		await expect(page.getByText(right).first()).toBeVisible();
		await expect(page.getByLabel('Centre-back seam, how much', { exact: true })).toHaveValue(typed);
		await page.goto(fitting);
		await expect(pinned(page)).toHaveText(['Nothing is pinned yet.']);
	});

test('no piece ticked, off the cloth, deeper than the piece, and what is not there @desktop', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=folded-across&across=waist`);
	for (const piece of ['Back', 'Side back', 'Under-arm', 'Front'])
		await page.getByRole('checkbox', { name: piece, exact: true }).uncheck();
	await page.getByLabel('Centre-back seam, how much', { exact: true }).fill('1/2');
	await keep(page, 1);
	await told(page, 'Tick one at least');
	await page.goto(`${fitting}?act=folded-across&across=waist&off=30&first=1/2`);
	await keep(page, 1);
	await told(page, /there is no cloth: the pieces end about .*above it/);
	await page.goto(`${fitting}?act=folded-across&across=waist&first=14`);
	await told(page, /At most .* can be folded away there/);
	for (const address of ['act=folded-across&across=knee', 'act=marked&piece=yoke'])
		expect((await request.get(`${fitting}?${address}`)).status(), address).toBe(404);
});

for (const address of [
	'act=folded-across&across=waist&first=1/2',
	'act=slashed&piece=front&first=1/2',
	'act=marked&piece=front',
	'act=marked&seam=side',
	'act=marked&edge=front/front-edge'
])
	test(`the form of ${address} can be read by everyone @scripting @desktop`, async ({ page, request }) => {
		await page.goto(`${await begin(page, request)}?${address}`);
		const { violations } = await new AxeBuilder({ page }).analyze();
		expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
	});
