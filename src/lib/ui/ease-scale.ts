import { formatLength } from '../measure/format-length.ts';
import { inch } from '../measure/units.ts';
import type { Unit } from '../measure/units.ts';

/** Ease at one balance line, all in mm; a garment smaller than the body has a negative ease. */
export interface EaseRow {
	readonly name: string;
	/** The wearer's measure; left out where it was not taken. */
	readonly body?: number;
	readonly ease?: number;
	readonly before?: number;
	readonly wanted?: readonly [least: number, most: number];
}

export interface EaseScale {
	readonly unit: Unit;
	/** mm of ease at the right end. */
	readonly end: number;
	/** Per cent of the width at `ease` mm. */
	readonly at: (ease: number) => number;
	readonly ticks: readonly { readonly at: number; readonly height: number }[];
}

/** Per cent of the bar that stands for the body; it is not to scale, the ease is. */
const bodyShare = 22;

/** One scale for all rows of a table of ease, so that they can be compared by eye: ticks at quarter inches, or at 5 mm. */
export function easeScale(rows: readonly EaseRow[], unit: Unit): EaseScale {
	const step = unit === 'in' ? inch / 4 : 5;
	const most = Math.max(0, ...rows.flatMap((row) => [row.ease ?? 0, row.before ?? 0, row.wanted?.[1] ?? 0]));
	const steps = Math.max(8, Math.ceil(most / step + 1));
	const end = steps * step;
	const at = (ease: number) => bodyShare + (ease / end) * (100 - bodyShare);
	const [whole, half] = unit === 'in' ? [4, 2] : [10, 2];
	const ticks = Array.from({ length: steps }, (_, i) => i + 1).map((i) => ({
		at: at(i * step),
		height: i % whole === 0 ? 10 : i % half === 0 ? 6 : 3
	}));
	return { unit, end, at, ticks };
}

/** What the bar shows, as a sentence to be read aloud. */
export function easeSentence(row: EaseRow, unit: Unit, before = 'before'): string {
	const say = (mm: number) => formatLength(mm, unit, { denominator: 16, sign: 'never' }).text;
	if (row.ease === undefined) return `${row.name}: not measured`;
	const parts = [row.body === undefined ? row.name : `${row.name}: body ${say(row.body)}`];
	parts.push(row.ease < 0 ? `short by ${say(row.ease)}` : `ease ${say(row.ease)}`);
	if (row.wanted) parts.push(`wanted ${say(row.wanted[0])} to ${say(row.wanted[1])}`);
	if (row.before !== undefined) parts.push(`${before} ${say(row.before)}`);
	return parts.join(', ');
}
