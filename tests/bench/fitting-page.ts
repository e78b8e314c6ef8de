import { spawn } from 'node:child_process';
import { chromium, type Page } from '@playwright/test';
import { cuttingLines, parseAlteration, parseDraft } from '../../src/lib/engine/index.ts';
import file from '../../src/lib/intake/demo-draft.json';
import { cutPaths } from '../../src/lib/ui/drawing/cut-paths.ts';
import { fittingView } from '../../src/lib/ui/fitting/view/fitting-view.ts';
import { keptView } from '../../src/lib/ui/fitting/view/kept-view.ts';
import { demoGarment } from '../support/demo-garment.ts';
import { findChromium } from '../support/find-chromium.ts';
import { freePort } from '../support/free-port.ts';
import { report } from './report.ts';

/** Pinned on the right alone, each of these makes two of each of its pieces: all six of the demo's jacket become twelve. */
const opened = ['side', 'side-back', 'fore-sleeve'];
const steps = 200;
const inHand = { act: 'took-in', seam: 'shoulder' };
const amount = 'amount.end:start';

/** The fitting page while a pin is stepped: what it computes, and how long until it is seen. Wanted: a frame, 16.7 ms. */
export async function fittingPage(): Promise<void> {
	const draft = parseDraft(file);
	const kept = keptView({
		unit: 'in',
		base: draft,
		alterations: opened.map(keptOnTheRight),
		checks: { base: draft, before: draft },
		cut: cutPaths(cuttingLines(draft, { default: 25.4 })),
		piecesOff: [],
		earlier: [],
		letters: {},
		caption: ['Fitting 1']
	});
	let step = 0;
	await report(`The fitting page of ${kept.after.pieces.length} pieces (wanted: under 16.7 ms)`, [
		{
			name: 'all it shows, a pin stepped on each time',
			run: () => fittingView(kept, { ...inHand, [amount]: `${1 + (++step % 8)}/16` })
		}
	]);
	const { script, seen } = await inTheBrowser();
	console.log(`\nA pin stepped ${steps} times in the browser, from the tap\n`);
	console.log(`  to the page as it is to be drawn   ${quantiles(script)}`);
	console.log(`  to the frame in which it is seen   ${quantiles(seen)}`);
}

function keptOnTheRight(seam: string, i: number) {
	const id = `right-${i + 1}`;
	const pins = [{ at: { fraction: 0.5 }, a: -2, b: -2 }];
	return {
		...{ id, revision: 1, number: i + 1, position: i + 1, act: 'took-in', note: '', answers: null, pairedWith: null },
		intent: parseAlteration({ id, kind: 'seam', on: 'right', seam, pins }),
		measured: 'one-layer' as const,
		state: 'standing' as const,
		takenOut: false
	};
}

function quantiles(times: readonly number[]): string {
	const sorted = [...times].sort((a, b) => a - b);
	const [median, p95] = [0.5, 0.95].map((share) => sorted[Math.floor(share * (sorted.length - 1))].toFixed(1));
	return `median ${median} ms  p95 ${p95} ms`;
}

/** The same in the released page, in Chromium. */
async function inTheBrowser(): Promise<{ readonly script: readonly number[]; readonly seen: readonly number[] }> {
	const port = String(await freePort());
	const server = spawn(process.execPath, ['tests/support/serve-fresh.js'], {
		env: { ...process.env, PORT: port },
		stdio: ['ignore', 'pipe', 'inherit']
	});
	const address = await new Promise<string>((resolve) => {
		server.stdout.on('data', (chunk: Buffer) => {
			const said = /^http:\/\/127\.0\.0\.1:\d+$/m.exec(String(chunk));
			if (said) resolve(said[0]);
		});
	});
	const browser = await chromium.launch({
		executablePath: findChromium(),
		args: process.getuid?.() === 0 ? ['--no-sandbox'] : []
	});
	try {
		const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
		await openFitting(page, address);
		await page.getByRole('button', { name: 'Closer' }).first().waitFor();
		return await page.evaluate(`(${stepped})(${JSON.stringify({ steps, name: amount })})`);
	} finally {
		await browser.close();
		server.kill('SIGTERM');
	}
}

async function openFitting(page: Page, address: string): Promise<void> {
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

/** Run in the page as text: presses + eight times and − eight times, in turn, each after a frame of rest. */
const stepped = `async ({ steps, name }) => {
	const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
	const handedOn = () => new Promise((resolve) => {
		const { port1, port2 } = new MessageChannel();
		port1.onmessage = resolve;
		port2.postMessage(undefined);
	});
	const script = [];
	const seen = [];
	for (let i = 0; i < steps; i++) {
		await frame();
		const from = performance.now();
		document.querySelector('button[value="' + (i % 16 < 8 ? 'up' : 'down') + ':' + name + '"]').click();
		await Promise.resolve();
		script.push(performance.now() - from);
		await frame();
		await handedOn();
		seen.push(performance.now() - from);
	}
	return { script, seen };
}`;
