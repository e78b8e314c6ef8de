import Database from 'better-sqlite3';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { openJournal, type JournalOptions } from '../../../src/lib/server/open-journal.ts';
import { clockAndIds, kept, takenIn } from './plain.ts';
import { waistcoatFile } from './waistcoat.ts';

export * from './plain.ts';

/** A folder of its own for one test, gone when it is finished. */
export function ownFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), 'journal-'));
	onTestFinished(() => rmSync(folder, { recursive: true }));
	return folder;
}

/** A journal in a file of its own, with a clock that goes on by a second each time it is asked, and ids that count. */
export function ownJournal(options: Partial<JournalOptions> = {}) {
	const file = options.file ?? join(ownFolder(), 'journal.sqlite');
	const journal = openJournal({ file, ...clockAndIds(), ...options });
	onTestFinished(() => journal.close());
	return { journal, file };
}

/** A second connection to a journal's file, as somebody with a database tool has it. */
export function rawDatabase(file: string): Database.Database {
	const sqlite = new Database(file);
	onTestFinished(() => {
		sqlite.close();
	});
	return sqlite;
}

/** A wearer, measured; a waistcoat; a toile cut from its base draft; an open fitting of it. */
export function begun(options: Partial<JournalOptions> = {}) {
	const { journal, file } = ownJournal(options);
	const wearer = kept(journal.addWearer({ name: 'Ines Varrow', note: 'likes room to breathe' }));
	const foundation = kept(journal.addFoundation(wearer.id, { name: 'chemise and corset' }));
	const sheet = kept(
		journal.addSheet(wearer.id, {
			date: '2026-01-09',
			foundation: foundation.id,
			takenBy: 'Maud',
			measures: { bust: 965.2, waist: 635 }
		})
	);
	const { garment } = kept(
		journal.addGarment({
			name: 'Waistcoat',
			wearer: wearer.id,
			draft: waistcoatFile(),
			source: 'file',
			sourceName: 'waistcoat.json'
		})
	);
	const toile = kept(journal.addToile(garment.id, { cutFrom: 0, cloth: 'calico', allowance: 25.4 }));
	const fitting = kept(
		journal.addFitting(garment.id, {
			kind: 'fitting',
			date: '2026-01-28',
			tried: 'toile',
			toile: toile.id,
			foundation: foundation.id,
			worn: 'outside'
		})
	);
	return { journal, file, wearer, foundation, sheet, garment, toile, fitting };
}

/** The same, carried to paper with one alteration: version 1. */
export function carriedOnce(options: Partial<JournalOptions> = {}) {
	const all = begun(options);
	const { journal, fitting } = all;
	const observation = kept(
		journal.addObservation(fitting.id, { what: 'Loose folds at the waist', note: 'seen twice' })
	);
	const alteration = kept(
		journal.addAlteration(fitting.id, {
			intent: takenIn(6.35),
			act: 'took-in',
			answers: observation.id,
			note: 'evenly'
		})
	);
	const version = kept(journal.carryToPaper(fitting.id, journal.fitting(fitting.id)!.wholeRevision));
	return { ...all, observation, alteration, version };
}
