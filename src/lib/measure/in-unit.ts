import { formatLength } from './format-length.ts';
import { inch } from './units.ts';
import type { Unit } from './units.ts';

/** `1 1/4″`, `3/8″`, `2″`, as the engine and the journal write lengths inside their sentences. */
const inchesWritten = /(?<![\d/.,])(?:(\d{1,3}) (\d{1,2})\/(\d{1,2})|(\d{1,2})\/(\d{1,2})|(\d{1,3}))″/g;

/**
 * A sentence that has its lengths in inches, in the unit that is read: centimetres in whole millimetres, or half millimetres
 * below one. Sentences are rounded to sixteenths when they are made, so a length is off by that at most: 0.8 mm for the
 * sixteenth, half a millimetre for its own rounding. Figures that matter come beside their sentences.
 */
export function inUnit(sentence: string, unit: Unit): string {
	if (unit === 'in') return sentence;
	return sentence.replace(inchesWritten, (_all, whole, part, of, onlyPart, onlyOf, only) => {
		const [inches, numerator, denominator] = [whole ?? only ?? 0, part ?? onlyPart ?? 0, of ?? onlyOf ?? 1].map(Number);
		const mm = (inches + numerator / denominator) * inch;
		return formatLength(mm, unit, { denominator: mm < 10 ? 16 : 8 }).text;
	});
}
