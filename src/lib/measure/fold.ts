import type { Unit } from './units.ts';
import { sayAmount, equals, phrase, words } from './phrase.ts';
import type { Phrase } from './phrase.ts';

/** What the tape was laid on: one layer from the line to the pins, the whole pinned fold, or each layer by itself. */
export type Measured = 'one-layer' | 'whole-fold' | 'each-layer';

/**
 * What was measured, in mm, as the amount on each of the seam's two layers. A whole fold is halved, one layer stands for
 * both; each layer needs its own two figures.
 */
export function eachLayer(
	measured: Measured,
	first: number,
	second = first
): { readonly a: number; readonly b: number } {
	if (measured === 'whole-fold') return { a: first / 2, b: first / 2 };
	if (measured === 'one-layer') return { a: first, b: first };
	return { a: first, b: second };
}

/** “1/2″ across the fold = 1/4″ on each layer”, from the whole fold in mm; its sign is left to the act's word. */
export function sayFold(fold: number, unit: Unit, denominator: 8 | 16 = 16): Phrase {
	return phrase(
		sayAmount(fold, unit, denominator),
		words('across the fold'),
		equals,
		sayAmount(fold / 2, unit, denominator),
		words('on each layer')
	);
}
