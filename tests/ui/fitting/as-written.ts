import { expect } from 'vitest';
import { parseAlteration } from '../../../src/lib/engine/index.ts';
import { asAlterations, type AlterationRead } from '../../../src/lib/ui/fitting/form/read-alteration.ts';

/** What was read of a form, which the page carries as it is: held to be word for word what the journal would make of it. */
export function asWritten(read: AlterationRead): AlterationRead {
	const alterations = asAlterations(read.intents);
	expect(alterations).toEqual(alterations.map((one) => parseAlteration(one)));
	return read;
}
