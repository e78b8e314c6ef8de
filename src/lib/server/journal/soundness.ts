import type { Problem } from './answer.ts';

/**
 * What is looked at before anything is written: each check answers the problem that it found, or none. A field that was
 * not given is sound; what may be missing and what not is the caller's to say.
 */
export type Check = Problem | undefined;

/** The problems among some checks. */
export const problemsOf = (...checks: readonly (Check | readonly Problem[])[]): Problem[] =>
	checks.flatMap((check) => check ?? []);

/** Names: not blank, on one line, at most 200 characters. */
export function checkName(field: string, value: string | undefined, sentence: string): Check {
	if (value === undefined) return undefined;
	if (value.trim() === '') return { field, sentence };
	if (value.length > 200) return { field, sentence: 'This name is too long: use at most 200 characters.' };
	if (/\p{Cc}/u.test(value)) return { field, sentence: 'A name is one line of plain text.' };
	return undefined;
}

/** Free text: at most 20,000 characters. */
export function checkWords(field: string, value: string | undefined): Check {
	if (value === undefined || value.length <= 20_000) return undefined;
	return { field, sentence: 'This text is too long: use at most 20,000 characters.' };
}

/** A day of the calendar, `2026-03-10`. */
export function checkDay(field: string, value: string | null | undefined): Check {
	if (value === undefined || value === null) return undefined;
	const parts = /^([1-9]\d{3})-(\d\d)-(\d\d)$/.exec(value);
	if (parts && isDay(Number(parts[1]), Number(parts[2]), Number(parts[3]))) return undefined;
	return { field, sentence: `“${value.slice(0, 40)}” is no day. Write it as year, month, day: 2026-03-10.` };
}

function isDay(year: number, month: number, day: number): boolean {
	const date = new Date(Date.UTC(year, month - 1, day));
	return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

/** A time of day, `14:30`. */
export function checkTime(field: string, value: string | null | undefined): Check {
	if (value === undefined || value === null || /^([01]\d|2[0-3]):[0-5]\d$/.test(value)) return undefined;
	return { field, sentence: `“${value.slice(0, 40)}” is no time of day. Write it as hour and minute: 14:30.` };
}

/** One of some words. */
export function checkOneOf(field: string, value: unknown, allowed: readonly unknown[]): Check {
	if (value === undefined || value === null || allowed.includes(value)) return undefined;
	return { field, sentence: `Choose one of these: ${allowed.join(', ')}.` };
}

/** A count of pins or the like. */
export function checkCount(field: string, value: number | null | undefined): Check {
	if (value === undefined || value === null || (Number.isInteger(value) && value >= 0 && value <= 10_000))
		return undefined;
	return { field, sentence: 'Write a whole number from 0 to 10,000.' };
}

/** A length in mm from `least` to `most`. */
export function checkLength(field: string, value: number | null | undefined, least: number, most: number): Check {
	if (value === undefined || value === null) return undefined;
	if (typeof value !== 'number' || !Number.isFinite(value)) return { field, sentence: 'This is no length.' };
	if (value < least)
		return { field, sentence: least === 0 ? 'This length cannot be below 0.' : `This length is below ${least} mm.` };
	if (value > most) return { field, sentence: `This length is above ${most} mm. Was it meant in another unit?` };
	return undefined;
}
