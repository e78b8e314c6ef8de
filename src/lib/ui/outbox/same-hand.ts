import type { Typed } from '../fitting/typed.ts';
import type { Unsent } from './unsent.ts';

/** Fields that say what is in the hand, whatever is typed of it: `targetFields` with the act; not taken from there, for the engine comes along. */
const what = ['act', 'across', 'piece', 'seam', 'edge', 'dart', 'alteration'];

/** Fields that say how it is looked at, and not what is pinned. */
const looks = ['side', 'unit', 'here', 'places', 'along', 'kept', 'revision'];

/** Whether something is in the hand. */
export const isHeld = (typed: Typed): boolean => what.some((name) => typed[name]);

/** What is in the hand, in a few letters: the same for as long as only more is typed of it. */
export const nameOfHand = (typed: Typed): string => JSON.stringify(what.map((name) => typed[name] ?? ''));

/** Whether the same fields say the same, in whatever order they stand, and as an address says them: without what is blank. */
export function sameTyped(one: Typed, other: Typed): boolean {
	const names = Object.keys({ ...one, ...other });
	return names.every((name) => (one[name] ?? '').trim() === (other[name] ?? '').trim());
}

/** Whether all that an address says of the hand is said by another as well, which may have gone on from there. */
export function goesOn(address: Typed, typed: Typed): boolean {
	const said = Object.entries(address).filter(([name, text]) => text !== '' && !looks.includes(name));
	return said.every(([name, text]) => typed[name] === text);
}

/** Whether a form that is not answered yet keeps what is in the hand: as it stands there, or with more that was typed of it. */
export function keepsHand({ action, fields, answer }: Unsent, typed: Typed): boolean {
	if (answer !== undefined || !/\?\/keep\b/.test(action)) return false;
	return isHeld(typed) && nameOfHand(fields) === nameOfHand(typed);
}
