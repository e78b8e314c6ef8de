import { desc, eq } from 'drizzle-orm';
import { fittings } from '../database/schema/fittings.ts';
import { loosePictures, photoConsents, photoPins, photos } from '../database/schema/photos.ts';
import type { Photo, PhotoConsent, PhotoPin, PhotosOfFitting } from './photo-records.ts';
import type { Store } from './store.ts';

const nothingSaid: PhotoConsent = { revision: 0, taking: false, keeping: false, showing: false, date: null };

/** What the wearer said last at a fitting. */
export function consentAt({ db }: Store, fittingId: string): PhotoConsent {
	const row = db
		.select()
		.from(photoConsents)
		.where(eq(photoConsents.fitting, fittingId))
		.orderBy(desc(photoConsents.position))
		.limit(1)
		.get();
	if (!row) return nothingSaid;
	const { position: revision, taking, keeping, showing, date } = row;
	return { revision, taking, keeping, showing, date };
}

export function findPhoto(store: Store, id: string): Photo | undefined {
	const row = store.db.select().from(photos).where(eq(photos.id, id)).get();
	return row && { ...row, pins: pinsOn(store, id) };
}

export function photosOf(store: Store, fittingId: string): PhotosOfFitting {
	return {
		consent: consentAt(store, fittingId),
		photos: store.db
			.select()
			.from(photos)
			.where(eq(photos.fitting, fittingId))
			.orderBy(photos.number)
			.all()
			.map((row) => ({ ...row, pins: pinsOn(store, row.id) }))
	};
}

/** By number. */
export function pinsOn({ db }: Store, photoId: string): readonly PhotoPin[] {
	return db
		.select()
		.from(photoPins)
		.where(eq(photoPins.photo, photoId))
		.orderBy(photoPins.number)
		.all()
		.map(({ addedAt: _, ...pin }) => pin);
}

export function findPhotoPin({ db }: Store, id: string): PhotoPin | undefined {
	const row = db.select().from(photoPins).where(eq(photoPins.id, id)).get();
	if (!row) return undefined;
	const { addedAt: _, ...pin } = row;
	return pin;
}

/** Takes a photo out of the journal, and its picture's files as soon as nothing needs them. To be called in a transaction. */
export function takeAway({ db }: Store, { id, hash }: Pick<Photo, 'id' | 'hash'>): void {
	db.insert(loosePictures).values({ hash }).onConflictDoNothing().run();
	db.delete(photoPins).where(eq(photoPins.photo, id)).run();
	db.delete(photos).where(eq(photos.id, id)).run();
}

/** Every photo of a garment, with all that was said about photographs: forgotten with its wearer. */
export function forgetPhotos(store: Store, garmentId: string): void {
	const { db } = store;
	const of = db.select({ id: fittings.id }).from(fittings).where(eq(fittings.garment, garmentId)).all();
	for (const { id } of of) {
		for (const photo of db.select().from(photos).where(eq(photos.fitting, id)).all()) takeAway(store, photo);
		db.delete(photoConsents).where(eq(photoConsents.fitting, id)).run();
	}
}

/**
 * Erases the files that no photo has any more. After a transaction has ended, and at opening, which works off what was
 * left undone when the machine stopped in between; within one it does nothing, since that may not be kept.
 */
export function eraseLoosePictures({ db, sqlite, shelf }: Store): void {
	if (sqlite.inTransaction) return;
	for (const { hash } of db.select().from(loosePictures).all()) {
		const used = db.select({ id: photos.id }).from(photos).where(eq(photos.hash, hash)).get();
		if (!used) shelf.erase(hash);
		db.delete(loosePictures).where(eq(loosePictures.hash, hash)).run();
	}
}
