import { eq } from 'drizzle-orm';
import { toiles } from '../database/schema/garments.ts';
import { checkAllowances } from './allowances.ts';
import { kept, refused, stale, unknown } from './answers.ts';
import type { Change, ToileFields, ToileStep } from './changes.ts';
import { findGarment } from './garments.ts';
import { addToileState, findToile, toileRow, toilesOf } from './toiles.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import { toileStates as states, type Toile, type ToileState, type VersionSummary } from './records.ts';
import { checkDay, checkOneOf, checkWords, problemsOf, type Check } from './soundness.ts';
import type { Store } from './store.ts';
import { draftOf, findVersion } from './versions.ts';

/** 1″, the allowance of a fitting toile unless another is given. */
const usualAllowance = 25.4;

export function toileActs(store: Store): Pick<Journal, 'toile' | 'addToile' | 'reviseToile' | 'moveToile'> {
	const { db, newId, now, today, writing } = store;
	return {
		toile: (id) => store.reading(() => findToile(store, id)),

		addToile: (garmentId, { cutFrom, date = today(), ...fields }) =>
			writing(() => {
				if (!findGarment(store, garmentId)) return unknown('garment');
				const version = findVersion(store, garmentId, cutFrom);
				if (!version) return refused([{ field: 'cutFrom', sentence: 'Choose one of this garment’s versions.' }]);
				const problems = problemsOf(checkDay('date', date), toileProblems(store, version.id, fields));
				if (problems.length > 0) return refused(problems);
				const id = newId();
				const number = toilesOf(store, garmentId).length + 1;
				const { cloth, allowance = usualAllowance, allowances = {}, note } = fields;
				db.insert(toiles)
					.values({
						...{ id, garment: garmentId, number, cloth, allowance, allowances, note },
						...{ cutFrom: version.id, stitchedTo: version.id, state: 'cut', addedAt: now() }
					})
					.run();
				addToileState(store, id, { state: 'cut', date, stitchedTo: version.id });
				logEntry(store, 'toile-cut', `Toile ${number} was cut from version ${cutFrom}.`, { garment: garmentId });
				return kept(findToile(store, id)!);
			}),

		reviseToile: (id, revision, change) =>
			writing(() => {
				const toile = findToile(store, id);
				if (!toile) return unknown('toile');
				if (toile.revision !== revision) return stale(toile);
				const problems = toileProblems(store, toileRow(store, id)!.cutFrom, change);
				if (problems.length > 0) return refused(problems);
				const { cloth, allowance, allowances, note } = change;
				db.update(toiles)
					.set({ cloth, allowance, allowances, note, revision: revision + 1 })
					.where(eq(toiles.id, id))
					.run();
				return kept(findToile(store, id)!);
			}),

		moveToile: (id, revision, step) =>
			writing(() => {
				const toile = findToile(store, id);
				if (!toile) return unknown('toile');
				if (toile.revision !== revision) return stale(toile);
				const version = step.stitchedTo === undefined ? undefined : findVersion(store, toile.garment, step.stitchedTo);
				const problems = stepProblems(toile, step, version);
				if (problems.length > 0) return refused(problems);
				const { state, date = today(), note } = step;
				const stitchedTo = version?.id ?? toileRow(store, id)!.stitchedTo;
				db.update(toiles)
					.set({ state, stitchedTo, revision: revision + 1 })
					.where(eq(toiles.id, id))
					.run();
				addToileState(store, id, { state, date, note, stitchedTo });
				const words = state.replaceAll('-', ' ') + (version ? ` on the lines of version ${version.number}` : '');
				logEntry(store, 'toile-moved', `Toile ${toile.number}: ${words}.`, { garment: toile.garment });
				return kept(findToile(store, id)!);
			})
	};
}

const toileProblems = (store: Store, cutFrom: string, { cloth, allowance, allowances, note }: Change<ToileFields>) =>
	problemsOf(
		checkWords('cloth', cloth),
		checkAllowances(draftOf(store, cutFrom), allowance, allowances),
		checkWords('note', note)
	);

function stepProblems(toile: Toile, { state, date, note, stitchedTo }: ToileStep, version: VersionSummary | undefined) {
	return problemsOf(
		checkOneOf('state', state, states),
		checkDay('date', date),
		checkWords('note', note),
		stitchedProblem(toile, state, stitchedTo, version)
	);
}

function stitchedProblem(
	toile: Toile,
	state: ToileState,
	stitchedTo: number | undefined,
	version: VersionSummary | undefined
): Check {
	const field = 'stitchedTo';
	if (state !== 'restitched')
		return stitchedTo === undefined
			? undefined
			: { field, sentence: 'Only a toile that is restitched is sewn on the lines of another version.' };
	if (!version) return { field, sentence: 'Choose the version whose lines it is sewn on now.' };
	if (version.number <= toile.stitchedTo)
		return { field, sentence: `It is sewn on the lines of version ${toile.stitchedTo}: choose a later version.` };
	return undefined;
}
