import type { Nameable, ShorthandContext, ShorthandProblem } from './shorthand-context.ts';
import { problem } from './shorthand-context.ts';
import type { Token } from './shorthand-scan.ts';
import { bare, standsAt } from './shorthand-target.ts';
import type { Target } from './shorthand-target.ts';
import { entries } from './shorthand-words.ts';
import type { Entry, Meaning, NamedPlace } from './shorthand-words.ts';

/** An amount as typed, or what a phrase of the line means; with where it stands. */
export type Spoken =
	| { readonly kind: 'amount'; readonly text: string; readonly at: number; readonly marked: boolean }
	| { readonly kind: 'said'; readonly meaning: Meaning; readonly text: string; readonly at: number };

/** The line in order, without the name of its target, each phrase read as the longest one that is known here. */
export function readMeanings(
	tokens: readonly Token[],
	dictionary: readonly Entry[],
	target: Target
): readonly Spoken[] | ShorthandProblem {
	const spoken: Spoken[] = [];
	let index = 0;
	while (index < tokens.length) {
		const token = tokens[index];
		if (index === target.from) {
			index += target.count;
		} else if (token.kind === 'amount') {
			spoken.push(token);
			index += 1;
		} else if (token.kind === 'comma') {
			spoken.push({ kind: 'said', meaning: { kind: 'comma' }, text: token.text, at: token.at });
			index += 1;
		} else {
			const entry = longest(tokens, index, dictionary);
			if (entry === undefined) return problem(unknownWord(token.text, target, dictionary), token.at);
			spoken.push({ kind: 'said', meaning: entry.meaning, text: entry.words.join(' '), at: token.at });
			index += entry.words.length;
		}
	}
	return spoken;
}

function longest(tokens: readonly Token[], index: number, dictionary: readonly Entry[]): Entry | undefined {
	return dictionary
		.filter(({ words }) => standsAt(tokens, index, words))
		.reduce<Entry | undefined>((best, one) => (best && best.words.length >= one.words.length ? best : one), undefined);
}

function unknownWord(text: string, target: Target, dictionary: readonly Entry[]): string {
	if (target.of === 'dart') return `“${text}” is not understood. Write wider or narrower and by how much.`;
	const places = new Map<string, string>();
	for (const { words, meaning } of dictionary) {
		const key = meaning.kind === 'place' ? JSON.stringify(meaning.place) : undefined;
		if (key !== undefined && !places.has(key)) places.set(key, words.join(' '));
	}
	return `“${text}” is no place or act here. Places on this ${target.of}: ${[...places.values()].join(', ')}.`;
}

/** The words for places on this seam or edge: balance lines, its two ends, notches. */
export function placeEntries({ ends, runs = 'down' }: Nameable, context: ShorthandContext): readonly Entry[] {
	const place = (named: NamedPlace, phrases: readonly string[]) => entries({ kind: 'place', place: named }, phrases);
	const first = runs === 'down' ? 'top' : 'bottom';
	const last = runs === 'down' ? 'bottom' : 'top';
	return [
		...context.levels.flatMap(({ level, name, also = [] }) => place({ level }, [level, name, bare(name), ...also])),
		...place({ end: 'start' }, [...(ends?.start ?? []), 'start', first]),
		...place({ end: 'finish' }, [...(ends?.finish ?? []), 'finish', 'end', last]),
		...(context.notches ?? []).flatMap((notch) => place({ notch }, [`notch ${notch}`]))
	];
}
