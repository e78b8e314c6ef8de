import { formatLength } from './format-length.ts';
import { findBodyMeasure } from './names.ts';
import type { MeasurementSheet } from './names.ts';
import { inch } from './units.ts';
import type { Unit } from './units.ts';

export interface Doubt {
	readonly keys: readonly string[];
	readonly sentence: string;
}

/**
 * Pairs of which the first is the smaller on nearly every figure. That the upper chest stays under the bust is not among
 * them: in ASTM D5585-11e1 it is the larger at sizes 00, 0 and 2.
 */
const usuallySmaller: readonly (readonly [string, string])[] = [
	['under-bust', 'bust'],
	['waist', 'bust'],
	['waist', 'hip'],
	['bust', 'shoulder-girth'],
	['neck', 'neck-base'],
	['wrist', 'elbow'],
	['wrist', 'upper-arm'],
	['scye-depth', 'back-waist-length'],
	['neck-to-breast-point', 'neck-to-waist-front'],
	['shoulder-length', 'shoulder-width']
];

/** The usual bounds of each, in mm, wide enough for children and for large figures (common practice, no source). */
const bounds: Readonly<Record<string, readonly [number, number]>> = {
	round: [4 * inch, 75 * inch],
	width: [3 * inch, 30 * inch],
	length: [2 * inch, 90 * inch]
};

/** What is worth asking about the values of one sheet (mm by key). It only asks: no figure is refused for its shape. */
export function askAbout(sheet: MeasurementSheet, unit: Unit): readonly Doubt[] {
	return [...unusualPairs(sheet, unit), ...outOfBounds(sheet, unit)];
}

function unusualPairs(sheet: MeasurementSheet, unit: Unit): Doubt[] {
	return usuallySmaller.flatMap(([small, large]) => {
		const less = sheet[small];
		const more = sheet[large];
		if (less === undefined || more === undefined || less < more) return [];
		const given = `${nameOf(small)} ${say(less, unit)}, ${nameOf(large).toLowerCase()} ${say(more, unit)}`;
		return [
			{ keys: [small, large], sentence: `${given}: is that how they were measured, or were the two changed about?` }
		];
	});
}

function outOfBounds(sheet: MeasurementSheet, unit: Unit): Doubt[] {
	return Object.entries(sheet).flatMap(([key, mm]) => {
		const measure = findBodyMeasure(key);
		if (measure === undefined || mm === undefined) return [];
		const [least, most] = bounds[measure.group];
		if (mm >= least && mm <= most) return [];
		const other = unit === 'in' ? 'centimetres' : 'inches';
		return [{ keys: [key], sentence: `${measure.name} ${say(mm, unit)}: is that right, or was it read in ${other}?` }];
	});
}

function nameOf(key: string): string {
	return findBodyMeasure(key)?.name ?? key;
}

function say(mm: number, unit: Unit): string {
	return formatLength(mm, unit).text;
}
