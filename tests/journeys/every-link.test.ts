import { expect, test, type Page } from '@playwright/test';

/** How many addresses of one shape are tried: two garments' pages differ in what they hold, a hundred would not differ more. */
const ofOneShape = 4;

/** An address with its ids, numbers and choices left open. */
const shapeOf = (address: string): string =>
	address
		.replace(/\/p[a-z0-9]{9}(?=[/?]|$)/g, '/*')
		.replace(/\/\d+(?=[/?]|$)/g, '/#')
		.replace(/=[^&]*/g, '=*');

async function linksOn(page: Page): Promise<string[]> {
	const here = page.url();
	const hrefs = await page
		.locator('a[href]')
		.evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
	return hrefs
		.map((href) => new URL(href, here))
		.filter(({ origin }) => origin === new URL(here).origin)
		.map(({ pathname, search }) => pathname + search);
}

test('every link of every page leads somewhere, and no page has an error of its own', async ({ page, request }) => {
	test.setTimeout(240_000);
	const wrong: string[] = [];
	page.on('pageerror', (error) => wrong.push(`${page.url()}: ${error.message}`));
	page.on('console', (message) => {
		if (message.type() === 'error') wrong.push(`${page.url()}: ${message.text()}`);
	});

	const seen = new Set(['/']);
	const shapes = new Map<string, number>();
	const waiting: { address: string; from: string }[] = [{ address: '/', from: 'the start' }];
	for (let next = waiting.shift(); next; next = waiting.shift()) {
		const { address, from } = next;
		const answer = await request.get(address);
		if (answer.status() !== 200) wrong.push(`${address}, linked from ${from}: ${answer.status()}`);
		const isPage =
			answer.headers()['content-type']?.startsWith('text/html') && !answer.headers()['content-disposition'];
		if (!isPage || answer.status() !== 200) continue;

		await page.goto(address, { waitUntil: 'networkidle' });
		const headings = await page.locator('h1').count();
		if (headings !== 1) wrong.push(`${address} has ${headings} first headings`);
		for (const link of await linksOn(page)) {
			const shape = shapeOf(link);
			const tried = shapes.get(shape) ?? 0;
			if (seen.has(link) || tried === ofOneShape) continue;
			seen.add(link);
			shapes.set(shape, tried + 1);
			waiting.push({ address: link, from: address });
		}
	}

	expect([...new Set(wrong)]).toEqual([]);
	expect(shapes.size).toBeGreaterThan(10);
});
