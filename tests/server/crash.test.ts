import Database from 'better-sqlite3';
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openJournal } from '../../src/lib/server/open-journal.ts';
import { verifyJournal } from '../../src/lib/server/verify-journal.ts';
import { busyDay } from './support/busy-day.ts';
import { clockAndIds, contentOf, ownFolder, ownJournal } from './support/journal.ts';

const fittings = 25;

/** All that a database holds, as one short print. */
const printOf = (sqlite: Database.Database) =>
	createHash('sha256')
		.update(JSON.stringify(contentOf(sqlite)))
		.digest('hex');

/** Every state that the journal is in on the busy day, one after another. */
function statesThatOnceWere(): string[] {
	const { journal, file } = ownJournal();
	const looking = new Database(file, { readonly: true });
	const states = [printOf(looking)];
	busyDay(journal, fittings, () => states.push(printOf(looking)));
	looking.close();
	return states;
}

/** Runs the busy day in another process and kills it, without warning, some time after its `steps`th step. */
async function killedAfter(
	file: string,
	steps: number,
	then: number
): Promise<{ signal: string | null; output: string }> {
	const child = spawn(
		process.execPath,
		['--import', 'tsx', 'tests/server/support/busy-day-child.ts', file, String(fittings)],
		{ stdio: ['ignore', 'pipe', 'inherit'] }
	);
	let output = '';
	child.stdout.on('data', (text) => {
		const before = output.length;
		output += text;
		if (before < steps && output.length >= steps) setTimeout(() => child.kill('SIGKILL'), then);
	});
	const [, signal] = await once(child, 'close');
	return { signal, output };
}

test('a journal whose process was killed in the middle of writing is in one of the states that once were', async () => {
	const states = statesThatOnceWere();
	const found: number[] = [];
	for (const [steps, then] of [
		[3, 0],
		[5, 7],
		[20, 1],
		[45, 3],
		[71, 5],
		[100, 11]
	]) {
		const file = join(ownFolder(), 'journal.sqlite');
		const { signal, output } = await killedAfter(file, steps, then);
		expect([signal, output.includes('finished')], 'it was killed before it was finished').toEqual(['SIGKILL', false]);

		const journal = openJournal({ file, ...clockAndIds() });
		const sqlite = new Database(file, { readonly: true });
		const state = states.indexOf(printOf(sqlite));
		sqlite.close();
		found.push(state);
		// What was answered is there; the step that was under way is there whole, or not at all.
		expect(state, `after ${output.length} steps`).toBeGreaterThanOrEqual(output.length);
		expect(state).toBeLessThanOrEqual(output.length + 1);
		expect(verifyJournal(journal).flatMap(({ differences }) => differences)).toEqual([]);
		journal.close();
	}
	expect(new Set(found).size, 'it was killed at different steps').toBe(6);
}, 180_000);
