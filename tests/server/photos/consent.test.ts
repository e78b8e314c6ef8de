import { expect, test } from 'vitest';
import { begun, kept, refusalOf } from '../support/journal.ts';
import { filesOf, photographed } from './support/photographed.ts';
import { pretended } from './support/pictures.ts';

const date = '2026-01-28';

test.each([
	[undefined],
	[{ taking: true, keeping: false, showing: false, date }],
	[{ taking: false, keeping: true, showing: true, date }]
])('no photo is kept where the wearer said %o', (said) => {
	const { journal, file, fitting } = begun();
	if (said) kept(journal.noteConsent(fitting.id, 0, said));
	for (const answer of [journal.mayAddPhotos(fitting.id), journal.addPhoto(fitting.id, pretended('it'))])
		expect(refusalOf(answer)).toMatchObject({ code: 'refused', sentences: [expect.stringMatching(/^Ask the wearer/)] });
	expect(filesOf(file)).toEqual([]);
});

test('what was said last holds, and what was said before it stays with the photos that were taken then', () => {
	const { journal, fitting, photo } = photographed();
	expect(journal.noteConsent(fitting.id, 0, { taking: true, keeping: true, showing: true, date })).toMatchObject({
		...{ ok: false, stale: true },
		current: { revision: 1 }
	});
	kept(journal.noteConsent(fitting.id, 1, { taking: true, keeping: true, showing: false, date: '2026-01-29' }));
	const next = kept(journal.addPhoto(fitting.id, pretended('the back')));
	expect(next).toMatchObject({ taking: '2026-01-29', keeping: '2026-01-29', showing: null });
	expect(journal.photo(photo.id)).toMatchObject({ taking: date, keeping: date, showing: date });
});

test('one photo is kept from being shown; another may not be shown where the wearer did not agree', () => {
	const { journal, fitting, photo } = photographed();
	const hidden = kept(journal.revisePhoto(photo.id, 1, { showing: false }));
	expect(hidden.showing).toBeNull();
	expect(kept(journal.revisePhoto(photo.id, 2, { showing: true })).showing).toBe(date);
	kept(journal.revisePhoto(photo.id, 3, { showing: false }));
	kept(journal.noteConsent(fitting.id, 1, { taking: true, keeping: true, showing: false, date }));
	expect(refusalOf(journal.revisePhoto(photo.id, 4, { showing: true })).fields).toEqual(['showing']);
});

test('where they are no longer to be kept they are erased at once, also of a closed fitting, and an entry says so', () => {
	const { journal, file, garment, fitting, photo } = photographed();
	kept(journal.addPhotoPin(photo.id, { x: 0.5, y: 0.5 }));
	kept(journal.closeFitting(fitting.id, journal.fitting(fitting.id)!.wholeRevision));
	const no = { taking: false, keeping: false, showing: false, date: '2026-03-01' };
	expect(kept(journal.noteConsent(fitting.id, 1, no))).toEqual({ revision: 2, ...no });
	expect(journal.photosOf(fitting.id)!.photos).toEqual([]);
	expect(filesOf(file)).toEqual([]);
	const [latest] = journal.entries({ garment: garment.id });
	expect(latest).toMatchObject({
		what: 'photos-erased',
		sentence: 'The photos of fitting 1 were erased: the wearer does not want them kept.'
	});
});

test('a no where there was no photo erases nothing and leaves no entry', () => {
	const { journal, garment, fitting } = begun();
	const before = journal.entries({ garment: garment.id });
	kept(journal.noteConsent(fitting.id, 0, { taking: false, keeping: false, showing: false, date }));
	expect(journal.entries({ garment: garment.id })).toEqual(before);
});

test('a wearer who is forgotten is asked nothing more, and a day that is none is refused', () => {
	const { journal, fitting, wearer } = photographed();
	const said = { taking: true, keeping: true, showing: false, date: '2026-02-30' };
	expect(refusalOf(journal.noteConsent(fitting.id, 1, said)).fields).toEqual(['date']);
	kept(journal.forgetWearer(wearer.id, 1));
	expect(refusalOf(journal.noteConsent(fitting.id, 0, { ...said, date })).sentences[0]).toContain('was forgotten');
});
