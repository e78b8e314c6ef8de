import type { z } from 'zod';
import { pathText, type FileProblem } from './draft-error.ts';
import { draftSchema } from './schema.ts';
import { shapeProblems } from './shape-problems.ts';

/** A value that has the shape asked for, with its place in the file. */
export interface Sound<T> {
	readonly value: T;
	readonly at: string;
}

/**
 * What of a file has the right shape. The rest is already reported, so the sense of the sound parts can be checked all the same
 * and every problem comes out in one go.
 */
export interface Shape {
	readonly problems: readonly FileProblem[];
	/** Whether the value at this place, and all below it, has the right shape. */
	isSound(at: string): boolean;
	/** The elements of a list that are sound; none where the list is missing or is no list. */
	soundIn<T>(list: readonly T[] | undefined, at: string): readonly Sound<T>[];
	/** The elements of a list whatever they hold; none where the list is missing, is no list or is too long. */
	allIn(list: unknown, at: string): readonly Sound<unknown>[];
}

export function shapeOf(file: unknown, schema: z.ZodType = draftSchema): Shape {
	const result = schema.safeParse(file);
	const problems = result.success ? [] : shapeProblems(result.error.issues, file);
	const wrong = new Set<string>();
	const above = new Set<string>();
	for (const { keys, harmless } of problems) {
		if (harmless) continue;
		wrong.add(pathText(keys));
		for (let length = 0; length <= keys.length; length++) above.add(pathText(keys.slice(0, length)));
	}
	const isSound = (at: string): boolean => {
		if (above.has(at)) return false;
		for (let end = at.length; end > 0; end = Math.max(at.lastIndexOf('.', end - 1), at.lastIndexOf('[', end - 1))) {
			if (wrong.has(at.slice(0, end))) return false;
		}
		return true;
	};
	const allIn = (list: unknown, at: string): Sound<unknown>[] =>
		Array.isArray(list) && !wrong.has(at) ? list.map((value: unknown, i) => ({ value, at: `${at}[${i}]` })) : [];
	return {
		problems: problems.map(({ path, message }) => ({ path, message })),
		isSound,
		soundIn: <T>(list: readonly T[] | undefined, at: string) =>
			allIn(list, at).filter((element) => isSound(element.at)) as Sound<T>[],
		allIn
	};
}
