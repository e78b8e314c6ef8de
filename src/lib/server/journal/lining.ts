import { desc, eq } from 'drizzle-orm';
import { liningChoices } from '../database/schema/garments.ts';
import { checkAllowances } from './allowances.ts';
import { kept, refused, stale, unknown } from './answers.ts';
import { findGarment } from './garments.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import type { LiningChoice } from './records.ts';
import { checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { draftOf, findVersion, numberOf } from './versions.ts';

/** The latest choice, which holds. */
export function currentLining(store: Store, garmentId: string): LiningChoice | null {
	const row = store.db
		.select()
		.from(liningChoices)
		.where(eq(liningChoices.garment, garmentId))
		.orderBy(desc(liningChoices.position))
		.limit(1)
		.get();
	if (!row) return null;
	const { position, version, ...choice } = row;
	return { ...choice, revision: position, version: numberOf(store, version) };
}

export function liningActs(store: Store): Pick<Journal, 'chooseLining'> {
	const { db, now, writing } = store;
	return {
		chooseLining: (garmentId, revision, { version: number, cloth, allowance, allowances = {}, note }) =>
			writing(() => {
				if (!findGarment(store, garmentId)) return unknown('garment');
				const current = currentLining(store, garmentId);
				if (current && current.revision !== revision) return stale(current);
				const version = findVersion(store, garmentId, number);
				if (!version) return refused([{ field: 'version', sentence: 'Choose one of this garment’s versions.' }]);
				const problems = problemsOf(
					checkAllowances(draftOf(store, version.id), allowance, allowances),
					checkWords('cloth', cloth),
					checkWords('note', note)
				);
				if (problems.length > 0) return refused(problems);
				const position = (current?.revision ?? 0) + 1;
				db.insert(liningChoices)
					.values({
						garment: garmentId,
						position,
						version: version.id,
						cloth,
						allowance,
						allowances,
						note,
						chosenAt: now()
					})
					.run();
				logEntry(store, 'lining-chosen', `Version ${number} was chosen for the lining.`, { garment: garmentId });
				return kept(currentLining(store, garmentId)!);
			})
	};
}
