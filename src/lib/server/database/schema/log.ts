import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { id, instant, revision } from './columns.ts';
import { garments } from './garments.ts';
import { wearers } from './wearers.ts';

export const notes = sqliteTable('notes', {
	id: id(),
	revision: revision(),
	garment: text('garment').references(() => garments.id),
	wearer: text('wearer').references(() => wearers.id),
	feature: text('feature'),
	text: text('text').notNull(),
	at: instant('at')
});

/** The log that is only ever added to. Its sentences name no wearer. */
export const entries = sqliteTable('entries', {
	number: integer('number').primaryKey({ autoIncrement: true }),
	at: instant('at'),
	what: text('what').notNull(),
	sentence: text('sentence').notNull(),
	garment: text('garment').references(() => garments.id),
	wearer: text('wearer').references(() => wearers.id)
});

/**
 * Holds the wearer who is being forgotten while that is done: the one thing that the triggers give way to. Its own trigger
 * copies `at` and `sentence` into the log, so that it cannot be used without leaving an entry.
 */
export const forgetting = sqliteTable('forgetting', {
	wearer: text('wearer')
		.primaryKey()
		.references(() => wearers.id),
	at: instant('at'),
	sentence: text('sentence').notNull()
});
