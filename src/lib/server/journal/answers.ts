import type { Kept, Problem, Refusal, Stale } from './answer.ts';

/** The answers of writing functions, made. */

export const kept = <T>(value: T): Kept<T> => ({ ok: true, value });

export const stale = <C>(current: C): Stale<C> => ({ ok: false, stale: true, current });

export const unknown = (thing: string): Refusal =>
	refusal('unknown', [{ sentence: `There is no such ${thing} in this journal.` }]);

export const closed = (sentence: string): Refusal => refusal('closed', [{ sentence }]);

export const refused = (problems: readonly Problem[]): Refusal => refusal('refused', problems);

export const refusedFor = (...sentences: readonly string[]): Refusal =>
	refused(sentences.map((sentence) => ({ sentence })));

const refusal = (code: Refusal['code'], problems: readonly Problem[]): Refusal => ({
	ok: false,
	stale: false,
	code,
	problems
});
