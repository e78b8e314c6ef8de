/** Months after which a figure is measured again (Principles of Pattern Alteration, E-372, rev. 2006, p. 1). */
const stale = 6;

/**
 * Whether a sheet taken on one day is older than so many calendar months on another. Days are `YYYY-MM-DD`; the day of the
 * month that a shorter month does not have counts as its last. Refuses what is not a day: that is a mistake of ours.
 */
export function measurementsOlderThan(takenOn: string, today: string, months = stale): boolean {
	const taken = dayParts(takenOn);
	dayParts(today);
	const count = taken.year * 12 + taken.month - 1 + months;
	const year = Math.floor(count / 12);
	const month = (count % 12) + 1;
	const day = Math.min(taken.day, daysIn(year, month));
	return today > written(year, month, day);
}

/** The reminder to measure again, when it is due. */
export function measurementAgeReminder(takenOn: string, today: string): string | undefined {
	if (!measurementsOlderThan(takenOn, today)) return undefined;
	return `These measurements are more than ${stale} months old. Measure again before cutting.`;
}

function dayParts(day: string): { readonly year: number; readonly month: number; readonly day: number } {
	const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
	const [year, month, date] = (found ?? []).slice(1).map(Number);
	if (!found || month < 1 || month > 12 || date < 1 || date > daysIn(year, month))
		throw new Error(`a day is written YYYY-MM-DD, not ${day}`);
	return { year, month, day: date };
}

function daysIn(year: number, month: number): number {
	if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
	return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function written(year: number, month: number, day: number): string {
	return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
