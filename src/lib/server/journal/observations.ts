import { eq } from 'drizzle-orm';
import { alterations, fittings, observations, observationVerdicts, withdrawals } from '../database/schema/fittings.ts';
import { type Observation, type Verdict } from './records.ts';
import type { Store } from './store.ts';

type Row = typeof observations.$inferSelect;

export function findObservation(store: Store, id: string): Observation | undefined {
	const row = store.db.select().from(observations).where(eq(observations.id, id)).get();
	return row && observationOf(store, row);
}

export function observationsOf(store: Store, fittingId: string): readonly Observation[] {
	return store.db
		.select()
		.from(observations)
		.where(eq(observations.fitting, fittingId))
		.orderBy(observations.addedAt, observations.letter)
		.all()
		.map((row) => observationOf(store, row));
}

/** The garment that an observation was made of. */
export function garmentOfObservation({ db }: Store, id: string): string | undefined {
	return db
		.select({ garment: fittings.garment })
		.from(observations)
		.innerJoin(fittings, eq(fittings.id, observations.fitting))
		.where(eq(observations.id, id))
		.get()?.garment;
}

function observationOf(store: Store, { addedAt: _, ...row }: Row): Observation {
	const { db } = store;
	const answering = db
		.select({
			id: alterations.id,
			fitting: alterations.fitting,
			addedAt: alterations.addedAt,
			state: alterations.state
		})
		.from(alterations)
		.where(eq(alterations.answers, row.id))
		.orderBy(alterations.addedAt)
		.all()
		.filter(({ id, state }) => state !== 'withdrawn' && !isWithdrawn(store, id));
	const said: readonly Verdict[] = db
		.select()
		.from(observationVerdicts)
		.where(eq(observationVerdicts.observation, row.id))
		.orderBy(observationVerdicts.at)
		.all()
		.map(({ verdict, fitting, note, at }) => ({ verdict, fitting, note, at }));
	const last = said.at(-1);
	const answered = last
		? last.verdict === 'solved' ||
			last.verdict === 'left' ||
			answering.some(({ fitting, addedAt }) => fitting === last.fitting || addedAt > last.at)
		: row.state !== 'open' || answering.length > 0;
	return { ...row, alterations: answering.map(({ id }) => id), verdicts: said, stillOpen: !answered };
}

const isWithdrawn = ({ db }: Store, id: string): boolean =>
	db.select().from(withdrawals).where(eq(withdrawals.alteration, id)).get() !== undefined;
