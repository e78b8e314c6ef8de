import type { Point } from '../../engine/index.ts';
import type { Primitive } from '../primitive.ts';
import type { Words } from '../words.ts';

/** What one mark puts on the sheet: its drawing, the lines that words keep clear of, and the words that go beside it. */
export interface Drawn {
	readonly parts: readonly Primitive[];
	readonly lines: readonly (readonly Point[])[];
	readonly words: readonly Words[];
}

export const nothing: Drawn = { parts: [], lines: [], words: [] };

export function together(drawn: readonly Drawn[]): Drawn {
	return {
		parts: drawn.flatMap(({ parts }) => parts),
		lines: drawn.flatMap(({ lines }) => lines),
		words: drawn.flatMap(({ words }) => words)
	};
}
