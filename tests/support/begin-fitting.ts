import type { APIRequestContext, Page } from '@playwright/test';
import { demoGarment } from './demo-garment.ts';

/** Begins a fitting of the demo’s jacket on a server; its page is open then, and its address answered. */
export async function beginFitting(page: Page, request: APIRequestContext, address: string): Promise<string> {
	await page.goto(`${address}${await demoGarment(request, address)}/fittings/new`);
	await page.getByRole('button', { name: 'Begin the fitting' }).click();
	// The page before has the same heading.
	await page.waitForURL(/\/fittings\/(?!new\b)[^/]+$/);
	return page.url().replace(/[?#].*$/, '');
}
