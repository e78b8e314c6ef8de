import { desc, eq } from 'drizzle-orm';
import { foundations, sheetMeasures, sheets, wearers } from '../database/schema/wearers.ts';
import type { Foundation, MeasurementSheet, Wearer } from './records.ts';
import type { Store } from './store.ts';

export function findWearer({ db }: Store, id: string): Wearer | undefined {
	return db.select().from(wearers).where(eq(wearers.id, id)).get();
}

/** In the order in which they were added. */
export function allWearers({ db }: Store): readonly Wearer[] {
	return db.select().from(wearers).orderBy(wearers.number).all();
}

export function findFoundation({ db }: Store, id: string): Foundation | undefined {
	const row = db.select().from(foundations).where(eq(foundations.id, id)).get();
	return row && foundationOf(row);
}

export function foundationsOf({ db }: Store, wearerId: string): readonly Foundation[] {
	return db
		.select()
		.from(foundations)
		.where(eq(foundations.wearer, wearerId))
		.orderBy(foundations.addedAt, foundations.name)
		.all()
		.map(foundationOf);
}

/** Newest first, by the day they were taken. */
export function sheetsOf(store: Store, wearerId: string): readonly MeasurementSheet[] {
	return store.db
		.select()
		.from(sheets)
		.where(eq(sheets.wearer, wearerId))
		.orderBy(desc(sheets.date), desc(sheets.addedAt))
		.all()
		.map((row) => sheetOf(store, row));
}

export function findSheet(store: Store, id: string): MeasurementSheet | undefined {
	const row = store.db.select().from(sheets).where(eq(sheets.id, id)).get();
	return row && sheetOf(store, row);
}

const foundationOf = ({ addedAt: _, ...foundation }: typeof foundations.$inferSelect): Foundation => foundation;

function sheetOf({ db }: Store, { addedAt: _, ...sheet }: typeof sheets.$inferSelect): MeasurementSheet {
	const rows = db.select().from(sheetMeasures).where(eq(sheetMeasures.sheet, sheet.id)).all();
	return { ...sheet, measures: Object.fromEntries(rows.map(({ name, mm }) => [name, mm])) };
}

export const wearerIsForgotten = 'This wearer was forgotten: nothing more is kept of them.';
