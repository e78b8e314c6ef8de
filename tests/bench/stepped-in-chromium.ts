import { spawn } from 'node:child_process';
import { alive } from '../support/fitting-page.ts';
import { isDeepStrictEqual } from 'node:util';
import { chromium, type Browser, type Page } from '@playwright/test';
import { demoGarment } from '../support/demo-garment.ts';
import { findChromium } from '../support/find-chromium.ts';
import { fittingShown } from '../support/fitting-shown.ts';
import { freePort } from '../support/free-port.ts';

interface Stepped {
	/** Seams pinned on the right alone before, so that there are more pieces. */
	readonly opened: readonly string[];
	readonly inHand: Readonly<Record<string, string>>;
	/** The field that is stepped. */
	readonly amount: string;
}

/** ms of one tap, from when the finger is lifted. */
interface Tap {
	readonly drawn: number;
	readonly work: number;
	readonly seen: number;
}

/** Whole rounds of eight presses up and eight down. */
const times = 192;
/**
 * ms from tap to tap at least, for no thumb is a clock: up to a fifth more. How long of it the finger lies on the button. So short that
 * the thumb never rests, and longer.
 */
const ways = [
	{ name: 'quick', every: 110, lies: 45 },
	{ name: 'unhurried', every: 260, lies: 70 },
	{ name: 'slow', every: 600, lies: 90 }
] as const;

/** A pin stepped in the released page, in Chromium, and what the page comes to afterwards. Wanted: 16.7 ms, a frame. */
export async function steppedInChromium(stepped: Stepped): Promise<void> {
	const server = await served();
	const browser = await chromium.launch({
		executablePath: findChromium(),
		args: process.getuid?.() === 0 ? ['--no-sandbox'] : []
	});
	try {
		const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
		await openFitting(page, server.address, stepped);
		await alive(page);
		console.log(`\nA pin stepped ${times} times in Chromium, ms from when the finger is lifted (wanted: under 16.7)`);
		for (const way of ways) {
			const all = await tapped(page, stepped.amount, way);
			console.log(`\n  ${way.name}, every ${way.every} to ${way.every * 1.2} ms`);
			console.log(`    until its new line is in the page            ${quantiles(all.map(({ drawn }) => drawn))}`);
			console.log(`    and with the style, layout and paint of it   ${quantiles(all.map(({ work }) => work))}`);
			console.log('    until the frame of it is painted: the same,');
			console.log(`    and up to 16.7 ms of waiting for the screen  ${quantiles(all.map(({ seen }) => seen))}`);
		}
		const rested = await page.evaluate<number[]>(`(${rests})(${JSON.stringify({ name: stepped.amount, times })})`);
		console.log(`\n  the whole page, when the thumb rests           ${quantiles(rested)}`);
		await sameAsServer(browser, page, stepped);
		console.log('  It is then the page that the server makes of the same fields, line by line and word by word.');
	} finally {
		await browser.close();
		server.end();
	}
}

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, Math.max(0, ms)));

async function served(): Promise<{ readonly address: string; readonly end: () => void }> {
	const server = spawn(process.execPath, ['tests/support/serve-fresh.js'], {
		env: { ...process.env, PORT: String(await freePort()) },
		stdio: ['ignore', 'pipe', 'inherit']
	});
	const address = await new Promise<string>((resolve) => {
		server.stdout.on('data', (chunk: Buffer) => {
			const said = /^http:\/\/127\.0\.0\.1:\d+$/m.exec(String(chunk));
			if (said) resolve(said[0]);
		});
	});
	return { address, end: () => server.kill('SIGTERM') };
}

async function openFitting(page: Page, address: string, { opened, inHand }: Stepped): Promise<void> {
	await page.goto(`${address}${await demoGarment(page.request, address)}/fittings/new`);
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	await page.waitForURL(/\/fittings\/(?!new\b)[^/]+$/);
	const fitting = page.url().replace(/[?#].*$/, '');
	for (const seam of opened) {
		await page.goto(`${fitting}?act=took-in&seam=${seam}&sides=right&along=all&amount.all=1/16`);
		await page.getByRole('button', { name: /^Keep alteration/ }).click();
		await page.getByRole('heading', { name: /is kept$/ }).waitFor();
	}
	await page.goto(`${fitting}?${new URLSearchParams(inHand).toString()}`);
}

/**
 * Presses + eight times and − eight times, in turn, as a finger does, each at another moment of the screen’s 16.7 ms. Thrown: a press
 * that was no step.
 */
async function tapped(page: Page, amount: string, { every, lies }: (typeof ways)[number]): Promise<readonly Tap[]> {
	await page.evaluate(`(${heard})()`);
	const buttons = ['up', 'down'].map((way) => page.locator(`button[value="${way}:${amount}"]`));
	await buttons[0]!.scrollIntoViewIfNeeded();
	const middles = await Promise.all(
		buttons.map(async (button) => {
			const { x, y, width, height } = (await button.boundingBox())!;
			return [x + width / 2, y + height / 2] as const;
		})
	);
	let next = performance.now();
	for (let i = 0; i < times; i++) {
		next += every * (1 + (((i * 7) % 17) / 17) * 0.2);
		await page.mouse.move(...middles[i % 16 < 8 ? 0 : 1]!);
		await page.mouse.down();
		await wait(lies);
		await page.mouse.up();
		await wait(next - performance.now());
	}
	const all = await page.evaluate<Tap[]>('window.taps');
	if (all.length !== times) throw new Error(`Of ${times} presses ${all.length} were steps.`);
	return all;
}

/** Steps on from nothing, rests and compares. Thrown: the page differs from the one that the server makes. */
async function sameAsServer(browser: Browser, page: Page, { amount }: Stepped): Promise<void> {
	const more = page.locator(`button[value="up:${amount}"]`);
	for (let i = 0; i < 3; i++) await more.click();
	await page.waitForURL((url) => url.searchParams.get(amount) === '3/16');
	await page.waitForFunction(() => document.querySelector('[aria-busy]') === null);
	const context = await browser.newContext({ javaScriptEnabled: false, viewport: page.viewportSize() });
	const asSent = await context.newPage();
	await asSent.goto(page.url());
	if (!isDeepStrictEqual(await fittingShown(page), await fittingShown(asSent)))
		throw new Error('When the thumb rests, the page is another than the server makes of the same fields.');
	await context.close();
}

function quantiles(all: readonly number[]): string {
	const sorted = [...all].sort((a, b) => a - b);
	const [median, p95] = [0.5, 0.95].map((share) => sorted[Math.floor(share * (sorted.length - 1))]!.toFixed(1));
	return `median ${median!.padStart(5)}  p95 ${p95!.padStart(5)}`;
}

/** Parts of what is run in the page, as text. */
const parts = `
	const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
	const button = (i) => document.querySelector('button[value="' + (i % 16 < 8 ? 'up' : 'down') + ':' + name + '"]');
	const lines = () => [...document.querySelectorAll('.table path.after')].map((line) => line.getAttribute('d')).join();
	const step = async (i) => {
		const [pressed, before] = [button(i), lines()];
		const from = performance.now();
		pressed.click();
		await Promise.resolve();
		const drawn = performance.now() - from;
		if (lines() === before) throw new Error('A step drew no other line.');
		return { from, drawn };
	};`;

/**
 * Notes every tap that drew another line, from when the browser heard that the finger was lifted. A frame is painted when a task that
 * it handed on is run: what the graphics card does after that is not in it.
 */
const heard = `() => {${parts}
	window.taps = [];
	window.before = '';
	if (window.hears) return;
	window.hears = true;
	window.addEventListener('click', () => { window.before = lines(); }, { capture: true });
	// The page's own listeners stand before the window's: its lines are drawn by now.
	window.addEventListener('click', ({ timeStamp: from }) => {
		const drawn = performance.now() - from;
		if (lines() === window.before) return;
		requestAnimationFrame(() => {
			const begun = performance.now();
			const { port1, port2 } = new MessageChannel();
			port1.onmessage = () => {
				const painted = performance.now();
				window.taps.push({ drawn, work: drawn + painted - begun, seen: painted - from });
			};
			port2.postMessage(undefined);
		});
	});
}`;

/** Steps once, and lets the keyboard go elsewhere: the whole page is drawn at once. */
const rests = `async ({ name, times }) => {${parts}
	const all = [];
	for (let i = 0; i < times; i++) {
		await step(i);
		if (!document.querySelector('[aria-busy]') && i % 16 !== 0 && i % 16 !== 15) throw new Error('A step was no step.');
		const from = performance.now();
		document.querySelector('form.hand').dispatchEvent(new FocusEvent('focusout', { bubbles: true }));
		await Promise.resolve();
		all.push(performance.now() - from);
		await wait(30);
	}
	return all;
}`;
