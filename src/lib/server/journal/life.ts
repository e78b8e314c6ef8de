import { toiles } from '../database/schema/garments.ts';
import { fittings } from '../database/schema/fittings.ts';
import { eq } from 'drizzle-orm';
import { alterationsOf } from './alterations.ts';
import { fittingsOf } from './fittings.ts';
import { currentLining } from './lining.ts';
import type { Station } from './pages.ts';
import { localDay, type Store } from './store.ts';
import { toilesOf } from './toiles.ts';
import { versionsOf } from './versions.ts';

/**
 * The stations of a garment's life from left to right: draft, toile, fitting, version … lining. In the order in which they were
 * written down; what was written down at one instant, in the order in which one can only follow from the other.
 */
export function lifeOf(store: Store, garmentId: string): readonly Station[] {
	const { db } = store;
	const toilesAdded = addedAt(db.select().from(toiles).where(eq(toiles.garment, garmentId)).all());
	const fittingsAdded = addedAt(db.select().from(fittings).where(eq(fittings.garment, garmentId)).all());
	const lining = currentLining(store, garmentId);
	const stations: Placed[] = [
		...versionsOf(store, garmentId).map((version): Placed => {
			const station = { kind: 'version', date: dayOf(version.createdAt), version } as const;
			return { at: version.createdAt, version: version.number, rank: 0, station };
		}),
		...toilesOf(store, garmentId).map((toile): Placed => {
			const station = { kind: 'toile', date: toile.states[0]!.date, toile } as const;
			return { at: toilesAdded.get(toile.id)!, version: toile.cutFrom, rank: 1, station };
		}),
		...fittingsOf(store, garmentId).map((fitting): Placed => {
			const alterations = alterationsOf(store, fitting.id).filter(({ state }) => state !== 'withdrawn').length;
			const station = { kind: 'fitting', date: fitting.date, fitting, alterations } as const;
			return { at: fittingsAdded.get(fitting.id)!, version: fitting.on, rank: 2, station };
		}),
		...(lining ? [{ at: lining.chosenAt, version: lining.version, rank: 3, station: liningStation(lining) }] : [])
	];
	return stations
		.sort((a, b) => (a.at === b.at ? a.version - b.version || a.rank - b.rank : a.at < b.at ? -1 : 1))
		.map(({ station }) => station);
}

interface Placed {
	readonly at: string;
	readonly version: number;
	readonly rank: number;
	readonly station: Station;
}

const addedAt = (rows: readonly { id: string; addedAt: string }[]) => new Map(rows.map((row) => [row.id, row.addedAt]));

const dayOf = (instant: string) => localDay(new Date(instant));

const liningStation = (lining: NonNullable<ReturnType<typeof currentLining>>): Station => ({
	kind: 'lining',
	date: dayOf(lining.chosenAt),
	lining
});
