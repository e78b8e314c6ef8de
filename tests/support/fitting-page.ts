import type { Locator, Page } from '@playwright/test';

/** What a fitting’s page has, by the names that it has for everybody. */

export const howMuch = (page: Page, place = 'Waist line'): Locator =>
	page.getByLabel(`${place}, how much`, { exact: true });

export const pinned = (page: Page): Locator => page.getByRole('list', { name: 'Pinned so far' }).getByRole('listitem');

export const notSent = (page: Page): Locator => page.getByRole('list', { name: 'Not sent yet' }).getByRole('listitem');

export const keepButton = (page: Page, number = 1): Locator =>
	page.getByRole('button', { name: `Keep alteration ${number}` });

/** The page’s own script has come: it answers taps itself. */
export const alive = (page: Page): Promise<void> =>
	page.locator('.fitting[data-sveltekit-preload-data="off"]').waitFor();

/** Takes in a seam at its waist without leaving the page, as on the phone in the fitting room. */
export async function takeIn(page: Page, seam: string, amount: string): Promise<void> {
	await page.getByRole('link', { name: /Took in a seam/ }).click();
	await page.getByRole('link', { name: seam, exact: true }).click();
	await howMuch(page).fill(amount);
}
