import { eq, max } from 'drizzle-orm';
import { toiles, toileStates } from '../database/schema/garments.ts';
import type { Day, Toile, ToileState } from './records.ts';
import type { Store } from './store.ts';
import { numberOf } from './versions.ts';

type Row = typeof toiles.$inferSelect;

export function toileRow({ db }: Store, id: string): Row | undefined {
	return db.select().from(toiles).where(eq(toiles.id, id)).get();
}

export function findToile(store: Store, id: string): Toile | undefined {
	const row = toileRow(store, id);
	return row && toileOf(store, row);
}

export function toilesOf(store: Store, garmentId: string): readonly Toile[] {
	return store.db
		.select()
		.from(toiles)
		.where(eq(toiles.garment, garmentId))
		.orderBy(toiles.number)
		.all()
		.map((row) => toileOf(store, row));
}

function toileOf(store: Store, { addedAt: _, cutFrom, stitchedTo, ...row }: Row): Toile {
	const history = store.db
		.select()
		.from(toileStates)
		.where(eq(toileStates.toile, row.id))
		.orderBy(toileStates.position)
		.all();
	return {
		...row,
		cutFrom: numberOf(store, cutFrom),
		stitchedTo: numberOf(store, stitchedTo),
		states: history.map(({ state, date, note, stitchedTo: version }) => ({
			state,
			date,
			note,
			stitchedTo: numberOf(store, version)
		}))
	};
}

/** Adds to the history of a toile. The toile's own row must be written by the caller. */
export function addToileState(
	{ db }: Store,
	toile: string,
	step: { state: ToileState; date: Day; note?: string; stitchedTo: string }
): void {
	const last = db
		.select({ last: max(toileStates.position) })
		.from(toileStates)
		.where(eq(toileStates.toile, toile))
		.get();
	db.insert(toileStates)
		.values({ ...step, toile, position: (last?.last ?? 0) + 1 })
		.run();
}
