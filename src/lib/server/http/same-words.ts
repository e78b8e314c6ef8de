import { createHash } from 'node:crypto';
import type { Typed } from './form.ts';

/** What fields say word for word, in whatever order they came, as 64 letters: the same for the same, and for nothing else. */
export function sameWords(fields: Typed): string {
	const inOrder = Object.entries(fields).sort(([a], [b]) => (a < b ? -1 : 1));
	return createHash('sha256').update(JSON.stringify(inOrder)).digest('hex');
}
