import Database from 'better-sqlite3';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { migrationsFolder } from '../../src/lib/server/database/migrations.ts';
import { openDatabase } from '../../src/lib/server/database/open.ts';
import { JournalRefused, openJournal } from '../../src/lib/server/open-journal.ts';
import { begun, clockAndIds, ownFolder } from './support/journal.ts';

test('commits are on the disk before they are answered, keys are held, and what is deleted is overwritten', () => {
	const sqlite = openDatabase(join(ownFolder(), 'journal.sqlite'), migrationsFolder(), '2026-01-09');
	const pragma = (name: string) => sqlite.pragma(name, { simple: true });
	expect(pragma('journal_mode')).toBe('wal');
	// SQLite's documentation: 2 is FULL.
	expect(pragma('synchronous')).toBe(2);
	expect(pragma('foreign_keys')).toBe(1);
	expect(pragma('secure_delete')).toBe(1);
	sqlite.close();
});

test('a journal that is opened again holds what it held', () => {
	const { journal, file, garment } = begun();
	const before = journal.garment(garment.id);
	journal.close();
	const again = openJournal({ file, ...clockAndIds() });
	expect(again.garment(garment.id)).toEqual(before);
	again.close();
});

test('a journal from a newer release is refused with a sentence, and is left as it is', () => {
	const folder = ownFolder();
	const newer = join(folder, 'newer');
	cpSync(migrationsFolder(), newer, { recursive: true });
	addMigration(newer, '9999_later', 'CREATE TABLE `later` (`id` text);');
	const file = join(folder, 'journal.sqlite');
	openJournal({ file, ...clockAndIds(), migrations: newer }).close();

	const before = readFileSync(file);
	const open = () => openJournal({ file, ...clockAndIds() });
	expect(open).toThrow(JournalRefused);
	expect(open).toThrow(/was written by a newer release of Pin to Paper\. Open it with that release/);
	expect(readFileSync(file).equals(before)).toBe(true);
});

test('the database of another program is refused, and is left as it is', () => {
	const file = join(ownFolder(), 'accounts.sqlite');
	const other = new Database(file);
	other.exec('CREATE TABLE accounts (id integer); INSERT INTO accounts VALUES (1)');
	other.close();
	const before = readFileSync(file);
	expect(() => openJournal({ file, ...clockAndIds() })).toThrow(/is a database of another program/);
	expect(readFileSync(file).equals(before)).toBe(true);
});

test('a file that is no database is refused, and is left as it is', () => {
	const file = join(ownFolder(), 'letter.txt');
	writeFileSync(file, 'Dear Ines, '.repeat(200));
	expect(() => openJournal({ file, ...clockAndIds() })).toThrow(/is not a database/);
	expect(readFileSync(file, 'utf8')).toBe('Dear Ines, '.repeat(200));
});

function addMigration(folder: string, tag: string, sql: string): void {
	const path = join(folder, 'meta', '_journal.json');
	const list = JSON.parse(readFileSync(path, 'utf8'));
	const last = list.entries.at(-1);
	list.entries.push({ ...last, idx: last.idx + 1, when: last.when + 1000, tag });
	writeFileSync(path, JSON.stringify(list));
	writeFileSync(join(folder, `${tag}.sql`), sql);
}
