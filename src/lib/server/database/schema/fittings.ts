import { integer, real, sqliteTable, text, uniqueIndex, type AnySQLiteColumn } from 'drizzle-orm/sqlite-core';
import type { Measured } from '../../../measure/fold.ts';
import type { EngineAlteration } from '../../engine.ts';
import type {
	Alteration,
	AsSewn,
	Fitting,
	Measures,
	Observation,
	Posture,
	Readings,
	SeenAt,
	StateOfToile,
	TriedOn,
	Verdict
} from '../../journal/records.ts';
import { id, instant, json, revision, words } from './columns.ts';
import { garments, toiles, versions } from './garments.ts';
import { foundations } from './wearers.ts';

/** Fittings and table work. Once closed, a trigger refuses every change of it and of what is in it. */
export const fittings = sqliteTable(
	'fittings',
	{
		id: id(),
		revision: revision(),
		wholeRevision: integer('whole_revision').notNull().default(1),
		garment: text('garment')
			.notNull()
			.references((): AnySQLiteColumn => garments.id),
		kind: text('kind').$type<Fitting['kind']>().notNull(),
		number: integer('number').notNull(),
		date: text('date').notNull(),
		from: text('from_time'),
		to: text('to_time'),
		tried: text('tried').$type<TriedOn>(),
		toile: text('toile').references((): AnySQLiteColumn => toiles.id),
		on: text('on_version')
			.notNull()
			.references((): AnySQLiteColumn => versions.id),
		foundation: text('foundation').references(() => foundations.id),
		worn: text('worn').$type<'outside' | 'inside'>(),
		stateOfToile: json<StateOfToile>('state_of_toile'),
		asSewn: json<AsSewn>('as_sewn'),
		checkMeasures: json<Measures>('check_measures'),
		shoes: words('shoes'),
		heel: real('heel'),
		pinnedBy: words('pinned_by'),
		note: words('note'),
		bring: words('bring'),
		pinsIn: integer('pins_in'),
		pinsOut: integer('pins_out'),
		addedAt: instant('added_at'),
		closedAt: text('closed_at'),
		carriedInto: text('carried_into').references((): AnySQLiteColumn => versions.id)
	},
	(table) => [uniqueIndex('fittings_number').on(table.garment, table.kind, table.number)]
);

export const observations = sqliteTable(
	'observations',
	{
		id: id(),
		revision: revision(),
		fitting: text('fitting')
			.notNull()
			.references(() => fittings.id),
		letter: text('letter').notNull(),
		where: json<SeenAt>('seen_at'),
		what: text('what').notNull(),
		howBad: integer('how_bad').$type<Observation['howBad']>().notNull(),
		posture: text('posture').$type<Posture>().notNull(),
		state: text('state').$type<Observation['state']>().notNull(),
		answeredBy: words('answered_by'),
		note: words('note'),
		addedAt: instant('added_at')
	},
	(table) => [uniqueIndex('observations_letter').on(table.fitting, table.letter)]
);

/** What became of an observation, said at a later fitting; only ever added to. */
export const observationVerdicts = sqliteTable('observation_verdicts', {
	id: id(),
	observation: text('observation')
		.notNull()
		.references(() => observations.id),
	fitting: text('fitting')
		.notNull()
		.references(() => fittings.id),
	verdict: text('verdict').$type<Verdict['verdict']>().notNull(),
	note: words('note'),
	at: instant('at')
});

export const alterations = sqliteTable(
	'alterations',
	{
		id: id(),
		revision: revision(),
		fitting: text('fitting')
			.notNull()
			.references(() => fittings.id),
		number: integer('number').notNull(),
		position: integer('position').notNull(),
		act: words('act'),
		intent: json<EngineAlteration>('intent'),
		readings: json<Readings>('readings'),
		measured: text('measured').$type<Measured>(),
		state: text('state').$type<Alteration['state']>().notNull(),
		reason: words('reason'),
		note: words('note'),
		answers: text('answers').references(() => observations.id),
		settles: text('settles', { mode: 'json' }).$type<NonNullable<Alteration['settles']>>(),
		pairedWith: text('paired_with').references((): AnySQLiteColumn => alterations.id),
		replaces: text('replaces').references((): AnySQLiteColumn => alterations.id),
		addedAt: instant('added_at')
	},
	(table) => [uniqueIndex('alterations_number').on(table.fitting, table.number)]
);

/** Alterations taken back out after their fitting was closed; only ever added to. */
export const withdrawals = sqliteTable('withdrawals', {
	alteration: text('alteration')
		.primaryKey()
		.references(() => alterations.id),
	/** The version without it; none for one that had never found its place. */
	version: text('version').references((): AnySQLiteColumn => versions.id),
	note: words('note'),
	at: instant('at')
});
