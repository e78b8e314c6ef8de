import type Database from 'better-sqlite3';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { migrate } from 'drizzle-orm/better-sqlite3/migrator';
import { existsSync } from 'node:fs';
import { listMigrations } from './migrations.ts';
import { JournalRefused } from './refused.ts';

/** Marks the file as a journal of this program (`PRAGMA application_id`): the letters P, t, P, p. */
const applicationId = 0x50745070;

/**
 * How a database stands to the migrations of a folder.
 *
 * Refused: a database that another program made, and one from a newer release, whose tables this release does not know.
 */
export function standingOf(sqlite: Database.Database, folder: string): 'empty' | 'older' | 'up to date' {
	if (sqlite.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0) return 'empty';
	if (sqlite.pragma('application_id', { simple: true }) !== applicationId)
		throw new JournalRefused(
			`${sqlite.name} is a database of another program. Give the path of a journal, or of a file that does not exist yet.`
		);
	const last = sqlite.prepare('SELECT max(created_at) FROM __drizzle_migrations').pluck().get() as number;
	const newest = listMigrations(folder).at(-1)!.when;
	if (last > newest)
		throw new JournalRefused(
			`${sqlite.name} was written by a newer release of Pin to Paper. Open it with that release, or go back to a copy made before it.`
		);
	return last < newest ? 'older' : 'up to date';
}

/**
 * Brings a database up to the newest migration of the folder; one that holds anything is copied first. Refused, with nothing
 * written, as `standingOf` refuses.
 *
 * Migrations run in a transaction, where `PRAGMA foreign_keys` does nothing, and dropping a table in order to rebuild it
 * would then quietly take the rows of its children along. So the keys are off before it begins, and nobody gets the database
 * before they have been checked.
 */
export function bringUpToDate(sqlite: Database.Database, folder: string, instant: string): void {
	const standing = standingOf(sqlite, folder);
	if (standing !== 'up to date') {
		if (standing === 'older') copyDatabase(sqlite, instant);
		// Before the first table: a start that is broken off between the two leaves an empty file.
		sqlite.pragma(`application_id = ${applicationId}`);
		sqlite.pragma('foreign_keys = OFF');
		migrate(drizzle(sqlite), { migrationsFolder: folder });
	}
	// At every start, not only after migrating: a start that was broken off here must not be passed by the next one.
	const orphans = sqlite.pragma('foreign_key_check') as { table: string; parent: string }[];
	if (orphans.length > 0)
		throw new JournalRefused(
			`${sqlite.name} has ${orphans.length} rows without what they belong to (the first in ${orphans[0]!.table}, ` +
				`without its row in ${orphans[0]!.parent}). Go back to the copy beside it that was made before it was last brought up to date.`
		);
}

/** A whole and consistent copy beside the database, named for the instant; `VACUUM INTO` takes what is in its log file along. */
function copyDatabase(sqlite: Database.Database, instant: string): void {
	const copy = `${sqlite.name}.before-${instant.replaceAll(/[^0-9]/g, '')}.sqlite`;
	if (existsSync(copy))
		throw new JournalRefused(`${copy} is in the way of a copy of the journal. Move it and start again.`);
	sqlite.prepare('VACUUM INTO ?').run(copy);
}
