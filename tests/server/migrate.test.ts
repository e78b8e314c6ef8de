import Database from 'better-sqlite3';
import { cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { migrationsFolder } from '../../src/lib/server/database/migrations.ts';
import { openJournal } from '../../src/lib/server/open-journal.ts';
import { carriedOnce, clockAndIds, contentOf, ownFolder } from './support/journal.ts';

/** Rebuilds `wearers` as migrations do when a column changes: new table, copy, drop, rename. */
const rebuild = `CREATE TABLE \`__new_wearers\` (
	\`id\` text PRIMARY KEY NOT NULL,
	\`revision\` integer DEFAULT 1 NOT NULL,
	\`number\` integer NOT NULL,
	\`name\` text NOT NULL,
	\`note\` text DEFAULT '' NOT NULL,
	\`added_at\` text NOT NULL,
	\`forgotten_at\` text
);
--> statement-breakpoint
INSERT INTO \`__new_wearers\` SELECT * FROM \`wearers\`;
--> statement-breakpoint
DROP TABLE \`wearers\`;
--> statement-breakpoint
ALTER TABLE \`__new_wearers\` RENAME TO \`wearers\`;
--> statement-breakpoint
CREATE UNIQUE INDEX \`wearers_number\` ON \`wearers\` (\`number\`);`;

function withMigration(sql: string): string {
	const folder = join(ownFolder(), 'drizzle');
	cpSync(migrationsFolder(), folder, { recursive: true });
	const path = join(folder, 'meta', '_journal.json');
	const list = JSON.parse(readFileSync(path, 'utf8'));
	const last = list.entries.at(-1);
	list.entries.push({ ...last, idx: last.idx + 1, when: last.when + 1000, tag: '9999_next' });
	writeFileSync(path, JSON.stringify(list));
	writeFileSync(join(folder, '9999_next.sql'), sql);
	return folder;
}

function counts(file: string): Record<string, number> {
	const sqlite = new Database(file, { readonly: true });
	const rows = Object.entries(contentOf(sqlite)).map(([table, content]) => [table, content.length] as const);
	sqlite.close();
	return Object.fromEntries(rows.filter(([table]) => table !== '__drizzle_migrations'));
}

test('an old database with rows is brought up to date without losing one, though a table with children is rebuilt', () => {
	const { journal, file, garment } = carriedOnce();
	const page = journal.garment(garment.id);
	journal.close();
	const before = counts(file);
	expect(before).toMatchObject({ wearers: 1, foundations: 1, sheets: 1, garments: 1, versions: 2, alterations: 1 });

	const migrated = openJournal({ file, ...clockAndIds(), migrations: withMigration(rebuild) });
	expect(counts(file)).toEqual(before);
	expect(migrated.garment(garment.id)).toEqual(page);
	migrated.close();
});

test('the database is copied before it is brought up to date, with what is only in its log file', () => {
	const { journal, file } = carriedOnce();
	const before = counts(file);
	// The first journal stays open, so that its log file is not yet worked in.
	openJournal({ file, ...clockAndIds('2026-04-01T08:00:00.000Z'), migrations: withMigration(rebuild) }).close();
	const copies = readdirSync(join(file, '..')).filter((name) => name.includes('.before-'));
	expect(copies).toEqual(['journal.sqlite.before-20260401080000000.sqlite']);
	expect(counts(join(file, '..', copies[0]))).toEqual(before);
	journal.close();
});

test('a migration that would leave rows without what they belong to is not passed over, nor at the next start', () => {
	const { journal, file } = carriedOnce();
	journal.close();
	const migrations = withMigration('DELETE FROM `wearers`;');
	const open = () => openJournal({ file, ...clockAndIds(), migrations });
	expect(open).toThrow(/rows without what they belong to .* Go back to the copy/);
	expect(open).toThrow(/rows without what they belong to/);
});

test('a new file and a database that is up to date are not copied', () => {
	const { journal, file } = carriedOnce();
	journal.close();
	openJournal({ file, ...clockAndIds() }).close();
	expect(readdirSync(join(file, '..')).filter((name) => name.includes('.before-'))).toEqual([]);
});
