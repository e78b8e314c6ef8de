import { expect, test } from '@playwright/test';
import { readSvg } from '../output/support/read-svg.ts';
import { demoGarment } from '../support/demo-garment.ts';
import { ownServer } from '../support/own-server.ts';
import { plainBodiceFile } from '../support/plain-bodice.ts';

const server = ownServer();
const everyEdge = 'On every edge, unless it says otherwise below';

test('allowances below nothing, or not in figures, are refused with a sentence, and no toile is cut', async ({
	page,
	request
}) => {
	const garment = `${server.address()}${await demoGarment(request, server.address())}`;
	await page.goto(`${garment}/toiles/new`);
	const name = await page.getByRole('heading', { level: 1 }).innerText();
	const side = page.getByRole('row', { name: /^Side seam/ });
	await page.getByLabel(everyEdge).fill('1/0');
	await side.getByLabel('Front').fill('-1/4');
	await side.getByLabel('Under-arm').fill('3/4');
	await page.getByLabel('Cloth').fill('calico, unwashed');
	await page.getByRole('button', { name: 'It is cut: keep the toile' }).click();
	await expect(page.getByText('-1/4 is less than nothing, which this length cannot be. Write 1/4?')).toBeVisible();
	await expect(page.locator('.field', { hasText: everyEdge }).locator('.wrong')).toBeVisible();
	await expect(side.getByLabel('Front')).toHaveValue('-1/4');
	await expect(side.getByLabel('Under-arm')).toHaveValue('3/4');
	await expect(page.getByLabel('Cloth')).toHaveValue('calico, unwashed');
	await page.goto(`${garment}/toiles/new`);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(name);
});

test('the cutting line is drawn as the fields say, and the usual allowances fill them again', async ({
	page,
	request
}) => {
	await page.goto(`${server.address()}${await demoGarment(request, server.address())}/toiles/new?version=0`);
	const width = async () =>
		page
			.locator('.piece .strip')
			.first()
			.evaluate((strip) => (strip as SVGPathElement).getBBox().width);
	const armhole = page.getByRole('row', { name: /^Armhole seam/ }).getByLabel('Front', { exact: true });
	await expect(armhole).toHaveValue('1/4″');
	const usual = await width();
	await page.getByLabel(everyEdge).fill('0');
	await armhole.fill('2');
	await page.getByRole('button', { name: 'Draw the cutting line again' }).click();
	await expect(page.getByLabel(everyEdge)).toHaveValue('0');
	await expect(page.getByText('to be cut from the draft')).toBeVisible();
	await expect.poll(width).not.toBeCloseTo(usual, 1);
	await page.getByRole('button', { name: /1″ at the seams, 1\/4″ at neck and armhole/ }).click();
	await expect(armhole).toHaveValue('1/4″');
	await expect.poll(width).toBeCloseTo(usual, 3);
});

test('a toile is cut, and goes from state to state with its days and notes', async ({ page, request }) => {
	await page.goto(`${server.address()}${await demoGarment(request, server.address())}/toiles/new?version=1`);
	await page.getByLabel('Cloth').fill('old sheet');
	await page.getByLabel('Cut on').fill('2026-03-12');
	await page
		.getByRole('row', { name: /^Front edge/ })
		.getByLabel('Front')
		.fill('1 1/2');
	await page.getByRole('button', { name: 'It is cut: keep the toile' }).click();
	await expect(page.getByText('cut from version 1; old sheet')).toBeVisible();
	const became = page.getByRole('region', { name: 'What became of it' });
	await expect(became.getByRole('listitem').last()).toContainText('12 March');
	await expect(page.getByRole('region', { name: 'Its allowances' })).toContainText('Front edge 1 1/2″');
	await page.getByLabel('Now it is').selectOption('put-together');
	await page.getByLabel('Note').fill('pinned, not sewn');
	await page.getByRole('button', { name: 'Write it down' }).click();
	await expect(became.getByRole('listitem').last()).toContainText('pinned, not sewn');
	await page.getByLabel('Now it is').selectOption('restitched');
	await page.getByLabel('On the lines of').selectOption({ label: 'version 2' });
	await page.getByRole('button', { name: 'Write it down' }).click();
	await expect(page.getByText('cut from version 1, sewn on the lines of version 2; old sheet')).toBeVisible();
	await expect(page.locator('.piece .after').first()).toBeAttached();
	await expect(page.locator('.button-ink')).toHaveText('Begin a fitting on it');
});

test('it is printed true to size with its own allowances @desktop', async ({ page, request }) => {
	await page.goto(`${server.address()}/garments/new`);
	await page.getByLabel('Wearer').selectOption({ label: 'Ines Varrow' });
	await page.getByRole('radio', { name: 'The text of a draft file' }).check();
	await page.getByLabel('Text', { exact: true }).fill(JSON.stringify(plainBodiceFile));
	await page.getByRole('button', { name: 'Lay the draft on the table' }).click();
	await page.getByRole('button', { name: 'Begin the garment' }).click();
	await page.locator('.button-ink', { hasText: 'Cut the toile' }).click();
	await page.getByLabel(everyEdge).fill('1 1/2');
	await page.getByRole('button', { name: 'It is cut: keep the toile' }).click();
	await expect(page).toHaveURL(/\/toiles\/p[a-z0-9]+$/);
	const answer = await request.get(`${page.url()}/pattern.svg`);
	expect(answer.headers()['content-disposition']).toMatch(/filename="plain-bodice-toile-1-draft-iv\.svg"/);
	const cutting = readSvg(await answer.text()).find(({ attributes }) => attributes.id === 'cutting.front')!;
	// The front is 250 mm wide between a plumb centre front and a plumb side; each is cut 1 1/2″ outside.
	expect(widthOf(cutting.attributes.d!)).toBeCloseTo(250 + 2 * 38.1, 2);
	const pdf = await request.get(`${page.url()}/pattern.pdf?paper=a4`);
	expect(pdf.headers()['content-type']).toBe('application/pdf');
	expect((await request.get(`${page.url()}/pattern.pdf?paper=wall`)).status()).toBe(400);
});

/** Of a line in a file, mm: every point that its path text names. */
function widthOf(d: string): number {
	const xs = [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x]) => Number(x));
	return Math.max(...xs) - Math.min(...xs);
}
