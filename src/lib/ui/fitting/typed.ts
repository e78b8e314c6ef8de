import { formatLength } from '../../measure/format-length.ts';
import type { Unit } from '../../measure/units.ts';

/** The fields of a form or of an address by name, as they were typed. */
export type Typed = Readonly<Record<string, string>>;

/**
 * A length as it is put into a field: in the page's unit if it can be written so exactly (1/16 in, half a millimetre), else in
 * millimetres. Read again it is the same length, to a thousandth of a millimetre.
 */
export function lengthTyped(mm: number, unit: Unit): string {
	for (const denominator of [8, 16] as const) {
		const { text, parts } = formatLength(mm, unit, { denominator, sign: 'minus', mark: unit === 'cm' });
		if (!parts.about && Math.abs(lengthWritten(mm, unit, denominator) - mm) < 1e-3) return text.replace('−', '-');
	}
	return `${Number(mm.toFixed(3))} mm`;
}

function lengthWritten(mm: number, unit: Unit, denominator: 8 | 16): number {
	const step = unit === 'in' ? 25.4 / denominator : denominator === 8 ? 1 : 0.5;
	return Math.round(mm / step) * step;
}

/** A field's text, trimmed; empty where there is none. */
export const field = (typed: Typed, name: string): string => typed[name]?.trim() ?? '';

/** The address of a page in the state that these fields say; empty ones are left out. */
export function addressOf(typed: Typed, change: Readonly<Record<string, string | undefined>> = {}): string {
	const all = { ...typed, ...change };
	const params = Object.entries(all).filter((entry): entry is [string, string] => Boolean(entry[1]?.trim()));
	return `?${new URLSearchParams(params).toString()}`;
}
