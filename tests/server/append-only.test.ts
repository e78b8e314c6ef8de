import { describe, expect, test } from 'vitest';
import { carriedOnce, contentOf, kept, rawDatabase } from './support/journal.ts';

/** A journal in which every table that is only ever added to has a row that is closed, and a connection of somebody with a database tool. */
function closedJournal() {
	const all = carriedOnce();
	const { journal, garment, observation, alteration, toile } = all;
	const later = kept(
		journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-24', tried: 'toile', toile: toile.id })
	);
	kept(journal.giveVerdict(observation.id, { fitting: later.id, verdict: 'solved' }));
	kept(journal.closeFitting(later.id, journal.fitting(later.id)!.wholeRevision));
	kept(journal.withdraw(alteration.id, 1));
	kept(journal.chooseLining(garment.id, 0, { version: 1, allowance: 12.7 }));
	const sqlite = rawDatabase(all.file);
	sqlite.pragma('foreign_keys = ON');
	sqlite
		.prepare(
			"INSERT INTO settlements (id, version, code, `where`, how, sentence, at) SELECT 's1', id, 'c', 'w', 'left', 's', 'now' FROM versions LIMIT 1"
		)
		.run();
	return { ...all, sqlite };
}

const tables = [
	'versions',
	'settlements',
	'fittings',
	'observations',
	'observation_verdicts',
	'alterations',
	'withdrawals',
	'toile_states',
	'lining_choices',
	'entries'
];

describe.each(tables)('%s', (table) => {
	test('no column of a closed row can be changed', () => {
		const { sqlite } = closedJournal();
		const columns = sqlite.pragma(`table_info(${table})`) as { name: string; type: string }[];
		expect(columns.length).toBeGreaterThan(3);
		expect(sqlite.prepare(`SELECT count(*) FROM ${table}`).pluck().get()).toBeGreaterThan(0);
		const before = contentOf(sqlite);
		for (const { name, type } of columns)
			for (const way of ['UPDATE', 'UPDATE OR REPLACE', 'UPDATE OR IGNORE'])
				expect(
					() => sqlite.prepare(`${way} ${table} SET "${name}" = ?`).run(type === 'text' ? 'other' : 987),
					`${way} ${name}`
				).toThrow(/never (changed|taken)|only ever added to|frozen|keeps its/);
		expect(contentOf(sqlite)).toEqual(before);
	});

	test('no closed row can be taken away or replaced', () => {
		const { sqlite } = closedJournal();
		const before = contentOf(sqlite);
		expect(() => sqlite.prepare(`DELETE FROM ${table}`).run()).toThrow(/never|only ever added to|frozen/);
		expect(() => sqlite.prepare(`INSERT OR REPLACE INTO ${table} SELECT * FROM ${table}`).run()).toThrow(
			/never|only ever added to|frozen/
		);
		expect(contentOf(sqlite)).toEqual(before);
	});
});

test.each(['observations', 'alterations'])('nothing is added to the %s of a closed fitting', (table) => {
	const { sqlite } = closedJournal();
	const row = sqlite.prepare(`SELECT * FROM ${table} LIMIT 1`).get() as Record<string, unknown>;
	const other = { ...row, id: 'another', number: 99, letter: 'z' };
	const columns = Object.keys(row);
	expect(() =>
		sqlite
			.prepare(
				`INSERT INTO ${table} (${columns.map((name) => `"${name}"`)}) VALUES (${columns.map((name) => `@${name}`)})`
			)
			.run(other)
	).toThrow(/never changed, added to or taken away/);
});

test('what is in an open fitting cannot be moved into a closed one, nor out of it', () => {
	const { journal, garment, sqlite, fitting } = closedJournal();
	const open = kept(journal.addFitting(garment.id, { kind: 'table', date: '2026-03-01' }));
	const observation = kept(journal.addObservation(open.id, { what: 'Neck stands away' }));
	expect(() =>
		sqlite.prepare('UPDATE observations SET fitting = ? WHERE id = ?').run(fitting.id, observation.id)
	).toThrow(/keeps its fitting/);
});

test('a fitting is closed once and for all', () => {
	const { sqlite, fitting } = closedJournal();
	expect(() => sqlite.prepare('UPDATE fittings SET closed_at = NULL WHERE id = ?').run(fitting.id)).toThrow(
		'A closed fitting is never changed or taken away.'
	);
});

test('to use the exception for forgetting a wearer is to leave an entry, and it reaches no line', () => {
	const { sqlite, wearer } = closedJournal();
	const entries = () => sqlite.prepare("SELECT count(*) FROM entries WHERE what = 'forgot-wearer'").pluck().get();
	expect(entries()).toBe(0);
	sqlite.prepare('INSERT INTO forgetting (wearer, at, sentence) VALUES (?, ?, ?)').run(wearer.id, 'now', 'Forgotten.');
	expect(entries()).toBe(1);
	expect(() => sqlite.prepare("UPDATE versions SET draft = '{}'").run()).toThrow(/frozen/);
	expect(() => sqlite.prepare("UPDATE alterations SET intent = '{}'").run()).toThrow(/never changed/);
	expect(() => sqlite.prepare("UPDATE alterations SET readings = '{}'").run()).toThrow(/never changed/);
	expect(() => sqlite.prepare("UPDATE fittings SET date = '2020-01-01'").run()).toThrow(/never changed/);
	expect(() => sqlite.prepare('DELETE FROM versions').run()).toThrow(/frozen/);
	sqlite.prepare("UPDATE fittings SET note = ''").run();
});
