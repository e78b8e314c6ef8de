import type { z } from 'zod';
import { kindNamed, kindNames, type Alteration } from './registry.ts';
import { schemaOf } from './schemas.ts';

export interface AlterationProblem {
	/** Where in the JSON, `pins[0].a`; empty for the whole. */
	readonly path: string;
	readonly message: string;
}

/** An alteration that is not written as its kind asks, with every problem found. */
export class AlterationError extends Error {
	readonly problems: readonly AlterationProblem[];

	constructor(problems: readonly AlterationProblem[]) {
		super(problems.map(({ path, message }) => (path ? `${path} ${message}` : message)).join('. '));
		this.name = 'AlterationError';
		this.problems = problems;
	}
}

/**
 * An alteration from its JSON form. Thrown: AlterationError with every problem, each with its path: an unknown kind, a
 * missing or unknown field, `null`, text or NaN for an amount.
 */
export function parseAlteration(json: unknown): Alteration {
	if (typeof json !== 'object' || json === null || Array.isArray(json))
		throw new AlterationError([{ path: '', message: 'An alteration is an object with an id and a kind' }]);
	const named = (json as { kind?: unknown }).kind;
	const kind = typeof named === 'string' ? kindNamed(named) : undefined;
	if (!kind)
		throw new AlterationError([
			{ path: 'kind', message: `should be one of ${kindNames().join(', ')}, not ${JSON.stringify(named) ?? 'nothing'}` }
		]);
	const read = schemaOf(kind.kind as Alteration['kind']).safeParse(json);
	if (!read.success) throw new AlterationError(read.error.issues.map(problemOf));
	return read.data;
}

function problemOf(issue: z.core.$ZodIssue): AlterationProblem {
	const path = issue.path.reduce<string>(
		(text, step) => (typeof step === 'number' ? `${text}[${step}]` : text ? `${text}.${String(step)}` : String(step)),
		''
	);
	return { path, message: issue.message };
}
