const months = [
	'January',
	'February',
	'March',
	'April',
	'May',
	'June',
	'July',
	'August',
	'September',
	'October',
	'November',
	'December'
];

/** `2026-03-11` as it is printed: `11 March 2026`. Anything that is not such a day is a mistake of ours. */
export function printedDate(day: string): string {
	const date = startOfDay(day);
	return `${date.getUTCDate()} ${months[date.getUTCMonth()]} ${date.getUTCFullYear()}`;
}

/** The first moment of a calendar day, in universal time: what a file of that day is dated with. */
export function startOfDay(day: string): Date {
	const date = new Date(/^\d{4}-\d{2}-\d{2}$/.test(day) ? `${day}T00:00:00Z` : NaN);
	if (Number.isNaN(date.getTime()) || date.toISOString().slice(0, 10) !== day)
		throw new Error(`a sheet is dated with a day such as 2026-03-11, not ${day}`);
	return date;
}
