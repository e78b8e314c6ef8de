import Database from 'better-sqlite3';
import { bringUpToDate, standingOf } from './migrate.ts';
import { JournalRefused } from './refused.ts';

/**
 * Opens a database file, making it if there is none, and brings it up to date.
 *
 * Every commit is on the disk before it is answered (WAL with `synchronous = FULL`), rows that belong to others cannot lose
 * them, and what is deleted is overwritten, so that a wearer who is forgotten is not left between the pages of the file.
 * A writer that finds another process writing waits five seconds.
 *
 * Refused: a file that is no database, one of another program, one from a newer release.
 */
export function openDatabase(file: string, folder: string, instant: string): Database.Database {
	return opened(new Database(file, { timeout: 5000 }), (sqlite) => {
		bringUpToDate(sqlite, folder, instant);
		sqlite.pragma('journal_mode = WAL');
		sqlite.pragma('synchronous = FULL');
		sqlite.pragma('foreign_keys = ON');
		sqlite.pragma('secure_delete = ON');
	});
}

/** Opens a database file to read only. Refused besides: one from an older release, which is brought up to date by starting. */
export function openToRead(file: string, folder: string): Database.Database {
	return opened(new Database(file, { readonly: true, fileMustExist: true, timeout: 5000 }), (sqlite) => {
		if (standingOf(sqlite, folder) !== 'up to date')
			throw new JournalRefused(
				`${file} is from an older release. Start Pin to Paper once, which brings it up to date.`
			);
	});
}

function opened(sqlite: Database.Database, prepare: (sqlite: Database.Database) => void): Database.Database {
	let usable = false;
	try {
		if (!isDatabase(sqlite))
			throw new JournalRefused(
				`${sqlite.name} is not a database. Give the path of a journal, or of a file that does not exist yet.`
			);
		prepare(sqlite);
		usable = true;
		return sqlite;
	} finally {
		if (!usable) sqlite.close();
	}
}

/** Whether the file's first page is SQLite's. Any other fault is thrown on. */
function isDatabase(sqlite: Database.Database): boolean {
	try {
		sqlite.prepare('SELECT count(*) FROM sqlite_schema').get();
		return true;
	} catch (fault) {
		if (fault instanceof Database.SqliteError && fault.code === 'SQLITE_NOTADB') return false;
		throw fault;
	}
}
