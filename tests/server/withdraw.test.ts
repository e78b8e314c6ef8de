import { expect, test } from 'vitest';
import { verifyJournal } from '../../src/lib/server/verify-journal.ts';
import { begun, carriedOnce, kept, refusalOf, takenIn } from './support/journal.ts';

/** Two fittings: one seam alteration at the first, a new dart at the second; versions 1 and 2. */
function carriedTwice() {
	const all = carriedOnce();
	const { journal, garment } = all;
	const second = kept(journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-24' }));
	const dart = kept(
		journal.addAlteration(second.id, {
			intent: { kind: 'dart', edge: 'front/top', at: { fraction: 0.5 }, intake: 12, point: [100, 80] }
		})
	);
	const narrowed = kept(
		journal.addAlteration(second.id, { intent: { kind: 'dart-set', dart: `front/${dart.id}`, intake: 8 } })
	);
	kept(journal.carryToPaper(second.id, journal.fitting(second.id)!.wholeRevision));
	return { ...all, second, dart, narrowed };
}

test('an alteration taken back out is as if it had never been made, and everything after it still stands', () => {
	const { journal, garment, alteration } = carriedTwice();
	const version = kept(journal.withdraw(alteration.id, 2, 'it was the corset'));
	expect(version).toMatchObject({ number: 3, reason: 'withdrawn', withdrew: alteration.id, unplaced: [] });
	// The side seam is that of the base draft to the bit; the dart of fitting 2 is on the front.
	const side = (number: number) =>
		journal.version(garment.id, number)!.draft.pieces.map(({ edges }) => edges.find(({ id }) => id === 'side'));
	expect(side(3)).toEqual(side(0));
	expect(side(2)).not.toEqual(side(0));
	expect(version.draft.pieces[0].darts).toHaveLength(2);
	expect(journal.alteration(alteration.id)).toMatchObject({
		state: 'withdrawn',
		withdrawal: { version: 3, note: 'it was the corset' }
	});
	expect(verifyJournal(journal).flatMap(({ differences }) => differences)).toEqual([]);
});

test('the preview of a withdrawal is what the version becomes', () => {
	const { journal, alteration } = carriedTwice();
	const preview = journal.previewWithdrawal(alteration.id)!;
	expect(preview.hindrances).toEqual([]);
	expect(kept(journal.withdraw(alteration.id, preview.latest)).draft).toEqual(preview.after);
});

test('what no longer finds its place is said, and waits until it is answered', () => {
	const { journal, garment, dart, narrowed } = carriedTwice();
	const version = kept(journal.withdraw(dart.id, 2));
	expect(version.unplaced.map(({ alteration }) => alteration)).toEqual([narrowed.id]);
	expect(version.alterations).not.toContain(narrowed.id);
	expect(journal.alteration(narrowed.id)).toMatchObject({ state: 'unplaced', reason: version.unplaced[0].sentence });
	expect(journal.garment(garment.id)!.open.unplaced.map(({ id }) => id)).toEqual([narrowed.id]);
	kept(journal.leaveOutWaiting(narrowed.id));
	expect(journal.garment(garment.id)!.open.unplaced).toEqual([]);
});

test('what is in an open fitting, and what stands no more, is not withdrawn', () => {
	const { journal, fitting, alteration } = carriedTwice();
	kept(journal.withdraw(alteration.id, 2));
	expect(refusalOf(journal.withdraw(alteration.id, 3)).sentences).toEqual([
		'Alteration 1 of fitting 1 does not stand in version 3.'
	]);
	expect(fitting.closedAt).toBeNull();
	const open = begun();
	const { id } = kept(open.journal.addAlteration(open.fitting.id, { intent: takenIn(1) }));
	expect(refusalOf(open.journal.withdraw(id, 0)).sentences).toEqual([
		'Fitting 1 is still open: leave alteration 1 out there.'
	]);
});

test('an observation whose alteration was taken back out is open again', () => {
	const { journal, garment, alteration, observation } = carriedOnce();
	expect(journal.garment(garment.id)!.open.observations).toEqual([]);
	kept(journal.withdraw(alteration.id, 1));
	expect(journal.garment(garment.id)!.open.observations.map(({ id }) => id)).toEqual([observation.id]);
});
