import { expect, test } from '@playwright/test';
import { request as ask } from 'node:http';

test('the workroom opens, loads nothing from elsewhere and breaks no policy of its own', async ({ page, baseURL }) => {
	const wrong: string[] = [];
	page.on('console', (message) => message.type() === 'error' && wrong.push(message.text()));
	page.on('pageerror', (error) => wrong.push(error.message));
	page.on('request', (asked) => {
		if (!asked.url().startsWith(`${baseURL}/`) && !/^(data|blob):/.test(asked.url())) wrong.push(asked.url());
	});
	await page.goto('/');
	await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
	await page.waitForLoadState('networkidle');
	expect(wrong).toEqual([]);
});

test('an address without a page is answered with a sentence and the way back', async ({ page }) => {
	const answer = await page.goto('/no-such-page');
	expect(answer?.status()).toBe(404);
	await expect(page.getByText('There is no page at this address.')).toBeVisible();
	await page.getByRole('link', { name: 'Workroom' }).first().click();
	await expect(page).toHaveURL('/');
});

for (const method of ['POST', 'PUT', 'PATCH', 'DELETE'])
	test(`a stranger's page can send nothing by ${method}, in any form`, async ({ request }) => {
		for (const origin of ['http://example.org', 'null', undefined])
			for (const type of ['application/json', 'text/plain', 'application/x-www-form-urlencoded']) {
				const headers = { 'content-type': type, ...(origin ? { origin } : {}) };
				const answer = await request.fetch('/', { method, headers, data: 'x=1' });
				expect(answer.status(), `${origin} ${type}`).toBe(403);
			}
	});

test('a name that was pointed at this machine from outside is turned away', async ({ baseURL }) => {
	const status = await new Promise((resolve, reject) =>
		ask(`${baseURL}/`, { headers: { host: 'example.org' } }, (answer) => {
			answer.resume();
			resolve(answer.statusCode);
		})
			.on('error', reject)
			.end()
	);
	expect(status).toBe(421);
});

test('pages say what they are, are framed by nobody, and those with bodies are kept by no cache', async ({
	request
}) => {
	const workroom = (await request.get('/')).headers();
	expect(workroom['x-content-type-options']).toBe('nosniff');
	expect(workroom['content-security-policy']).toContain("frame-ancestors 'none'");
	expect(workroom['referrer-policy']).toBe('same-origin');
	expect((await request.get('/wearers/nobody')).headers()['cache-control']).toBe('no-store');
	expect((await request.get('/garments/none/versions/0/pattern.svg')).headers()['cache-control']).toBe('no-store');
});
