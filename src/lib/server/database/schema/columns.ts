import { integer, text } from 'drizzle-orm/sqlite-core';

/** Columns that most tables share. Ids are short random text, handed in; nothing is numbered by the database. */
export const id = () => text('id').primaryKey();

/** Counts the changes of one record; a form that was drawn from another revision writes nothing. */
export const revision = () => integer('revision').notNull().default(1);

/** Free text; '' is nothing written. */
export const words = (name: string) => text(name).notNull().default('');

/** An instant, ISO 8601 in UTC. */
export const instant = (name: string) => text(name).notNull();

/** Plain data as JSON text. */
export const json = <T>(name: string) => text(name, { mode: 'json' }).$type<T>().notNull();
