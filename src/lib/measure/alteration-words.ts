import { equals, phrase, sayAmount, words } from './phrase.ts';
import type { Phrase, PhrasePart } from './phrase.ts';
import { formatLength } from './format-length.ts';
import type { Unit } from './units.ts';

/** Which half of the wearer it is carried to. */
export type Sides = 'both' | 'left' | 'right';

/** A seam that comes twice round the body, the one centre seam, or a sleeve's own seam. */
export type SeamPlace = 'pair' | 'centre' | 'limb';

export interface SeamMove {
	/** mm on each of the two layers, cloth added positive. A centre seam has `a` alone: its two layers are mirror images. */
	readonly a: number;
	readonly b?: number;
	readonly seam: SeamPlace;
	readonly on: Sides;
}

/**
 * How much a seam move changes the round at that level, in mm: what both layers give, twice for a seam that comes on the
 * right and on the left. Plain arithmetic: a quarter inch on a layer of both side seams is one inch round.
 */
export function roundChange({ a, b = a, seam, on }: SeamMove): number {
	if (seam === 'centre') return on === 'both' ? 2 * a : a;
	return seam === 'pair' && on === 'both' ? 2 * (a + b) : a + b;
}

/**
 * What each cut edge takes when a change of the round is shared evenly, in mm. `edges` counts every layer of every seam
 * used, left and right (one pair of seams has four). Refuses fewer than one.
 */
export function eachEdge(total: number, edges: number): number {
	if (!(edges >= 1)) throw new Error('a change needs at least one edge to be shared over');
	return total / edges;
}

export interface SaySum extends SeamMove {
	/** `the waist`, `the sleeve`: said after “round”. Left out when the place is at no balance line. */
	readonly around?: string;
	/** The names of the pieces that the two layers belong to, said when they differ. */
	readonly layers?: readonly [string, string];
	readonly unit: Unit;
	readonly denominator?: 8 | 16;
}

/** “1/4″ on each layer = 1/2″ at this seam = 1″ round the waist”. Amounts carry no sign: the act's word says which way. */
export function saySum({ a, b = a, seam, on, around, layers, unit, denominator }: SaySum): Phrase {
	const amount = (mm: number) => sayAmount(mm, unit, denominator);
	const one = on !== 'both';
	const only = one ? [words(seam === 'limb' ? `, ${on} sleeve only` : `, ${on} side only`)] : [];
	if (seam === 'centre') {
		const round = roundChange({ a, seam, on });
		const first = one ? `on the ${on} layer only` : 'on each layer';
		return phrase(amount(a), words(first), equals, amount(round), words(seamAnd(around)));
	}
	const start = startOf(a, b, layers, amount);
	const atSeam = a + b;
	if (Math.abs(atSeam) < 1e-9 && a !== 0) return phrase(...start, equals, words(nothing(around)), ...only);
	const seamWords = seam === 'limb' ? seamAnd(around) : 'at this seam';
	const sum = [...start, equals, amount(atSeam), words(seamWords)];
	if (seam === 'limb' || around === undefined) return phrase(...sum, ...only);
	return phrase(...sum, equals, amount(roundChange({ a, b, seam, on })), words(`round ${around}`), ...only);
}

export interface SayDart {
	/** The whole width of the dart, or the change of it, in mm. */
	readonly intake: number;
	readonly on: Sides;
	readonly around?: string;
	readonly unit: Unit;
	readonly denominator?: 8 | 16;
}

/** “3/8″ wide (3/16 each leg) = 3/4″ round the waist”: a dart is named by its whole width. */
export function sayDart({ intake, on, around, unit, denominator = 16 }: SayDart): Phrase {
	const leg = formatLength(intake / 2, unit, { denominator, sign: 'never', mark: unit === 'cm' });
	const about = leg.parts.about ? 'about ' : '';
	const start = [sayAmount(intake, unit, denominator), words(`wide (${about}${leg.text} each leg)`)];
	if (around === undefined) return phrase(...start);
	const round = sayAmount(on === 'both' ? 2 * intake : intake, unit, denominator);
	const only = on === 'both' ? [] : [words(`, ${on} side only`)];
	return phrase(...start, equals, round, words(`round ${around}`), ...only);
}

/** “3/8″ lower”: how far a chalked edge moved, in mm (its sign left to the word). */
export function sayEdge(move: number, direction: string, unit: Unit, denominator: 8 | 16 = 16): Phrase {
	return phrase(sayAmount(move, unit, denominator), words(direction));
}

function startOf(
	a: number,
	b: number,
	layers: readonly [string, string] = ['one layer', 'the other'],
	amount: (mm: number) => PhrasePart
): readonly PhrasePart[] {
	if (a === b) return [amount(a), words('on each layer')];
	if (b === 0) return [amount(a), words(`${a < 0 ? 'off' : 'onto'} ${layers[0]} alone`)];
	if (a === 0) return [amount(b), words(`${b < 0 ? 'off' : 'onto'} ${layers[1]} alone`)];
	return [
		amount(a),
		words(`${a < 0 ? 'off' : 'onto'} ${layers[0]},`),
		amount(b),
		words(`${b < 0 ? 'off' : 'onto'} ${layers[1]}`)
	];
}

function seamAnd(around: string | undefined): string {
	return around === undefined ? 'at this seam' : `at this seam and round ${around}`;
}

function nothing(around: string | undefined): string {
	return around === undefined ? 'nothing at this seam' : `nothing round ${around}`;
}
