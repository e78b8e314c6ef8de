import type { Query } from '../../engine/index.ts';
import type { Unit } from '../../measure/units.ts';
import { saidInTwo } from '../garment/said-in-two.ts';

/** How a query was settled; the journal's own settlements have this shape, and more. */
export interface SettledQuery {
	readonly code: string;
	readonly where: string;
	readonly how: 'left' | 'altered';
	readonly alteration: string | null;
	readonly sentence: string;
	readonly note: string;
	readonly at: string;
}

export interface QueryRow {
	readonly letter: string;
	readonly code: string;
	readonly where: string;
	readonly figure?: number;
	readonly head: string;
	readonly rest?: string;
	readonly severity?: Query['severity'];
	/** Absent while nobody has settled it. */
	readonly settled?: Pick<SettledQuery, 'how' | 'alteration' | 'note' | 'at'>;
	/** The alterations that would settle it. */
	readonly ways: Query['settle'];
	/** An alteration waits for its place: that is answered where alterations are placed again. */
	readonly waits: boolean;
}

const waiting = ['unplaced', 'no-join', 'too-tight'];

/**
 * The queries of a version under letters: those that are asked still first, then those that were left, then those that an
 * alteration settled before the version was made, which the version itself asks no more.
 */
export function queryRows(
	queries: readonly Query[],
	settlements: readonly SettledQuery[],
	unit: Unit
): readonly QueryRow[] {
	const about = (one: { code: string; where: string }, other: { code: string; where: string }) =>
		one.code === other.code && one.where === other.where;
	const asked = queries.map((query): Omit<QueryRow, 'letter'> => {
		const settled = settlements.find((one) => about(one, query));
		return {
			code: query.code,
			where: query.where,
			...(query.figure !== undefined && { figure: query.figure }),
			...saidInTwo(query.sentence, unit),
			severity: query.severity,
			...(settled && { settled }),
			ways: settled ? [] : query.settle,
			waits: waiting.includes(query.code)
		};
	});
	const gone = settlements
		.filter((one) => !queries.some((query) => about(one, query)))
		.map((settled): Omit<QueryRow, 'letter'> => {
			const { code, where, sentence } = settled;
			return { code, where, ...saidInTwo(sentence, unit), settled, ways: [], waits: false };
		});
	const open = (row: Omit<QueryRow, 'letter'>) => row.settled === undefined;
	return [...asked.filter(open), ...asked.filter((row) => !open(row)), ...gone].map((row, i) => ({
		...row,
		letter: letterOf(i)
	}));
}

/** A, B … Z, then 27 and on. */
export function letterOf(index: number): string {
	return index < 26 ? String.fromCharCode(65 + index) : String(index + 1);
}
