import { eq, max } from 'drizzle-orm';
import { foundations, sheetMeasures, sheets, wearers } from '../database/schema/wearers.ts';
import { kept, refused, refusedFor, stale, unknown } from './answers.ts';
import type { NewFoundation, NewSheet, NewWearer } from './changes.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import { checkMeasures } from './measures.ts';
import { checkDay, checkName, checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { findFoundation, findSheet, findWearer, wearerIsForgotten } from './wearers.ts';

type WearerActs = Pick<
	Journal,
	'addWearer' | 'reviseWearer' | 'addFoundation' | 'reviseFoundation' | 'addSheet' | 'reviseSheet'
>;

export function wearerActs(store: Store): WearerActs {
	const { db, writing, newId, now } = store;
	return {
		addWearer: (input) =>
			writing(() => {
				const problems = wearerProblems(input);
				if (problems.length > 0) return refused(problems);
				const id = newId();
				const number =
					(db
						.select({ last: max(wearers.number) })
						.from(wearers)
						.get()?.last ?? 0) + 1;
				db.insert(wearers).values({ id, number, name: input.name.trim(), note: input.note, addedAt: now() }).run();
				logEntry(store, 'wearer-added', `Wearer ${number} was added.`, { wearer: id });
				return kept(findWearer(store, id)!);
			}),

		reviseWearer: (id, revision, change) =>
			writing(() => {
				const wearer = findWearer(store, id);
				if (!wearer) return unknown('wearer');
				if (wearer.revision !== revision) return stale(wearer);
				if (wearer.forgottenAt) return refusedFor(wearerIsForgotten);
				const problems = wearerProblems(change);
				if (problems.length > 0) return refused(problems);
				const { name, note } = change;
				db.update(wearers)
					.set({ name: name?.trim(), note, revision: revision + 1 })
					.where(eq(wearers.id, id))
					.run();
				return kept(findWearer(store, id)!);
			}),

		addFoundation: (wearerId, input) =>
			writing(() => {
				const wearer = findWearer(store, wearerId);
				if (!wearer) return unknown('wearer');
				if (wearer.forgottenAt) return refusedFor(wearerIsForgotten);
				const problems = foundationProblems(input);
				if (problems.length > 0) return refused(problems);
				const id = newId();
				db.insert(foundations)
					.values({ id, wearer: wearerId, name: input.name.trim(), note: input.note, addedAt: now() })
					.run();
				return kept(findFoundation(store, id)!);
			}),

		reviseFoundation: (id, revision, change) =>
			writing(() => {
				const foundation = findFoundation(store, id);
				if (!foundation) return unknown('foundation');
				if (foundation.revision !== revision) return stale(foundation);
				if (findWearer(store, foundation.wearer)!.forgottenAt) return refusedFor(wearerIsForgotten);
				const problems = foundationProblems(change);
				if (problems.length > 0) return refused(problems);
				const { name, note } = change;
				db.update(foundations)
					.set({ name: name?.trim(), note, revision: revision + 1 })
					.where(eq(foundations.id, id))
					.run();
				return kept(findFoundation(store, id)!);
			}),

		addSheet: (wearerId, input) =>
			writing(() => {
				const wearer = findWearer(store, wearerId);
				if (!wearer) return unknown('wearer');
				if (wearer.forgottenAt) return refusedFor(wearerIsForgotten);
				const problems = sheetProblems(store, wearerId, input);
				if (problems.length > 0) return refused(problems);
				const id = newId();
				const { measures, ...fields } = input;
				db.insert(sheets)
					.values({ ...fieldsOfSheet(fields), id, wearer: wearerId, addedAt: now() })
					.run();
				writeMeasures(store, id, measures);
				logEntry(store, 'measured', `Wearer ${wearer.number} was measured on ${input.date}.`, { wearer: wearerId });
				return kept(findSheet(store, id)!);
			}),

		reviseSheet: (id, revision, change) =>
			writing(() => {
				const sheet = findSheet(store, id);
				if (!sheet) return unknown('measurement sheet');
				if (sheet.revision !== revision) return stale(sheet);
				const problems = sheetProblems(store, sheet.wearer, change);
				if (problems.length > 0) return refused(problems);
				db.update(sheets)
					.set({ ...fieldsOfSheet({ ...sheet, ...change }), revision: revision + 1 })
					.where(eq(sheets.id, id))
					.run();
				if (change.measures) {
					db.delete(sheetMeasures).where(eq(sheetMeasures.sheet, id)).run();
					writeMeasures(store, id, change.measures);
				}
				return kept(findSheet(store, id)!);
			})
	};
}

const fieldsOfSheet = ({ date, foundation, takenBy, note }: Omit<NewSheet, 'measures'>) => ({
	date,
	foundation,
	takenBy,
	note
});

function writeMeasures({ db }: Store, sheet: string, measures: NewSheet['measures']): void {
	for (const [name, mm] of Object.entries(measures)) db.insert(sheetMeasures).values({ sheet, name, mm }).run();
}

const wearerProblems = ({ name, note }: Partial<NewWearer>) =>
	problemsOf(checkName('name', name, 'Give the wearer a name: initials are enough.'), checkWords('note', note));

const foundationProblems = ({ name, note }: Partial<NewFoundation>) =>
	problemsOf(
		checkName('name', name, 'Name what is worn under it, for example “chemise, corset laced to 25¾″”.'),
		checkWords('note', note)
	);

function sheetProblems(store: Store, wearer: string, { date, foundation, takenBy, note, measures }: Partial<NewSheet>) {
	return problemsOf(
		checkDay('date', date),
		foundation !== undefined && findFoundation(store, foundation)?.wearer !== wearer
			? { field: 'foundation', sentence: 'Choose what was worn under it, one of this wearer’s own.' }
			: undefined,
		checkWords('takenBy', takenBy),
		checkWords('note', note),
		checkMeasures('measures', measures),
		measures && Object.keys(measures).length === 0
			? { field: 'measures', sentence: 'Write at least one measure.' }
			: undefined
	);
}
