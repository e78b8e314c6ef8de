import { expect, test, type APIRequestContext, type Browser, type Page } from '@playwright/test';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive } from '../support/fitting-page.ts';
import { fittingShown, type FittingShown } from '../support/fitting-shown.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/** A fitting begun, and its side seam in the hand to be taken in; so much of it at the waist already. */
async function sideInHand(page: Page, request: APIRequestContext, waist?: string): Promise<void> {
	const fitting = await beginFitting(page, request, server.address());
	await page.goto(`${fitting}?act=took-in&seam=side${waist ? `&amount.level:waist=${waist}` : ''}`);
	await alive(page);
}

/** Presses buttons of the hand one after another within one task of the page, so that the thumb never rests between. */
const press = (page: Page, ...names: readonly string[]) =>
	page.evaluate((all) => {
		for (const name of all) document.querySelector<HTMLButtonElement>(`button[aria-label="${name}"]`)!.click();
	}, names);

const busy = (page: Page) => page.locator('[aria-busy]');

/** The page at this address as the server makes it, on a screen as wide. */
async function withoutScripting(browser: Browser, page: Page): Promise<FittingShown> {
	const context = await browser.newContext({ javaScriptEnabled: false, viewport: page.viewportSize() });
	try {
		const asSent = await context.newPage();
		await asSent.goto(page.url());
		return await fittingShown(asSent);
	} finally {
		await context.close();
	}
}

test('when the thumb rests, the page is the one that the server makes of the same fields @scripting', async ({
	page,
	request,
	browser
}) => {
	const fitting = await beginFitting(page, request, server.address());
	await page.goto(`${fitting}?act=took-in&seam=side-back&amount.level:waist=1/4`);
	await page.getByRole('button', { name: /^Keep alteration/ }).click();
	await page.getByRole('heading', { name: /is kept$/ }).waitFor();
	await page.goto(`${fitting}?act=took-in&seam=side`);
	await alive(page);
	const more = ['More, Waist line', 'More, Waist line', 'More, Hip line', 'More, Waist line', 'Less, Hip line'];
	for (const name of more) {
		await press(page, name);
		// A frame, so that each is drawn.
		await page.evaluate(() => new Promise(requestAnimationFrame));
	}
	await expect(page).toHaveURL(/amount\.level%3Awaist=3%2F16/);
	await expect(busy(page)).toHaveCount(0);
	const shown = await fittingShown(page);
	expect(shown.drawings.flat().length).toBeGreaterThan(100);
	expect(shown.told).toContain('3/16″');
	expect(shown).toEqual(await withoutScripting(browser, page));
});

test('in the frame of a step the amount, the line, the pin and the sum are new, and the rest says that it is not @scripting', async ({
	page,
	request
}) => {
	await sideInHand(page, request, '1/16');
	await press(page, 'More, Waist line');
	await expect(page.getByText('1/8″ on each layer = 1/4″ at this seam = 1/2″ round the waist').first()).toBeAttached();
	await expect(busy(page)).toHaveCount(0);
	const first = await fittingShown(page);
	// Looked at in the task of the step itself, before anything could rest.
	const step = await page.evaluate(async () => {
		document.querySelector<HTMLButtonElement>('button[aria-label="More, Waist line"]')!.click();
		await Promise.resolve();
		const drawing = [...document.querySelectorAll('svg.drawing')].find((one) => one.getClientRects().length > 0)!;
		return {
			amount: document.querySelector<HTMLInputElement>('input[name="amount.level:waist"]')!.value,
			after: [...drawing.querySelectorAll('path.after')].map((one) => one.getAttribute('d')),
			labels: [...drawing.querySelectorAll('.pin-label')].map((one) => one.textContent),
			busy: document.querySelectorAll('[aria-busy]').length,
			sum: document.querySelector('[aria-labelledby="does"]')!.textContent
		};
	});
	expect(step.amount).toBe('3/16');
	expect(step.labels).toEqual(['in 3/16', 'in 3/16']);
	expect(step.busy).toBe(1);
	expect(step.sum).toMatch(/3\/16″\s*on each layer\s*=\s*3\/8″\s*at this seam\s*=\s*3\/4″\s*round the waist/);
	await expect(busy(page)).toHaveCount(0);
	const rested = await fittingShown(page);
	const lines = ({ drawings }: FittingShown) => drawings[0]!.filter((one) => one.startsWith('after '));
	expect(step.after).toHaveLength(lines(rested).length);
	for (const [i, line] of lines(rested).entries()) expect(line).toContain(step.after[i]);
	expect(lines(rested)).not.toEqual(lines(first));
});

test('what is sent between two steps is of the newest amount @scripting', async ({ page, request }) => {
	await sideInHand(page, request);
	await page.evaluate(async () => {
		const button = (name: string) => document.querySelector<HTMLButtonElement>(`button[aria-label="${name}"]`)!;
		for (let i = 0; i < 5; i++) {
			button('More, Waist line').click();
			await Promise.resolve();
		}
		const keep = [...document.querySelectorAll<HTMLButtonElement>('form.hand button')];
		keep.find(({ textContent }) => textContent!.startsWith('Keep alteration'))!.click();
	});
	await expect(page.getByRole('heading', { name: 'Alteration 1 is kept' })).toBeVisible();
	await expect(page.locator('#pinned')).toContainText('5/16″');
});

test('the rest is told at once when the keyboard goes elsewhere, and spoken when it is told @scripting @desktop', async ({
	page,
	request
}) => {
	await sideInHand(page, request, '1/16');
	await page.getByRole('button', { name: 'More, Waist line' }).click();
	await expect(busy(page)).toHaveCount(0);
	const counts = await page.evaluate(async () => {
		const [more, drawing] = ['button[aria-label="More, Waist line"]', '.table .drawing-scroll'].map((one) =>
			document.querySelector<HTMLElement>(one)!
		);
		const count = () => document.querySelectorAll('[aria-busy]').length;
		more!.focus();
		more!.click();
		await Promise.resolve();
		const stepped = count();
		drawing!.focus();
		await Promise.resolve();
		return [stepped, count()];
	});
	expect(counts).toEqual([1, 0]);
	await expect(page.locator('p[role=status]')).toHaveText(
		'Side seam, under-arm to front. Waist line, in 3/16 inch. 3/4 inch round the waist.'
	);
});

test('a button that is pressed is worked out ahead, and does what it says when it is let go, or nothing elsewhere @scripting @desktop', async ({
	page,
	request
}) => {
	await sideInHand(page, request, '1/16');
	const amount = page.getByLabel('Waist line, how much', { exact: true });
	const pressed = async (name: string) => {
		await page.getByRole('button', { name, exact: true }).hover();
		await page.mouse.down();
	};
	// Let go elsewhere: it was no tap.
	await pressed('More, Waist line');
	await page.mouse.move(5, 5);
	await page.mouse.up();
	await expect(amount).toHaveValue('1/16');
	await expect(busy(page)).toHaveCount(0);
	await pressed('More, Waist line');
	await page.mouse.up();
	await expect(amount).toHaveValue('1/8');
	// So long that the thumb rests in between, and what was worked out ahead is of a page that is shown no more.
	await pressed('More, Waist line');
	await expect(busy(page)).toHaveCount(0);
	await page.mouse.up();
	await expect(amount).toHaveValue('3/16');
	// Pressed, and something else typed by the keyboard before it is let go: the newest is what counts.
	await pressed('More, Waist line');
	await amount.evaluate((field: HTMLInputElement) => {
		field.value = '1/2';
		field.dispatchEvent(new Event('input', { bubbles: true }));
	});
	await page.mouse.up();
	await expect(amount).toHaveValue('9/16');
	await expect(
		page.getByText('9/16″ on each layer = 1 1/8″ at this seam = 2 1/4″ round the waist').first()
	).toBeAttached();
});
