import { integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import { id, instant } from './columns.ts';

/** The passphrase that other devices give, as scrypt's hash; one row, or none before one is set. */
export const passphrase = sqliteTable('passphrase', {
	one: integer('one').primaryKey(),
	salt: text('salt').notNull(),
	hash: text('hash').notNull(),
	/** scrypt's N. */
	cost: integer('cost').notNull(),
	setAt: instant('set_at')
});

/**
 * Devices that are signed in, and for a month those that were signed out, which wipe themselves when they come again. Only
 * the hash of what each holds is here, so that the file opens no door.
 */
export const signIns = sqliteTable(
	'sign_ins',
	{
		id: id(),
		tokenHash: text('token_hash').notNull(),
		device: text('device').notNull(),
		address: text('address').notNull(),
		beganAt: instant('began_at'),
		seenAt: instant('seen_at'),
		endedAt: text('ended_at')
	},
	(table) => [uniqueIndex('sign_ins_token').on(table.tokenHash)]
);
