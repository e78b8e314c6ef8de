import { cuttingLines } from '$lib/engine/index.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { FittingWithContents, GarmentPage, Preview } from '$lib/server/journal/pages.ts';
import type { Alteration, Fitting } from '$lib/server/journal/records.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { cutPaths } from '$lib/ui/drawing/cut-paths.ts';
import { tellEarlier, type EarlierAlteration } from '$lib/ui/fitting/carried/earlier.ts';
import type { FittingGround, GroundAlteration } from '$lib/ui/fitting/ground.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { captionOf } from './caption-of.ts';

/** Everything that the fitting page is computed from, as plain data, from one reading of the journal. */
export function groundOf(
	journal: Journal,
	page: GarmentPage,
	{ fitting, alterations, observations }: FittingWithContents,
	preview: Preview,
	unit: Unit
): FittingGround {
	const { before, after, queries, checks } = preview;
	const cut = toileCut(journal, page, fitting);
	const { easePreset } = page.garment;
	return {
		unit,
		caption: captionOf(page, fitting),
		base: before,
		alterations: alterations.map(groundAlteration),
		checks,
		...(fitting.closedAt !== null && { frozen: { after, queries } }),
		...(cut && { cut }),
		piecesOff: fitting.stateOfToile.piecesOff ?? [],
		...(page.sheet && { body: bodyOf(page, page.sheet) }),
		...(easePreset !== null && { easePreset }),
		earlier: tellEarlier(earlierAlterations(journal, page, fitting), unit),
		letters: Object.fromEntries(observations.map(({ id, letter }) => [id, letter]))
	};
}

function groundAlteration(one: Alteration): GroundAlteration {
	const { id, revision, number, position, act, intent, measured, readings, note, answers, state, pairedWith } = one;
	return {
		...{ id, revision, number, position, act, intent, measured, readings, note, answers, state, pairedWith },
		takenOut: one.withdrawal !== null,
		...(one.settles && { settles: one.settles.sentence })
	};
}

/** The cutting lines of the toile on the body. */
function toileCut(journal: Journal, { garment, toiles }: GarmentPage, { toile: id }: Fitting) {
	const toile = toiles.find((one) => one.id === id);
	const draft = toile && journal.version(garment.id, toile.cutFrom)?.draft;
	return draft && cutPaths(cuttingLines(draft, { default: toile.allowance, edges: toile.allowances }));
}

function bodyOf({ foundations }: GarmentPage, sheet: NonNullable<GarmentPage['sheet']>) {
	const over = foundations.find(({ id }) => id === sheet.foundation)?.name;
	return {
		measures: measuresByLevel(sheet.measures),
		words: `Body as measured on ${dayWords(sheet.date)}${over ? ` over ${over}` : ''}.`
	};
}

/** What stands of all earlier fittings, each with the draft that it was carried to. */
function earlierAlterations(journal: Journal, page: GarmentPage, now: Fitting): readonly EarlierAlteration[] {
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
function howPinned({ foundations }: GarmentPage, { foundation, pinnedBy }: Fitting): string {
	const over = foundations.find(({ id }) => id === foundation)?.name;
	return [over && `over ${over}`, pinnedBy && `pinned by ${pinnedBy}`].filter(Boolean).join(', ');
}
