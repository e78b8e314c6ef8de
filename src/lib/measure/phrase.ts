import { formatLength } from './format-length.ts';
import type { LengthParts } from './format-length.ts';
import type { Unit } from './units.ts';

export type PhrasePart =
	| { readonly kind: 'amount'; readonly text: string; readonly parts: LengthParts }
	| { readonly kind: 'words'; readonly text: string }
	| { readonly kind: 'equals'; readonly text: '=' };

/** A sum said in words, in parts, so that the face can set its amounts larger. `text` is the parts with spaces between. */
export interface Phrase {
	readonly text: string;
	readonly parts: readonly PhrasePart[];
}

export const equals: PhrasePart = { kind: 'equals', text: '=' };

export function words(text: string): PhrasePart {
	return { kind: 'words', text };
}

/**
 * An amount without its sign, for a direction is said with a word; its text begins with “about” where the nearest part of
 * an inch is not the amount itself. Sixteenths and half millimetres unless told otherwise.
 */
export function sayAmount(mm: number, unit: Unit, denominator: 8 | 16 = 16): PhrasePart {
	const { text, parts } = formatLength(mm, unit, { denominator, sign: 'never' });
	return { kind: 'amount', text: parts.about ? `about ${text}` : text, parts };
}

export function phrase(...parts: readonly PhrasePart[]): Phrase {
	const text = parts.reduce(
		(said, part) => said + (said === '' || part.text.startsWith(',') ? '' : ' ') + part.text,
		''
	);
	return { text, parts };
}
