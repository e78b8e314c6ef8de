import { formatLength } from '../measure/format-length.ts';
import type { FormatOptions } from '../measure/format-length.ts';
import type { Unit } from '../measure/units.ts';

/** A run of text, or a fraction that the font is to set. `gap` stands between a whole number and its fraction: read, not seen. */
export type Run = { readonly kind: 'text' | 'fraction' | 'gap'; readonly text: string };

/** A length in mm in runs; joined they are the plain text of `formatLength`. */
export function amountRuns(mm: number, unit: Unit, options: FormatOptions = {}): readonly Run[] {
	return fractionRuns(formatLength(mm, unit, options).text);
}

/**
 * A sentence in runs, with every plain fraction of one or two figures over another (`1 3/8`, `5/16`) told from the words
 * about it. Dates and ratios with more figures, or with a stroke on either side, are left as they are.
 */
export function fractionRuns(sentence: string): readonly Run[] {
	const runs: Run[] = [];
	let from = 0;
	for (const found of sentence.matchAll(/(?<![\d/.,])(?:(\d+)( ))?(\d{1,2}\/\d{1,2})(?![\d/])/g)) {
		const [all, whole, gap, fraction] = found;
		const before = sentence.slice(from, found.index) + (whole ?? '');
		if (before !== '') runs.push({ kind: 'text', text: before });
		if (gap !== undefined) runs.push({ kind: 'gap', text: gap });
		runs.push({ kind: 'fraction', text: fraction });
		from = found.index + all.length;
	}
	if (from < sentence.length) runs.push({ kind: 'text', text: sentence.slice(from) });
	return runs;
}
