import Database from 'better-sqlite3';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Answer } from '../../../src/lib/server/journal/answer.ts';
import { openJournal, type JournalOptions } from '../../../src/lib/server/open-journal.ts';
import { waistcoatFile } from './waistcoat.ts';

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

export function clockAndIds(start = '2026-01-09T09:00:00.000Z') {
	let seconds = 0;
	let ids = 0;
	return {
		now: () => new Date(Date.parse(start) + 1000 * seconds++),
		newId: () => `id${++ids}`
	};
}

/** A second connection to a journal's file, as somebody with a database tool has it. */
export function rawDatabase(file: string): Database.Database {
	const sqlite = new Database(file);
	onTestFinished(() => {
		sqlite.close();
	});
	return sqlite;
}

/** The value of an answer that must have been kept. */
export function kept<T, C>(answer: Answer<T, C>): T {
	if (answer.ok) return answer.value;
	throw new Error(answer.stale ? 'stale' : answer.problems.map(({ sentence }) => sentence).join(' '));
}

/** The sentences of an answer that must have been refused. */
export function refusalOf<T, C>(
	answer: Answer<T, C>
): { code: string; sentences: string[]; fields: (string | undefined)[] } {
	if (answer.ok || answer.stale) throw new Error(answer.ok ? 'it was kept' : 'it was stale');
	return {
		code: answer.code,
		sentences: answer.problems.map(({ sentence }) => sentence),
		fields: answer.problems.map(({ field }) => field)
	};
}

/** Everything that a database holds, table by table: two states are the same if these are. */
export function contentOf(sqlite: Database.Database): Record<string, unknown[]> {
	const tables = sqlite.prepare(`SELECT name FROM sqlite_schema WHERE type = 'table'`).pluck().all() as string[];
	return Object.fromEntries(tables.map((table) => [table, sqlite.prepare(`SELECT * FROM "${table}"`).all()]));
}

/** A side seam taken in by `amount` mm on each layer at the waist, and not at its ends. */
export const takenIn = (amount: number) => ({
	kind: 'seam',
	on: 'both',
	seam: 'side',
	pins: [
		{ at: { end: 'start' }, a: 0, b: 0 },
		{ at: { level: 'waist' }, a: -amount, b: -amount },
		{ at: { end: 'finish' }, a: 0, b: 0 }
	]
});

/** The same seam pinned and not read. */
export const pinnedOnly = {
	kind: 'seam',
	on: 'both',
	seam: 'side',
	pins: [{ at: { level: 'waist' } }]
};

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
