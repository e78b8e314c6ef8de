import { and, desc, eq, getTableColumns } from 'drizzle-orm';
import { settlements, versions } from '../database/schema/garments.ts';
import type { Draft, Query } from '../engine.ts';
import { kept, refused, refusedFor, unknown } from './answers.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import type { Settlement, Version, VersionSummary } from './records.ts';
import { checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';

type Row = typeof versions.$inferSelect;
type SummaryRow = Omit<Row, 'draft' | 'steps' | 'unplaced'>;

const { draft: _draft, steps: _steps, unplaced: _unplaced, ...summaryColumns } = getTableColumns(versions);

/** By number, without their drafts. */
export function versionsOf(store: Store, garmentId: string): readonly VersionSummary[] {
	return store.db
		.select(summaryColumns)
		.from(versions)
		.where(eq(versions.garment, garmentId))
		.orderBy(versions.number)
		.all()
		.map((row) => summaryOf(store, row));
}

/** Every garment has one: the base draft came with it. */
export function latestVersion(store: Store, garmentId: string): VersionSummary {
	const row = store.db
		.select(summaryColumns)
		.from(versions)
		.where(eq(versions.garment, garmentId))
		.orderBy(desc(versions.number))
		.limit(1)
		.get();
	return summaryOf(store, row!);
}

export function findVersion(store: Store, garmentId: string, number: number): VersionSummary | undefined {
	const row = store.db
		.select(summaryColumns)
		.from(versions)
		.where(and(eq(versions.garment, garmentId), eq(versions.number, number)))
		.get();
	return row && summaryOf(store, row);
}

export function wholeVersion(store: Store, id: string): Version | undefined {
	const row = store.db.select().from(versions).where(eq(versions.id, id)).get();
	if (!row) return undefined;
	return { ...summaryOf(store, row), draft: draftOf(store, id), steps: row.steps, unplaced: row.unplaced };
}

/** The frozen draft of a version, parsed once and kept at hand: it never changes. */
export function draftOf(store: Store, versionId: string): Draft {
	const known = store.drafts.get(versionId);
	if (known) return known;
	const row = store.db.select({ draft: versions.draft }).from(versions).where(eq(versions.id, versionId)).get();
	const draft = store.engine.parseDraft(JSON.parse(row!.draft));
	if (store.drafts.size >= draftsAtHand) store.drafts.delete(store.drafts.keys().next().value!);
	store.drafts.set(versionId, draft);
	return draft;
}

/** About 10 MB of drafts of a dozen pieces. */
const draftsAtHand = 64;

/** The number of a version by its id. */
export function numberOf({ db }: Store, versionId: string): number {
	return db.select({ number: versions.number }).from(versions).where(eq(versions.id, versionId)).get()!.number;
}

function summaryOf(store: Store, row: SummaryRow): VersionSummary {
	const settled = store.db
		.select()
		.from(settlements)
		.where(eq(settlements.version, row.id))
		.orderBy(settlements.at)
		.all();
	const { id, garment, number, previous, reason, fitting, withdrew, source, sourceName } = row;
	const { alterations, queries, engineVersion, createdAt } = row;
	return {
		id,
		garment,
		number,
		previous,
		reason,
		fitting,
		withdrew,
		source,
		sourceName,
		alterations,
		queries,
		settlements: settled,
		unsettled: queries.filter((query) => !isOfWaiting(query) && !settled.some((one) => isAbout(one, query))),
		engineVersion,
		createdAt
	};
}

/** Queries are told apart by what is asked and where. */
export const isAbout = (one: { code: string; where: string }, query: Query): boolean =>
	one.code === query.code && one.where === query.where;

/** Queries that say of an alteration that it waits: it is asked about until it is placed, whatever later versions are asked. */
export const isOfWaiting = ({ code }: Query): boolean => ['unplaced', 'no-join', 'too-tight'].includes(code);

/** Writes the next version of a garment, frozen from then on, and answers its id. */
export function writeVersion(
	store: Store,
	draft: Draft,
	version: Omit<typeof versions.$inferInsert, 'id' | 'draft' | 'engineVersion' | 'createdAt'>
): string {
	const id = store.newId();
	store.db
		.insert(versions)
		.values({
			...version,
			id,
			draft: JSON.stringify(store.engine.formatDraft(draft)),
			engineVersion: store.engine.version,
			createdAt: store.now()
		})
		.run();
	return id;
}

export function settle(store: Store, settlement: Omit<Settlement, 'id' | 'at'>): Settlement {
	const row = { ...settlement, id: store.newId(), at: store.now() };
	store.db.insert(settlements).values(row).run();
	return row;
}

export function versionActs(store: Store): Pick<Journal, 'settleQuery'> {
	return {
		settleQuery: (versionId, { code, where, note = '' }) =>
			store.writing(() => {
				const version = wholeVersion(store, versionId);
				if (!version) return unknown('version');
				const problems = problemsOf(checkWords('note', note));
				if (problems.length > 0) return refused(problems);
				const query = version.queries.find((one) => isAbout({ code, where }, one));
				if (!query) return refusedFor('This version has no such query.');
				if (version.settlements.some((one) => isAbout(one, query))) return refusedFor('This query is settled already.');
				const sentence = `A query of version ${version.number} was left as it is (${code}).`;
				logEntry(store, 'settled', sentence, { garment: version.garment });
				return kept(
					settle(store, {
						version: versionId,
						code,
						where,
						how: 'left',
						alteration: null,
						sentence: query.sentence,
						note
					})
				);
			})
	};
}
