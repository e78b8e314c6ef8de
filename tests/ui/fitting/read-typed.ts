import { expect } from 'vitest';
import { carry, parseAlteration, type Draft } from '../../../src/lib/engine/index.ts';
import {
	asAlterations,
	readAlteration,
	type AlterationRead
} from '../../../src/lib/ui/fitting/form/read-alteration.ts';
import type { Typed } from '../../../src/lib/ui/fitting/typed.ts';
import type { Unit } from '../../../src/lib/measure/units.ts';

/**
 * The alteration that a form says, which the page carries as it is: held to be word for word what the journal would make of it. Thrown:
 * something is wrong in the form.
 */
export function readTyped(draft: Draft, typed: Typed, unit: Unit = 'in'): AlterationRead {
	const form = readAlteration(draft, typed, unit);
	if ('problems' in form) throw new Error(JSON.stringify(form.problems));
	const alterations = asAlterations(form.read.intents);
	expect(alterations).toEqual(alterations.map((one) => parseAlteration(one)));
	return form.read;
}

/** What is wrong in a form, by its fields; nothing where nothing is. */
export function problemsTyped(draft: Draft, typed: Typed): Readonly<Record<string, string>> {
	const form = readAlteration(draft, typed, 'in');
	return 'problems' in form ? form.problems : {};
}

/** A draft with what a form says carried to it, all of it. */
export function carriedTyped(draft: Draft, typed: Typed): Draft {
	const done = carry(draft, asAlterations(readTyped(draft, typed).intents), { queries: false });
	expect(done.unplaced).toEqual([]);
	return done.draft;
}
