import { integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { HandTyped, StepRecord, StepRow } from '../../journal/step-records.ts';
import { instant, json } from './columns.ts';
import { fittings } from './fittings.ts';

/**
 * What was done at an open fitting, a row for each record that a step changed, so that it can be undone and done again. All of
 * a fitting go when it is closed.
 */
export const fittingSteps = sqliteTable(
	'fitting_steps',
	{
		fitting: text('fitting')
			.notNull()
			.references(() => fittings.id),
		/** Order within the fitting. */
		position: integer('position').notNull(),
		/** The fitting’s whole revision that the step came to: never that of another step. Rows that were written together share it. */
		step: integer('step').notNull(),
		at: instant('at'),
		what: text('what').$type<StepRecord['what']>().notNull(),
		kind: text('kind').$type<StepRecord['kind']>().notNull(),
		record: text('record').notNull(),
		/** The record’s row; none before it was there. */
		before: text('before', { mode: 'json' }).$type<StepRow>(),
		after: json<StepRow>('after'),
		undone: integer('undone', { mode: 'boolean' }).notNull().default(false)
	},
	(table) => [primaryKey({ columns: [table.fitting, table.position] })]
);

/** Forms that were kept, by the key that the browser gave each: one that is sent again is answered the same and done once. */
export const formsKept = sqliteTable('forms_kept', {
	once: text('once').primaryKey(),
	at: instant('at'),
	/** Id of the record that it came to. */
	came: text('came').notNull()
});

/** The alteration in the hand of each device, as typed so far and not kept yet. All of a fitting go when it is closed. */
export const hands = sqliteTable(
	'hands',
	{
		fitting: text('fitting')
			.notNull()
			.references(() => fittings.id),
		device: text('device').notNull(),
		typed: json<HandTyped>('typed'),
		savedAt: instant('saved_at')
	},
	(table) => [primaryKey({ columns: [table.fitting, table.device] })]
);
