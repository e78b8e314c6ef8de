import { expect, test } from 'vitest';
import { kept, refusalOf, takenIn } from '../support/journal.ts';
import { waistcoatFile } from '../support/waistcoat.ts';
import { photographed } from './support/photographed.ts';

/** With an alteration and an observation to be marked, and one of each of another garment. */
function marked() {
	const all = photographed();
	const { journal, fitting, wearer } = all;
	const alteration = kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
	const observation = kept(journal.addObservation(fitting.id, { what: 'Loose folds at the waist' }));
	const { garment } = kept(
		journal.addGarment({ name: 'Cape', wearer: wearer.id, draft: waistcoatFile(), source: 'file' })
	);
	const elsewhere = kept(journal.addFitting(garment.id, { kind: 'table', date: '2026-02-02' }));
	return {
		...all,
		...{ alteration, observation },
		strangeAlteration: kept(journal.addAlteration(elsewhere.id, { intent: takenIn(1) })),
		strangeObservation: kept(journal.addObservation(elsewhere.id, { what: 'Neck stands away' }))
	};
}

test('pins are numbered as they are put in, and mark an alteration, an observation, or a place with a note', () => {
	const { journal, photo, alteration, observation } = marked();
	kept(journal.addPhotoPin(photo.id, { x: 0.25, y: 0.5, alteration: alteration.id }));
	kept(journal.addPhotoPin(photo.id, { x: 0, y: 1, observation: observation.id }));
	kept(journal.addPhotoPin(photo.id, { x: 1, y: 0, note: 'hook and eye here' }));
	expect(journal.photo(photo.id)!.pins).toMatchObject([
		{ number: 1, x: 0.25, y: 0.5, alteration: alteration.id, observation: null, note: '' },
		{ number: 2, x: 0, y: 1, alteration: null, observation: observation.id },
		{ number: 3, x: 1, y: 0, alteration: null, observation: null, note: 'hook and eye here' }
	]);
});

test('a pin is moved, made to mark something else, and taken out, each drawn from how it stands', () => {
	const { journal, photo, alteration, observation } = marked();
	const { id } = kept(journal.addPhotoPin(photo.id, { x: 0.25, y: 0.5, alteration: alteration.id }));
	expect(kept(journal.revisePhotoPin(id, 1, { x: 0.3 }))).toMatchObject({ x: 0.3, y: 0.5, alteration: alteration.id });
	expect(journal.revisePhotoPin(id, 1, { x: 0.9 })).toMatchObject({ stale: true, current: { x: 0.3, revision: 2 } });
	expect(
		kept(journal.revisePhotoPin(id, 2, { alteration: null, observation: observation.id, note: 'both sides' }))
	).toMatchObject({ alteration: null, observation: observation.id, note: 'both sides', x: 0.3 });
	expect(journal.removePhotoPin(id, 2)).toMatchObject({ stale: true });
	kept(journal.removePhotoPin(id, 3));
	expect(journal.photo(photo.id)!.pins).toEqual([]);
});

test.each([
	['beside the picture', { x: 1.01, y: 0.5 }, 'at'],
	['above it', { x: 0.5, y: -0.01 }, 'at'],
	['nowhere', { x: NaN, y: 0.5 }, 'at'],
	['an alteration of another garment', { x: 0.5, y: 0.5, alteration: 'strangeAlteration' }, 'marks'],
	['an observation of another garment', { x: 0.5, y: 0.5, observation: 'strangeObservation' }, 'marks'],
	['an alteration that is none', { x: 0.5, y: 0.5, alteration: 'nobody' }, 'marks'],
	['two things', { x: 0.5, y: 0.5, alteration: 'alteration', observation: 'observation' }, 'marks']
])('a pin is not put in %s', (_, input, field) => {
	const all = marked();
	const idOf = (name: string | undefined) =>
		name === undefined ? undefined : ((all as unknown as Record<string, { id: string }>)[name]?.id ?? name);
	const { alteration, observation } = input as { alteration?: string; observation?: string };
	const asked = { ...input, alteration: idOf(alteration), observation: idOf(observation) };
	expect(refusalOf(all.journal.addPhotoPin(all.photo.id, asked)).fields).toEqual([field]);
	const { id } = kept(all.journal.addPhotoPin(all.photo.id, { x: 0.1, y: 0.1 }));
	expect(refusalOf(all.journal.revisePhotoPin(id, 1, asked)).fields).toEqual([field]);
	expect(all.journal.photo(all.photo.id)!.pins).toMatchObject([{ x: 0.1, y: 0.1, revision: 1 }]);
});

test('a photo takes ninety-nine pins, whose numbers have two figures, and says so at the next', () => {
	const { journal, photo } = marked();
	journal.together(() => {
		for (let n = 0; n < 98; n++) kept(journal.addPhotoPin(photo.id, { x: 0.5, y: 0.5 }));
		return journal.addPhotoPin(photo.id, { x: 0.5, y: 0.5 });
	});
	expect(refusalOf(journal.addPhotoPin(photo.id, { x: 0.5, y: 0.5 })).sentences[0]).toContain('99 pins');
});
