import { lengthIn, optionalDay, readForm, text, type FormFault, type Typed } from '$lib/server/http/form.ts';
import type { NewSheet } from '$lib/server/journal/changes.ts';
import type { MeasurementSheet } from '$lib/server/journal/records.ts';
import { formatLength } from '$lib/measure/format-length.ts';
import { bodyMeasures } from '$lib/measure/names.ts';
import type { Unit } from '$lib/measure/units.ts';
import { z } from 'zod';

/** The choice of what is worn under it that adds something. */
export const somethingElse = 'new';

/** A sheet as its form says it; the foundation may be one that is still to be added, by its name. */
export interface SheetTyped {
	readonly sheet: Omit<NewSheet, 'foundation'>;
	readonly foundation: { readonly id: string } | { readonly name: string };
}

const fields = z
	.object({
		date: optionalDay.refine((day) => day !== undefined, 'Write the day on which it was measured.'),
		foundation: text({ needed: 'Choose what was worn under it.' }),
		newFoundation: text({ max: 200 }).refine((name) => !/\p{Cc}/u.test(name), 'A name is one line of plain text.'),
		takenBy: text({ max: 200 }),
		note: text({ max: 20_000 })
	})
	.refine(({ foundation, newFoundation }) => foundation !== somethingElse || newFoundation !== '', {
		path: ['newFoundation'],
		message: 'Name what was worn under it, for example “chemise, corset laced to 25 3/4″”.'
	});

/** The field of a measure. */
export const fieldOf = (key: string) => `measures.${key}`;

/** A measure as its field shows it: in sixteenths, or half millimetres. */
export const shownMeasure = (mm: number, unit: Unit) => formatLength(mm, unit, { denominator: 16 }).text;

/**
 * Reads a measurement sheet's form: each measure that is not left empty, in any of the tape's forms, with a sentence for each
 * that cannot be read. A field that still says what it was drawn with keeps the exact measure of `before`.
 */
export function readSheet(
	typed: Typed,
	unit: Unit,
	before?: MeasurementSheet
): { readonly value: SheetTyped } | { readonly fault: FormFault } {
	const read = readForm(fields, typed);
	const problems: Record<string, string> = 'fault' in read ? { ...read.fault.problems } : {};
	const measures: Record<string, number> = {};
	for (const { key } of bodyMeasures) {
		const words = typed[fieldOf(key)]?.trim() ?? '';
		if (words === '') continue;
		const was = before?.measures[key];
		if (was !== undefined && words === shownMeasure(was, unit)) {
			measures[key] = was;
			continue;
		}
		const length = lengthIn(unit).safeParse(words);
		if (length.success) measures[key] = length.data;
		else problems[fieldOf(key)] = length.error.issues[0]!.message;
	}
	if ('fault' in read || Object.keys(problems).length > 0) return { fault: { typed, problems } };
	const { date, foundation, newFoundation, takenBy, note } = read.value;
	return {
		value: {
			sheet: { date: date!, takenBy, note, measures },
			foundation: foundation === somethingElse ? { name: newFoundation } : { id: foundation }
		}
	};
}
