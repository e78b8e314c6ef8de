/** One thing that is wrong with what was asked, with a sentence that says what would be right. */
export interface Problem {
	/** The field it is about, as the function's argument names it: `name`, `measures.waist`. */
	readonly field?: string;
	readonly sentence: string;
}

/**
 * What every writing function of the journal answers. Whatever is not `ok` has written nothing.
 *
 * - `stale`: the record has been changed since the form was drawn; `current` is how it stands now: the record,
 *   unless the function says otherwise (both are to be shown).
 * - `unknown`: no such record (404) · `closed`: the record is closed and is not changed any more (409) · `refused`: what was
 *   asked is wrong, with every problem found (400).
 */
export type Answer<T, Current = T> = Kept<T> | Stale<Current> | Refusal;

export interface Kept<T> {
	readonly ok: true;
	readonly value: T;
}

export interface Stale<Current> {
	readonly ok: false;
	readonly stale: true;
	readonly current: Current;
}

export interface Refusal {
	readonly ok: false;
	readonly stale: false;
	readonly code: 'unknown' | 'closed' | 'refused';
	readonly problems: readonly Problem[];
}
