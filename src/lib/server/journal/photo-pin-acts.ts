import { eq, max } from 'drizzle-orm';
import { photoPins } from '../database/schema/photos.ts';
import { findAlteration } from './alterations.ts';
import type { Answer, Problem } from './answer.ts';
import { closed, kept, refused, stale, unknown } from './answers.ts';
import type { Change } from './changes.ts';
import { findFitting, fittingIsClosed } from './fittings.ts';
import type { Journal } from './journal.ts';
import { garmentOfObservation } from './observations.ts';
import type { NewPhotoPin } from './photo-changes.ts';
import type { PhotoPin } from './photo-records.ts';
import { findPhoto, findPhotoPin, pinsOn } from './photos.ts';
import type { Fitting } from './records.ts';
import { checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';

/** The most pins that a photo takes: their numbers have two figures. */
const mostPins = 99;

/** Pins on the photos of an open fitting. A pin marks an alteration, an observation, or only a place, with a note. */
export function photoPinActs(store: Store): Pick<Journal, 'addPhotoPin' | 'revisePhotoPin' | 'removePhotoPin'> {
	const { db, newId, now, writing } = store;

	const change = (
		id: string,
		revision: number,
		write: (pin: PhotoPin, fitting: Fitting) => Answer<PhotoPin>
	): Answer<PhotoPin> =>
		writing(() => {
			const pin = findPhotoPin(store, id);
			if (!pin) return unknown('pin');
			const fitting = findFitting(store, findPhoto(store, pin.photo)!.fitting)!;
			if (fitting.closedAt) return closed(fittingIsClosed(fitting));
			return pin.revision === revision ? write(pin, fitting) : stale(pin);
		});

	return {
		addPhotoPin: (photoId, input) =>
			writing(() => {
				const photo = findPhoto(store, photoId);
				if (!photo) return unknown('photo');
				const fitting = findFitting(store, photo.fitting)!;
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				const problems = pinProblems(store, fitting, input);
				if (problems.length > 0) return refused(problems);
				const last = db
					.select({ number: max(photoPins.number) })
					.from(photoPins)
					.where(eq(photoPins.photo, photoId))
					.get();
				const number = (last?.number ?? 0) + 1;
				if (number > mostPins)
					return refused([{ sentence: `A photo takes ${mostPins} pins. Take some out, or add another photo.` }]);
				const { x, y, alteration, observation, note } = input;
				const id = newId();
				db.insert(photoPins)
					.values({ id, photo: photoId, number, x, y, alteration, observation, note, addedAt: now() })
					.run();
				return kept(pinsOn(store, photoId).find((pin) => pin.id === id)!);
			}),

		revisePhotoPin: (id, revision, { x, y, alteration, observation, note }) =>
			change(id, revision, (pin, fitting) => {
				const problems = pinProblems(store, fitting, {
					...{ x, y, note },
					alteration: alteration === undefined ? pin.alteration : alteration,
					observation: observation === undefined ? pin.observation : observation
				});
				if (problems.length > 0) return refused(problems);
				db.update(photoPins)
					.set({ x, y, alteration, observation, note, revision: revision + 1 })
					.where(eq(photoPins.id, id))
					.run();
				return kept(findPhotoPin(store, id)!);
			}),

		removePhotoPin: (id, revision) =>
			change(id, revision, (pin) => {
				db.delete(photoPins).where(eq(photoPins.id, id)).run();
				return kept(pin);
			})
	};
}

function pinProblems(store: Store, fitting: Fitting, input: Change<NewPhotoPin>): Problem[] {
	const { x, y, alteration, observation, note } = input;
	const of = alteration ? findAlteration(store, alteration) : undefined;
	return problemsOf(
		...[x, y].map((part) =>
			part === undefined || (part >= 0 && part <= 1)
				? undefined
				: { field: 'at', sentence: 'Put the pin on the picture itself.' }
		),
		alteration && (!of || findFitting(store, of.fitting)!.garment !== fitting.garment)
			? { field: 'marks', sentence: 'Choose an alteration of this garment.' }
			: undefined,
		observation && garmentOfObservation(store, observation) !== fitting.garment
			? { field: 'marks', sentence: 'Choose an observation of this garment.' }
			: undefined,
		alteration && observation
			? { field: 'marks', sentence: 'A pin marks one thing: an alteration or an observation. Put in another pin.' }
			: undefined,
		checkWords('note', note)
	);
}
