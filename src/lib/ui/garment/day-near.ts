import { dayWords } from '../day-words.ts';

/** A day as it is said on another: “today”, “10 Mar”, and with its year if that is another one: “10 March 2025”. */
export function dayNear(day: string, today: string, form: 'short' | 'plain' = 'short'): string {
	if (day === today) return 'today';
	return dayWords(day, day.slice(0, 4) === today.slice(0, 4) ? form : 'whole');
}
