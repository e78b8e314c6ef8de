import { integer, real, sqliteTable, text, uniqueIndex, type AnySQLiteColumn } from 'drizzle-orm/sqlite-core';
import type { Photo } from '../../journal/photo-records.ts';
import { id, instant, revision, words } from './columns.ts';
import { alterations, fittings, observations } from './fittings.ts';

/** What the wearer said when asked about photographs, each day that they were asked; only ever added to. */
export const photoConsents = sqliteTable(
	'photo_consents',
	{
		fitting: text('fitting')
			.notNull()
			.references(() => fittings.id),
		/** Counts what was said at one fitting, from 1. The last holds. */
		position: integer('position').notNull(),
		taking: integer('taking', { mode: 'boolean' }).notNull(),
		keeping: integer('keeping', { mode: 'boolean' }).notNull(),
		showing: integer('showing', { mode: 'boolean' }).notNull(),
		/** The day on which it was said. */
		date: text('date').notNull(),
		at: instant('at')
	},
	(table) => [uniqueIndex('photo_consents_position').on(table.fitting, table.position)]
);

/** The pictures themselves are files beside the database, named by their content. */
export const photos = sqliteTable(
	'photos',
	{
		id: id(),
		revision: revision(),
		fitting: text('fitting')
			.notNull()
			.references((): AnySQLiteColumn => fittings.id),
		number: integer('number').notNull(),
		/** SHA-256 of the kept picture, as hexadecimal. */
		hash: text('hash').notNull(),
		width: integer('width').notNull(),
		height: integer('height').notNull(),
		bytes: integer('bytes').notNull(),
		kind: text('kind').$type<Photo['kind']>().notNull(),
		takenAt: text('taken_at'),
		mirrored: integer('mirrored', { mode: 'boolean' }).notNull().default(false),
		note: words('note'),
		/** The days on which the wearer agreed; none where they did not. */
		taking: text('consent_taking'),
		keeping: text('consent_keeping'),
		showing: text('consent_showing'),
		addedAt: instant('added_at')
	},
	(table) => [
		uniqueIndex('photos_number').on(table.fitting, table.number),
		uniqueIndex('photos_content').on(table.fitting, table.hash)
	]
);

/** Pins placed on a photo; `x` and `y` in parts of its width and height, from the upper left corner. */
export const photoPins = sqliteTable(
	'photo_pins',
	{
		id: id(),
		revision: revision(),
		photo: text('photo')
			.notNull()
			.references(() => photos.id),
		number: integer('number').notNull(),
		x: real('x').notNull(),
		y: real('y').notNull(),
		alteration: text('alteration').references(() => alterations.id),
		observation: text('observation').references(() => observations.id),
		note: words('note'),
		addedAt: instant('added_at')
	},
	(table) => [uniqueIndex('photo_pins_number').on(table.photo, table.number)]
);

/**
 * Pictures whose files may lie in the folder without a photo that has them: written down before the files are, and before
 * a photo is taken away, so that nothing is left of them whenever the machine stops.
 */
export const loosePictures = sqliteTable('loose_pictures', { hash: text('hash').primaryKey() });
