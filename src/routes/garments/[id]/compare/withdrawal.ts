import type { Query } from '$lib/engine/index.ts';
import { inUnit } from '$lib/measure/in-unit.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import { isChanged, roundChanges, roundWords } from '$lib/ui/compare/round-changes.ts';
import { atStart } from '$lib/ui/fitting/casing.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { versionInSentence } from '$lib/ui/version/version-name.ts';

/**
 * What taking one of a line's alterations back out would come to: of those that stand in the latest version the one that is
 * asked for, else the last. Undefined where none of them stands any more.
 */
export function withdrawalOf(
	journal: Journal,
	page: GarmentPage,
	ids: readonly string[],
	asked: string | null,
	address: string,
	unit: Unit
) {
	const latest = page.versions[page.versions.length - 1];
	const standing = ids.filter((id) => latest.alterations.includes(id));
	const id = standing.find((one) => one === asked) ?? standing[standing.length - 1];
	const preview = id === undefined ? undefined : journal.previewWithdrawal(id);
	if (!preview) return undefined;
	const measures = page.sheet ? measuresByLevel(page.sheet.measures) : {};
	const changes = roundChanges(preview.before, preview.after, measures);
	const name = nameIn(page, preview.alteration.id);
	return {
		alteration: preview.alteration.id,
		number: preview.alteration.number,
		name,
		latest: preview.latest,
		others: standing.map((one) => ({
			name: atStart(nameIn(page, one)),
			href: `${address}&out=${one}#withdraw`,
			here: one === id
		})),
		hindrances: preview.hindrances.map((sentence) => inUnit(sentence, unit)),
		sentences: [
			`${atStart(versionInSentence(preview.latest + 1))} would be made without it; ${versionInSentence(preview.latest)} stays.`,
			changes.some(isChanged)
				? `${atStart(roundWords(changes, unit))}.`
				: 'It stays as large as it is at every balance line.',
			...queryChanges(latest.queries, preview.queries).map((sentence) => inUnit(sentence, unit)),
			...(preview.unplaced.length === 0
				? ['No other alteration leans on it.']
				: preview.unplaced.map(
						({ alteration, sentence }) =>
							`${atStart(nameIn(page, alteration))} would lose its place. ${inUnit(sentence, unit)}`
					))
		]
	};
}

/** “alteration 4 of fitting 2” */
function nameIn({ fittings }: GarmentPage, id: string): string {
	for (const { fitting, alterations } of fittings) {
		const number = alterations.find((one) => one.id === id)?.number;
		if (number !== undefined) return `alteration ${number} of ${fittingName(fitting).toLowerCase()}`;
	}
	return 'an alteration';
}

const waits = ['unplaced', 'no-join', 'too-tight'];

/** What would be asked that is not asked now, what no more, and what in other words. */
function queryChanges(now: readonly Query[], then: readonly Query[]): readonly string[] {
	const same = (one: Query) => (other: Query) => one.code === other.code && one.where === other.where;
	const asked = then.filter(({ code }) => !waits.includes(code));
	return [
		...now.filter((query) => !asked.some(same(query))).map(({ sentence }) => `No longer asked: ${sentence}`),
		...asked
			.filter((query) => !now.some((one) => same(query)(one) && one.sentence === query.sentence))
			.map((query) => `${now.some(same(query)) ? 'It would read' : 'It would be asked'}: ${query.sentence}`)
	];
}
