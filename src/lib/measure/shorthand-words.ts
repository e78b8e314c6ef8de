/** What can be meant by a phrase of a shorthand line. */
export type Act =
	'in' | 'out' | 'lower' | 'higher' | 'longer' | 'shorter' | 'forward' | 'backward' | 'wider' | 'narrower';

/** A place as the engine takes it, without an offset. */
export type NamedPlace =
	| { readonly end: 'start' | 'finish' }
	| { readonly level: string }
	| { readonly notch: string }
	| { readonly fraction: number };

export type ShorthandPlace = NamedPlace & { readonly offset?: number };

export type Meaning =
	| { readonly kind: 'target'; readonly of: 'seam' | 'edge' | 'dart'; readonly id: string; readonly name: string }
	| { readonly kind: 'place'; readonly place: NamedPlace }
	| { readonly kind: 'act'; readonly act: Act }
	| { readonly kind: 'side'; readonly on: 'right' | 'left' | 'both' }
	| { readonly kind: 'measured'; readonly measured: 'one-layer' | 'whole-fold' | 'each-layer' }
	| { readonly kind: 'all along' }
	| { readonly kind: 'offset'; readonly toward: 'above' | 'below' }
	| { readonly kind: 'comma' }
	| { readonly kind: 'filler' };

export interface Entry {
	readonly words: readonly string[];
	readonly meaning: Meaning;
}

/** The words of a phrase as they are compared: small letters, hyphens and other marks taken as spaces. */
export function wordsOf(phrase: string): readonly string[] {
	return phrase.toLowerCase().match(/[\p{L}\p{N}_@]+/gu) ?? [];
}

const acts: Readonly<Record<Act, readonly string[]>> = {
	in: ['in', 'take in', 'took in', 'taken in', 'pin in', 'pinned in', 'take off', 'took off', 'off'],
	out: ['out', 'let out', 'add', 'added', 'opened'],
	lower: ['lower', 'lowered', 'chalked lower', 'down'],
	higher: ['higher', 'raise', 'raised', 'chalked higher', 'up'],
	longer: ['longer', 'lengthen', 'lengthened', 'made longer'],
	shorter: ['shorter', 'shorten', 'shortened', 'made shorter'],
	forward: ['forward', 'forwards', 'moved forward', 'move forward'],
	backward: ['backward', 'backwards', 'moved back', 'move back'],
	wider: ['wider', 'widen', 'widened', 'made wider'],
	narrower: ['narrower', 'narrow', 'narrowed', 'made narrower']
};

/** The acts that take cloth away: their amounts are negative. */
const inward: readonly Act[] = ['in', 'lower', 'shorter', 'narrower'];

export function signOf(act: Act): 1 | -1 {
	return inward.includes(act) ? -1 : 1;
}

export const fixedEntries: readonly Entry[] = [
	...Object.entries(acts).flatMap(([act, phrases]) => entries({ kind: 'act', act: act as Act }, phrases)),
	...entries({ kind: 'side', on: 'right' }, ['r', 'right']),
	...entries({ kind: 'side', on: 'left' }, ['l', 'left']),
	...entries({ kind: 'side', on: 'both' }, ['both', 'both sides', 'each side', 'right and left', 'left and right']),
	...entries({ kind: 'measured', measured: 'whole-fold' }, ['fold', 'whole fold', 'across the fold']),
	...entries({ kind: 'measured', measured: 'each-layer' }, ['each layer', 'on each layer']),
	...entries({ kind: 'measured', measured: 'one-layer' }, ['one layer', 'on one layer']),
	...entries({ kind: 'all along' }, ['all along', 'evenly', 'throughout']),
	...entries({ kind: 'offset', toward: 'above' }, ['above']),
	...entries({ kind: 'offset', toward: 'below' }, ['below']),
	...entries({ kind: 'place', place: { fraction: 0.5 } }, ['half way', 'halfway', 'middle']),
	...entries({ kind: 'comma' }, ['and', 'then']),
	...entries({ kind: 'filler' }, [
		'at',
		'the',
		'by',
		'of',
		'on',
		'to',
		'seam',
		'line',
		'edge',
		'side',
		'sides',
		'pinned',
		'chalked'
	])
];

export function entries(meaning: Meaning, phrases: readonly string[]): readonly Entry[] {
	return phrases.map((phrase) => ({ words: wordsOf(phrase), meaning })).filter(({ words }) => words.length > 0);
}
