import { expect, test } from 'vitest';
import { easeTable, walk } from '../../src/lib/engine/index.ts';
import demoDraft from '../../src/lib/intake/demo-draft.json' with { type: 'json' };
import { fillDemo } from '../../src/lib/server/demo.ts';
import { verifyJournal } from '../../src/lib/server/verify-journal.ts';
import { clockAndIds, contentOf, kept, ownJournal, rawDatabase } from './support/journal.ts';

const inch = 25.4;

function filled() {
	const { journal, file } = ownJournal(clockAndIds('2026-11-25T12:00:00.000Z'));
	const garment = fillDemo(journal, demoDraft)!;
	return { journal, file, garment, page: journal.garment(garment.id)! };
}

test('the demo is two toiles, two fittings and versions 0 to 2, written down from January to March', () => {
	const { page } = filled();
	expect(page.life.map((station) => [station.kind, station.date])).toEqual([
		['version', '2026-01-18'],
		['toile', '2026-01-22'],
		['fitting', '2026-01-28'],
		['version', '2026-01-29'],
		['toile', '2026-02-24'],
		['fitting', '2026-03-10'],
		['version', '2026-03-11']
	]);
	expect(page.garment).toMatchObject({ name: 'Governess jacket', madeFor: 'Snow at Nethermoor' });
	expect(page.wearer.name).toBe('Ines Varrow');
	expect(page.fittings.map(({ alterations }) => alterations.map(({ state }) => state))).toEqual([
		['standing', 'standing', 'standing', 'standing'],
		['standing', 'standing', 'standing', 'standing', 'standing']
	]);
});

test('its fittings take in a seam, let one out at an edge, and add a dart; six kinds of alteration are used', () => {
	const { page } = filled();
	const all = page.fittings.flatMap(({ alterations }) => alterations);
	expect(all.map(({ act }) => act)).toEqual([
		'took-in',
		'took-in',
		'changed-dart',
		'marked',
		'let-out',
		'new-dart',
		'chalked',
		'moved-seam',
		'trued'
	]);
	expect(new Set(all.map(({ intent }) => intent.kind))).toEqual(
		new Set(['seam', 'dart-set', 'mark', 'dart', 'edge', 'true-dart'])
	);
	expect(all.filter(({ answers }) => answers === null).map(({ act }) => act)).toEqual(['marked', 'trued']);
});

test('a sixteenth of an inch and less is all that seams without fullness are out', () => {
	const { journal, garment } = filled();
	for (const number of [0, 1, 2]) {
		const seams = walk(journal.version(garment.id, number)!.draft).filter(({ seam }) => seam !== 'armhole');
		for (const { seam, difference } of seams)
			expect(Math.abs(difference), `version ${number}, ${seam}`).toBeLessThan(inch / 16 + 0.05);
	}
});

test('the waist comes in by the pins, from round to round', () => {
	const { journal, garment } = filled();
	const waist = (number: number) =>
		easeTable(journal.version(garment.id, number)!.draft, {}).find(({ level }) => level === 'waist')!.garment;
	// 1/8″ on each layer of both side seams is 1/2″; of the one centre seam 1/4″; the front dart is 1/4″ wider at its mouth.
	expect(waist(0) - waist(1)).toBeGreaterThan(0.75 * inch);
	expect(waist(0) - waist(1)).toBeLessThan(1.25 * inch);
	// Letting out below the waist, a dart in the armhole, and a seam moved by as much as its mate leave it as it is.
	expect(waist(2)).toBeCloseTo(waist(1), 1);
});

test('the sheet holds the textbook’s figures for a close-fitting waist', () => {
	// Woman's Institute, text on close-fitting patterns, § 30 (c. 1915–20).
	const { page } = filled();
	const first = page.sheets.at(-1)!.measures;
	const inches = (name: string) => first[name] / inch;
	expect(['neck', 'bust', 'chest-width', 'back-width', 'back-waist-length', 'armscye', 'waist'].map(inches)).toEqual(
		[13, 38, 14, 13.5, 15, 15, 25].map((value) => expect.closeTo(value, 9))
	);
});

test('something is open and something is settled: the sleeve waits for the new armhole', () => {
	const { page, journal } = filled();
	expect(page.open.queries.map(({ code, where }) => [code, where])).toContainEqual(['seam-length', 'armhole']);
	expect(page.open.observations.map(({ letter, what }) => [letter, what.slice(0, 20)])).toContainEqual([
		'e',
		'Cannot lift the tray'
	]);
	expect(page.settled.map(({ how, where }) => [how, where])).toEqual([['left', 'under-arm-back']]);
	expect(journal.workroom().waiting.map(({ what }) => what)).toEqual(['queries', 'lining-to-choose']);
});

test('[REPLAY] its versions are their replays', () => {
	const { journal } = filled();
	const replays = verifyJournal(journal);
	expect(replays.map(({ alterations }) => alterations)).toEqual([0, 4, 9]);
	expect(replays.flatMap(({ differences }) => differences)).toEqual([]);
});

test('it fills an empty journal only', () => {
	const { journal, file } = ownJournal();
	kept(journal.addWearer({ name: 'Tobin Ashgrove' }));
	const before = contentOf(rawDatabase(file));
	expect(fillDemo(journal, demoDraft)).toBeUndefined();
	expect(contentOf(rawDatabase(file))).toEqual(before);
});

test('a demo that the journal refuses is thrown, and leaves the journal empty', () => {
	const { journal, file } = ownJournal();
	expect(() => fillDemo(journal, { ...demoDraft, seams: [] })).toThrow();
	expect(contentOf(rawDatabase(file))).toMatchObject({ wearers: [], garments: [], versions: [], entries: [] });
});
