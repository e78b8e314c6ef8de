/** Days of the journal (`2026-03-10`) as people say them. */

const forms = {
	/** `10 March` */
	plain: new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' }),
	/** `10 Mar` */
	short: new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' }),
	/** `Tuesday 10 March` */
	weekday: new Intl.DateTimeFormat('en-GB', { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' }),
	/** `10 March 2026` */
	whole: new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' })
};

/** A day in words. Thrown: a text that is no day, which the journal never holds. */
export function dayWords(day: string, form: keyof typeof forms = 'plain'): string {
	return forms[form].format(new Date(`${day.slice(0, 10)}T00:00:00Z`)).replace(',', '');
}
