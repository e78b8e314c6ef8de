import type { Draft } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { findAct } from '../acts.ts';
import { atStart } from '../casing.ts';
import { bustSpreadWords, spreadWords } from './across.ts';
import { dartSetWords, dartSwingWords, dartWords } from './dart.ts';
import { edgeWords } from './edge.ts';
import { foldDartWords, smoothWords, trueDartWords, trueSeamWords } from './inside.ts';
import { markWords } from './mark.ts';
import { seamWords } from './seam.ts';
import type { AlterationAmount, Teller, Told } from './told.ts';

export type { AlterationAmount, Told } from './told.ts';

/** Any alteration, by the kind that it says; the engine has read it. */
export interface Intent {
	readonly kind: string;
}

/** How each kind is said. Adding a kind of alteration is a line here. */
const tellers: Readonly<Record<string, Teller<never>>> = {
	seam: seamWords,
	edge: edgeWords,
	dart: dartWords,
	'dart-set': dartSetWords,
	'dart-swing': dartSwingWords,
	'fold-dart': foldDartWords,
	spread: spreadWords,
	'bust-spread': bustSpreadWords,
	'true-seam': trueSeamWords,
	'true-dart': trueDartWords,
	smooth: smoothWords,
	mark: markWords
};

/**
 * An alteration in parts: what it was made to, what was done, on which sides, how much where. `draft` is the draft that it is
 * carried to, before it: there its seam and places are looked up, and a dart's change is told against the width it has there.
 */
export function alterationWords(draft: Draft, intent: Intent, unit: Unit): Told {
	const tell = tellers[intent.kind] as Teller<Intent> | undefined;
	return tell?.(draft, intent, unit) ?? { subject: atStart(intent.kind.replaceAll('-', ' ')), amounts: [] };
}

/**
 * “Side seam, took in 1/4″ at the waist, both sides”; “Side seam, took in, not read yet”. `act` is the record's: what to say
 * of one that has no amounts yet.
 */
export function alterationTitle(draft: Draft, intent: Intent, unit: Unit, act?: string): string {
	const { subject, done, sides } = alterationWords(draft, intent, unit);
	if (done !== undefined) return [subject, done, sides].filter(Boolean).join(', ');
	return [subject, findAct(act)?.done, sides, 'not read yet'].filter(Boolean).join(', ');
}

/** How much at each place, in order along the seam or edge; ends that stay where they are included. Empty while not read. */
export function alterationAmounts(draft: Draft, intent: Intent, unit: Unit): readonly AlterationAmount[] {
	return alterationWords(draft, intent, unit).amounts;
}

/** The greatest of the amounts: what a short list shows at its right. */
export function greatestAmount(amounts: readonly AlterationAmount[]): AlterationAmount | undefined {
	const size = ({ mm, other = 0 }: AlterationAmount) => Math.max(Math.abs(mm), Math.abs(other));
	return amounts.reduce<AlterationAmount | undefined>(
		(most, one) => (size(one) > 0 && (!most || size(one) > size(most)) ? one : most),
		undefined
	);
}
