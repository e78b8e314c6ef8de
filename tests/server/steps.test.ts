import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Journal } from '../../src/lib/server/journal/journal.ts';
import { verifyJournal } from '../../src/lib/server/verify-journal.ts';
import { begun, contentOf, kept, pinnedOnly, rawDatabase, refusalOf, takenIn } from './support/journal.ts';

/** What stands at the fitting, whatever the records’ revisions count. */
function standing(journal: Journal, fitting: string) {
	const { alterations, observations } = journal
		.garment(journal.fitting(fitting)!.garment)!
		.fittings.find((one) => one.fitting.id === fitting)!;
	return [...alterations, ...observations].map((one) => ({ ...one, revision: 0 }));
}

const undoLast = (journal: Journal, fitting: string) => journal.undo(fitting, journal.steps(fitting).last!.step);
const redoNext = (journal: Journal, fitting: string) => journal.redo(fitting, journal.steps(fitting).next!.step);

/** What can be done at a fitting; `n` chooses among what is there. */
const acts: Record<string, (journal: Journal, fitting: string, n: number) => unknown> = {
	add: (journal, fitting, n) => kept(journal.addAlteration(fitting, { intent: takenIn(n % 7), note: `note ${n}` })),
	pin: (journal, fitting) => kept(journal.addAlteration(fitting, { intent: pinnedOnly })),
	pair: (journal, fitting, n) =>
		kept(
			journal.together(() => {
				const first = journal.addAlteration(fitting, { intent: { ...takenIn(n % 5), on: 'right' } });
				if (!first.ok) return first;
				const intent = { ...takenIn(1), on: 'left' };
				return journal.addAlteration(fitting, { intent, pairedWith: first.value.id });
			})
		),
	see: (journal, fitting, n) => kept(journal.addObservation(fitting, { what: `Folds ${n}` })),
	answer: (journal, fitting, n) => {
		const seen = contents(journal, fitting).observations;
		const answers = seen.length > 0 ? seen[n % seen.length].id : null;
		return kept(journal.addAlteration(fitting, { intent: takenIn(2), answers }));
	},
	revise: (journal, fitting, n) =>
		any(journal, fitting, n, ({ id, revision }) =>
			journal.reviseAlteration(id, revision, { intent: takenIn(n % 6), note: `again ${n}` })
		),
	look: (journal, fitting, n) => {
		const seen = contents(journal, fitting).observations;
		if (seen.length === 0) return;
		const { id, revision } = seen[n % seen.length];
		kept(journal.reviseObservation(id, revision, { howBad: ((n % 3) + 1) as 1 | 2 | 3 }));
	},
	out: (journal, fitting, n) => any(journal, fitting, n, ({ id, revision }) => journal.leaveOut(id, revision)),
	up: (journal, fitting, n) => any(journal, fitting, n, ({ id, revision }) => journal.takeUpAgain(id, revision)),
	move: (journal, fitting, n) =>
		any(journal, fitting, n, ({ id, revision }, of) => journal.reorderAlteration(id, revision, (n % of) + 1))
};

const contents = (journal: Journal, fitting: string) =>
	journal.garment(journal.fitting(fitting)!.garment)!.fittings.find((one) => one.fitting.id === fitting)!;

function any(
	journal: Journal,
	fitting: string,
	n: number,
	act: (one: { id: string; revision: number }, of: number) => Parameters<typeof kept>[0]
) {
	const { alterations } = contents(journal, fitting);
	if (alterations.length > 0) kept(act(alterations[n % alterations.length], alterations.length));
}

test('whatever was done, undone step by step every state comes back that there was, and done again the same way', () => {
	const step = fc.tuple(fc.constantFrom(...Object.keys(acts)), fc.nat({ max: 100 }));
	fc.assert(
		fc.property(fc.array(step, { minLength: 1, maxLength: 9 }), (steps) => {
			const { journal, fitting } = begun();
			const states = [standing(journal, fitting.id)];
			for (const [name, n] of steps) {
				acts[name](journal, fitting.id, n);
				const now = standing(journal, fitting.id);
				if (JSON.stringify(now) !== JSON.stringify(states.at(-1))) states.push(now);
			}
			for (const state of states.slice(0, -1).reverse()) {
				kept(undoLast(journal, fitting.id));
				expect(standing(journal, fitting.id)).toEqual(state);
			}
			expect(journal.steps(fitting.id).last).toBeNull();
			for (const state of states.slice(1)) {
				kept(redoNext(journal, fitting.id));
				expect(standing(journal, fitting.id)).toEqual(state);
			}
			expect(journal.steps(fitting.id).next).toBeNull();
			journal.close();
		}),
		{ numRuns: 15 }
	);
});

test('a step says what it was done to, and two alterations that were kept together are one', () => {
	const { journal, fitting } = begun();
	acts.pair(journal, fitting.id, 3);
	const { last } = journal.steps(fitting.id);
	expect(last).toMatchObject({ what: 'alteration-added', kind: 'alteration', alteration: { number: 1 } });
	expect(last!.alteration!.intent).toMatchObject({ on: 'right' });
	kept(undoLast(journal, fitting.id));
	expect(journal.steps(fitting.id)).toMatchObject({ last: null, next: { step: last!.step, what: 'alteration-added' } });
	expect(contents(journal, fitting.id).alterations).toEqual([]);
});

test('another step takes away what was undone, and its number is given again', () => {
	const { journal, fitting } = begun();
	const first = kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
	kept(undoLast(journal, fitting.id));
	const { step } = journal.steps(fitting.id).next!;
	const other = kept(journal.addAlteration(fitting.id, { intent: takenIn(2) }));
	expect([first.number, other.number]).toEqual([1, 1]);
	expect(journal.steps(fitting.id).next).toBeNull();
	expect(journal.redo(fitting.id, step)).toMatchObject({ stale: true, current: { last: { record: other.id } } });
	expect(journal.alteration(first.id)).toBeUndefined();
});

test('a form that was drawn before a record was undone and done again writes over nothing', () => {
	const { journal, fitting } = begun();
	const { id, revision } = kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
	kept(undoLast(journal, fitting.id));
	expect(refusalOf(journal.reviseAlteration(id, revision, { note: 'late' })).code).toBe('unknown');
	kept(redoNext(journal, fitting.id));
	expect(journal.reviseAlteration(id, revision, { note: 'late' })).toMatchObject({ stale: true });
	expect(journal.alteration(id)!.revision).toBeGreaterThan(revision);
});

describe('nothing is written', () => {
	test('where the step that is named is no longer the last', () => {
		const { journal, fitting, file } = begun();
		kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
		const shown = journal.steps(fitting.id).last!;
		const other = kept(journal.addObservation(fitting.id, { what: 'Neck stands away' }));
		const before = contentOf(rawDatabase(file));
		expect(journal.undo(fitting.id, shown.step)).toMatchObject({
			stale: true,
			current: { last: { what: 'observation-added', record: other.id, observation: { letter: 'a' } }, next: null }
		});
		expect(contentOf(rawDatabase(file))).toEqual(before);
	});

	test('where the record was changed in some other way since', () => {
		const { journal, fitting, file } = begun();
		const { id } = kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
		rawDatabase(file).prepare(`UPDATE alterations SET note = 'by hand' WHERE id = ?`).run(id);
		expect(undoLast(journal, fitting.id)).toMatchObject({ stale: true });
		expect(journal.alteration(id)!.note).toBe('by hand');
	});

	test('where an alteration of another fitting answers what would be taken out', () => {
		const { journal, garment, fitting } = begun();
		const seen = kept(journal.addObservation(fitting.id, { what: 'Neck stands away' }));
		const table = kept(journal.addFitting(garment.id, { kind: 'table', date: '2026-02-01' }));
		kept(journal.addAlteration(table.id, { intent: takenIn(1), answers: seen.id }));
		expect(refusalOf(undoLast(journal, fitting.id)).sentences).toEqual([
			'Observation a stays: alteration 1 answers it.'
		]);
		kept(undoLast(journal, table.id));
		kept(undoLast(journal, fitting.id));
		expect(refusalOf(redoNext(journal, table.id)).sentences).toEqual([
			'Alteration 1 refers to something that was taken out since.'
		]);
		kept(redoNext(journal, fitting.id));
		expect(kept(redoNext(journal, table.id)).alteration!.number).toBe(1);
	});

	test('where a pin on a photo marks it, which is named', () => {
		const { journal, fitting, file } = begun();
		const { id } = kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
		kept(journal.noteConsent(fitting.id, 0, { taking: true, keeping: true, showing: false, date: '2026-01-28' }));
		const sqlite = rawDatabase(file);
		sqlite
			.prepare(
				`INSERT INTO photos (id, fitting, number, hash, width, height, bytes, kind, added_at) VALUES ('p', ?, 3, 'h', 1, 1, 1, 'jpeg', 'now')`
			)
			.run(fitting.id);
		sqlite
			.prepare(
				`INSERT INTO photo_pins (id, photo, number, x, y, alteration, added_at) VALUES ('q', 'p', 2, 0, 0, ?, 'now')`
			)
			.run(id);
		expect(refusalOf(undoLast(journal, fitting.id)).sentences).toEqual([
			'Alteration 1 stays: pin 2 on photo 3 marks it. Take that pin off the photo first.'
		]);
		expect(journal.alteration(id)).toBeDefined();
	});
});

test('carrying to paper takes the steps and the hands along, and what is closed is neither undone nor held', () => {
	const { journal, fitting, file } = begun();
	kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
	kept(journal.addAlteration(fitting.id, { intent: takenIn(2) }));
	kept(undoLast(journal, fitting.id));
	kept(journal.holdHand(fitting.id, 'tablet', { act: 'took-in' }));
	const { step } = journal.steps(fitting.id).last!;
	const drawn = journal.fitting(fitting.id)!.wholeRevision;
	kept(journal.carryToPaper(fitting.id, drawn));
	expect(journal.steps(fitting.id)).toEqual({ last: null, next: null });
	expect(journal.hands(fitting.id)).toEqual([]);
	expect(refusalOf(journal.undo(fitting.id, step)).code).toBe('closed');
	expect(refusalOf(journal.holdHand(fitting.id, 'tablet', {})).code).toBe('closed');
	const sqlite = rawDatabase(file);
	const added = [
		[`INSERT INTO hands VALUES (?, 'd', '{}', 'now')`],
		[`INSERT INTO fitting_steps VALUES (?, 1, 1, 'now', 'alteration-added', 'alteration', 'r', NULL, '{}', 0)`]
	];
	for (const [sql] of added) expect(() => sqlite.prepare(sql).run(fitting.id)).toThrow('A closed fitting is never');
	expect(verifyJournal(journal).flatMap(({ differences }) => differences)).toEqual([]);
});

test('undoing counts for carrying: a preview from before it is old', () => {
	const { journal, fitting } = begun();
	kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
	kept(journal.addAlteration(fitting.id, { intent: takenIn(2) }));
	const drawn = journal.fitting(fitting.id)!.wholeRevision;
	kept(undoLast(journal, fitting.id));
	expect(journal.carryToPaper(fitting.id, drawn)).toMatchObject({ stale: true });
});

test('what a wearer’s open fitting could undo is forgotten with the wearer', () => {
	const { journal, wearer, fitting, file } = begun();
	const { id, revision } = kept(journal.addAlteration(fitting.id, { intent: takenIn(1), note: 'secret remark' }));
	kept(journal.reviseAlteration(id, revision, { note: 'other words' }));
	kept(journal.holdHand(fitting.id, 'tablet', { note: 'secret typed' }));
	kept(journal.forgetWearer(wearer.id, wearer.revision));
	expect(JSON.stringify(contentOf(rawDatabase(file)))).not.toMatch(/secret|other words/);
	expect(journal.steps(fitting.id)).toEqual({ last: null, next: null });
});
