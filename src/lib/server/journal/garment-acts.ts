import { eq, max } from 'drizzle-orm';
import { garments } from '../database/schema/garments.ts';
import { findEasePreset } from '../../measure/ease-ranges.ts';
import { kept, refused, refusedFor, stale, unknown } from './answers.ts';
import type { Change, GarmentFields } from './changes.ts';
import { garmentOptions } from './engine-options.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import { parsed } from './parsed.ts';
import { allGarments, findGarment } from './garments.ts';
import { checkDay, checkName, checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { findVersion, writeVersion } from './versions.ts';
import { findSheet, findWearer, wearerIsForgotten } from './wearers.ts';

export function garmentActs(store: Store): Pick<Journal, 'garments' | 'addGarment' | 'reviseGarment'> {
	const { db, engine, newId, now, writing } = store;
	return {
		garments: () => allGarments(store),

		addGarment: (input) =>
			writing(() => {
				const wearer = findWearer(store, input.wearer);
				if (!wearer) return refused([{ field: 'wearer', sentence: 'Choose the wearer, or add one.' }]);
				if (wearer.forgottenAt) return refusedFor(wearerIsForgotten);
				const draft = parsed('draft', () => engine.parseDraft(input.draft));
				const problems = problemsOf(
					garmentProblems(store, input.wearer, input),
					checkWords('sourceName', input.sourceName),
					'problems' in draft ? draft.problems : undefined
				);
				if (problems.length > 0 || 'problems' in draft) return refused(problems);

				const id = newId();
				const number =
					(db
						.select({ last: max(garments.number) })
						.from(garments)
						.get()?.last ?? 0) + 1;
				db.insert(garments)
					.values({ ...fieldsOf(input), id, number, name: input.name.trim(), wearer: input.wearer, addedAt: now() })
					.run();
				const garment = findGarment(store, id)!;
				writeVersion(store, draft.value, {
					garment: id,
					number: 0,
					reason: 'base',
					source: input.source,
					sourceName: input.sourceName,
					alterations: [],
					steps: [],
					unplaced: [],
					queries: engine.check(draft.value, { ...garmentOptions(store, garment), base: draft.value })
				});
				logEntry(store, 'garment-added', `Garment ${number} was begun with its base draft.`, {
					garment: id,
					wearer: input.wearer
				});
				return kept({ garment, version: findVersion(store, id, 0)! });
			}),

		reviseGarment: (id, revision, change) =>
			writing(() => {
				const garment = findGarment(store, id);
				if (!garment) return unknown('garment');
				if (garment.revision !== revision) return stale(garment);
				const problems = garmentProblems(store, garment.wearer, change);
				if (problems.length > 0) return refused(problems);
				db.update(garments)
					.set({ ...fieldsOf(change), name: change.name?.trim(), revision: revision + 1 })
					.where(eq(garments.id, id))
					.run();
				return kept(findGarment(store, id)!);
			})
	};
}

const fieldsOf = ({ madeFor, neededOn, cloth, easePreset, sheet, note }: Change<GarmentFields>) => ({
	madeFor,
	neededOn,
	cloth,
	easePreset,
	sheet,
	note
});

function garmentProblems(store: Store, wearer: string, change: Change<GarmentFields>) {
	const { name, madeFor, neededOn, cloth, easePreset, sheet, note } = change;
	return problemsOf(
		checkName('name', name, 'Give the garment a name, for example “Governess jacket”.'),
		checkWords('madeFor', madeFor),
		checkDay('neededOn', neededOn),
		checkWords('cloth', cloth),
		easePreset && !findEasePreset(easePreset)
			? { field: 'easePreset', sentence: 'Choose one of the ranges of ease, or none.' }
			: undefined,
		sheet && findSheet(store, sheet)?.wearer !== wearer
			? { field: 'sheet', sentence: 'Choose one of this wearer’s measurement sheets, or the latest.' }
			: undefined,
		checkWords('note', note)
	);
}
