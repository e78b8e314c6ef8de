import { describe, expect, test } from 'vitest';
import { contentOf, kept, rawDatabase } from '../support/journal.ts';
import { photographed } from './support/photographed.ts';

/** A closed fitting with a photo and a pin on it, and a connection of somebody with a database tool. */
function closedWithPhoto() {
	const all = photographed();
	const { journal, fitting, photo } = all;
	kept(journal.addPhotoPin(photo.id, { x: 0.5, y: 0.5, note: 'here' }));
	kept(journal.closeFitting(fitting.id, journal.fitting(fitting.id)!.wholeRevision));
	const sqlite = rawDatabase(all.file);
	sqlite.pragma('foreign_keys = ON');
	return { ...all, sqlite };
}

describe.each(['photos', 'photo_pins', 'photo_consents'])('%s of a closed fitting', (table) => {
	test('no column can be changed', () => {
		const { sqlite } = closedWithPhoto();
		const columns = sqlite.pragma(`table_info(${table})`) as { name: string; type: string }[];
		expect(columns.length).toBeGreaterThan(5);
		const before = contentOf(sqlite);
		expect(before[table]).toHaveLength(1);
		for (const { name, type } of columns)
			for (const way of ['UPDATE', 'UPDATE OR REPLACE', 'UPDATE OR IGNORE'])
				expect(
					() => sqlite.prepare(`${way} ${table} SET "${name}" = ?`).run(type === 'text' ? 'other' : 987),
					`${way} ${name}`
				).toThrow(/never changed|keeps its/);
		expect(contentOf(sqlite)).toEqual(before);
	});

	test('none can be taken away, replaced or added', () => {
		const { sqlite } = closedWithPhoto();
		const before = contentOf(sqlite);
		expect(() => sqlite.prepare(`DELETE FROM ${table}`).run()).toThrow(/never/);
		expect(() => sqlite.prepare(`INSERT OR REPLACE INTO ${table} SELECT * FROM ${table}`).run()).toThrow(/never/);
		expect(contentOf(sqlite)).toEqual(before);
	});
});

test('no photo is put into an open fitting by a database tool where the wearer did not agree', () => {
	const { journal, sqlite, garment } = closedWithPhoto();
	const open = kept(journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-24' }));
	const row = sqlite.prepare('SELECT * FROM photos').get() as Record<string, unknown>;
	const insert = sqlite.prepare(
		`INSERT INTO photos (${Object.keys(row).map((name) => `"${name}"`)}) VALUES (${Object.keys(row).map((name) => `@${name}`)})`
	);
	const other = { ...row, id: 'another', fitting: open.id };
	expect(() => insert.run(other)).toThrow('A photo is kept only where the wearer agreed to it.');
	kept(journal.noteConsent(open.id, 0, { taking: true, keeping: true, showing: false, date: '2026-02-24' }));
	insert.run(other);
	expect(journal.photosOf(open.id)!.photos).toHaveLength(1);
});

test('a photo cannot be moved from one fitting to another, nor a pin from one photo to another', () => {
	const { journal, sqlite, garment, photo } = closedWithPhoto();
	const open = kept(journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-24' }));
	expect(() => sqlite.prepare('UPDATE photos SET fitting = ?').run(open.id)).toThrow(/never changed|keeps its/);
	expect(() => sqlite.prepare('UPDATE photo_pins SET photo = ?').run(`${photo.id}x`)).toThrow(/never changed|keeps/);
});
