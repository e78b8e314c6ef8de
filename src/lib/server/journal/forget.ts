import { eq } from 'drizzle-orm';
import { alterations, fittings, observations, observationVerdicts, withdrawals } from '../database/schema/fittings.ts';
import { garments, liningChoices, settlements, toiles, toileStates, versions } from '../database/schema/garments.ts';
import { forgetting, notes } from '../database/schema/log.ts';
import { foundations, sheetMeasures, sheets, wearers } from '../database/schema/wearers.ts';
import { closed, kept, stale, unknown } from './answers.ts';
import { garmentsOf } from './garments.ts';
import type { Journal } from './journal.ts';
import { letGoOfSteps } from './let-go-of-steps.ts';
import { eraseLoosePictures, forgetPhotos } from './photos.ts';
import type { Garment } from './records.ts';
import type { Store } from './store.ts';
import { findWearer, foundationsOf, sheetsOf, wearerIsForgotten } from './wearers.ts';

/** Queries whose figures or words are of the body or of what it wore. */
const ofTheBody = [
	'ease-low',
	'ease-high',
	'waist-under-body',
	'scale-doubt',
	'foundation-differs',
	'fittings-disagree'
];

/**
 * Forgetting a wearer, the one thing that what is only ever added to gives way to: the triggers allow it while the wearer is
 * named in `forgetting`, allow it only for words and body measures, and write the entry that says so.
 */
export function forgettingActs(store: Store): Pick<Journal, 'forgetWearer'> {
	const { db, now, sqlite, writing } = store;
	return {
		forgetWearer: (id, revision) => {
			const answer = writing(() => {
				const wearer = findWearer(store, id);
				if (!wearer) return unknown('wearer');
				if (wearer.revision !== revision) return stale(wearer);
				if (wearer.forgottenAt) return closed(wearerIsForgotten);
				const sentence =
					`Wearer ${wearer.number} was forgotten: name, measurement sheets, what was worn under it, notes and photos were erased; ` +
					`the patterns stay. Copies of the journal that were made before still hold them.`;
				db.insert(forgetting).values({ wearer: id, at: now(), sentence }).run();
				for (const garment of garmentsOf(store, id)) forgetGarment(store, garment);
				forgetBody(store, id);
				db.update(wearers)
					.set({ name: `Wearer ${wearer.number}`, note: '', forgottenAt: now(), revision: revision + 1 })
					.where(eq(wearers.id, id))
					.run();
				db.delete(forgetting).run();
				return kept(findWearer(store, id)!);
			});
			eraseLoosePictures(store);
			// What was erased is still in the log file of the database until that is worked in and cut off.
			if (answer.ok && !sqlite.inTransaction) sqlite.pragma('wal_checkpoint(TRUNCATE)');
			return answer;
		}
	};
}

function forgetBody(store: Store, wearer: string): void {
	const { db } = store;
	for (const { id } of sheetsOf(store, wearer)) db.delete(sheetMeasures).where(eq(sheetMeasures.sheet, id)).run();
	db.delete(sheets).where(eq(sheets.wearer, wearer)).run();
	foundationsOf(store, wearer).forEach(({ id, revision }, index) =>
		db
			.update(foundations)
			.set({ name: `Foundation ${index + 1}`, note: '', revision: revision + 1 })
			.where(eq(foundations.id, id))
			.run()
	);
	db.delete(notes).where(eq(notes.wearer, wearer)).run();
}

/** The garment keeps its number, its cloth and its lines. What was seen is of the cloth and stays, so that lines keep their reasons. */
function forgetGarment(store: Store, garment: Garment): void {
	const { db } = store;
	forgetPhotos(store, garment.id);
	db.update(garments)
		.set({ name: `Garment ${garment.number}`, madeFor: '', note: '', sheet: null, revision: garment.revision + 1 })
		.where(eq(garments.id, garment.id))
		.run();
	db.delete(notes).where(eq(notes.garment, garment.id)).run();
	db.update(liningChoices).set({ note: '' }).where(eq(liningChoices.garment, garment.id)).run();
	for (const { id } of db.select({ id: toiles.id }).from(toiles).where(eq(toiles.garment, garment.id)).all()) {
		db.update(toiles).set({ note: '' }).where(eq(toiles.id, id)).run();
		db.update(toileStates).set({ note: '' }).where(eq(toileStates.toile, id)).run();
	}
	for (const { id, queries } of db.select().from(versions).where(eq(versions.garment, garment.id)).all()) {
		const kept = queries.filter(({ code }) => !ofTheBody.includes(code));
		db.update(versions).set({ queries: kept, sourceName: '' }).where(eq(versions.id, id)).run();
		for (const { id: settlement, code } of db.select().from(settlements).where(eq(settlements.version, id)).all())
			db.update(settlements)
				.set({ note: '', ...(ofTheBody.includes(code) ? { sentence: '' } : {}) })
				.where(eq(settlements.id, settlement))
				.run();
	}
	for (const { id } of db.select({ id: fittings.id }).from(fittings).where(eq(fittings.garment, garment.id)).all())
		forgetFitting(store, id);
}

function forgetFitting(store: Store, fitting: string): void {
	const { db } = store;
	letGoOfSteps(store, fitting);
	db.update(fittings)
		.set({ checkMeasures: {}, shoes: '', heel: null, pinnedBy: '', note: '', bring: '' })
		.where(eq(fittings.id, fitting))
		.run();
	db.update(observations).set({ note: '', answeredBy: '' }).where(eq(observations.fitting, fitting)).run();
	db.update(observationVerdicts).set({ note: '' }).where(eq(observationVerdicts.fitting, fitting)).run();
	for (const { id, settles } of db.select().from(alterations).where(eq(alterations.fitting, fitting)).all()) {
		const cleared = settles && ofTheBody.includes(settles.code) ? { ...settles, sentence: '' } : settles;
		db.update(alterations).set({ note: '', settles: cleared }).where(eq(alterations.id, id)).run();
		db.update(withdrawals).set({ note: '' }).where(eq(withdrawals.alteration, id)).run();
	}
}
