import { expect, test } from '@playwright/test';
import demo from '../../src/lib/intake/demo-draft.json' with { type: 'json' };
import { parseDraft } from '../../src/lib/engine/index.ts';
import { acts } from '../../src/lib/ui/fitting/acts.ts';
import { targetsFor } from '../../src/lib/ui/fitting/targets.ts';
import { beginFitting } from '../support/begin-fitting.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

test('every act is taken in the hand on everything that it can be done to, and stepped, with no fault in the page @scripting @desktop', async ({
	page,
	request
}) => {
	test.setTimeout(300_000);
	const faults: string[] = [];
	page.on('pageerror', ({ message }) => faults.push(`${page.url()}: ${message}`));
	const fitting = await beginFitting(page, request, server.address());
	const draft = parseDraft(demo);
	let hands = 0;
	for (const act of acts)
		for (const { of, id, name } of targetsFor(draft, act.to)) {
			const query = new URLSearchParams({ act: act.key, [of]: id });
			await page.goto(`${fitting}?${query.toString()}`);
			await expect(page.getByRole('heading', { name: new RegExp(`^${name}`) }), `${act.key} ${name}`).toBeVisible();
			await page.getByRole('button', { name: 'Closer' }).first().waitFor();
			const more = page.getByRole('button', { name: /^More, / }).first();
			if ((await more.count()) > 0) await more.click();
			await expect(page.getByRole('button', { name: 'Keep alteration 1' })).toBeVisible();
			hands++;
		}
	expect(faults).toEqual([]);
	expect(hands).toBeGreaterThan(60);
});
