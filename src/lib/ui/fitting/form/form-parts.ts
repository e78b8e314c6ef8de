import type { Draft } from '../../../engine/index.ts';
import { parseLength } from '../../../measure/parse-length.ts';
import type { Unit } from '../../../measure/units.ts';
import { field, type Typed } from '../typed.ts';

/** Sentences by field; those about the whole form under the empty name. */
export type Problems = Readonly<Record<string, string>>;

/** Reads the fields of one form, gathering what is wrong with each. */
export interface FieldReader {
	readonly draft: Draft;
	readonly unit: Unit;
	readonly problems: Problems;
	text(name: string): string;
	/** A length in mm, undefined if the field is empty or wrong. */
	length(name: string, options?: { readonly signed?: boolean; readonly most?: number }): number | undefined;
	/** One of some values, the first of them if the field is empty. */
	choice<const T extends string>(name: string, values: readonly [T, ...T[]], sentence: string): T;
	wrong(name: string, sentence: string): undefined;
}

/** The most that a seam or an edge is moved, or a dart is wide or long, on one layer, mm. */
const most = 600;

export function fieldReader(draft: Draft, unit: Unit, typed: Typed): FieldReader {
	const problems: Record<string, string> = {};
	const wrong = (name: string, sentence: string): undefined => {
		problems[name] ??= sentence;
		return undefined;
	};
	return {
		draft,
		unit,
		problems,
		wrong,
		text: (name) => field(typed, name),
		length(name, { signed = false, most: limit = most } = {}) {
			const text = field(typed, name);
			if (text === '') return undefined;
			const read = parseLength(text, unit, { allowNegative: signed, max: limit });
			return 'mm' in read ? read.mm : wrong(name, read.problem);
		},
		choice(name, values, sentence) {
			const text = field(typed, name);
			const found = values.find((value) => value === text);
			if (found === undefined && text !== '') wrong(name, sentence);
			return found ?? values[0];
		}
	};
}
