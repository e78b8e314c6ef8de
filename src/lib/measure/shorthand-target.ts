import type { Nameable, ShorthandContext, ShorthandProblem } from './shorthand-context.ts';
import { problem } from './shorthand-context.ts';
import type { Token } from './shorthand-scan.ts';
import { wordsOf } from './shorthand-words.ts';

export interface Target {
	readonly of: 'seam' | 'edge' | 'dart';
	readonly named: Nameable;
	/** Tokens that name it: from, and how many. */
	readonly from: number;
	readonly count: number;
}

/**
 * The seam, edge or dart of a line: the longest name that stands in it; of names alike in length the one that comes
 * first. A name that is also a place counts as the place when another name is there.
 */
export function findTarget(tokens: readonly Token[], context: ShorthandContext): Target | ShorthandProblem {
	const named = [
		...context.seams.map((named) => ({ of: 'seam' as const, named })),
		...context.edges.map((named) => ({ of: 'edge' as const, named })),
		...(context.darts ?? []).map((named) => ({ of: 'dart' as const, named }))
	];
	const levelWords = context.levels.flatMap(({ level, name, also = [] }) => [level, name, ...also]).map(bare);
	const found = named.flatMap(({ of, named: one }) =>
		namesOf(one).flatMap((words) => {
			const from = tokens.findIndex((_, at) => standsAt(tokens, at, words));
			const isPlace = levelWords.includes(words.join(' '));
			return from < 0 ? [] : [{ of, named: one, from, count: words.length, isPlace }];
		})
	);
	found.sort((x, y) => Number(x.isPlace) - Number(y.isPlace) || y.count - x.count || x.from - y.from);
	const best = found[0];
	if (best === undefined)
		return problem(
			'No seam, edge or dart of this draft is named. Begin with one, such as “side R in 1/4 waist”.',
			tokens[0].at
		);
	const rival = found.find(
		(one) =>
			one.named !== best.named && one.count === best.count && one.from === best.from && one.isPlace === best.isPlace
	);
	if (rival)
		return problem(
			`That could be ${best.named.name} or ${rival.named.name}. Write more of its name.`,
			tokens[best.from].at
		);
	return best;
}

function namesOf({ id, name, also = [] }: Nameable): readonly (readonly string[])[] {
	const full = [id, name, ...also].map(wordsOf).filter((words) => words.length > 0);
	const short = [name, ...also].map((one) => wordsOf(bare(one))).filter((words) => words.length > 0);
	return [...full, ...short];
}

/** A name without the word that only says what it is. */
export function bare(name: string): string {
	return wordsOf(name)
		.filter((word, at, all) => !(at === all.length - 1 && at > 0 && ['seam', 'line', 'edge'].includes(word)))
		.join(' ');
}

export function standsAt(tokens: readonly Token[], at: number, words: readonly string[]): boolean {
	return words.every((word, i) => {
		const token = tokens[at + i];
		return token?.kind === 'word' && token.text.toLowerCase() === word;
	});
}
