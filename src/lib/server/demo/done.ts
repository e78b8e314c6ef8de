import type { Answer } from '../journal/answer.ts';

/** What the journal kept. What it refuses here is our own mistake. */
export function done<T, C>(answer: Answer<T, C>): T {
	if (answer.ok) return answer.value;
	throw new Error(
		answer.stale ? 'A record was changed meanwhile.' : answer.problems.map(({ sentence }) => sentence).join(' ')
	);
}
