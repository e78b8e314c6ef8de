import { measurementAgeReminder } from '../../measure/measurement-age.ts';
import { dayWords } from '../day-words.ts';

/** A wearer to be measured, in the words of the list of what waits. */
export interface MeasureAgain {
	readonly what: string;
	readonly note: string;
	readonly act: string;
	readonly href: string;
}

/** Asks to measure a wearer for whom something is made: never measured yet, or too long ago. Undefined where the sheet holds. */
export function measureAgain(
	{ id, name, garments, lastMeasured }: { id: string; name: string; garments: number; lastMeasured: string | null },
	today: string
): MeasureAgain | undefined {
	if (garments === 0) return undefined;
	const href = `/wearers/${id}/sheets/new`;
	if (lastMeasured === null)
		return { what: `${name}: measure`, note: 'no measurement sheet yet, so no ease is shown', act: 'New sheet', href };
	if (measurementAgeReminder(lastMeasured, today) === undefined) return undefined;
	const note = `last sheet ${dayWords(lastMeasured, 'whole')}, more than 6 months ago`;
	return { what: `${name}: measure again`, note, act: 'New sheet', href };
}
