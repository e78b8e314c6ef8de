import { integer, primaryKey, real, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import { id, instant, revision, words } from './columns.ts';

export const wearers = sqliteTable(
	'wearers',
	{
		id: id(),
		revision: revision(),
		number: integer('number').notNull(),
		name: text('name').notNull(),
		note: words('note'),
		addedAt: instant('added_at'),
		forgottenAt: text('forgotten_at')
	},
	(table) => [uniqueIndex('wearers_number').on(table.number)]
);

/** What is worn under it, named by the wearer's own things. */
export const foundations = sqliteTable('foundations', {
	id: id(),
	revision: revision(),
	wearer: text('wearer')
		.notNull()
		.references(() => wearers.id),
	name: text('name').notNull(),
	note: words('note'),
	addedAt: instant('added_at')
});

export const sheets = sqliteTable('sheets', {
	id: id(),
	revision: revision(),
	wearer: text('wearer')
		.notNull()
		.references(() => wearers.id),
	foundation: text('foundation')
		.notNull()
		.references(() => foundations.id),
	date: text('date').notNull(),
	takenBy: words('taken_by'),
	note: words('note'),
	addedAt: instant('added_at')
});

export const sheetMeasures = sqliteTable(
	'sheet_measures',
	{
		sheet: text('sheet')
			.notNull()
			.references(() => sheets.id),
		name: text('name').notNull(),
		mm: real('mm').notNull()
	},
	(table) => [primaryKey({ columns: [table.sheet, table.name] })]
);
