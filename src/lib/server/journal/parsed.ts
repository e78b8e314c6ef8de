import type { Problem } from './answer.ts';

/** What a reader of the engine made of some JSON, or every problem that it found in it. */
export type Parsed<T> = { readonly value: T } | { readonly problems: readonly Problem[] };

/**
 * Runs a reader that throws an error with a list of problems (`{ path, message }`) for what it cannot read. Each becomes a
 * problem of the field `field.path`. Any other fault is thrown on.
 */
export function parsed<T>(field: string, read: () => T): Parsed<T> {
	try {
		return { value: read() };
	} catch (fault) {
		if (!(fault instanceof Error && 'problems' in fault && Array.isArray(fault.problems))) throw fault;
		const problems = fault.problems as readonly { path: string; message: string }[];
		return {
			problems: problems.map(({ path, message }) => ({
				field: path ? `${field}.${path}` : field,
				sentence: path ? `${path}: ${message}` : message
			}))
		};
	}
}
