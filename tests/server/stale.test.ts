import { describe, expect, test } from 'vitest';
import { begun, carriedOnce, contentOf, kept, rawDatabase, takenIn } from './support/journal.ts';

type Begun = ReturnType<typeof begun>;

/** Each act on a record that was changed after the form was drawn from it; `again` is the same act a second time. */
const acts: [string, (all: Begun) => { act: () => unknown; current: () => unknown }][] = [
	[
		'a wearer',
		({ journal, wearer }) => ({
			act: () => journal.reviseWearer(wearer.id, wearer.revision, { note: 'other' }),
			current: () => journal.wearer(wearer.id)!.wearer
		})
	],
	[
		'what is worn under it',
		({ journal, wearer, foundation }) => ({
			act: () => journal.reviseFoundation(foundation.id, foundation.revision, { note: 'other' }),
			current: () => journal.wearer(wearer.id)!.foundations[0]
		})
	],
	[
		'a measurement sheet',
		({ journal, wearer, sheet }) => ({
			act: () => journal.reviseSheet(sheet.id, sheet.revision, { measures: { waist: 640 } }),
			current: () => journal.wearer(wearer.id)!.sheets[0]
		})
	],
	[
		'a garment',
		({ journal, garment }) => ({
			act: () => journal.reviseGarment(garment.id, garment.revision, { name: 'Waistcoat, Act II' }),
			current: () => journal.garment(garment.id)!.garment
		})
	],
	[
		'the allowances of a toile',
		({ journal, toile }) => ({
			act: () => journal.reviseToile(toile.id, toile.revision, { allowances: { 'front/side': 19.05 } }),
			current: () => journal.toile(toile.id)
		})
	],
	[
		'the state of a toile',
		({ journal, toile }) => ({
			act: () => journal.moveToile(toile.id, toile.revision, { state: 'put-together' }),
			current: () => journal.toile(toile.id)
		})
	],
	[
		'a fitting',
		({ journal, fitting }) => ({
			act: () => journal.reviseFitting(fitting.id, fitting.revision, { pinsIn: 24 }),
			current: () => journal.fitting(fitting.id)
		})
	],
	[
		'an observation',
		({ journal, fitting }) => {
			const { id, revision } = kept(journal.addObservation(fitting.id, { what: 'Loose folds' }));
			return {
				act: () => journal.reviseObservation(id, revision, { howBad: 3 }),
				current: () => journal.observation(id)
			};
		}
	],
	[
		'an alteration',
		({ journal, fitting }) => {
			const { id, revision } = kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
			return {
				act: () => journal.reviseAlteration(id, revision, { intent: takenIn(3.175) }),
				current: () => journal.alteration(id)
			};
		}
	],
	[
		'an alteration that is left out',
		({ journal, fitting }) => {
			const { id, revision } = kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
			return { act: () => journal.leaveOut(id, revision), current: () => journal.alteration(id) };
		}
	],
	[
		'the order of alterations',
		({ journal, fitting }) => {
			kept(journal.addAlteration(fitting.id, { intent: takenIn(3.175) }));
			const { id, revision } = kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
			return { act: () => journal.reorderAlteration(id, revision, 1), current: () => journal.alteration(id) };
		}
	],
	[
		'a choice of lining',
		({ journal, garment }) => ({
			act: () => journal.chooseLining(garment.id, 0, { version: 0, allowance: 12.7 }),
			current: () => journal.garment(garment.id)!.lining
		})
	],
	[
		'a note',
		({ journal, garment }) => {
			const { id, revision } = kept(journal.addNote({ garment: garment.id, text: 'press towards the back' }));
			return {
				act: () => journal.reviseNote(id, revision, 'press open'),
				current: () => journal.garment(garment.id)!.notes[0]
			};
		}
	],
	[
		'the carrying of a fitting',
		({ journal, fitting }) => {
			const drawnFrom = journal.fitting(fitting.id)!.wholeRevision;
			return {
				act: () =>
					journal.fitting(fitting.id)!.wholeRevision === drawnFrom
						? journal.addAlteration(fitting.id, { intent: takenIn(6.35) })
						: journal.carryToPaper(fitting.id, drawnFrom),
				current: () => journal.previewFitting(fitting.id)
			};
		}
	],
	[
		'the closing of a fitting',
		({ journal, fitting }) => {
			const drawnFrom = journal.fitting(fitting.id)!.wholeRevision;
			return {
				act: () =>
					journal.fitting(fitting.id)!.wholeRevision === drawnFrom
						? journal.addObservation(fitting.id, { what: 'Neck stands away' })
						: journal.closeFitting(fitting.id, drawnFrom),
				current: () => journal.fitting(fitting.id)
			};
		}
	]
];

describe.each(acts)('%s, changed after the form was drawn', (_, prepare) => {
	test('is written the first time; the second time nothing is, and the present state comes back', () => {
		const all = begun();
		const { act, current } = prepare(all);
		expect(act()).toMatchObject({ ok: true });
		const sqlite = rawDatabase(all.file);
		const before = contentOf(sqlite);
		expect(act()).toEqual({ ok: false, stale: true, current: current() });
		expect(contentOf(sqlite)).toEqual(before);
	});
});

test('a withdrawal drawn from an older version than the latest writes nothing and shows the latest', () => {
	const { journal, garment, alteration, file } = carriedOnce();
	const second = kept(journal.addFitting(garment.id, { kind: 'table', date: '2026-02-01' }));
	kept(journal.addAlteration(second.id, { intent: takenIn(1) }));
	kept(journal.carryToPaper(second.id, journal.fitting(second.id)!.wholeRevision));
	const before = contentOf(rawDatabase(file));
	expect(journal.withdraw(alteration.id, 1)).toEqual({
		ok: false,
		stale: true,
		current: journal.version(garment.id, 2)
	});
	expect(contentOf(rawDatabase(file))).toEqual(before);
});
