import { alterationsOf, waitingForPlace } from './alterations.ts';
import { sheetForEase } from './engine-options.ts';
import { fittingsOf, fittingsOn } from './fittings.ts';
import { allGarments, findGarment, garmentsOf } from './garments.ts';
import type { Journal } from './journal.ts';
import { lifeOf } from './life.ts';
import { currentLining } from './lining.ts';
import { log } from './log.ts';
import { latestNote, notesAbout } from './notes.ts';
import { observationsOf } from './observations.ts';
import type { FittingWithContents, GarmentPage, GarmentSummary, TodayAndWaiting, WearerPage } from './pages.ts';
import type { Fitting, Garment } from './records.ts';
import type { Store } from './store.ts';
import { toilesOf } from './toiles.ts';
import { draftOf, findVersion, latestVersion, versionsOf, wholeVersion } from './versions.ts';
import { mostPressingFirst, waitingOn } from './waiting.ts';
import { allWearers, findWearer, foundationsOf, sheetsOf } from './wearers.ts';

/** What whole pages ask for, each read from one state of the database. */
export function readingActs(store: Store): Pick<Journal, 'workroom' | 'wearer' | 'garment' | 'version'> {
	return {
		workroom: () => store.reading(() => workroom(store)),
		wearer: (id) => store.reading(() => wearerPage(store, id)),
		garment: (id) => store.reading(() => garmentPage(store, id)),
		version: (garmentId, number) =>
			store.reading(() => {
				const version = findVersion(store, garmentId, number);
				return version && wholeVersion(store, version.id);
			})
	};
}

function workroom(store: Store): TodayAndWaiting {
	const today = store.today();
	const garments = allGarments(store);
	return {
		today,
		waiting: mostPressingFirst(garments.flatMap((garment) => waitingOn(store, garment))),
		fittingsToday: fittingsOn(store, today).map((fitting) => {
			const garment = findGarment(store, fitting.garment)!;
			return { fitting, garment, wearer: findWearer(store, garment.wearer)! };
		}),
		garments: garments.map((garment) => garmentSummary(store, garment)),
		wearers: allWearers(store).map((wearer) => {
			const last = sheetsOf(store, wearer.id)[0];
			return {
				wearer,
				garments: garments.filter((garment) => garment.wearer === wearer.id).length,
				lastMeasured: last?.date ?? null
			};
		}),
		latestNote: latestNote(store)
	};
}

function garmentSummary(store: Store, garment: Garment): GarmentSummary {
	const latest = latestVersion(store, garment.id);
	return {
		garment,
		wearer: findWearer(store, garment.wearer)!,
		latest,
		draft: draftOf(store, latest.id),
		life: lifeOf(store, garment.id)
	};
}

function wearerPage(store: Store, id: string): WearerPage | undefined {
	const wearer = findWearer(store, id);
	if (!wearer) return undefined;
	return {
		wearer,
		foundations: foundationsOf(store, id),
		sheets: sheetsOf(store, id),
		garments: garmentsOf(store, id),
		notes: notesAbout(store, { wearer: id }),
		entries: log(store).entries({ wearer: id })
	};
}

function garmentPage(store: Store, id: string): GarmentPage | undefined {
	const garment = findGarment(store, id);
	if (!garment) return undefined;
	const fittings = fittingsOf(store, id).map((fitting) => withContents(store, fitting));
	const versions = versionsOf(store, id);
	return {
		garment,
		wearer: findWearer(store, garment.wearer)!,
		foundations: foundationsOf(store, garment.wearer),
		sheets: sheetsOf(store, garment.wearer),
		sheet: sheetForEase(store, garment),
		versions,
		toiles: toilesOf(store, id),
		fittings,
		lining: currentLining(store, id),
		notes: notesAbout(store, { garment: id }),
		life: lifeOf(store, id),
		open: {
			queries: latestVersion(store, id).unsettled,
			observations: fittings.flatMap(({ observations }) => observations.filter(({ stillOpen }) => stillOpen)),
			unplaced: waitingForPlace(store, id)
		},
		settled: versions.flatMap(({ settlements }) => settlements),
		waiting: waitingOn(store, garment)
	};
}

function withContents(store: Store, fitting: Fitting): FittingWithContents {
	return {
		fitting,
		observations: observationsOf(store, fitting.id),
		alterations: alterationsOf(store, fitting.id)
	};
}
