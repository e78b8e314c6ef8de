import { and, desc, eq } from 'drizzle-orm';
import { entries } from '../database/schema/log.ts';
import type { Journal } from './journal.ts';
import type { Store } from './store.ts';

/** Adds a line to the log. Its sentence names no wearer: wearers can be forgotten, the log cannot be changed. */
export function logEntry(
	store: Store,
	what: string,
	sentence: string,
	about: { readonly garment?: string; readonly wearer?: string }
): void {
	store.db
		.insert(entries)
		.values({ at: store.now(), what, sentence, garment: about.garment, wearer: about.wearer })
		.run();
}

export function log({ db }: Store): Pick<Journal, 'entries'> {
	return {
		entries: ({ garment, wearer, limit = 200 } = {}) =>
			db
				.select()
				.from(entries)
				.where(
					and(
						garment === undefined ? undefined : eq(entries.garment, garment),
						wearer === undefined ? undefined : eq(entries.wearer, wearer)
					)
				)
				.orderBy(desc(entries.number))
				.limit(limit)
				.all()
	};
}
