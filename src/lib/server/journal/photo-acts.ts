import { eq, max } from 'drizzle-orm';
import { loosePictures, photoConsents, photoPins, photos } from '../database/schema/photos.ts';
import type { Answer, Kept, Refusal } from './answer.ts';
import { closed, kept, refused, refusedFor, stale, unknown } from './answers.ts';
import { findFitting, fittingIsClosed } from './fittings.ts';
import { findGarment } from './garments.ts';
import type { Journal } from './journal.ts';
import { consentAt, eraseLoosePictures, findPhoto, photosOf, takeAway } from './photos.ts';
import type { TurnedPicture } from './photo-changes.ts';
import type { Photo } from './photo-records.ts';
import type { Fitting } from './records.ts';
import { checkDay, checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { findWearer, wearerIsForgotten } from './wearers.ts';

type PhotoActs = Pick<
	Journal,
	| 'photosOf'
	| 'photo'
	| 'pictureFile'
	| 'incomingPictures'
	| 'mayAddPhotos'
	| 'noteConsent'
	| 'addPhoto'
	| 'revisePhoto'
	| 'turnPhoto'
	| 'removePhoto'
>;

const notAgreed =
	'Ask the wearer first, and note what they said: a photo is taken and kept only where they agreed to both.';

export function photoActs(store: Store): PhotoActs {
	const { db, newId, now, shelf, writing } = store;

	/** The fitting, if a photo may be added to it now. */
	const mayAdd = (fittingId: string): Kept<Fitting> | Refusal => {
		const fitting = findFitting(store, fittingId);
		if (!fitting) return unknown('fitting');
		if (fitting.closedAt) return closed(fittingIsClosed(fitting));
		const { taking, keeping } = consentAt(store, fittingId);
		return taking && keeping ? kept(fitting) : refusedFor(notAgreed);
	};

	/** Runs `write` in a transaction on a photo of an open fitting, if it is drawn from its present state. */
	const change = <T>(id: string, revision: number, write: (photo: Photo) => Answer<T, Photo>): Answer<T, Photo> => {
		const answer = writing<T, Photo>(() => {
			const photo = findPhoto(store, id);
			if (!photo) return unknown('photo');
			const fitting = findFitting(store, photo.fitting)!;
			if (fitting.closedAt) return closed(fittingIsClosed(fitting));
			return photo.revision === revision ? write(photo) : stale(photo);
		});
		eraseLoosePictures(store);
		return answer;
	};

	/** Puts a picture's files on the shelf; they are loose until a photo has them. */
	const putLoose = (picture: TurnedPicture): void => {
		db.insert(loosePictures).values({ hash: picture.hash }).onConflictDoNothing().run();
		shelf.put(picture);
	};
	const noLongerLoose = (hash: string) => db.delete(loosePictures).where(eq(loosePictures.hash, hash)).run();

	return {
		photosOf: (fittingId) =>
			store.reading(() => (findFitting(store, fittingId) ? photosOf(store, fittingId) : undefined)),
		photo: (id) => store.reading(() => findPhoto(store, id)),
		pictureFile: (hash, which) =>
			db.select({ id: photos.id }).from(photos).where(eq(photos.hash, hash)).limit(1).get()
				? shelf.pathOf(hash, which)
				: undefined,
		incomingPictures: () => shelf.incoming,
		mayAddPhotos: (fittingId) => store.reading(() => mayAdd(fittingId)),

		noteConsent: (fittingId, revision, { taking, keeping, showing, date }) => {
			const answer = writing(() => {
				const fitting = findFitting(store, fittingId);
				if (!fitting) return unknown('fitting');
				if (findWearer(store, findGarment(store, fitting.garment)!.wearer)!.forgottenAt)
					return refusedFor(wearerIsForgotten);
				const before = consentAt(store, fittingId);
				if (before.revision !== revision) return stale(before);
				const problems = problemsOf(checkDay('date', date));
				if (problems.length > 0) return refused(problems);
				db.insert(photoConsents)
					.values({ fitting: fittingId, position: revision + 1, taking, keeping, showing, date, at: now() })
					.run();
				if (!keeping) for (const photo of photosOf(store, fittingId).photos) takeAway(store, photo);
				return kept(consentAt(store, fittingId));
			});
			eraseLoosePictures(store);
			// What was erased is still in the log file of the database until that is worked in and cut off.
			if (answer.ok && !answer.value.keeping && !store.sqlite.inTransaction)
				store.sqlite.pragma('wal_checkpoint(TRUNCATE)');
			return answer;
		},

		addPhoto: (fittingId, picture, { mirrored = false, note = '' } = {}) => {
			const may = mayAdd(fittingId);
			if (!may.ok) return may;
			const problems = problemsOf(checkWords('note', note));
			if (problems.length > 0) return refused(problems);
			putLoose(picture);
			const answer = writing<Photo, Photo>(() => {
				const still = mayAdd(fittingId);
				if (!still.ok) return still;
				noLongerLoose(picture.hash);
				const there = photosOf(store, fittingId).photos.find(({ hash }) => hash === picture.hash);
				if (there) return kept(there);
				const last = db
					.select({ number: max(photos.number) })
					.from(photos)
					.where(eq(photos.fitting, fittingId))
					.get();
				const { date, taking, keeping, showing } = consentAt(store, fittingId);
				const on = (agreed: boolean) => (agreed ? date : null);
				const id = newId();
				db.insert(photos)
					.values({
						...{ id, fitting: fittingId, number: (last?.number ?? 0) + 1, addedAt: now(), mirrored, note },
						...{ hash: picture.hash, width: picture.width, height: picture.height, bytes: picture.jpeg.length },
						...{ kind: picture.kind, takenAt: picture.takenAt },
						...{ taking: on(taking), keeping: on(keeping), showing: on(showing) }
					})
					.run();
				return kept(findPhoto(store, id)!);
			});
			eraseLoosePictures(store);
			return answer;
		},

		revisePhoto: (id, revision, { note, showing }) =>
			change(id, revision, (photo) => {
				const consent = consentAt(store, photo.fitting);
				const problems = problemsOf(
					checkWords('note', note),
					showing && !consent.showing
						? {
								field: 'showing',
								sentence: 'The wearer did not agree to photos being shown to others: ask, and note it.'
							}
						: undefined
				);
				if (problems.length > 0) return refused(problems);
				const shownFrom = showing === undefined ? undefined : showing ? (photo.showing ?? consent.date) : null;
				db.update(photos)
					.set({ note, showing: shownFrom, revision: revision + 1 })
					.where(eq(photos.id, id))
					.run();
				return kept(findPhoto(store, id)!);
			}),

		turnPhoto: (id, revision, picture) => {
			putLoose(picture);
			return change(id, revision, (photo) => {
				noLongerLoose(picture.hash);
				db.insert(loosePictures).values({ hash: photo.hash }).onConflictDoNothing().run();
				db.update(photos)
					.set({
						...{ hash: picture.hash, width: picture.width, height: picture.height, bytes: picture.jpeg.length },
						...{ mirrored: !photo.mirrored, revision: revision + 1 }
					})
					.where(eq(photos.id, id))
					.run();
				for (const pin of photo.pins)
					db.update(photoPins)
						.set({ x: 1 - pin.x, revision: pin.revision + 1 })
						.where(eq(photoPins.id, pin.id))
						.run();
				return kept(findPhoto(store, id)!);
			});
		},

		removePhoto: (id, revision) =>
			change(id, revision, (photo) => {
				takeAway(store, photo);
				return kept(photo);
			})
	};
}
