import { desc, eq } from 'drizzle-orm';
import { alterations, fittings, withdrawals } from '../database/schema/fittings.ts';
import { versions } from '../database/schema/garments.ts';
import type { Alteration } from './records.ts';
import type { Store } from './store.ts';
import { numberOf } from './versions.ts';

type Row = typeof alterations.$inferSelect;

export function findAlteration(store: Store, id: string): Alteration | undefined {
	const row = store.db.select().from(alterations).where(eq(alterations.id, id)).get();
	return row && alterationOf(store, row);
}

/** In the order of carrying, those left out included. */
export function alterationsOf(store: Store, fittingId: string): readonly Alteration[] {
	return store.db
		.select()
		.from(alterations)
		.where(eq(alterations.fitting, fittingId))
		.orderBy(alterations.position, alterations.number)
		.all()
		.map((row) => alterationOf(store, row));
}

/** Alterations of closed fittings of a garment that found no place, and that no later one places again. */
export function waitingForPlace(store: Store, garmentId: string): readonly Alteration[] {
	const all = store.db
		.select({ alteration: alterations })
		.from(alterations)
		.innerJoin(fittings, eq(fittings.id, alterations.fitting))
		.where(eq(fittings.garment, garmentId))
		.orderBy(fittings.closedAt, alterations.position)
		.all()
		.map(({ alteration }) => alterationOf(store, alteration));
	const replaced = new Set(all.filter(({ state }) => state !== 'withdrawn').map(({ replaces }) => replaces));
	return all.filter(({ id, state }) => state === 'unplaced' && !replaced.has(id));
}

function alterationOf(store: Store, row: Row): Alteration {
	const withdrawal = store.db.select().from(withdrawals).where(eq(withdrawals.alteration, row.id)).get();
	const whole = { ...row, settles: row.settles ?? null };
	if (withdrawal) {
		const { at, note, version } = withdrawal;
		return {
			...whole,
			state: 'withdrawn',
			withdrawal: { at, note, version: version === null ? null : numberOf(store, version) }
		};
	}
	const lost = row.state === 'standing' ? lostPlace(store, row) : undefined;
	return { ...whole, ...(lost === undefined ? {} : { state: 'unplaced', reason: lost }), withdrawal: null };
}

/**
 * Why an alteration that was carried stands no longer in the latest version: when another one was taken back out it found
 * its place no more. Undefined while it stands, and in an open fitting.
 */
function lostPlace(store: Store, { id, fitting: fittingId }: Row): string | undefined {
	const { db } = store;
	const fitting = db.select().from(fittings).where(eq(fittings.id, fittingId)).get()!;
	if (fitting.carriedInto === null) return undefined;
	const latest = db
		.select({ alterations: versions.alterations })
		.from(versions)
		.where(eq(versions.garment, fitting.garment))
		.orderBy(desc(versions.number))
		.limit(1)
		.get()!;
	if (latest.alterations.includes(id)) return undefined;
	const reports = db
		.select({ unplaced: versions.unplaced })
		.from(versions)
		.where(eq(versions.garment, fitting.garment))
		.orderBy(desc(versions.number))
		.all();
	return reports.flatMap(({ unplaced }) => unplaced).find(({ alteration }) => alteration === id)?.sentence ?? '';
}
