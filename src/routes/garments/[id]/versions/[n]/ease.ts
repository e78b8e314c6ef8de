import { easeTable } from '$lib/engine/index.ts';
import { findEasePreset } from '$lib/measure/ease-ranges.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Version } from '$lib/server/journal/records.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { easeRows } from '$lib/ui/garment/ease-rows.ts';
import { versionInSentence } from '$lib/ui/version/version-name.ts';

/** Ease of a version at the balance lines, with that of the version before; undefined until the wearer is measured. */
export function easeOfVersion(
	{ garment, sheet, foundations }: GarmentPage,
	{ draft, number }: Version,
	before: Version | undefined
) {
	if (!sheet) return undefined;
	const preset = garment.easePreset === null ? undefined : findEasePreset(garment.easePreset);
	const measures = measuresByLevel(sheet.measures);
	const { rows, notMeasured } = easeRows(
		easeTable(draft, measures),
		before && easeTable(before.draft, measures),
		preset
	);
	const over = foundations.find(({ id }) => id === sheet.foundation)?.name;
	return {
		rows,
		...(before && { before: versionInSentence(number - 1) }),
		words: [
			`Round the body, as measured on ${dayWords(sheet.date)}${over ? ` over ${over}` : ''}.`,
			preset ? `Wanted: ${preset.name.toLowerCase()}.` : 'No ease is asked for yet.',
			...(notMeasured.length > 0 ? [`Not measured: ${notMeasured.join(', ').toLowerCase()}.`] : [])
		].join(' ')
	};
}
