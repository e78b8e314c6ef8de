import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';

// It is long, and its message says where to look.
test.use({ trace: 'off' });

/** How many addresses of one shape are tried. */
const ofOneShape = 2;

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

/** How a page can be looked at. */
type Look = 'light' | 'dim' | 'print';

/** What axe finds on a page in each look; left in light, on the screen. */
async function axeFaults(page: Page, looks: readonly Look[]): Promise<string[]> {
	const faults: string[] = [];
	for (const look of looks) {
		await page.emulateMedia({ media: look === 'print' ? 'print' : 'screen' });
		await page.locator('.shell').evaluate((shell, dim) => void shell.classList.toggle('page-dim', dim), look === 'dim');
		const { violations } = await new AxeBuilder({ page }).analyze();
		faults.push(
			...violations.map(
				({ id, nodes }) => `axe, ${look}: ${id} at ${nodes.map(({ target }) => target.join(' ')).join(', ')}`
			)
		);
	}
	await page.emulateMedia({ media: 'screen' });
	await page.locator('.shell').evaluate((shell) => shell.classList.remove('page-dim'));
	return faults;
}

/** What is wrong with a page as it stands: its headings, its width, and what axe finds in the looks that it is to be seen in. */
async function faultsOf(page: Page, looks: readonly Look[]): Promise<string[]> {
	const headings = await page.locator('h1').count();
	const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
	return [
		...(headings === 1 ? [] : [`${headings} first headings`]),
		...(beyond <= 0 ? [] : [`${beyond} px wider than the window`]),
		...(await axeFaults(page, looks))
	];
}

test('every link of every page leads somewhere; no page has an error, scrolls sideways or shuts anyone out', async ({
	page,
	request,
	javaScriptEnabled
}, { project }) => {
	test.setTimeout(900_000);
	const wrong: string[] = [];
	// axe looks with scripting only; the looks are the same at every width but for what is hidden there.
	const looks: readonly Look[] =
		javaScriptEnabled === false ? [] : project.name === 'desktop' ? ['light', 'dim', 'print'] : ['light'];
	page.on('pageerror', (error) => wrong.push(`${page.url()}: ${error.message}`));
	page.on('console', (message) => {
		if (['error', 'warning'].includes(message.type())) wrong.push(`${page.url()}: ${message.text()}`);
	});

	const seen = new Set(['/']);
	const shapes = new Map<string, number>();
	const waiting = [{ address: '/', from: 'the start', first: true }];
	for (let next = waiting.shift(); next; next = waiting.shift()) {
		const { address, from, first } = next;
		const answer = await request.get(address, { headers: { accept: 'text/html,*/*;q=0.8' } });
		if (answer.status() !== 200) wrong.push(`${address}, linked from ${from}: ${answer.status()}`);
		const isPage =
			answer.headers()['content-type']?.startsWith('text/html') && !answer.headers()['content-disposition'];
		if (!isPage || answer.status() !== 200) continue;

		await page.goto(address, { waitUntil: 'networkidle' });
		wrong.push(...(await faultsOf(page, first ? looks : [])).map((fault) => `${address}: ${fault}`));
		for (const link of await linksOn(page)) {
			const shape = shapeOf(link);
			const tried = shapes.get(shape) ?? 0;
			if (seen.has(link) || tried === ofOneShape) continue;
			seen.add(link);
			shapes.set(shape, tried + 1);
			waiting.push({ address: link, from: address, first: tried === 0 });
		}
	}

	expect([...new Set(wrong)]).toEqual([]);
	expect(shapes.size).toBeGreaterThan(10);
});
