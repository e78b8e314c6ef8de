import { and, eq } from 'drizzle-orm';
import { fittings } from '../database/schema/fittings.ts';
import { letGoOfSteps } from './let-go-of-steps.ts';
import type { Fitting } from './records.ts';
import type { Store } from './store.ts';
import { addToileState, toileRow } from './toiles.ts';
import { numberOf } from './versions.ts';
import { toiles } from '../database/schema/garments.ts';

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
	letGoOfSteps(store, fitting.id);
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
