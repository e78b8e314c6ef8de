import type { Unit } from './units.ts';

export interface Nameable {
	readonly id: string;
	readonly name: string;
	readonly also?: readonly string[];
	/** What its two ends are called here: `{ start: ['armhole'], finish: ['hem'] }`. */
	readonly ends?: { readonly start: readonly string[]; readonly finish: readonly string[] };
	/** Whether it is walked downwards (usual) or upwards: settles top, bottom, above and below. */
	readonly runs?: 'down' | 'up';
}

export interface ShorthandContext {
	readonly unit: Unit;
	readonly seams: readonly Nameable[];
	readonly edges: readonly Nameable[];
	readonly darts?: readonly Nameable[];
	readonly levels: readonly { readonly level: string; readonly name: string; readonly also?: readonly string[] }[];
	/** Ids of notches, said as `notch n1`. */
	readonly notches?: readonly string[];
}

export interface ShorthandProblem {
	readonly problem: string;
	/** Where in the line as typed. */
	readonly at: number;
}

export function problem(sentence: string, at: number): ShorthandProblem {
	return { problem: sentence, at };
}
