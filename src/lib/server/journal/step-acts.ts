import { and, eq } from 'drizzle-orm';
import { fittingSteps } from '../database/schema/steps.ts';
import type { Answer } from './answer.ts';
import { closed, kept, refused, stale, unknown } from './answers.ts';
import { findFitting, fittingIsClosed, touchFitting } from './fittings.ts';
import type { Journal } from './journal.ts';
import type { StepRecord, StepRow, Steps } from './step-records.ts';
import { goneFor, needsOf } from './step-references.ts';
import { isAlike, lastKept, rowNow, rowsOfStep, stepRecord, stepsOf, tableOf, type StepRowKept } from './steps.ts';
import type { Store } from './store.ts';

type StepActs = Pick<Journal, 'steps' | 'lastKept' | 'undo' | 'redo'>;

/** Undoing, and doing again: each record goes to the row that it had on the other side of the step, under a new revision. */
export function stepActs(store: Store): StepActs {
	const { writing } = store;

	const turn = (which: keyof Steps, fittingId: string, step: number): Answer<StepRecord, Steps> =>
		writing<StepRecord, Steps>(() => {
			const fitting = findFitting(store, fittingId);
			if (!fitting) return unknown('fitting');
			if (fitting.closedAt) return closed(fittingIsClosed(fitting));
			const found = rowsOfStep(store, fittingId, which);
			// What refers to another was written after it, and goes before it.
			const rows = which === 'last' ? found.toReversed() : found;
			if (rows[0]?.step !== step || !rows.every((row) => stands(store, row))) return stale(stepsOf(store, fittingId));
			const turned = rows.map(({ record }) => record);
			const problems = rows.flatMap((row) => {
				const { comes } = sidesOf(row);
				return comes ? goneFor(store, row.kind, comes, turned) : needsOf(store, row.kind, row.after, turned);
			});
			if (problems.length > 0) return refused(problems);
			for (const row of rows) turnRow(store, row);
			touchFitting(store, fitting);
			return kept(stepRecord(found[0]!));
		});

	return {
		steps: (fittingId) => store.reading(() => stepsOf(store, fittingId)),
		lastKept: (fittingId) => store.reading(() => lastKept(store, fittingId)),
		undo: (fittingId, step) => turn('last', fittingId, step),
		redo: (fittingId, step) => turn('next', fittingId, step)
	};
}

/** The row that a record has, and the one that it gets when its step is undone or done again. */
function sidesOf({ before, after, undone }: StepRowKept): { leaves: StepRow | null; comes: StepRow | null } {
	return undone ? { leaves: before, comes: after } : { leaves: after, comes: before };
}

/** Whether a record is as its step left it. */
function stands(store: Store, row: StepRowKept): boolean {
	const now = rowNow(store, row.kind, row.record);
	const { leaves } = sidesOf(row);
	return leaves === null ? now === undefined : isAlike(leaves, now);
}

/**
 * A record that is taken out and put in again goes on counting where it was: no form that was drawn of it before is drawn of it
 * now. One that only made room for another does not count that, as it did not in the step.
 */
function turnRow(store: Store, row: StepRowKept): void {
	const { db } = store;
	const table = tableOf[row.kind];
	const isIt = eq(table.id, row.record);
	const now = rowNow(store, row.kind, row.record);
	const { comes } = sidesOf(row);
	if (comes === null) db.delete(table).where(isIt).run();
	else if (now) {
		const revision = row.before?.revision === row.after.revision ? now.revision : now.revision + 1;
		db.update(table)
			.set({ ...comes, revision } as never)
			.where(isIt)
			.run();
	} else
		db.insert(table)
			.values({ ...comes, revision: comes.revision + 1 } as never)
			.run();
	db.update(fittingSteps)
		.set({ undone: !row.undone, ...(comes === null && { after: now! }) })
		.where(and(eq(fittingSteps.fitting, row.fitting), eq(fittingSteps.position, row.position)))
		.run();
}
