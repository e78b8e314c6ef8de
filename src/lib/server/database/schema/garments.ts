import { integer, real, sqliteTable, text, uniqueIndex, type AnySQLiteColumn } from 'drizzle-orm/sqlite-core';
import type { Query, Step, Unplaced } from '../../engine.ts';
import type { Allowances, DraftSource, ToileState, VersionSummary } from '../../journal/records.ts';
import { id, instant, json, revision, words } from './columns.ts';
import { alterations, fittings } from './fittings.ts';
import { sheets, wearers } from './wearers.ts';

export const garments = sqliteTable(
	'garments',
	{
		id: id(),
		revision: revision(),
		number: integer('number').notNull(),
		name: text('name').notNull(),
		wearer: text('wearer')
			.notNull()
			.references(() => wearers.id),
		madeFor: words('made_for'),
		neededOn: text('needed_on'),
		cloth: words('cloth'),
		easePreset: text('ease_preset'),
		sheet: text('sheet').references(() => sheets.id),
		note: words('note'),
		addedAt: instant('added_at')
	},
	(table) => [uniqueIndex('garments_number').on(table.number)]
);

/** Frozen: a trigger refuses every change. */
export const versions = sqliteTable(
	'versions',
	{
		id: id(),
		garment: text('garment')
			.notNull()
			.references(() => garments.id),
		number: integer('number').notNull(),
		previous: text('previous').references((): AnySQLiteColumn => versions.id),
		reason: text('reason').$type<VersionSummary['reason']>().notNull(),
		fitting: text('fitting').references((): AnySQLiteColumn => fittings.id),
		withdrew: text('withdrew').references((): AnySQLiteColumn => alterations.id),
		source: text('source').$type<DraftSource>(),
		sourceName: words('source_name'),
		/** The draft file's own text, as the engine wrote it. */
		draft: text('draft').notNull(),
		/** Ids of every alteration that stands in it, in order, from the base draft on. */
		alterations: json<readonly string[]>('alterations'),
		steps: json<readonly Step[]>('steps'),
		unplaced: json<readonly Unplaced[]>('unplaced'),
		queries: json<readonly Query[]>('queries'),
		engineVersion: text('engine_version').notNull(),
		createdAt: instant('created_at')
	},
	(table) => [uniqueIndex('versions_number').on(table.garment, table.number)]
);

/** How queries were settled; only ever added to. */
export const settlements = sqliteTable('settlements', {
	id: id(),
	version: text('version')
		.notNull()
		.references(() => versions.id),
	code: text('code').notNull(),
	where: text('where').notNull(),
	how: text('how').$type<'left' | 'altered'>().notNull(),
	alteration: text('alteration').references((): AnySQLiteColumn => alterations.id),
	sentence: text('sentence').notNull(),
	note: words('note'),
	at: instant('at')
});

export const toiles = sqliteTable(
	'toiles',
	{
		id: id(),
		revision: revision(),
		garment: text('garment')
			.notNull()
			.references(() => garments.id),
		number: integer('number').notNull(),
		cutFrom: text('cut_from')
			.notNull()
			.references(() => versions.id),
		stitchedTo: text('stitched_to')
			.notNull()
			.references(() => versions.id),
		cloth: words('cloth'),
		allowance: real('allowance').notNull(),
		allowances: json<Allowances>('allowances'),
		state: text('state').$type<ToileState>().notNull(),
		note: words('note'),
		addedAt: instant('added_at')
	},
	(table) => [uniqueIndex('toiles_number').on(table.garment, table.number)]
);

/** What became of a toile, in order; only ever added to. */
export const toileStates = sqliteTable(
	'toile_states',
	{
		toile: text('toile')
			.notNull()
			.references(() => toiles.id),
		position: integer('position').notNull(),
		state: text('state').$type<ToileState>().notNull(),
		date: text('date').notNull(),
		stitchedTo: text('stitched_to')
			.notNull()
			.references(() => versions.id),
		note: words('note')
	},
	(table) => [uniqueIndex('toile_states_position').on(table.toile, table.position)]
);

/** Which version was chosen for cutting in the lining; the latest choice holds, none is taken away. */
export const liningChoices = sqliteTable(
	'lining_choices',
	{
		garment: text('garment')
			.notNull()
			.references(() => garments.id),
		position: integer('position').notNull(),
		version: text('version')
			.notNull()
			.references(() => versions.id),
		cloth: words('cloth'),
		allowance: real('allowance').notNull(),
		allowances: json<Allowances>('allowances'),
		note: words('note'),
		chosenAt: instant('chosen_at')
	},
	(table) => [uniqueIndex('lining_choices_position').on(table.garment, table.position)]
);
