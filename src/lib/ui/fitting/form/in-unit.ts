import type { Unit } from '../../../measure/units.ts';
import type { Typed } from '../typed.ts';

/** Fields whose text is a length: those of a place by what stands before the point, the others by their names. */
const ofPlace = /^(?:amount|other|left|leftOther|rightA|rightB|leftA|leftB)\./;
const alone =
	/^(?:width|leftWidth|length|short|off|first|last|leftFirst|leftLast|from|firstFrom|lastFrom|in|up|aside|spacing|diameter|thickness)$/;

/** Figures alone, without a word or a mark that says of what. */
const bare = /^[^\p{L}'"′″’”]*\d[^\p{L}'"′″’”]*$|^[^\p{L}'"′″’”]*[¼½¾⅓⅔⅛⅜⅝⅞]$/u;

/**
 * The fields of a hand on a page whose lengths are in this unit. Those typed while they were in the other one say so from then on:
 * “1/4” becomes “1/4 in”, and is the same length. Fields that do not say their unit are taken to be in the page’s.
 */
export function inUnit(typed: Typed, unit: Unit): Typed {
	const was = typed.unit;
	if ((was !== 'in' && was !== 'cm') || was === unit) return typed;
	const fields = Object.entries(typed).map(([name, text]) =>
		(ofPlace.test(name) || alone.test(name)) && bare.test(text.trim()) ? [name, `${text.trim()} ${was}`] : [name, text]
	);
	return { ...(Object.fromEntries(fields) as Typed), unit };
}
