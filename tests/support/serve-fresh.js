import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBuilt } from '../../src/start/built.js';
import { orSentence } from '../../src/start/problem.js';
import { askedOf, askedPort, builtHandler, serve, stopOnSignals } from '../../src/start/serve.js';
import { late } from './late.js';

// The server of the journeys: the one that is released, on a journal of its own that goes when it stops, or in a folder that is
// given and stays. With JOURNEYS_LATE=1500 it answers up to so many milliseconds late, as on a bad network.
await orSentence(async () => {
	const given = process.env.JOURNEYS_JOURNAL;
	const journal = given ?? mkdtempSync(join(tmpdir(), 'pin-to-paper-journal-'));
	if (given === undefined) process.once('exit', () => rmSync(journal, { recursive: true, force: true }));
	process.env.PIN_TO_PAPER_JOURNAL = journal;
	ensureBuilt();
	const most = Number(process.env.JOURNEYS_LATE ?? 0);
	const served = await serve({
		asked: askedPort(process.env.PORT),
		...askedOf(process.argv.slice(2)),
		load: async () => late(await builtHandler(), most)
	});
	stopOnSignals(served);
	console.log(served.address);
});
