import { expect, test, type APIRequestContext, type Page } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** A new fitting of the demo’s jacket, open. */
const begin = (page: Page, request: APIRequestContext) => beginFitting(page, request, server.address());

const howMuch = (page: Page, place: string) => page.getByLabel(`${place}, how much`, { exact: true });
const after = (page: Page) => page.locator('.drawing:visible .after').first();

/** Every request for this page, its data or its forms from now on; what is asked beside it (whether others kept something) is not. */
function requestsOf(page: Page): string[] {
	const asked: string[] = [];
	page.on('request', (request) => {
		const url = request.url();
		if (request.resourceType() === 'document' || /__data\.json|\?\//.test(url)) asked.push(url);
	});
	return asked;
}

test('a step, a letter, a choice and another seam are drawn without asking anybody, and the address follows @scripting', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await alive(page);
	const asked = requestsOf(page);
	await page.getByRole('link', { name: /Took in a seam/ }).click();
	await page.getByRole('link', { name: 'Side seam', exact: true }).click();
	await expect(page.getByRole('heading', { name: 'Side seam, under-arm to front' })).toBeVisible();
	await page.getByRole('button', { name: 'More, Waist line' }).click();
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/16');
	const first = await after(page).getAttribute('d');
	await page.getByRole('button', { name: 'More, Waist line' }).click();
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/8');
	expect(await after(page).getAttribute('d')).not.toBe(first);
	await expect(page.getByText('1/8″ on each layer = 1/4″ at this seam = 1/2″ round the waist').first()).toBeAttached();
	await howMuch(page, 'Hip line').pressSequentially('1/4');
	await expect(howMuch(page, 'Hip line')).toHaveValue('1/4');
	await page.getByRole('radio', { name: 'Right only' }).check({ force: true });
	await expect(page.getByText(/round the (waist|hip), right side only/).first()).toBeAttached();
	await expect(page).toHaveURL(/amount\.level%3Ahip=1%2F4.*sides=right/);
	expect(asked).toEqual([]);

	await page.reload();
	await expect(howMuch(page, 'Hip line')).toHaveValue('1/4');
	await expect(page.getByRole('radio', { name: 'Right only' })).toBeChecked();
	await alive(page);
	await page.goBack();
	await expect(page.getByRole('list', { name: 'Where' })).toBeVisible();
	await page.goBack();
	await expect(page.getByRole('heading', { name: 'What did you do on the body?' })).toBeVisible();
	expect(page.url()).toContain(fitting);
});

test('what is done to the hand is taken back and done again, and a whole hand that was put down @scripting', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await alive(page);
	const more = page.getByRole('button', { name: 'More, Waist line' });
	await more.click();
	await more.click();
	await page.getByRole('button', { name: 'More, Hip line' }).click();
	await page.getByRole('button', { name: 'Undo', exact: true }).click();
	await expect(howMuch(page, 'Hip line')).toHaveValue('');
	await page.getByRole('button', { name: 'Undo', exact: true }).click();
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/16');
	await page.getByRole('button', { name: 'Redo' }).click();
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/8');
	// In a field Ctrl+Z is the field's own; outside it is the hand's.
	await more.focus();
	await page.keyboard.press('Control+z');
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/16');
	await page.keyboard.press('Control+Shift+z');
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/8');
	await more.focus();
	await page.keyboard.press('Escape');
	await expect(page.getByRole('heading', { name: 'What did you do on the body?' })).toBeVisible();
	await page.keyboard.press('Control+z');
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/8');
});

test('the places of the line stand on the drawing, and a tap elsewhere on it is a place @scripting @desktop', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await alive(page);
	const waist = page.getByRole('slider', { name: 'Waist line' });
	await expect(waist).toHaveAttribute('aria-valuetext', 'Waist line, as it was');
	const hip = (await page.getByRole('slider', { name: 'Hip line' }).boundingBox())!;
	await page.mouse.click(hip.x + hip.width / 2, hip.y + hip.height / 2);
	await expect(page.getByRole('button', { name: /^Hip line/ })).toHaveAttribute('aria-pressed', 'true');
	const [bust, middle] = await Promise.all([
		page.getByRole('slider', { name: 'Bust line' }).boundingBox(),
		waist.boundingBox()
	]);
	// Half way between two of its places, on the same line.
	const line = await page.locator('.table .edge-held').first().boundingBox();
	const y = (bust!.y + bust!.height / 2 + middle!.y + middle!.height / 2) / 2;
	const x = await page.evaluate(
		([left, right, at]) => {
			for (let one = left; one <= right; one++)
				if (document.elementFromPoint(one, at)?.classList.contains('edge-held')) return one + 10;
			return 0;
		},
		[line!.x - 20, line!.x + line!.width + 20, y] as const
	);
	await page.mouse.click(x, y);
	await expect(page.getByRole('slider', { name: /″ (above|below) the/ })).toHaveCount(1);
	await expect(page).toHaveURL(/here=[a-z]+%3A[a-z-]+%7E-?\d/);
	// So is a tap on the seam laid straight, between two rows.
	const straight = (await page.locator('.seam-straight').boundingBox())!;
	await page.mouse.click(straight.x + 50, straight.y + 44 * 1.02);
	await expect(page.getByRole('slider', { name: /″ (from|above|below)/ })).toHaveCount(2);
});

test('a dart is tapped in the drawing @scripting @desktop', async ({ page, request }) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=changed-dart`);
	await alive(page);
	await page.getByRole('link', { name: 'Pin Front, Second dart' }).click();
	await expect(page.getByRole('heading', { name: /second dart/i })).toBeVisible();
	await page.getByLabel('How much', { exact: true }).fill('1/4');
	await expect(page.locator('.dart-changed').first()).toBeAttached();
});

test('looked at closer with buttons, keys and the wheel; pins keep their size, and the whole comes back @scripting @desktop', async ({
	page,
	request
}) => {
	const fitting = await begin(page, request);
	await page.goto(`${fitting}?act=took-in&seam=side&amount.level:waist=1/4`);
	await alive(page);
	const drawing = page.getByRole('group', { name: /all pieces, drawing$/ });
	const head = page.locator('.pin-head').last();
	const cloth = drawing.locator('.cloth').first();
	const sizes = async () => ({ pin: (await head.boundingBox())!.width, cloth: (await cloth.boundingBox())!.height });
	const before = await sizes();
	await page.getByRole('button', { name: 'Closer' }).last().click();
	const closer = await sizes();
	expect(closer.cloth).toBeGreaterThan(before.cloth * 1.4);
	expect(closer.pin).toBeCloseTo(before.pin, 0);
	await drawing.focus();
	await page.keyboard.press('+');
	expect((await sizes()).cloth).toBeGreaterThan(closer.cloth * 1.4);
	const left = (await cloth.boundingBox())!.x;
	await page.keyboard.press('ArrowRight');
	expect((await cloth.boundingBox())!.x).toBeLessThan(left - 50);
	await page.keyboard.press('0');
	expect((await sizes()).cloth).toBeCloseTo(before.cloth, 0);
	const box = (await drawing.boundingBox())!;
	await page.mouse.move(box.x + 300, box.y + 300);
	await page.keyboard.down('Control');
	await page.mouse.wheel(0, -300);
	await page.keyboard.up('Control');
	await expect.poll(async () => (await sizes()).cloth).toBeGreaterThan(before.cloth * 1.1);
});

test('what is typed while the engine is still on its way is kept, and so is what was wrong with it @scripting @desktop', async ({
	page,
	request
}) => {
	const fitting = `${await begin(page, request)}?act=folded-across&across=waist`;
	const answer = await request.get(fitting);
	const first = (await answer.text()) + (answer.headers().link ?? '');
	let come = () => {};
	const held = new Promise<void>((resolve) => (come = resolve));
	await page.route(/\/_app\/immutable\/.*\.js$/, async (route) => {
		if (!first.includes(new URL(route.request().url()).pathname.split('/').pop()!)) await held;
		await route.continue();
	});
	await page.goto(fitting);
	await expect(page.locator('.hand')).toBeVisible();
	await page.waitForTimeout(1500);
	await expect(page.getByRole('button', { name: 'Closer' })).toHaveCount(0);
	await howMuch(page, 'Centre-back seam').fill('0');
	await page.getByRole('button', { name: 'Keep alteration 1' }).click();
	await expect(page.getByText('That changes nothing').first()).toBeVisible();
	come();
	await alive(page);
	await expect(howMuch(page, 'Centre-back seam')).toHaveValue('0');
	await expect(page.getByText('That changes nothing').first()).toBeVisible();
	await howMuch(page, 'Centre-back seam').fill('1/2');
	await expect(page.getByText('That changes nothing')).toHaveCount(0);
});

/** Two fingers that part round the middle of a box. */
async function pinch(page: Page, box: { x: number; y: number; width: number; height: number }) {
	const client = await page.context().newCDPSession(page);
	const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
	const fingers = (apart: number) => [
		{ x: x - apart, y, id: 1 },
		{ x: x + apart, y, id: 2 }
	];
	await client.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: fingers(20) });
	for (const apart of [30, 45, 60, 75])
		await client.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: fingers(apart) });
	await client.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

test('by touch alone on a phone: act, seam, places, an eighth of the rule, pinched closer, kept @scripting @phone', async ({
	page,
	request
}) => {
	await begin(page, request);
	await alive(page);
	const asked = requestsOf(page);
	await page.getByRole('link', { name: /Took in a seam/ }).tap();
	await page.getByRole('link', { name: 'Side seam', exact: true }).tap();
	const close = page.getByRole('group', { name: 'The seam in the hand, close, drawing' });
	await expect(close).toBeVisible();
	await page.getByRole('button', { name: 'More, Waist line' }).tap();
	await page
		.getByRole('group', { name: 'Waist line: how much' })
		.getByRole('button', { name: '1/4', exact: true })
		.tap();
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/4');
	await page.getByRole('button', { name: 'Hip line' }).first().tap();
	await page.getByRole('group', { name: 'Hip line: how much' }).getByRole('button', { name: '1/8', exact: true }).tap();
	const band = page.locator('.close .after').first();
	const narrow = (await band.boundingBox())!.width;
	await close.scrollIntoViewIfNeeded();
	await pinch(page, (await close.boundingBox())!);
	await expect.poll(async () => (await band.boundingBox())!.width).toBeGreaterThan(narrow * 1.5);
	await page.getByRole('button', { name: 'Whole' }).tap();
	// The close look is at the place that is stepped; another is tapped on the table, and the look goes there.
	await expect(close.getByRole('slider', { name: 'Hip line' })).toHaveCount(1);
	await expect(close.getByRole('slider', { name: 'Waist line' })).toHaveCount(0);
	const onTable = page.locator('.table').getByRole('slider', { name: 'Waist line' }).first();
	await onTable.scrollIntoViewIfNeeded();
	const waist = (await onTable.boundingBox())!;
	await page.touchscreen.tap(waist.x + waist.width / 2, waist.y + waist.height / 2);
	await expect(page.getByRole('button', { name: 'Waist line' }).first()).toHaveAttribute('aria-pressed', 'true');
	await expect(close.getByRole('slider', { name: 'Waist line' })).toHaveCount(1);
	expect(asked).toEqual([]);
	await page.getByRole('button', { name: 'Keep alteration 1' }).tap();
	await expect(page.getByRole('heading', { name: 'Alteration 1 is kept' })).toBeVisible();
});

/** Tab until something of this name has the keyboard; how many it took is no matter, that it comes is. */
async function tabTo(page: Page, name: RegExp) {
	for (let i = 0; i < 150; i++) {
		await page.keyboard.press('Tab');
		const said = await page.evaluate(() => {
			const at = document.activeElement as HTMLInputElement;
			if (at === (document.body as HTMLElement)) return '';
			return at.getAttribute('aria-label') ?? (at.labels?.[0]?.textContent || at.textContent || '');
		});
		if (name.test(said.trim())) return;
	}
	throw new Error(`Tab never came to ${String(name)}`);
}

test('a whole fitting by keyboard alone: act, seam, place, amounts, a dart, what was seen, carried @scripting @desktop', async ({
	page,
	request
}) => {
	await begin(page, request);
	await alive(page);
	const { keyboard } = page;
	await tabTo(page, /^Took in a seam/);
	await keyboard.press('Enter');
	await tabTo(page, /^Side seam$/);
	await keyboard.press('Enter');
	// The chosen place has the keyboard; up steps it by a sixteenth, with Shift by an eighth.
	await expect(page.getByRole('button', { name: /^Waist line/ })).toBeFocused();
	await keyboard.press('ArrowUp');
	await keyboard.press('Shift+ArrowUp');
	await keyboard.press('Shift+ArrowUp');
	await keyboard.press('ArrowDown');
	await expect(howMuch(page, 'Waist line')).toHaveValue('1/4');
	await expect(page.locator('p[role=status]')).toHaveText(
		'Side seam, under-arm to front. Waist line, in 1/4 inch. 1 inch round the waist.'
	);
	// In the drawing as well.
	await tabTo(page, /^Hip line$/);
	await keyboard.press('ArrowUp');
	await keyboard.press('+');
	await expect(howMuch(page, 'Hip line')).toHaveValue('1/8');
	await expect(page.getByRole('slider', { name: 'Hip line' })).toHaveAttribute(
		'aria-valuetext',
		'Hip line, in 1/8 inch'
	);
	await page.getByRole('link', { name: 'To the page itself' }).focus();
	await keyboard.press('Enter');
	await tabTo(page, /^Keep alteration 1$/);
	await keyboard.press('Enter');
	await expect(page.getByRole('heading', { name: 'Alteration 1 is kept' })).toBeVisible();

	await tabTo(page, /^Changed a dart/);
	await keyboard.press('Enter');
	await tabTo(page, /^Front second dart$/);
	await keyboard.press('Enter');
	await tabTo(page, /^How much$/);
	await keyboard.type('1/4');
	await tabTo(page, /^Keep alteration 2$/);
	await keyboard.press('Enter');
	await expect(page.getByRole('heading', { name: 'Alteration 2 is kept' })).toBeVisible();

	await tabTo(page, /^Note what you see$/);
	await keyboard.press('Enter');
	await tabTo(page, /in your words/);
	await keyboard.type('Drag lines from the under-arm to the waist');
	await tabTo(page, /^Keep it$/);
	await keyboard.press('Enter');
	await expect(page.getByRole('list', { name: 'Seen on the body' })).toContainText('Drag lines from the under-arm');

	await page.getByRole('link', { name: 'To the page itself' }).focus();
	await keyboard.press('Enter');
	await tabTo(page, /^Carry to paper$/);
	await keyboard.press('Enter');
	await page.waitForURL(/\/carry$/);
	await tabTo(page, /^Accept it: make version/);
	await keyboard.press('Enter');
	await expect(page.getByRole('heading', { level: 1, name: /^Version \d+$/ })).toBeVisible();
});
