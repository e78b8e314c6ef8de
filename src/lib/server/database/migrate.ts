import type Database from 'better-sqlite3';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { migrate } from 'drizzle-orm/better-sqlite3/migrator';
import { existsSync } from 'node:fs';
import { listMigrations } from './migrations.ts';
import { JournalRefused } from './refused.ts';

/** Marks the file as a journal of this program (`PRAGMA application_id`): the letters P, t, P, p. */
const applicationId = 0x50745070;

/**
 * Brings a database up to the newest migration of the folder. Answers the path of the copy that was made first, if there
 * was something to copy.
 *
 * Refused, with nothing written: a database that another program made, and one from a newer release, whose tables this
 * release does not know.
 *
 * Migrations run in a transaction, where `PRAGMA foreign_keys` does nothing, and dropping a table in order to rebuild it
 * would then quietly take the rows of its children along. So the keys are off before it begins and are checked before they
 * are on again.
 */
export function bringUpToDate(sqlite: Database.Database, folder: string, instant: string): string | undefined {
	const known = listMigrations(folder);
	const newest = known[known.length - 1]!.when;
	const empty = sqlite.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0;
	if (!empty && sqlite.pragma('application_id', { simple: true }) !== applicationId)
		throw new JournalRefused(
			`${sqlite.name} is a database of another program. Give the path of a journal, or of a file that does not exist yet.`
		);
	const last = empty ? 0 : lastMigration(sqlite);
	if (last > newest)
		throw new JournalRefused(
			`${sqlite.name} was written by a newer release of Pin to Paper. Open it with that release, or go back to a copy made before it.`
		);
	if (last === newest) return undefined;

	const copy = empty ? undefined : copyDatabase(sqlite, instant);
	sqlite.pragma('foreign_keys = OFF');
	migrate(drizzle(sqlite), { migrationsFolder: folder });
	const broken = sqlite.pragma('foreign_key_check') as { table: string; rowid: number; parent: string }[];
	if (broken.length > 0)
		throw new JournalRefused(
			`Bringing ${sqlite.name} up to date left ${broken.length} rows without what they belong to ` +
				`(${broken[0]!.table} without ${broken[0]!.parent}).` +
				(copy ? ` Go back to ${copy}.` : '')
		);
	sqlite.pragma('foreign_keys = ON');
	sqlite.pragma(`application_id = ${applicationId}`);
	return copy;
}

function lastMigration(sqlite: Database.Database): number {
	return sqlite.prepare('SELECT coalesce(max(created_at), 0) FROM __drizzle_migrations').pluck().get() as number;
}

/** A whole and consistent copy beside the database, named for the instant; `VACUUM INTO` takes what is in the log file along. */
function copyDatabase(sqlite: Database.Database, instant: string): string {
	const copy = `${sqlite.name}.before-${instant.replaceAll(/[^0-9]/g, '')}.sqlite`;
	if (existsSync(copy))
		throw new JournalRefused(`${copy} is in the way of a copy of the journal. Move it and start again.`);
	sqlite.prepare('VACUUM INTO ?').run(copy);
	return copy;
}
