import { easeTable, undividedName } from '$lib/engine/index.ts';
import { findEasePreset } from '$lib/measure/ease-ranges.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Alteration, Fitting, MeasurementSheet } from '$lib/server/journal/records.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { alterationTitle } from '$lib/ui/fitting/alteration-words.ts';
import { earlierWork, type EarlierAlteration } from '$lib/ui/fitting/earlier.ts';
import { effectOf, targetOfIntent } from '$lib/ui/fitting/effect.ts';
import { field } from '$lib/ui/fitting/typed.ts';
import { easeRows } from '$lib/ui/garment/ease-rows.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { letterOf } from '$lib/ui/version/query-rows.ts';
import type { InHand } from './in-hand.ts';

/** What the alteration in the hand, or the one just kept, does: everything under “What it does”. */
export function toldOf(journal: Journal, page: GarmentPage, fitting: Fitting, held: InHand, unit: Unit) {
	const { focus, preview } = held;
	const [first] = focus;
	if (!first) return undefined;
	const last = focus[focus.length - 1]!;
	const record = recordOf(page, held);
	const measured = held.read && 'read' in held.read ? held.read.read.measured : (record?.measured ?? null);
	const effect = effectOf(focus, preview.before, { unit, measured, here: field(held.typed, 'here') });
	const touched = new Set(
		focus.flatMap(({ step }) => step?.touched.map(({ feature }) => undividedName(feature)) ?? [])
	);
	const target = targetOfIntent(first.alteration);
	return {
		title: alterationTitle(first.before, first.alteration, unit, record?.act),
		notRead: focus.some(({ unplaced }) => unplaced?.why === 'not-read'),
		effect,
		ease: page.sheet ? easeTold(page, page.sheet, first.before, last.after, effect.levels) : undefined,
		round: page.sheet ? [] : effect.levels,
		queries: preview.queries
			.filter(
				({ code, where }) =>
					!['unplaced', 'not-read'].includes(code) &&
					(touched.has(undividedName(where)) ||
						undividedName(where) === target ||
						(code === 'waist-under-body' && effect.levels.includes(where)))
			)
			.map(({ sentence, severity }, i) => ({ letter: letterOf(i), sentence, severity })),
		earlier: earlierWork(first.before, first.alteration, earlierAlterations(journal, page, fitting), unit)
	};
}

function recordOf(page: GarmentPage, { focus }: InHand): Alteration | undefined {
	const id = focus[0]?.alteration.id;
	return page.fittings.flatMap(({ alterations }) => alterations).find((one) => one.id === id);
}

function easeTold(
	{ garment, foundations }: GarmentPage,
	sheet: MeasurementSheet,
	before: Parameters<typeof easeTable>[0],
	after: Parameters<typeof easeTable>[0],
	levels: readonly string[]
) {
	const measures = measuresByLevel(sheet.measures);
	const [was, is] = [before, after].map((draft) =>
		easeTable(draft, measures).filter(({ level }) => levels.includes(level))
	);
	const preset = garment.easePreset === null ? undefined : findEasePreset(garment.easePreset);
	const over = foundations.find(({ id }) => id === sheet.foundation)?.name;
	return {
		...easeRows(is!, was, preset),
		words: `Body as measured on ${dayWords(sheet.date)}${over ? ` over ${over}` : ''}.`
	};
}

/** What stands of all earlier fittings, each with the draft that it was carried to. */
export function earlierAlterations(journal: Journal, page: GarmentPage, now: Fitting): readonly EarlierAlteration[] {
	return page.fittings
		.filter(({ fitting }) => fitting.id !== now.id && fitting.carriedInto !== null)
		.flatMap(({ fitting, alterations }) => {
			const draft = journal.version(page.garment.id, fitting.carriedInto! - 1)!.draft;
			const how = howPinned(page, fitting);
			return alterations
				.filter(({ state, withdrawal }) => state === 'standing' && withdrawal === null)
				.map(({ number, intent }) => ({ fitting: fittingName(fitting), number, intent, draft, how }));
		});
}

/** “over chemise and corset, pinned by M. Thorne” */
export function howPinned({ foundations }: GarmentPage, { foundation, pinnedBy }: Fitting): string {
	const over = foundations.find(({ id }) => id === foundation)?.name;
	return [over && `over ${over}`, pinnedBy && `pinned by ${pinnedBy}`].filter(Boolean).join(', ');
}
