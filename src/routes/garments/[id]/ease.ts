import type { GarmentPage, Preview } from '$lib/server/journal/pages.ts';
import type { Version } from '$lib/server/journal/records.ts';
import { easeTable } from '$lib/engine/index.ts';
import type { Draft } from '$lib/engine/index.ts';
import { findEasePreset } from '$lib/measure/ease-ranges.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { easeRows } from '$lib/ui/garment/ease-rows.ts';
import { atStart } from '$lib/ui/fitting/casing.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';

/**
 * Ease at the balance lines, and what became of it: of the fitting in hand where there is one, else of the latest version,
 * against the version before it; over the sheet that the garment's ease is reckoned from. Undefined before the wearer is
 * measured.
 */
export function easeNow({ garment, sheet, foundations }: GarmentPage, versions: readonly Version[], preview?: Preview) {
	if (!sheet) return undefined;
	const latest = versions[versions.length - 1]!;
	const previous = versions[versions.length - 2];
	const [now, before, beforeName, nowName] = preview
		? [preview.after, preview.before, versionName(preview.onto), fittingName(preview.fitting).toLowerCase()]
		: [latest.draft, previous?.draft, previous && versionName(previous.number), versionName(latest.number)];
	const preset = garment.easePreset === null ? undefined : findEasePreset(garment.easePreset);
	const measures = measuresByLevel(sheet.measures);
	const table = (draft: Draft) => easeTable(draft, measures);
	const { rows, notMeasured } = easeRows(table(now), before && table(before), preset);
	const over = foundations.find(({ id }) => id === sheet.foundation)?.name;
	return {
		rows,
		...(beforeName !== undefined && { before: beforeName }),
		words: [
			`${preview ? `With the alterations of ${nowName}` : atStart(nowName)}, round the body.`,
			`Body as measured on ${dayWords(sheet.date)}${over ? ` over ${over}` : ''}.`,
			preset ? `Wanted: ${preset.name.toLowerCase()}.` : 'No ease is asked for yet.',
			...(notMeasured.length > 0 ? [`Not measured: ${notMeasured.join(', ').toLowerCase()}.`] : [])
		].join(' ')
	};
}

const versionName = (number: number) => (number === 0 ? 'the draft' : `version ${number}`);
