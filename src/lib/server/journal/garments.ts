import { desc, eq } from 'drizzle-orm';
import { garments } from '../database/schema/garments.ts';
import type { Garment } from './records.ts';
import type { Store } from './store.ts';

export function findGarment({ db }: Store, id: string): Garment | undefined {
	return db.select().from(garments).where(eq(garments.id, id)).get();
}

/** Latest first. */
export function allGarments({ db }: Store): readonly Garment[] {
	return db.select().from(garments).orderBy(desc(garments.number)).all();
}

export function garmentsOf({ db }: Store, wearerId: string): readonly Garment[] {
	return db.select().from(garments).where(eq(garments.wearer, wearerId)).orderBy(garments.number).all();
}
