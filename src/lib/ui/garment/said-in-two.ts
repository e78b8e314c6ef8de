import { inUnit } from '../../measure/in-unit.ts';
import type { Unit } from '../../measure/units.ts';

/**
 * A sentence of the engine as a heading and what follows it: “Armhole seam” and “the top sleeve has …”, in the unit that is
 * read. A sentence without such a beginning is all heading.
 */
export function saidInTwo(said: string, unit: Unit): { readonly head: string; readonly rest?: string } {
	const sentence = inUnit(said, unit);
	const colon = /^([^:.?!]{3,60}): (.+)$/s.exec(sentence);
	if (colon) return { head: colon[1]!, rest: colon[2]! };
	const stop = /^(.{10,110}?[.?!]) (.+)$/s.exec(sentence);
	return stop ? { head: stop[1]!, rest: stop[2]! } : { head: sentence };
}
