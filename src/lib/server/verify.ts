import { existsSync } from 'node:fs';
import { JournalRefused } from './database/refused.ts';
import { journalFile } from './journal-file.ts';
import { openJournal } from './open-journal.ts';
import { verifyJournal, type Replay } from './verify-journal.ts';

/**
 * `npm run verify`: a line for each version of the journal in the folder `PIN_TO_PAPER_JOURNAL`. Ends with 1 where a replay
 * differs from its snapshot, and with 2 where there is no journal to read. Writes nothing.
 */
function verify(folder: string): number {
	const file = journalFile(folder);
	if (!existsSync(file)) throw new JournalRefused(`There is no journal at ${file}.`);
	const journal = openJournal({ file, now: neverAsked('the clock'), newId: neverAsked('an id'), readOnly: true });
	const replays = verifyJournal(journal);
	journal.close();
	replays.map(lineOf).forEach((line) => console.log(line));
	const differing = replays.filter(({ differences }) => differences.length > 0).length;
	console.log(
		differing === 0
			? `${counted(replays.length)} replayed; every one is its snapshot.`
			: `${counted(replays.length)} replayed; ${differing === 1 ? 'one differs' : `${differing} differ`} from the snapshot.`
	);
	return differing === 0 ? 0 : 1;
}

function lineOf({ garment, version, alterations, engineVersion, differences }: Replay): string {
	const name = `${garment.name}, version ${version}`;
	const carried = `${alterations} ${alterations === 1 ? 'alteration' : 'alterations'}`;
	if (differences.length === 0) return `${name}: ${carried}, as it was`;
	const written = `written by engine ${engineVersion}`;
	return [`${name}: ${carried}, ${written}, DIFFERS`, ...differences.map(({ sentence }) => `    ${sentence}`)].join(
		'\n'
	);
}

const counted = (count: number) => (count === 1 ? '1 version' : `${count} versions`);

const neverAsked = (what: string) => () => {
	throw new Error(`Verifying writes nothing and asks for ${what} nowhere.`);
};

try {
	process.exitCode = verify(process.env.PIN_TO_PAPER_JOURNAL ?? 'journal');
} catch (fault) {
	if (!(fault instanceof JournalRefused)) throw fault;
	console.error(fault.message);
	process.exitCode = 2;
}
