import type Database from 'better-sqlite3';
import type { Answer } from '../../../src/lib/server/journal/answer.ts';

export function clockAndIds(start = '2026-01-09T09:00:00.000Z') {
	let seconds = 0;
	let ids = 0;
	return {
		now: () => new Date(Date.parse(start) + 1000 * seconds++),
		newId: () => `id${++ids}`
	};
}

/** The value of an answer that must have been kept. */
export function kept<T, C>(answer: Answer<T, C>): T {
	if (answer.ok) return answer.value;
	throw new Error(answer.stale ? 'stale' : answer.problems.map(({ sentence }) => sentence).join(' '));
}

/** The sentences of an answer that must have been refused. */
export function refusalOf(answer: Answer<unknown, unknown>): {
	code: string;
	sentences: string[];
	fields: (string | undefined)[];
} {
	if (answer.ok || answer.stale) throw new Error(answer.ok ? 'it was kept' : 'it was stale');
	return {
		code: answer.code,
		sentences: answer.problems.map(({ sentence }) => sentence),
		fields: answer.problems.map(({ field }) => field)
	};
}

/** Everything that a database holds, table by table: two states are the same if these are. */
export function contentOf(sqlite: Database.Database): Record<string, unknown[]> {
	const tables = sqlite.prepare(`SELECT name FROM sqlite_schema WHERE type = 'table'`).pluck().all() as string[];
	return Object.fromEntries(tables.map((table) => [table, sqlite.prepare(`SELECT * FROM "${table}"`).all()]));
}

/** A side seam taken in by `amount` mm on each layer at the waist, and not at its ends. */
export const takenIn = (amount: number) => ({
	kind: 'seam',
	on: 'both',
	seam: 'side',
	pins: [
		{ at: { end: 'start' }, a: 0, b: 0 },
		{ at: { level: 'waist' }, a: -amount, b: -amount },
		{ at: { end: 'finish' }, a: 0, b: 0 }
	]
});

/** The same seam pinned and not read. */
export const pinnedOnly = {
	kind: 'seam',
	on: 'both',
	seam: 'side',
	pins: [{ at: { level: 'waist' } }]
};
