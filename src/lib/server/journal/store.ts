import type Database from 'better-sqlite3';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import type { Draft, Engine } from '../engine.ts';
import type { PhotoShelf } from '../photos/shelf.ts';
import type { Answer } from './answer.ts';
import type { Day, Instant } from './records.ts';

/** What the functions of the journal work with: database, clock, id-maker and engine, all handed in. */
export interface Store {
	readonly sqlite: Database.Database;
	readonly db: ReturnType<typeof drizzle>;
	readonly engine: Engine;
	readonly newId: () => string;
	/** The pictures' files, beside the database. */
	readonly shelf: PhotoShelf;
	/** Frozen drafts at hand, by version id. */
	readonly drafts: Map<string, Draft>;
	/** The step that the transaction under way writes, by fitting: all that it does there is one. */
	readonly stepsBegun: Map<string, number>;
	/** The instant that it is. */
	now(): Instant;
	/** The day that it is, in the workroom's own time zone. */
	today(): Day;
	/** Writes as if it were another instant. */
	asOf<T>(instant: Instant, write: () => T): T;
	/** Runs `write` in one transaction and keeps what it wrote only if its answer is `ok`. May be nested: the outermost decides. */
	writing<T, C = T>(write: () => Answer<T, C>): Answer<T, C>;
	/** Runs `read` against one state of the database, whatever other processes write meanwhile. */
	reading<T>(read: () => T): T;
}

export function makeStore(
	sqlite: Database.Database,
	{ now: clock, newId, engine, shelf }: { now: () => Date; newId: () => string; engine: Engine; shelf: PhotoShelf }
): Store {
	let standing: Instant | undefined;
	const stepsBegun = new Map<string, number>();
	return {
		sqlite,
		db: drizzle(sqlite),
		engine,
		newId,
		shelf,
		drafts: new Map(),
		stepsBegun,
		now: () => standing ?? clock().toISOString(),
		today: () => localDay(standing === undefined ? clock() : new Date(standing)),
		asOf(instant, write) {
			const before = standing;
			standing = instant;
			try {
				return write();
			} finally {
				standing = before;
			}
		},
		writing(write) {
			if (sqlite.inTransaction) return write();
			// IMMEDIATE: what is read in here, revisions above all, is still so when it is written.
			sqlite.exec('BEGIN IMMEDIATE');
			stepsBegun.clear();
			let ok = false;
			try {
				const answer = write();
				ok = answer.ok;
				return answer;
			} finally {
				if (sqlite.inTransaction) sqlite.exec(ok ? 'COMMIT' : 'ROLLBACK');
			}
		},
		reading: (read) => (sqlite.inTransaction ? read() : sqlite.transaction(read)())
	};
}

/** The day of a date in the time zone of this machine, which is the workroom’s. */
export function localDay(date: Date): Day {
	const two = (n: number) => String(n).padStart(2, '0');
	return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
