import { describe, expect, test } from 'vitest';
import { begun, carriedOnce, kept, ownJournal, takenIn } from './support/journal.ts';
import { waistcoatFile } from './support/waistcoat.ts';

describe('what waits, and the life of a garment, step by step', () => {
	test('a new garment waits for its toile; then the toile, the fitting, the lining follow one another', () => {
		const { journal } = ownJournal();
		const wearer = kept(journal.addWearer({ name: 'Ines Varrow' }));
		const { garment } = kept(
			journal.addGarment({ name: 'Waistcoat', wearer: wearer.id, draft: waistcoatFile(), source: 'file' })
		);
		const waiting = () => journal.workroom().waiting.map(({ what }) => what);
		const life = () => journal.garment(garment.id)!.life.map(({ kind }) => kind);
		expect([waiting(), life()]).toEqual([['toile-to-cut'], ['version']]);

		const toile = kept(journal.addToile(garment.id, { cutFrom: 0 }));
		expect([waiting(), life()]).toEqual([['toile-to-fit'], ['version', 'toile']]);

		const fitting = kept(
			journal.addFitting(garment.id, { kind: 'fitting', date: '2026-01-28', tried: 'toile', toile: toile.id })
		);
		kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
		expect([waiting(), life()]).toEqual([['fitting-open'], ['version', 'toile', 'fitting']]);
		expect(journal.workroom().waiting[0]).toMatchObject({ standing: 1, notRead: 0, openObservations: 0 });

		kept(journal.carryToPaper(fitting.id, journal.fitting(fitting.id)!.wholeRevision));
		expect([waiting(), life()]).toEqual([['lining-to-choose'], ['version', 'toile', 'fitting', 'version']]);

		const fitted = journal.toile(toile.id)!;
		kept(journal.moveToile(toile.id, fitted.revision, { state: 'restitched', stitchedTo: 1 }));
		expect(waiting()).toEqual(['toile-to-fit']);
		kept(journal.moveToile(toile.id, fitted.revision + 1, { state: 'lining' }));
		kept(journal.chooseLining(garment.id, 0, { version: 1, allowance: 12.7 }));
		expect([waiting(), life()]).toEqual([[], ['version', 'toile', 'fitting', 'version', 'lining']]);
	});

	test('what was written down at one instant stands in the order in which one follows from the other', () => {
		const { journal, garment } = carriedOnce({ now: () => new Date('2026-01-09T09:00:00Z') });
		expect(journal.garment(garment.id)!.life.map(({ kind }) => kind)).toEqual([
			'version',
			'toile',
			'fitting',
			'version'
		]);
	});
});

test('what is most pressing comes first, whichever garment it is of', () => {
	const { journal, garment } = begun();
	kept(journal.addGarment({ name: 'Later', wearer: garment.wearer, draft: waistcoatFile(), source: 'file' }));
	expect(journal.workroom().garments.map(({ garment: { name } }) => name)[0]).toBe('Later');
	expect(journal.workroom().waiting.map(({ what }) => what)).toEqual(['fitting-open', 'toile-to-cut']);
});

test('the workroom tells the last note, of a garment or of a wearer', () => {
	const { journal, garment } = begun();
	expect(journal.workroom().latestNote).toBeNull();
	journal.asOf('2026-01-10T09:00:00.000Z', () => kept(journal.addNote({ wearer: garment.wearer, text: 'Later.' })));
	journal.asOf('2026-01-09T09:00:00.000Z', () => kept(journal.addNote({ garment: garment.id, text: 'Earlier.' })));
	expect(journal.workroom().latestNote).toMatchObject({ text: 'Later.', wearer: garment.wearer, garment: null });
});

test('the workroom shows no body measures', () => {
	const { journal } = begun();
	expect(JSON.stringify(journal.workroom().wearers)).not.toMatch(/635|965/);
	expect(journal.workroom().wearers).toEqual([expect.objectContaining({ garments: 1, lastMeasured: '2026-01-09' })]);
});

test('today’s fittings come by the hour', () => {
	const { journal, garment } = begun({ now: () => new Date(2026, 0, 28, 12) });
	const at = (from: string, date = '2026-01-28') =>
		kept(journal.addFitting(garment.id, { kind: 'fitting', date, from })).number;
	const [four, ten] = [at('16:00'), at('10:00')];
	at('09:00', '2026-01-29');
	expect(journal.workroom().today).toBe('2026-01-28');
	expect(journal.workroom().fittingsToday.map(({ fitting }) => fitting.number)).toEqual([1, ten, four]);
});

test('ease is reckoned from the latest sheet unless the garment names one', () => {
	const { journal, garment, wearer, foundation, sheet } = begun();
	const later = kept(
		journal.addSheet(wearer.id, { date: '2026-03-01', foundation: foundation.id, measures: { waist: 640 } })
	);
	expect(journal.garment(garment.id)!.sheet!.id).toBe(later.id);
	kept(journal.reviseGarment(garment.id, garment.revision, { sheet: sheet.id }));
	expect(journal.garment(garment.id)!.sheet!.id).toBe(sheet.id);
});

test('a fitting is on the version that its toile is sewn to, though a later one is there', () => {
	const { journal, garment, toile } = carriedOnce();
	const on = kept(journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-01', toile: toile.id })).on;
	const latest = kept(journal.addFitting(garment.id, { kind: 'table', date: '2026-02-01' }));
	expect([on, latest.on, latest.number]).toEqual([0, 1, 1]);
});

describe('an observation is open', () => {
	function seenOnce() {
		const all = begun();
		const { journal, garment, fitting } = all;
		const seen = kept(journal.addObservation(fitting.id, { what: 'Loose folds at the waist', howBad: 3 }));
		const open = () => journal.observation(seen.id)!.stillOpen;
		const close = () => kept(journal.closeFitting(fitting.id, journal.fitting(fitting.id)!.wholeRevision));
		const again = () => kept(journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-24' }));
		return { ...all, seen, open, close, again };
	}

	test('until it is answered without the pattern, or left on purpose', () => {
		const { journal, seen, open } = seenOnce();
		expect(open()).toBe(true);
		kept(journal.reviseObservation(seen.id, 1, { state: 'answered', answeredBy: 'bones' }));
		expect(open()).toBe(false);
		kept(journal.reviseObservation(seen.id, 2, { state: 'open' }));
		expect(open()).toBe(true);
		kept(journal.reviseObservation(seen.id, 3, { state: 'left-on-purpose' }));
		expect(open()).toBe(false);
	});

	test('until an alteration answers it, of its own fitting or a later one', () => {
		const { journal, seen, open, close, again } = seenOnce();
		close();
		const later = again();
		const answer = kept(journal.addAlteration(later.id, { intent: takenIn(6.35), answers: seen.id }));
		expect(journal.observation(seen.id)!.alterations).toEqual([answer.id]);
		expect(open()).toBe(false);
		kept(journal.leaveOut(answer.id, answer.revision));
		expect(open()).toBe(true);
	});

	test('again when it is said later that it was not enough, until it is solved', () => {
		const { journal, seen, open, close, again } = seenOnce();
		kept(journal.reviseObservation(seen.id, 1, { state: 'answered', answeredBy: 'pressed' }));
		close();
		const second = again();
		kept(journal.giveVerdict(seen.id, { fitting: second.id, verdict: 'not-enough' }));
		expect(open()).toBe(true);
		kept(journal.addAlteration(second.id, { intent: takenIn(3.175), answers: seen.id }));
		expect(open()).toBe(false);
		const third = again();
		kept(journal.giveVerdict(seen.id, { fitting: third.id, verdict: 'too-much' }));
		expect(open()).toBe(true);
		kept(journal.giveVerdict(seen.id, { fitting: third.id, verdict: 'solved' }));
		expect(open()).toBe(false);
	});

	test('letters go on past z', () => {
		const { journal, fitting } = begun();
		const letters = Array.from({ length: 28 }, () => kept(journal.addObservation(fitting.id, { what: 'x' })).letter);
		expect([letters[0], letters[25], letters[26], letters[27]]).toEqual(['a', 'z', 'aa', 'ab']);
	});
});

test('what is done together is kept all or not at all', () => {
	const { journal } = ownJournal();
	const answer = journal.together(() => {
		kept(journal.addWearer({ name: 'Ines Varrow' }));
		return journal.addWearer({ name: '' });
	});
	expect(answer.ok).toBe(false);
	expect(journal.workroom().wearers).toEqual([]);
	expect(() =>
		journal.together(() => {
			kept(journal.addWearer({ name: 'Ines Varrow' }));
			throw new Error('our own mistake');
		})
	).toThrow('our own mistake');
	expect(journal.workroom().wearers).toEqual([]);
});

test('the log says what was done, newest first, and names no wearer', () => {
	const { journal, garment } = carriedOnce();
	expect(journal.entries({ garment: garment.id }).map(({ sentence }) => sentence)).toEqual([
		'Fitting 1 was carried to paper as version 1.',
		'Fitting 1 was begun.',
		'Toile 1 was cut from version 0.',
		'Garment 1 was begun with its base draft.'
	]);
	expect(JSON.stringify(journal.entries())).not.toContain('Ines');
});
