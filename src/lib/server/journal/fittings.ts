import { and, eq, max } from 'drizzle-orm';
import { fittings } from '../database/schema/fittings.ts';
import { closed, kept, refused, refusedFor, stale, unknown } from './answers.ts';
import type { Change, FittingFields } from './changes.ts';
import { findGarment } from './garments.ts';
import { fittingProblems } from './fitting-problems.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import type { Fitting, Garment } from './records.ts';
import { checkOneOf, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { addToileState, findToile, toileRow } from './toiles.ts';
import { findVersion, latestVersion, numberOf } from './versions.ts';
import { toiles } from '../database/schema/garments.ts';
import { alterationsOf } from './alterations.ts';

type Row = typeof fittings.$inferSelect;

export function findFitting(store: Store, id: string): Fitting | undefined {
	const row = store.db.select().from(fittings).where(eq(fittings.id, id)).get();
	return row && fittingOf(store, row);
}

/** By day, then as they were begun. */
export function fittingsOf(store: Store, garmentId: string): readonly Fitting[] {
	return store.db
		.select()
		.from(fittings)
		.where(eq(fittings.garment, garmentId))
		.orderBy(fittings.date, fittings.from, fittings.addedAt, fittings.number)
		.all()
		.map((row) => fittingOf(store, row));
}

/** Those of one day, by hour. */
export function fittingsOn(store: Store, day: string): readonly Fitting[] {
	return store.db
		.select()
		.from(fittings)
		.where(and(eq(fittings.date, day), eq(fittings.kind, 'fitting')))
		.orderBy(fittings.from, fittings.addedAt)
		.all()
		.map((row) => fittingOf(store, row));
}

function fittingOf(store: Store, { addedAt: _, on, carriedInto, ...row }: Row): Fitting {
	return { ...row, on: numberOf(store, on), carriedInto: carriedInto === null ? null : numberOf(store, carriedInto) };
}

/** “Fitting 2”, “Table work 1”. */
export const fittingName = ({ kind, number }: Fitting): string =>
	`${kind === 'fitting' ? 'Fitting' : 'Table work'} ${number}`;

export const fittingIsClosed = (fitting: Fitting): string =>
	`${fittingName(fitting)} is closed and is not changed any more. Begin another, or note it as table work.`;

/** Counts a change of the fitting or of something in it, which carrying and closing look at. */
export function touchFitting({ db }: Store, fitting: Fitting): void {
	db.update(fittings)
		.set({ wholeRevision: fitting.wholeRevision + 1 })
		.where(eq(fittings.id, fitting.id))
		.run();
}

/** Closes a fitting, carried into a version or into none; a toile that was on the body is fitted from then on. */
export function shutFitting(store: Store, fitting: Fitting, versionId: string | null): void {
	const { db, now } = store;
	if (fitting.toile && fitting.tried === 'toile') {
		const toile = toileRow(store, fitting.toile)!;
		if (['cut', 'put-together', 'restitched'].includes(toile.state)) {
			db.update(toiles)
				.set({ state: 'fitted', revision: toile.revision + 1 })
				.where(eq(toiles.id, toile.id))
				.run();
			addToileState(store, toile.id, { state: 'fitted', date: fitting.date, stitchedTo: toile.stitchedTo });
		}
	}
	db.update(fittings)
		.set({
			closedAt: now(),
			carriedInto: versionId,
			revision: fitting.revision + 1,
			wholeRevision: fitting.wholeRevision + 1
		})
		.where(eq(fittings.id, fitting.id))
		.run();
}

export function fittingActs(store: Store): Pick<Journal, 'fitting' | 'addFitting' | 'reviseFitting' | 'closeFitting'> {
	const { db, newId, now, writing } = store;
	return {
		fitting: (id) => store.reading(() => findFitting(store, id)),

		addFitting: (garmentId, { kind, on, ...fields }) =>
			writing(() => {
				const garment = findGarment(store, garmentId);
				if (!garment) return unknown('garment');
				const onBody = versionOn(store, garment, fields.toile, on);
				const problems = problemsOf(
					checkOneOf('kind', kind, ['fitting', 'table']),
					fittingProblems(store, garment, fields),
					onBody ? undefined : { field: 'on', sentence: 'Choose one of this garment’s versions.' }
				);
				if (problems.length > 0 || !onBody) return refused(problems);
				const last = db
					.select({ last: max(fittings.number) })
					.from(fittings)
					.where(and(eq(fittings.garment, garmentId), eq(fittings.kind, kind)))
					.get();
				const id = newId();
				db.insert(fittings)
					.values({
						...fieldsOf({ stateOfToile: {}, asSewn: {}, checkMeasures: {}, ...fields }),
						...{
							id,
							garment: garmentId,
							kind,
							number: (last?.last ?? 0) + 1,
							date: fields.date,
							on: onBody.id,
							addedAt: now()
						},
						...{
							stateOfToile: fields.stateOfToile ?? {},
							asSewn: fields.asSewn ?? {},
							checkMeasures: fields.checkMeasures ?? {}
						}
					})
					.run();
				const fitting = findFitting(store, id)!;
				logEntry(store, 'fitting-begun', `${fittingName(fitting)} was begun.`, { garment: garmentId });
				return kept(fitting);
			}),

		reviseFitting: (id, revision, change) =>
			writing(() => {
				const fitting = findFitting(store, id);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				if (fitting.revision !== revision) return stale(fitting);
				const garment = findGarment(store, fitting.garment)!;
				const problems = fittingProblems(store, garment, { ...fitting, ...change });
				if (problems.length > 0) return refused(problems);
				// Another toile on the body is another version on the body.
				const onBody = change.toile ? toileRow(store, change.toile)!.stitchedTo : undefined;
				db.update(fittings)
					.set({ ...fieldsOf(change), on: onBody, revision: revision + 1, wholeRevision: fitting.wholeRevision + 1 })
					.where(eq(fittings.id, id))
					.run();
				return kept(findFitting(store, id)!);
			}),

		closeFitting: (id, wholeRevision) =>
			writing(() => {
				const fitting = findFitting(store, id);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				if (fitting.wholeRevision !== wholeRevision) return stale(fitting);
				const waiting = alterationsOf(store, id).filter(({ state }) => state !== 'withdrawn');
				if (waiting.length > 0)
					return refusedFor(
						...waiting.map(({ number }) => `Alteration ${number} is to be carried to paper: carry it, or leave it out.`)
					);
				shutFitting(store, fitting, null);
				const words = `${fittingName(fitting)} was closed; nothing was carried to paper.`;
				logEntry(store, 'closed', words, { garment: fitting.garment });
				return kept(findFitting(store, id)!);
			})
	};
}

/** The version on the body: the one asked for, else what the toile is sewn to, else the latest. */
function versionOn(store: Store, garment: Garment, toileId: string | null | undefined, on: number | undefined) {
	if (on !== undefined) return findVersion(store, garment.id, on);
	const toile = toileId ? findToile(store, toileId) : undefined;
	return toile?.garment === garment.id
		? findVersion(store, garment.id, toile.stitchedTo)
		: latestVersion(store, garment.id);
}

const fieldsOf = (change: Change<FittingFields>) => ({
	date: change.date,
	from: change.from,
	to: change.to,
	tried: change.tried,
	toile: change.toile,
	foundation: change.foundation,
	worn: change.worn,
	stateOfToile: change.stateOfToile,
	asSewn: change.asSewn,
	checkMeasures: change.checkMeasures,
	shoes: change.shoes,
	heel: change.heel,
	pinnedBy: change.pinnedBy,
	note: change.note,
	bring: change.bring,
	pinsIn: change.pinsIn,
	pinsOut: change.pinsOut
});
