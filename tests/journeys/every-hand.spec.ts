import { expect, test } from '@playwright/test';
import demo from '../../src/lib/intake/demo-draft.json' with { type: 'json' };
import { parseDraft } from '../../src/lib/engine/index.ts';
import { acts } from '../../src/lib/ui/fitting/acts.ts';
import { targetsFor } from '../../src/lib/ui/fitting/targets.ts';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();
const draft = parseDraft(demo);
const hands = acts.map((act) => ({ act, targets: targetsFor(draft, act.to) }));

test('every act can be done to something, and together they make more than sixty hands @desktop @scripting', () => {
	for (const { act, targets } of hands) expect(targets.length, act.key).toBeGreaterThan(0);
	expect(hands.reduce((sum, { targets }) => sum + targets.length, 0)).toBeGreaterThan(60);
});

for (const { act, targets } of hands)
	test(`“${act.name}” is taken in the hand on everything that it can be done to, and stepped, with no fault in the page @scripting @desktop`, async ({
		page,
		request
	}) => {
		// A page is loaded for each, on whatever machine this is.
		test.setTimeout(30_000 + targets.length * 20_000);
		const faults: string[] = [];
		page.on('pageerror', ({ message }) => faults.push(`${page.url()}: ${message}`));
		const fitting = await beginFitting(page, request, server.address());
		for (const { of, id, name } of targets) {
			const query = new URLSearchParams({ act: act.key, [of]: id });
			await page.goto(`${fitting}?${query.toString()}`);
			await expect(page.getByRole('heading', { name: new RegExp(`^${name}`) }), name).toBeVisible();
			await alive(page);
			const more = page.getByRole('button', { name: /^More, / }).first();
			if ((await more.count()) > 0) await more.click();
			await expect(page.getByRole('button', { name: 'Keep alteration 1' })).toBeVisible();
		}
		expect(faults).toEqual([]);
	});
