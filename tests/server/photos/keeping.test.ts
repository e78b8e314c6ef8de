import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { openJournal } from '../../../src/lib/server/open-journal.ts';
import { photoShelf } from '../../../src/lib/server/photos/shelf.ts';
import { clockAndIds, contentOf, kept, ownJournal, rawDatabase, refusalOf } from '../support/journal.ts';
import { waistcoatFile } from '../support/waistcoat.ts';
import { filesOf, namesOf, photographed } from './support/photographed.ts';
import { pretended } from './support/pictures.ts';

const close = ({ journal, fitting }: ReturnType<typeof photographed>) =>
	kept(journal.closeFitting(fitting.id, journal.fitting(fitting.id)!.wholeRevision));

test('a photo is kept with what is known of it, and its files beside the database under its content’s name', () => {
	const { journal, file, fitting, photo } = photographed();
	const picture = pretended('the front');
	expect(journal.photosOf(fitting.id)!.photos).toEqual([photo]);
	expect(photo).toMatchObject({
		...{ number: 1, hash: picture.hash, width: 1200, height: 1600, bytes: picture.jpeg.length, kind: 'jpeg' },
		...{ takenAt: '2026-01-28T14:32:05', mirrored: false, note: 'photo remark' },
		...{ taking: '2026-01-28', keeping: '2026-01-28', showing: '2026-01-28', pins: [] }
	});
	expect(filesOf(file)).toEqual(namesOf(photo).sort());
	expect(readFileSync(journal.pictureFile(photo.hash, 'whole')!)).toEqual(Buffer.from(picture.jpeg));
	expect(readFileSync(journal.pictureFile(photo.hash, 'small')!)).toEqual(Buffer.from(picture.thumbnail));
	expect(dirname(dirname(journal.pictureFile(photo.hash, 'whole')!))).toBe(join(dirname(file), 'photos'));
});

test('the same picture sent twice is one photo; another is the next number', () => {
	const { journal, file, fitting, photo } = photographed();
	expect(kept(journal.addPhoto(fitting.id, pretended('the front')))).toEqual(photo);
	const next = kept(journal.addPhoto(fitting.id, pretended('the back')));
	expect(next.number).toBe(2);
	expect(filesOf(file)).toHaveLength(4);
});

test('a photo does not make a carry or a close that is in somebody’s hand come too late', () => {
	const { journal, fitting } = photographed();
	expect(journal.fitting(fitting.id)!.wholeRevision).toBe(fitting.wholeRevision);
});

test('taken out of an open fitting it is gone, with its pins and its files', () => {
	const { journal, file, fitting, photo } = photographed();
	kept(journal.addPhotoPin(photo.id, { x: 0.5, y: 0.5 }));
	expect(journal.removePhoto(photo.id, 9)).toMatchObject({ ok: false, stale: true });
	expect(filesOf(file)).toHaveLength(2);
	kept(journal.removePhoto(photo.id, 1));
	expect(journal.photosOf(fitting.id)!.photos).toEqual([]);
	expect(filesOf(file)).toEqual([]);
	expect(journal.pictureFile(photo.hash, 'whole')).toBeUndefined();
	expect(contentOf(rawDatabase(file))).toMatchObject({ photos: [], photo_pins: [], loose_pictures: [] });
});

test('a picture that another photo has as well keeps its files', () => {
	const { journal, file, garment, photo } = photographed();
	const later = kept(journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-24' }));
	kept(journal.noteConsent(later.id, 0, { taking: true, keeping: true, showing: false, date: '2026-02-24' }));
	const same = kept(journal.addPhoto(later.id, pretended('the front')));
	expect(same).toMatchObject({ hash: photo.hash, number: 1, showing: null });
	kept(journal.removePhoto(photo.id, 1));
	expect(filesOf(file)).toEqual(namesOf(same).sort());
	kept(journal.removePhoto(same.id, 1));
	expect(filesOf(file)).toEqual([]);
});

test('a closed fitting takes no photo and gives none up, and nothing is left of one that came too late', () => {
	const all = photographed();
	const { journal, file, fitting, photo } = all;
	close(all);
	const before = contentOf(rawDatabase(file));
	for (const answer of [
		journal.addPhoto(fitting.id, pretended('the back')),
		journal.revisePhoto(photo.id, 1, { note: 'other' }),
		journal.turnPhoto(photo.id, 1, pretended('the front, turned')),
		journal.removePhoto(photo.id, 1),
		journal.addPhotoPin(photo.id, { x: 0.5, y: 0.5 })
	])
		expect(refusalOf(answer)).toMatchObject({ code: 'closed', sentences: [expect.stringContaining('is closed')] });
	expect(contentOf(rawDatabase(file))).toEqual(before);
	expect(filesOf(file)).toEqual(namesOf(photo).sort());
});

test('turned over, the picture is another one, its pins are where they were on the cloth, and the old files are gone', () => {
	const { journal, file, photo } = photographed();
	const pin = kept(journal.addPhotoPin(photo.id, { x: 0.25, y: 0.75 }));
	const turned = kept(journal.turnPhoto(photo.id, 1, pretended('the front, turned')));
	expect(turned).toMatchObject({ mirrored: true, revision: 2, pins: [{ id: pin.id, x: 0.75, y: 0.75, revision: 2 }] });
	expect(filesOf(file)).toEqual(namesOf(turned).sort());
	expect(journal.turnPhoto(photo.id, 1, pretended('once more'))).toMatchObject({ stale: true });
	expect(filesOf(file)).toEqual(namesOf(turned).sort());
});

test('whenever the machine stops, the next opening leaves only the files that a photo has', () => {
	const { journal, file, photo } = photographed();
	journal.close();
	// As it is left by a stop after a picture was put on the shelf and before a photo had it, with one more half-written.
	const shelf = photoShelf(join(dirname(file), 'photos'));
	const [whole, half] = [pretended('never kept'), pretended('half')];
	for (const picture of [whole, half]) shelf.put(picture);
	writeFileSync(`${shelf.pathOf(half.hash, 'whole')}.0123456789ab.half`, 'half of');
	const raw = rawDatabase(file);
	for (const { hash } of [whole, half, photo]) raw.prepare('INSERT INTO loose_pictures VALUES (?)').run(hash);
	raw.close();

	const again = openJournal({ file, ...clockAndIds() });
	expect(filesOf(file)).toEqual(namesOf(photo).sort());
	expect(again.photo(photo.id)).toEqual(photo);
	again.close();
	expect(contentOf(rawDatabase(file)).loose_pictures).toEqual([]);
});

test('a file that no photo has, and that nobody said was loose, is not touched: an older database may have been put back', () => {
	const { journal, file } = ownJournal();
	journal.close();
	const picture = pretended('of a newer journal');
	photoShelf(join(dirname(file), 'photos')).put(picture);
	openJournal({ file, ...clockAndIds() }).close();
	expect(filesOf(file)).toEqual(namesOf(picture).sort());
});

test('with the wearer their photos go, files and all, closed or not; another wearer’s stay, though they be the same', () => {
	const all = photographed();
	const { journal, file, wearer, garment, fitting, photo } = all;
	const other = kept(journal.addWearer({ name: 'Tobin Ashgrove' }));
	const { garment: cape } = kept(
		journal.addGarment({ name: 'Cape', wearer: other.id, draft: waistcoatFile(), source: 'file' })
	);
	const theirs = kept(journal.addFitting(cape.id, { kind: 'fitting', date: '2026-02-02' }));
	kept(journal.noteConsent(theirs.id, 0, { taking: true, keeping: true, showing: false, date: '2026-02-02' }));
	const same = kept(journal.addPhoto(theirs.id, pretended('the front')));
	const mine = kept(journal.addPhoto(fitting.id, pretended('the back')));
	kept(journal.addPhotoPin(mine.id, { x: 0.1, y: 0.2, note: 'pin remark' }));
	close(all);
	const before = journal.photosOf(theirs.id);

	kept(journal.forgetWearer(wearer.id, 1));
	expect(journal.photosOf(fitting.id)).toMatchObject({ consent: { revision: 0 }, photos: [] });
	expect([journal.photo(photo.id), journal.pictureFile(mine.hash, 'whole')]).toEqual([undefined, undefined]);
	expect(filesOf(file)).toEqual(namesOf(same).sort());
	expect(journal.photosOf(theirs.id)).toEqual(before);
	const bytes = [file, `${file}-wal`].map((path) => readFileSync(path));
	for (const secret of ['photo remark', 'pin remark', mine.hash])
		expect(
			bytes.filter((one) => one.includes(secret)),
			secret
		).toEqual([]);
	const entries = journal.entries({ wearer: wearer.id }).map(({ sentence }) => sentence);
	expect(entries.find((sentence) => sentence.includes('forgotten'))).toContain('and photos were erased');
	expect(journal.garment(garment.id)!.wearer.forgottenAt).not.toBeNull();
});

test('an unknown fitting or photo is said to be unknown', () => {
	const { journal, file } = photographed();
	const files = filesOf(file);
	expect(journal.photosOf('nobody')).toBeUndefined();
	expect(journal.photo('nobody')).toBeUndefined();
	const consent = { taking: true, keeping: true, showing: true, date: '2026-01-28' };
	for (const answer of [
		journal.noteConsent('nobody', 0, consent),
		journal.addPhoto('nobody', pretended('it')),
		journal.revisePhoto('nobody', 1, {}),
		journal.removePhoto('nobody', 1),
		journal.addPhotoPin('nobody', { x: 0, y: 0 }),
		journal.revisePhotoPin('nobody', 1, {}),
		journal.removePhotoPin('nobody', 1)
	])
		expect(refusalOf(answer).code).toBe('unknown');
	expect(filesOf(file)).toEqual(files);
});
