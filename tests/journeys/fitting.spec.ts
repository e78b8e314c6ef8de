import AxeBuilder from '@axe-core/playwright';
import { expect, test, type APIRequestContext, type Page } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { demoGarment } from '../support/demo-garment.ts';
import { pinned } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

async function garmentOf(request: APIRequestContext): Promise<string> {
	return `${server.address()}${await demoGarment(request, server.address())}`;
}

/** A new fitting of the demo’s jacket, open. */
const begin = (page: Page, request: APIRequestContext) => beginFitting(page, request, server.address());

const howMuch = (page: Page, place: string) => page.getByLabel(`${place}, how much`, { exact: true });
const keep = (page: Page, number: number) => page.getByRole('button', { name: `Keep alteration ${number}` }).click();

/** The status that a form is answered with, sent as a browser without scripting sends it. */
async function post(request: APIRequestContext, url: string, form: Record<string, string>) {
	const answer = await request.post(url, {
		form,
		headers: { origin: server.address(), accept: 'text/html' },
		maxRedirects: 0
	});
	return { status: answer.status(), text: (await answer.text()).replace(/<[^>]+>/g, '') };
}

test('from the act to the place to the amount, seen before it is kept and told when it is', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.getByRole('link', { name: /Took in a seam/ }).click();
	await page.getByRole('link', { name: 'Side seam', exact: true }).click();
	await expect(page.getByRole('heading', { name: 'Side seam, under-arm to front' })).toBeVisible();
	await howMuch(page, 'Waist line').fill('1/4');
	await page.getByRole('button', { name: 'Show the line' }).click();
	await expect(page.getByText('1/4″ on each layer = 1/2″ at this seam = 1″ round the waist').first()).toBeAttached();
	await expect(pinned(page)).toHaveText(['Nothing is pinned yet.']);

	await page.getByRole('button', { name: 'More, Hip line' }).click();
	await expect(howMuch(page, 'Hip line')).toHaveValue('1/16');
	await page
		.getByRole('group', { name: 'Hip line: how much' })
		.getByRole('button', { name: '1/8', exact: true })
		.click();
	await expect(howMuch(page, 'Hip line')).toHaveValue('1/8');
	await keep(page, 1);
	await expect(page.getByRole('heading', { name: 'Alteration 1 is kept' })).toBeVisible();
	await expect(
		page.getByText(/The under-arm and the front keep their lengths|gets .* longer along this seam/).first()
	).toBeVisible();
	await expect(pinned(page)).toContainText('took in 1/4″ at the waist, both sides');
	expect(page.url()).toContain(fitting);
});

test('seam first or act first, changed, put earlier, left out, taken up again and undone', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?seam=shoulder`);
	await expect(page.getByRole('link', { name: /Chalked a line/ })).toHaveCount(0);
	await page.getByRole('link', { name: /Let out a seam/ }).click();
	await howMuch(page, 'Neck').fill('1/8');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('let out 1/8″ at the neck');
	await page.goto(`${fitting}?act=moved-seam&seam=side-back&way=in`);
	await howMuch(page, 'Waist line').fill('1/8');
	await keep(page, 2);
	await expect(pinned(page).nth(1)).toContainText('moved 1/8″ towards the back at the waist');

	await page.getByRole('link', { name: /^Change ?, alteration 1$/ }).click();
	await expect(howMuch(page, 'Neck')).toHaveValue('1/8');
	await howMuch(page, 'Neck').fill('1/4');
	await keep(page, 1);
	await expect(pinned(page).nth(0)).toContainText('let out 1/4″ at the neck');

	await page.getByRole('button', { name: /^Earlier ?, alteration 2$/ }).click();
	await expect(pinned(page).nth(0)).toContainText('Side-back seam');
	await page.getByRole('button', { name: /^Leave it out ?, alteration 1$/ }).click();
	await expect(pinned(page).nth(1)).toContainText('left out');
	await page.getByRole('button', { name: /^Take it up again ?, alteration 1$/ }).click();
	await expect(pinned(page).nth(1)).toContainText('let out 1/4″');
	await page.getByRole('button', { name: /^Undo: took up alteration 1, the shoulder seam, again$/ }).click();
	await expect(pinned(page).nth(1)).toContainText('left out');
});

for (const [typed, right] of [
	['1/0', 'Nothing can be divided by 0'],
	['ten', '“ten” is not in figures'],
	['1 1/2 1/2', 'reads as more than one length'],
	['9/8', 'Write 1 1/8?']
] as const)
	test(`“${typed}” is kept as it was typed, with what would be right, and nothing is written`, async ({
		page,
		request
	}) => {
		const fitting = await begin(page, request);
		await page.goto(`${fitting}?act=took-in&seam=side`);
		await howMuch(page, 'Waist line').fill(typed);
		await howMuch(page, 'Hip line').fill('1/8');
		await keep(page, 1);
		await expect(page.getByText(right).first()).toBeVisible();
		await expect(howMuch(page, 'Waist line')).toHaveValue(typed);
		await expect(howMuch(page, 'Hip line')).toHaveValue('1/8');
		await expect(howMuch(page, 'Waist line')).toHaveAttribute('aria-invalid', 'true');
		await page.goto(fitting);
		await expect(pinned(page)).toHaveText(['Nothing is pinned yet.']);
		const form = { act: 'took-in', seam: 'side', places: 'level:waist', 'amount.level:waist': typed };
		expect((await post(request, `${fitting}?/keep`, form)).status).toBe(400);
	});

test('what there is not is answered with a sentence and the right status @desktop', async ({ page, request }) => {
	const fitting = await begin(page, request);
	const garment = await garmentOf(request);
	for (const [address, sentence] of [
		[`${garment}/fittings/nothing`, 'has no fitting by that name'],
		[`${server.address()}/garments/nothing/fittings/new`, 'There is no garment here by that name'],
		[`${fitting}?act=took-in&seam=yoke`, 'There is no seam “yoke” in this draft'],
		[`${fitting}?act=chalked&edge=front/collar`, 'There is no edge “front/collar” in this draft'],
		[`${fitting}?alteration=nothing`, 'There is no alteration by that name in this fitting'],
		[`${garment}/fittings/nothing/carry`, 'has no fitting by that name']
	]) {
		const answer = await request.get(address);
		expect(answer.status(), address).toBe(404);
		expect(await answer.text(), address).toContain(sentence);
	}
	const keeping = (form: Record<string, string>) =>
		post(request, `${fitting}?/keep`, { act: 'took-in', places: 'level:waist', 'amount.level:waist': '1/4', ...form });
	expect(await keeping({ seam: 'yoke' })).toMatchObject({
		status: 400,
		text: expect.stringContaining('There is no seam “yoke”')
	});
	expect(await keeping({ seam: 'side', places: 'level:knee', 'amount.level:knee': '1/4' })).toMatchObject({
		status: 400,
		text: expect.stringContaining('There is no knee line')
	});
	expect((await keeping({ seam: 'side', alteration: 'nothing' })).status).toBe(404);
	expect((await post(request, `${fitting}?/leaveOut`, { alteration: 'nothing', revision: '1' })).status).toBe(404);
	expect((await post(request, `${fitting}?/keep`, {})).status).toBe(400);
	await page.goto(fitting);
	await expect(pinned(page)).toHaveText(['Nothing is pinned yet.']);
});

test('a seam let out farther than the toile has cloth is asked about, at the fitting and when it is carried', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=let-out&seam=side`);
	// The toile was cut with an inch: one and a half does not fit into it.
	await howMuch(page, 'Hem').fill('1 1/2');
	await page.getByRole('button', { name: 'Show the line' }).click();
	await expect(page.getByText(/Patched with a strip\?/).first()).toBeVisible();
	await keep(page, 1);
	await expect(pinned(page)).toContainText('let out');
	await page.goto(`${fitting}/carry`);
	await expect(page.getByText(/Patched with a strip\?/).first()).toBeVisible();
});

test('the whole fold is halved, said so, and shown as it was read when it is changed', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side&measured=whole-fold`);
	await howMuch(page, 'Waist line').fill('1/2');
	await page.getByRole('button', { name: 'Show the line' }).click();
	// The rule says what was read, not what is carried.
	await expect(page.locator('.rule [aria-pressed="true"]')).toHaveText('1/2');
	await keep(page, 1);
	await expect(page.getByText('1/2″ across the fold = 1/4″ on each layer').first()).toBeVisible();
	await page.getByRole('link', { name: /^Change ?, alteration 1$/ }).click();
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/2');
	await expect(page.getByRole('radio', { name: 'Whole fold' })).toBeChecked();
});

test('each side with its own amounts is two alterations, each told for its side', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side&sides=each`);
	await howMuch(page, 'Waist line').fill('1/4');
	await page.getByLabel('Waist line, how much, left, under-arm', { exact: true }).fill('1/8');
	await keep(page, 1);
	await expect(pinned(page)).toContainText(['1/4″ at the waist, right side only', '1/8″ at the waist, left side only']);
	await page.goto(`${fitting}?side=left`);
	await expect(page.getByRole('group', { name: /left side, all pieces/ }).first()).toBeVisible();
});

test('four readings, their average taken when it is asked for', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side&rightA.level:waist=1/4&leftA.level:waist=1/8`);
	await page.getByRole('button', { name: 'Take the averages' }).click();
	await expect(howMuch(page, 'Waist line')).toHaveValue('3/16');
	await expect(page.getByText(/The readings are alike within 1\/8″/)).toBeVisible();
	await keep(page, 1);
	await page.getByRole('link', { name: /^Change ?, alteration 1$/ }).click();
	await expect(page.getByLabel('Waist line, right, under-arm')).toHaveValue('1/4');
});

test('pinned now and read later waits, says so, and lets carrying wait with it', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await page.getByRole('button', { name: 'Pinned, read it later' }).click();
	await expect(pinned(page)).toContainText('took in, not read yet');
	await page.getByRole('link', { name: 'Carry to paper' }).click();
	await expect(page.getByText('Alteration 1 is not read yet: read it, or leave it out.')).toBeVisible();
	await expect(page.getByRole('button', { name: /Accept it/ })).toHaveCount(0);
	const wholeRevision = await page.locator('[name=wholeRevision]').getAttribute('value');
	expect(await post(request, `${fitting}/carry?/carry`, { wholeRevision: wholeRevision! })).toMatchObject({
		status: 400,
		text: expect.stringContaining('Alteration 1 is not read yet')
	});
	await page.getByRole('link', { name: 'Read it', exact: true }).click();
	await howMuch(page, 'Waist line').fill('1/8');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('took in 1/8″ at the waist');
});

test('one line of shorthand fills the form and draws the line; what it does not understand it says', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.getByLabel('Or write it in one line').fill('sdie in 1/4 waist');
	await page.getByRole('button', { name: 'Show it', exact: true }).click();
	await expect(page.getByText('No seam, edge or dart of this draft is named.')).toBeVisible();
	await expect(page.getByLabel('Or write it in one line')).toHaveValue('sdie in 1/4 waist');
	await page.getByLabel('Or write it in one line').fill('side R in 1/4 waist, 1/8 hip, 0 hem');
	await page.getByRole('button', { name: 'Show it', exact: true }).click();
	await expect(howMuch(page, 'Hip line')).toHaveValue('1/8');
	await expect(page.getByRole('radio', { name: 'Right only' })).toBeChecked();
	await expect(page.getByRole('img', { name: /Alteration 1|in 1\/4/ }).first()).toBeAttached();
	await page.goto(fitting);
	await expect(pinned(page)).toHaveText(['Nothing is pinned yet.']);
});

test('a dart is pinned out, widened and taken out again', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=new-dart&edge=back/shoulder`);
	await page.getByLabel('Where it opens').selectOption({ label: 'Half way' });
	await page.getByLabel('How wide', { exact: true }).fill('-3/8');
	await keep(page, 1);
	await expect(page.getByText('Write 3/8?')).toBeVisible();
	await page.getByLabel('How wide', { exact: true }).fill('3/8');
	await page.getByLabel('How long').fill('3');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('New dart, back shoulder');
	await page.goto(`${fitting}?act=changed-dart&dart=front/second-dart`);
	await page.getByLabel('How much', { exact: true }).fill('1/4');
	await keep(page, 2);
	await expect(pinned(page).nth(1)).toContainText('made 1/4″ wider');
	await page.getByRole('link', { name: /^Change ?, alteration 2$/ }).click();
	await page.getByRole('radio', { name: 'Taken out' }).check({ force: true });
	await keep(page, 2);
	await expect(pinned(page).nth(1)).toContainText('taken out');
});

test('a neck is chalked lower at one place and keeps its other end', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=chalked&edge=front/neck`);
	await expect(page.getByRole('radio', { name: 'Lower' })).toBeChecked();
	await howMuch(page, 'Front edge').fill('1/4');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('chalked 1/4″ lower at the front edge');
	await expect(page.getByText('Fitting 2, alteration 3')).toBeVisible();
});

test('what is seen is noted, answered by an alteration or left, and asked about at the next fitting', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	const became = page.getByRole('list', { name: 'What was seen last time' });
	await became.getByRole('button', { name: /^Solved ?, a$/ }).click();
	await expect(became.getByRole('button', { name: /^Solved ?, a$/ })).toHaveAttribute('aria-pressed', 'true');

	const seen = page.getByRole('list', { name: 'Seen on the body' });
	await page.getByText('Note what you see').click();
	await page.getByRole('button', { name: 'Keep it', exact: true }).click();
	await expect(page.getByText('Say what is seen, of the cloth').first()).toBeVisible();
	await page.getByLabel('or in your words').fill('Drag lines from the under-arm to the waist');
	await page.getByLabel('Where', { exact: true }).selectOption({ label: 'Side seam' });
	await page.getByRole('button', { name: 'Keep it', exact: true }).click();
	await expect(seen).toContainText('Drag lines from the under-arm to the waist');
	await expect(seen).toContainText('open');

	await page.goto(`${fitting}?act=let-out&seam=side`);
	await page.getByText('A note, and what it answers').click();
	await page.getByLabel('Answers').selectOption({ label: 'a: Drag lines from the under-arm to the waist' });
	await howMuch(page, 'Bust line').fill('1/8');
	await keep(page, 1);
	await expect(seen).toContainText('alteration 1');
	await expect(pinned(page)).toContainText('for a');
});

test('pins are counted in and out, and those not found are asked for', async ({ page, request }) => {
	await begin(page, request);
	await page.getByLabel('Counted in').fill('26');
	await page.getByLabel('Counted out').fill('2 dozen');
	await page.getByRole('button', { name: 'Keep the counts' }).click();
	await expect(page.getByText('Count the pins in whole numbers, such as 26.')).toBeVisible();
	await expect(page.getByLabel('Counted out')).toHaveValue('2 dozen');
	await page.getByLabel('Counted out').fill('24');
	await page.getByRole('button', { name: 'Keep the counts' }).click();
	await expect(page.getByText('2 not found: check before the toile comes off.')).toBeVisible();
});

test('a form that comes too late writes nothing and shows both', async ({ page, request, context }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await howMuch(page, 'Waist line').fill('1/8');
	await keep(page, 1);
	await page.getByRole('link', { name: /^Change ?, alteration 1$/ }).click();
	await page.waitForURL(/alteration=/);
	const other = await context.newPage();
	await other.goto(page.url());
	// Before the other keeps its own: a page that nothing is typed on reads itself again, and has then seen it.
	await howMuch(page, 'Waist line').fill('3/8');
	await howMuch(other, 'Waist line').fill('1/4');
	await keep(other, 1);
	await expect(pinned(other)).toContainText('1/4″ at the waist');
	await keep(page, 1);
	await expect(page.getByText(/This was changed elsewhere/)).toBeVisible();
	await expect(page.getByText(/It stands now: Side seam, took in 1\/4″ at the waist/)).toBeVisible();
	await expect(howMuch(page, 'Waist line')).toHaveValue('3/8');
	await other.goto(fitting);
	await expect(pinned(other)).toContainText('1/4″ at the waist');
	// Sent once more, knowing how it stood, it is kept.
	await keep(page, 1);
	await expect(pinned(page)).toContainText('3/8″ at the waist');
});

test('carried to paper: a query settled by an alteration, another left with its reason, and a late form refused', async ({
	page,
	request,
	context
}) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=let-out&seam=side-back`);
	await howMuch(page, 'Hem').fill('1/2');
	await keep(page, 1);
	await expect(pinned(page)).toContainText('let out');
	await page.goto(`${fitting}/carry`);
	const late = await context.newPage();
	await late.goto(`${fitting}/carry`);
	const query = page.getByRole('listitem').filter({ hasText: 'longer than the back' });
	await query
		.getByRole('button', { name: /trued at the hem/ })
		.first()
		.click();
	await expect(
		page.getByRole('listitem').filter({ hasText: 'longer than the back' }).filter({ hasText: 'settles' })
	).toHaveCount(1);

	await late.getByRole('button', { name: /Accept it/ }).click();
	await expect(late.getByText(/This was changed elsewhere/)).toBeVisible();
	await expect(late.getByRole('heading', { name: 'What you were about to carry' })).toBeVisible();

	const asked = page
		.locator('#queries')
		.getByRole('listitem')
		.filter({ has: page.getByLabel('Leave it as it is') })
		.first();
	await asked.getByLabel('Leave it as it is').check();
	await asked.getByLabel('Why, in your words').fill('it is meant so');
	await page.getByRole('button', { name: /Accept it: make version/ }).click();
	await expect(page.getByRole('heading', { level: 1, name: /^Version \d+$/ })).toBeVisible();
	await expect(page.getByText('it is meant so')).toBeVisible();

	await page.goto(fitting);
	await expect(page.getByRole('heading', { name: /is closed$/ })).toBeVisible();
	await expect(page.getByRole('button', { name: /Leave it out|Keep/ })).toHaveCount(0);
	const closed = await post(request, `${fitting}?/keep`, {
		act: 'took-in',
		seam: 'side',
		places: 'level:waist',
		'amount.level:waist': '1/4'
	});
	expect(closed).toMatchObject({ status: 409, text: expect.stringContaining('is closed and is not changed any more') });
});

test('begun over other things than before, it says what that means; a wrong day is kept with what would be right', async ({
	page,
	request
}) => {
	const garment = await garmentOf(request);
	await page.goto(`${garment}/fittings/new`);
	await page.getByLabel('or something not in the list').fill('modern bra');
	await page.getByText('State of the toile, shoes').click();
	await page.getByLabel('Waist', { exact: true }).fill('25 3/4');
	await page.getByLabel('Hip', { exact: true }).fill('1/0');
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	await expect(page.getByText('Nothing can be divided by 0').first()).toBeVisible();
	await expect(page.getByLabel('or something not in the list')).toHaveValue('modern bra');
	await page.getByLabel('Hip', { exact: true }).fill('');
	await page.getByRole('radio', { name: 'Inside' }).check({ force: true });
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	await expect(page.getByText(/was worn under it, now modern bra/)).toBeVisible();
	await expect(page.getByText(/Over modern bra the body measures differently/)).toBeVisible();
	await expect(page.getByText(/Worn inside out/)).toBeVisible();
	await expect(page.getByText(/Waist.* 25 3\/4″ today, 25″ on the sheet/)).toBeVisible();

	const fitting = page.url().replace(/[?#].*$/, '');
	await page.getByRole('link', { name: 'Details of this fitting' }).click();
	await expect(page.getByLabel('Waist', { exact: true })).toHaveValue('25 3/4');
	await page.getByLabel('Waist', { exact: true }).fill('25');
	await page.getByRole('button', { name: 'Keep the details' }).click();
	await expect(page.getByText(/25 3\/4″ today/)).toHaveCount(0);

	const late = { revision: '0', date: '2026-03-20', kind: 'fitting' };
	expect((await post(request, `${fitting}/details`, late)).status).toBe(409);
	const wrong = await post(request, `${garment}/fittings/new`, { kind: 'fitting', date: 'yesterday' });
	expect(wrong).toMatchObject({ status: 400, text: expect.stringContaining('Write the day as year, month, day') });
});

test('table work has no body: no pins to count, nothing worn', async ({ page, request }) => {
	await page.goto(`${await garmentOf(request)}/fittings/new?kind=table`);
	await expect(page.getByLabel('What the wearer has on under it')).toHaveCount(0);
	await page.getByRole('button', { name: 'Begin the table work' }).click();
	await expect(page.getByRole('heading', { level: 1, name: /^Table work \d+$/ })).toBeVisible();
	await expect(page.getByLabel('Counted in')).toHaveCount(0);
	await page.getByRole('button', { name: 'Close it: nothing changes on paper' }).click();
	await expect(page.getByText('Nothing of it was carried to paper.')).toBeVisible();
});

test('nothing is in the way of anybody, light or dim @scripting', async ({ page, request }) => {
	const fitting = await begin(page, request);
	const shown = 'act=took-in&seam=side&amount.level:waist=1/4&amount.level:hip=ten';
	for (const dim of [false, true]) {
		if (dim) await page.context().addCookies([{ name: 'dim', value: 'yes', url: server.address() }]);
		for (const address of [
			fitting,
			`${fitting}?${shown}`,
			`${fitting}?act=new-dart&edge=front/neck`,
			`${fitting}/details`
		]) {
			await page.goto(address);
			expect(
				(await new AxeBuilder({ page }).analyze()).violations.map(({ id, nodes }) => [
					id,
					nodes.map(({ html }) => html)
				]),
				address
			).toEqual([]);
		}
	}
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await howMuch(page, 'Waist line').fill('1/4');
	await keep(page, 1);
	await expect(page.getByRole('heading', { name: 'Alteration 1 is kept' })).toBeVisible();
	await page.goto(`${fitting}/carry`);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('on a phone the seam in the hand lies close above its places, and nothing runs out at the side @phone', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	for (const width of [360, 390]) {
		await page.setViewportSize({ width, height: 800 });
		for (const more of ['', '&sides=each&measured=each-layer']) {
			await page.goto(`${fitting}?act=took-in&seam=side${more}`);
			const close = page.getByRole('group', { name: 'The seam in the hand, close' }).first();
			await expect(close).toBeVisible();
			expect((await close.boundingBox())!.y).toBeLessThan((await howMuch(page, 'Waist line').boundingBox())!.y);
			expect(await page.evaluate(() => document.documentElement.scrollWidth), `${width} ${more}`).toBeLessThanOrEqual(
				width
			);
		}
	}
	const small = await page
		.locator('main button:visible, main a:visible, main input:visible, main select:visible')
		.evaluateAll((controls) =>
			controls
				.filter((control) => !control.closest('svg') && !control.matches('.visually-hidden'))
				.map((control) => ({ box: control.getBoundingClientRect(), said: control.outerHTML.slice(0, 120) }))
				.filter(({ box }) => box.height > 0 && box.height < 43.5)
				.map(({ said }) => said)
		);
	expect(small).toEqual([]);
});
