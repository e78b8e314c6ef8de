import { bodyMeasures } from '../../measure/names.ts';

/** A measurement sheet as far as its table goes: mm by the measure's key. */
export interface SheetMeasured {
	readonly measures: Readonly<Record<string, number>>;
}

/** One measure on every sheet, in the order of the sheets. */
export interface MeasureRow {
	readonly key: string;
	readonly name: string;
	/** Not taken on a sheet: undefined. `change`: mm since the last sheet before it that has the measure, where it differs. */
	readonly cells: readonly ({ readonly mm: number; readonly change?: number } | undefined)[];
}

/** Less than this is no change, mm: half a sixteenth of an inch. */
const least = 0.8;

/**
 * The measures of several sheets side by side, newest first, in the order in which they are taken: each with what changed
 * since the sheet before. Measures that no sheet has are left out.
 */
export function sheetRows(sheets: readonly SheetMeasured[]): readonly MeasureRow[] {
	return bodyMeasures.flatMap(({ key, name }) => {
		const values = sheets.map(({ measures }) => measures[key]);
		if (values.every((mm) => mm === undefined)) return [];
		const cells = values.map((mm, i) => {
			if (mm === undefined) return undefined;
			const before = values.slice(i + 1).find((value) => value !== undefined);
			const change = before === undefined ? 0 : mm - before;
			return Math.abs(change) < least ? { mm } : { mm, change };
		});
		return [{ key, name, cells }];
	});
}
