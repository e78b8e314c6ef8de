import { bodyMeasures, isoStandard } from '$lib/measure/names.ts';
import { askAbout } from '$lib/measure/plausibility.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { MeasurementSheet } from '$lib/server/journal/records.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { fieldOf, shownMeasure, somethingElse } from './read-sheet.ts';

/** One measure of a sheet's form. */
export interface MeasureField {
	readonly key: string;
	readonly name: string;
	readonly label: string;
	/** How to take it. */
	readonly how: string;
	/** What it is called in the standard, or that it is the trade's own. */
	readonly iso: string;
	/** What is worth asking about it. */
	readonly asks?: string;
	/** What it was on the sheet before. */
	readonly last?: string;
}

const groups = [
	['round', 'Round the body'],
	['width', 'Across the body'],
	['length', 'Along the body']
] as const;

/**
 * The measures of a sheet, in groups, with what is worth asking about those that were taken, and what each was on the sheet
 * `before`, where there is one.
 */
export function measureGroups(
	measures: Readonly<Record<string, number>>,
	unit: Unit,
	before?: Pick<MeasurementSheet, 'date' | 'measures'>
) {
	const day = before && dayWords(before.date);
	const doubts = askAbout(measures, unit);
	return groups.map(([group, name]) => ({
		name,
		fields: bodyMeasures
			.filter((measure) => measure.group === group)
			.map(({ key, name: label, how, isoReference }): MeasureField => {
				const asks = doubts.find(({ keys }) => keys[0] === key)?.sentence;
				const iso = isoReference === 'own' ? 'the trade’s own' : `${isoStandard}: ${isoReference}`;
				const mm = before?.measures[key];
				const last = mm === undefined ? undefined : `${shownMeasure(mm, unit)} on ${day}`;
				return { key, name: fieldOf(key), label, how, iso, ...(asks && { asks }), ...(last && { last }) };
			})
	}));
}

/** What a sheet says, field by field, as its form shows it. */
export function sheetFields(sheet: MeasurementSheet, unit: Unit): Readonly<Record<string, string>> {
	const { date, takenBy, foundation, note, measures } = sheet;
	const shown = Object.entries(measures).map(([key, mm]) => [fieldOf(key), shownMeasure(mm, unit)] as const);
	return { date, takenBy, foundation, note, ...Object.fromEntries(shown) };
}

/** What can be chosen as worn under it. */
export function foundationOptions(foundations: readonly { readonly id: string; readonly name: string }[]) {
	return [
		...foundations.map(({ id, name }) => ({ value: id, label: name })),
		{ value: somethingElse, label: 'Something else, named beside it' }
	];
}

export const unitWords = (unit: Unit) =>
	unit === 'in' ? 'inches: 37, 25 3/4, or 65 cm' : 'cm: 94, 65.5, or 25 3/4 in';
