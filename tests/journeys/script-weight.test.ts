import { gzipSync } from 'node:zlib';
import { expect, test, type Page } from '@playwright/test';
import { demoGarment } from '../support/demo-garment.ts';

/** Bytes, compressed as they are sent, until the page can be used: the framework's own are 34,000 of them. */
const usable = 87_000;
/** Bytes of all that comes after: the engine, its drawing and its words, and what looks closer at a drawing. */
const follows = 125_000;
/** Bytes that may not stand in any script of the page: packages that check what comes in, cut polygons, or keep the journal. */
const serversOwn = /clipper2|Clipper64|ZodError|better-sqlite3|drizzle/;

/** Every script of a page by its address, as it is read. */
function scriptsOf(page: Page): Map<string, Promise<string>> {
	const scripts = new Map<string, Promise<string>>();
	page.on('response', (response) => {
		if (response.request().resourceType() === 'script' && response.ok()) scripts.set(response.url(), response.text());
	});
	return scripts;
}

test('the script of the fitting page is light until it can be used; the engine follows by itself @scripting @desktop', async ({
	page,
	request
}) => {
	const garment = await demoGarment(request);
	const [, fitting] = /href="([^"]*\/fittings\/(?!new)[a-z0-9]+)"/.exec(await (await request.get(garment)).text())!;
	const scripts = scriptsOf(page);
	const answer = await request.get(fitting);
	// The page names its scripts in its head, or in the head of the answer.
	const sent = `${await answer.text()} ${(answer.headers().link ?? '').replaceAll('>', '"')}`;
	await page.goto(fitting);
	await page.waitForLoadState('networkidle');
	const texts = new Map<string, string>();
	for (const [url, text] of scripts) texts.set(url.replace(/^.*\//, ''), await text);
	const weight = (names: readonly string[]) =>
		names.reduce((sum, name) => sum + gzipSync(texts.get(name) ?? '', { level: 9 }).length, 0);

	// What the page as it is sent names, and what those import before anything runs.
	const first = new Set<string>();
	const follow = (name: string) => {
		if (first.has(name) || !texts.has(name)) return;
		first.add(name);
		for (const [, other] of texts.get(name)!.matchAll(/(?:from|import)\s?"[^"]*\/([^"/]+\.js)"/g)) follow(other);
	};
	for (const [, name] of sent.matchAll(/\/([\w.-]+\.js)"/g)) follow(name);
	const later = [...texts.keys()].filter((name) => !first.has(name));
	const figures = [weight([...first]), weight(later)];
	console.log(`the fitting page: ${figures[0]} bytes of script until it can be used, ${figures[1]} that follow`);
	test.info().annotations.push({ type: 'script, bytes', description: figures.join(' + ') });
	expect(first.size).toBeGreaterThan(5);
	expect(later.length).toBeGreaterThan(0);
	expect(figures[0]).toBeLessThan(usable);
	expect(figures[1]).toBeLessThan(follows);
	expect([...texts].filter(([, text]) => serversOwn.test(text)).map(([name]) => name)).toEqual([]);
});
