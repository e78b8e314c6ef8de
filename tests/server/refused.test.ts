import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/lib/server/journal/answer.ts';
import { begun, carriedOnce, contentOf, kept, rawDatabase, refusalOf, takenIn } from './support/journal.ts';
import { waistcoatFile } from './support/waistcoat.ts';

type Begun = ReturnType<typeof begun>;

const file = (change: (draft: ReturnType<typeof waistcoatFile>) => void): unknown => {
	const draft = waistcoatFile();
	change(draft);
	return draft;
};

const garmentFrom = (draft: unknown) => (all: Begun) =>
	all.journal.addGarment({ name: 'Cape', wearer: all.wearer.id, draft, source: 'file' });

/** What is asked, the field it is about, and a part of the sentence that says what would be right. */
const refused: [string, (all: Begun) => Answer<unknown>, string, RegExp][] = [
	['a wearer without a name', ({ journal }) => journal.addWearer({ name: ' ' }), 'name', /Give the wearer a name/],
	[
		'a name over several lines',
		({ journal }) => journal.addWearer({ name: 'Ines\nVarrow' }),
		'name',
		/one line of plain text/
	],
	[
		'a name without end',
		({ journal }) => journal.addWearer({ name: 'I'.repeat(201) }),
		'name',
		/at most 200 characters/
	],
	[
		'a sheet of a day that the calendar does not have',
		({ journal, wearer, foundation }) =>
			journal.addSheet(wearer.id, { date: '2026-02-30', foundation: foundation.id, measures: { waist: 635 } }),
		'date',
		/no day\. Write it as year, month, day: 2026-03-10/
	],
	[
		'a sheet over what another wearer wears',
		({ journal, foundation }) => {
			const other = journal.workroom().wearers[1]?.wearer ?? kept(journal.addWearer({ name: 'Tobin Ashgrove' }));
			return journal.addSheet(other.id, { date: '2026-02-02', foundation: foundation.id, measures: { waist: 927 } });
		},
		'foundation',
		/one of this wearer’s own/
	],
	[
		'a measure that is no measurement',
		({ journal, wearer, foundation }) =>
			journal.addSheet(wearer.id, { date: '2026-01-09', foundation: foundation.id, measures: { tail: 100 } }),
		'measures.tail',
		/not one of the measurements/
	],
	...[0, -5, 5001, NaN, Infinity].map((waist): (typeof refused)[number] => [
		`a waist of ${waist} mm`,
		({ journal, wearer, foundation }) =>
			journal.addSheet(wearer.id, { date: '2026-01-09', foundation: foundation.id, measures: { waist } }),
		'measures.waist',
		/between 1 cm/
	]),
	[
		'a sheet without measures',
		({ journal, wearer, foundation }) =>
			journal.addSheet(wearer.id, { date: '2026-01-09', foundation: foundation.id, measures: {} }),
		'measures',
		/at least one measure/
	],
	['a draft that is no draft', garmentFrom('a jacket'), 'draft', /not JSON/],
	[
		'a draft of a later format',
		garmentFrom(file((d) => (d.format = 'pin-to-paper/draft@99'))),
		'draft.format',
		/of a later format, draft@99/
	],
	[
		'a draft with an edge that does not close',
		garmentFrom(file((d) => (d.pieces[0].edges[2].path = 'M 205 400 L 0 399'))),
		'draft.pieces[0].edges[3].path',
		/does not close: .* a gap of 1 mm/
	],
	[
		'a draft with a number that is none',
		garmentFrom(file((d) => (d.pieces[0].edges[0].path = 'M 0 0 L NaN 0'))),
		'draft.pieces[0].edges[0].path',
		/cannot be read/
	],
	[
		'a garment for nobody',
		({ journal }) => journal.addGarment({ name: 'Cape', wearer: 'nobody', draft: waistcoatFile(), source: 'file' }),
		'wearer',
		/Choose the wearer/
	],
	[
		'a range of ease that there is not',
		({ journal, garment }) => journal.reviseGarment(garment.id, garment.revision, { easePreset: 'tighter' }),
		'easePreset',
		/Choose one of the ranges of ease/
	],
	[
		'a toile of a version that there is not',
		({ journal, garment }) => journal.addToile(garment.id, { cutFrom: 7 }),
		'cutFrom',
		/one of this garment’s versions/
	],
	[
		'an allowance below nothing',
		({ journal, garment }) => journal.addToile(garment.id, { cutFrom: 0, allowance: -6 }),
		'allowance',
		/cannot be below 0/
	],
	[
		'an allowance on an edge that there is not',
		({ journal, garment }) => journal.addToile(garment.id, { cutFrom: 0, allowances: { 'front/cuff': 10 } }),
		'allowances.front/cuff',
		/no edge called front\/cuff/
	],
	[
		'a toile restitched to no version',
		({ journal, toile }) => journal.moveToile(toile.id, toile.revision, { state: 'restitched' }),
		'stitchedTo',
		/Choose the version whose lines/
	],
	[
		'a toile restitched to the version it is sewn to',
		({ journal, toile }) => journal.moveToile(toile.id, toile.revision, { state: 'restitched', stitchedTo: 0 }),
		'stitchedTo',
		/choose a later version/
	],
	[
		'a fitting that ends before it begins',
		({ journal, fitting }) => journal.reviseFitting(fitting.id, fitting.revision, { from: '15:00', to: '14:20' }),
		'to',
		/ends at 14:20, before it begins at 15:00/
	],
	[
		'half a pin',
		({ journal, fitting }) => journal.reviseFitting(fitting.id, fitting.revision, { pinsIn: 2.5 }),
		'pinsIn',
		/whole number/
	],
	[
		'an observation of nothing',
		({ journal, fitting }) => journal.addObservation(fitting.id, { what: '  ' }),
		'what',
		/Say what is seen, of the cloth/
	],
	[
		'an act that the engine does not know',
		({ journal, fitting }) => journal.addAlteration(fitting.id, { intent: { kind: 'embroider' } }),
		'intent.kind',
		/should be one of seam, edge/
	],
	[
		'an amount that is text',
		({ journal, fitting }) =>
			journal.addAlteration(fitting.id, {
				intent: { kind: 'seam', seam: 'side', pins: [{ at: { end: 'start' }, a: 'ten' }] }
			}),
		'intent.pins[0].a',
		/expected number/
	],
	[
		'a reading that is no length',
		({ journal, fitting }) =>
			journal.addAlteration(fitting.id, {
				intent: takenIn(6.35),
				readings: { places: [{ at: { level: 'waist' }, rightA: NaN }] }
			}),
		'readings.places[0].rightA',
		/no length/
	],
	[
		'an answer to an observation that there is not',
		({ journal, fitting }) => journal.addAlteration(fitting.id, { intent: takenIn(6.35), answers: 'nothing' }),
		'answers',
		/Choose an observation of this garment/
	],
	[
		'a lining of a version that there is not',
		({ journal, garment }) => journal.chooseLining(garment.id, 0, { version: 3, allowance: 12.7 }),
		'version',
		/one of this garment’s versions/
	],
	[
		'an empty note',
		({ journal, garment }) => journal.addNote({ garment: garment.id, text: '' }),
		'text',
		/Write the note/
	]
];

describe('refused with a sentence, and nothing is written', () => {
	test.each(refused)('%s', (_, ask, field, sentence) => {
		const all = begun();
		const sqlite = rawDatabase(all.file);
		// Once for whatever it makes on the way to being refused.
		ask(all);
		const before = contentOf(sqlite);
		const found = refusalOf(ask(all));
		expect(found.code).toBe('refused');
		expect(found.fields).toContain(field);
		expect(found.sentences.join(' ')).toMatch(sentence);
		expect(contentOf(sqlite)).toEqual(before);
	});
});

test('every problem of a draft file comes back, each with its path in the file', () => {
	const all = begun();
	const found = refusalOf(
		garmentFrom(
			file((draft) => {
				draft.pieces[0].edges[0].kind = 'ruffle';
				draft.pieces[1].notches[0].at = -4;
			})
		)(all)
	);
	expect(found.fields).toEqual(
		expect.arrayContaining(['draft.pieces[0].edges[0].kind', 'draft.pieces[1].notches[0].at'])
	);
	expect(all.journal.garments()).toHaveLength(1);
});

describe('what is not in the journal', () => {
	const unknown: [string, (all: Begun) => Answer<unknown>][] = [
		['a wearer', ({ journal }) => journal.reviseWearer('x', 1, { name: 'I' })],
		['a garment', ({ journal }) => journal.addToile('x', { cutFrom: 0 })],
		['a toile', ({ journal }) => journal.moveToile('x', 1, { state: 'scrap' })],
		['a fitting', ({ journal }) => journal.carryToPaper('x', 1)],
		['an alteration', ({ journal }) => journal.withdraw('x', 0)],
		['an observation', ({ journal }) => journal.reviseObservation('x', 1, { what: 'a' })],
		['a version', ({ journal }) => journal.settleQuery('x', { code: 'seam-length', where: 'side' })]
	];
	test.each(unknown)('%s is unknown, not an exception', (_, ask) => {
		expect(refusalOf(ask(begun()))).toMatchObject({
			code: 'unknown',
			sentences: [expect.stringContaining('no such')]
		});
	});

	test('reads as undefined', () => {
		const { journal } = begun();
		for (const read of [
			journal.wearer('x'),
			journal.garment('x'),
			journal.toile('x'),
			journal.fitting('x'),
			journal.alteration('x'),
			journal.observation('x'),
			journal.version('x', 0),
			journal.previewFitting('x'),
			journal.previewWithdrawal('x')
		])
			expect(read).toBeUndefined();
	});
});

describe('a closed fitting', () => {
	test.each<[string, (all: ReturnType<typeof carriedOnce>) => Answer<unknown, unknown>]>([
		['is not revised', ({ journal, fitting }) => journal.reviseFitting(fitting.id, 99, { note: 'late' })],
		['takes no alteration', ({ journal, fitting }) => journal.addAlteration(fitting.id, { intent: takenIn(1) })],
		['takes no observation', ({ journal, fitting }) => journal.addObservation(fitting.id, { what: 'late' })],
		['is not carried again', ({ journal, fitting }) => journal.carryToPaper(fitting.id, 99)],
		['keeps its alterations', ({ journal, alteration }) => journal.leaveOut(alteration.id, alteration.revision)],
		[
			'keeps its observations',
			({ journal, observation }) => journal.reviseObservation(observation.id, observation.revision, { what: 'other' })
		]
	])('%s', (_, ask) => {
		expect(refusalOf(ask(carriedOnce()))).toEqual({
			code: 'closed',
			sentences: ['Fitting 1 is closed and is not changed any more. Begin another, or note it as table work.'],
			fields: [undefined]
		});
	});
});
