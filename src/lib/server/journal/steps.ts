import { and, asc, eq, max, min } from 'drizzle-orm';
import { alterations, observations } from '../database/schema/fittings.ts';
import { fittingSteps, hands } from '../database/schema/steps.ts';
import { touchFitting } from './fittings.ts';
import type { Fitting } from './records.ts';
import type { StepRecord, StepRow, Steps } from './step-records.ts';
import type { Store } from './store.ts';
import { isDeepStrictEqual } from 'node:util';

export type StepRowKept = typeof fittingSteps.$inferSelect;

/** The tables whose rows a step changes. */
export const tableOf = { alteration: alterations, observation: observations } as const;

type Rows = ReadonlyMap<string, { readonly kind: StepRecord['kind']; readonly row: StepRow }>;

/**
 * Runs `write`, which changes alterations and observations of an open fitting and answers the id of the one that is meant, and
 * keeps what it changed as a step. Whatever is written in one transaction is one step, said as its first. Steps that were
 * undone can be done again no more.
 */
export function stepped(store: Store, fitting: Fitting, what: StepRecord['what'], write: () => string): void {
	const { db } = store;
	const before = rowsOf(store, fitting.id);
	const meant = write();
	const changed = [...rowsOf(store, fitting.id).values()]
		.filter(({ row }) => !isAlike(row, before.get(row.id)?.row))
		.sort((a, b) => Number(b.row.id === meant) - Number(a.row.id === meant));
	touchFitting(store, fitting);
	if (changed.length === 0) return;
	const ofFitting = eq(fittingSteps.fitting, fitting.id);
	db.delete(fittingSteps)
		.where(and(ofFitting, eq(fittingSteps.undone, true)))
		.run();
	const step = store.stepsBegun.get(fitting.id) ?? fitting.wholeRevision + 1;
	store.stepsBegun.set(fitting.id, step);
	const written = db
		.select({ last: max(fittingSteps.position) })
		.from(fittingSteps)
		.where(ofFitting)
		.get();
	changed.forEach(({ kind, row }, index) =>
		db
			.insert(fittingSteps)
			.values({
				...{ fitting: fitting.id, position: (written?.last ?? 0) + 1 + index, step, at: store.now(), what, kind },
				...{ record: row.id, before: before.get(row.id)?.row ?? null, after: row }
			})
			.run()
	);
}

/** Every row of a fitting that a step can change, by id: those that refer to another after it. */
function rowsOf({ db }: Store, fittingId: string): Rows {
	const seen = db.select().from(observations).where(eq(observations.fitting, fittingId)).all();
	const made = db
		.select()
		.from(alterations)
		.where(eq(alterations.fitting, fittingId))
		.orderBy(alterations.number)
		.all();
	const rows: readonly { readonly kind: StepRecord['kind']; readonly row: StepRow }[] = [
		...seen.map((row) => ({ kind: 'observation', row }) as const),
		...made.map((row) => ({ kind: 'alteration', row }) as const)
	];
	return new Map(rows.map((one) => [one.row.id, one]));
}

/** Whether a record says the same, however often it was changed. */
export function isAlike(one: StepRow, other: StepRow | undefined): boolean {
	return other !== undefined && isDeepStrictEqual({ ...one, revision: 0 }, { ...other, revision: 0 });
}

/** A record’s row as it is now. */
export function rowNow({ db }: Store, kind: StepRecord['kind'], id: string): StepRow | undefined {
	const table = tableOf[kind];
	return db.select().from(table).where(eq(table.id, id)).get();
}

/** The rows of the last step, or of the one that was undone last; in the order in which they were written. */
export function rowsOfStep({ db }: Store, fittingId: string, which: keyof Steps): readonly StepRowKept[] {
	const undone = which === 'next';
	const among = and(eq(fittingSteps.fitting, fittingId), eq(fittingSteps.undone, undone));
	const found = db
		.select({ step: undone ? min(fittingSteps.step) : max(fittingSteps.step) })
		.from(fittingSteps)
		.where(among)
		.get();
	if (!found?.step) return [];
	return db
		.select()
		.from(fittingSteps)
		.where(and(among, eq(fittingSteps.step, found.step)))
		.orderBy(asc(fittingSteps.position))
		.all();
}

export function stepsOf(store: Store, fittingId: string): Steps {
	const stepOf = (which: keyof Steps) => {
		const [first] = rowsOfStep(store, fittingId, which);
		return first ? stepRecord(first) : null;
	};
	return { last: stepOf('last'), next: stepOf('next') };
}

/** A step, as its first row says it. */
export function stepRecord({ step, at, what, kind, record, after }: StepRowKept): StepRecord {
	const said =
		kind === 'alteration'
			? { alteration: after as unknown as NonNullable<StepRecord['alteration']> }
			: { observation: after as unknown as NonNullable<StepRecord['observation']> };
	return { step, at, what, kind, record, ...said };
}

/** When anything was last kept at an open fitting: a step, or what is in the hand. */
export function lastKept({ db }: Store, fittingId: string): string | null {
	const [step] = db
		.select({ at: max(fittingSteps.at) })
		.from(fittingSteps)
		.where(eq(fittingSteps.fitting, fittingId))
		.all();
	const [hand] = db
		.select({ at: max(hands.savedAt) })
		.from(hands)
		.where(eq(hands.fitting, fittingId))
		.all();
	return [step?.at ?? '', hand?.at ?? ''].sort()[1] || null;
}
