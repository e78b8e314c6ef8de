import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { verifyJournal } from '../../src/lib/server/verify-journal.ts';
import { carriedOnce, contentOf, kept, rawDatabase, refusalOf, takenIn } from './support/journal.ts';
import { waistcoatFile } from './support/waistcoat.ts';

/** Words and figures that are of the wearer, each told apart from all else in the file. */
const secrets: readonly (string | Buffer)[] = [
	'Ines Varrow',
	'likes room to breathe',
	'chemise and corset',
	'corset of 1897',
	'taken by Maud',
	real(987.125),
	'sheet remark',
	'Ines, waistcoat',
	'for her sister',
	'garment remark',
	'ines-varrow.json',
	'toile remark',
	'state remark',
	'931.375',
	'dancing shoes',
	'pinned by Maud',
	'fitting remark',
	'bring the corset',
	'observation remark',
	'alteration remark',
	'verdict remark',
	'withdrawal remark',
	'lining remark',
	'note on the garment',
	'note on the wearer',
	'waist-under-body'
];

/** As SQLite's file format stores a number that is not whole: 64 bits, the highest first. */
function real(value: number): Buffer {
	const bytes = Buffer.alloc(8);
	bytes.writeDoubleBE(value);
	return bytes;
}

/** What of the secrets stands anywhere in the bytes of a journal's file and of its log file. */
function secretsIn(file: string): readonly string[] {
	const bytes = [file, `${file}-wal`].filter(existsSync).map((path) => readFileSync(path));
	return secrets.filter((secret) => bytes.some((one) => one.includes(secret))).map(String);
}

/** Two garments of one wearer, with something of hers written in every place that there is. */
function fullJournal() {
	const all = carriedOnce();
	const { journal, wearer, foundation, sheet, garment, toile, observation, alteration } = all;
	kept(journal.reviseFoundation(foundation.id, 1, { note: 'corset of 1897' }));
	const measures = { bust: 965.2, waist: 987.125 };
	kept(journal.reviseSheet(sheet.id, 1, { measures, takenBy: 'taken by Maud', note: 'sheet remark' }));
	const named = { name: 'Ines, waistcoat', madeFor: 'for her sister', note: 'garment remark', sheet: sheet.id };
	kept(journal.reviseGarment(garment.id, 1, named));
	const base = { draft: waistcoatFile(), source: 'file', sourceName: 'ines-varrow.json' } as const;
	kept(journal.addGarment({ name: 'Second waistcoat', wearer: wearer.id, ...base }));
	kept(journal.reviseToile(toile.id, journal.toile(toile.id)!.revision, { note: 'toile remark' }));
	const marked = { state: 'marked', note: 'state remark' } as const;
	kept(journal.moveToile(toile.id, journal.toile(toile.id)!.revision, marked));
	const later = kept(
		journal.addFitting(garment.id, {
			...{ kind: 'fitting', date: '2026-02-24', foundation: foundation.id, checkMeasures: { waist: 931.375 } },
			...{ shoes: 'dancing shoes', pinnedBy: 'pinned by Maud', note: 'fitting remark', bring: 'bring the corset' }
		})
	);
	kept(journal.addObservation(later.id, { what: 'Neck stands away', note: 'observation remark' }));
	kept(journal.addAlteration(later.id, { intent: takenIn(1), note: 'alteration remark' }));
	kept(journal.giveVerdict(observation.id, { fitting: later.id, verdict: 'better', note: 'verdict remark' }));
	const queried = journal.previewFitting(later.id)!.queries.find(({ code }) => code === 'waist-under-body');
	expect(queried, 'the garment is smaller than the body').toBeDefined();
	kept(journal.carryToPaper(later.id, journal.fitting(later.id)!.wholeRevision));
	kept(journal.withdraw(alteration.id, 2, 'withdrawal remark'));
	kept(journal.chooseLining(garment.id, 0, { version: 3, allowance: 12.7, note: 'lining remark' }));
	kept(journal.addNote({ garment: garment.id, text: 'note on the garment' }));
	kept(journal.addNote({ wearer: wearer.id, text: 'note on the wearer' }));
	return all;
}

test('after a wearer is forgotten nothing of hers is left in the bytes of the journal', () => {
	const { journal, wearer, file } = fullJournal();
	expect(secretsIn(file)).toEqual(secrets.map(String));
	kept(journal.forgetWearer(wearer.id, journal.wearer(wearer.id)!.wearer.revision));
	expect(secretsIn(file)).toEqual([]);
});

test('the patterns stay under numbers, line for line, with what was seen and what answered it', () => {
	const { journal, wearer, garment, file } = fullJournal();
	const lines = () => rawDatabase(file).prepare('SELECT draft, alterations, steps FROM versions').all();
	const intents = () => rawDatabase(file).prepare('SELECT intent, readings, answers FROM alterations').all();
	const before = [lines(), intents()];
	const seen = journal
		.garment(garment.id)!
		.fittings.flatMap(({ observations }) => observations.map(({ what }) => what));
	kept(journal.forgetWearer(wearer.id, 1));

	expect([lines(), intents()]).toEqual(before);
	const page = journal.garment(garment.id)!;
	expect(page.garment).toMatchObject({ name: 'Garment 1', madeFor: '', note: '' });
	expect(page.wearer).toMatchObject({ name: 'Wearer 1', note: '', forgottenAt: expect.any(String) });
	expect(page.foundations.map(({ name }) => name)).toEqual(['Foundation 1']);
	expect([page.sheets, page.notes, page.sheet]).toEqual([[], [], null]);
	expect(page.fittings.flatMap(({ observations }) => observations.map(({ what }) => what))).toEqual(seen);
	expect(verifyJournal(journal).flatMap(({ differences }) => differences)).toEqual([]);
});

test('an entry says that it was done, and that older copies still hold them', () => {
	const { journal, wearer } = fullJournal();
	kept(journal.forgetWearer(wearer.id, 1));
	const entries = journal.entries({ wearer: wearer.id }).filter(({ what }) => what === 'forgot-wearer');
	expect(entries).toHaveLength(1);
	expect(entries[0].sentence).toMatch(
		/^Wearer 1 was forgotten: .* Copies of the journal that were made before still hold them\.$/
	);
});

test('no other wearer is touched', () => {
	const { journal, wearer, file } = fullJournal();
	const other = kept(journal.addWearer({ name: 'Tobin Ashgrove', note: 'coachman' }));
	const worn = kept(journal.addFoundation(other.id, { name: 'shirt' }));
	kept(journal.addSheet(other.id, { date: '2026-02-02', foundation: worn.id, measures: { waist: 927 } }));
	const { garment } = kept(
		journal.addGarment({ name: 'Cape', wearer: other.id, draft: waistcoatFile(), source: 'file', note: 'lined' })
	);
	const before = [journal.wearer(other.id), journal.garment(garment.id)];
	kept(journal.forgetWearer(wearer.id, 1));
	expect([journal.wearer(other.id), journal.garment(garment.id)]).toEqual(before);
	expect(rawDatabase(file).prepare('SELECT count(*) FROM forgetting').pluck().get()).toBe(0);
});

test('a wearer who is forgotten gets nothing more written, and is forgotten once', () => {
	const { journal, wearer, foundation, file } = fullJournal();
	const { revision } = kept(journal.forgetWearer(wearer.id, 1));
	const before = contentOf(rawDatabase(file));
	const date = '2026-03-01';
	expect(refusalOf(journal.forgetWearer(wearer.id, revision)).code).toBe('closed');
	for (const answer of [
		journal.reviseWearer(wearer.id, revision, { name: 'Ines' }),
		journal.addFoundation(wearer.id, { name: 'shift' }),
		journal.reviseFoundation(foundation.id, 3, { name: 'shift' }),
		journal.addNote({ wearer: wearer.id, text: 'came by' }),
		journal.addSheet(wearer.id, { date, foundation: foundation.id, measures: { waist: 700 } }),
		journal.addGarment({ name: 'Cape', wearer: wearer.id, draft: waistcoatFile(), source: 'file' })
	])
		expect(refusalOf(answer).sentences).toEqual(['This wearer was forgotten: nothing more is kept of them.']);
	expect(contentOf(rawDatabase(file))).toEqual(before);
});

test('a form drawn from an older revision of the wearer forgets nobody', () => {
	const { journal, wearer, file } = fullJournal();
	kept(journal.reviseWearer(wearer.id, 1, { note: 'likes room to breathe, still' }));
	const before = contentOf(rawDatabase(file));
	expect(journal.forgetWearer(wearer.id, 1)).toMatchObject({ ok: false, stale: true });
	expect(contentOf(rawDatabase(file))).toEqual(before);
});
