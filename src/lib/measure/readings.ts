import { formatLength } from './format-length.ts';
import { inch } from './units.ts';
import type { Unit } from './units.ts';

/** Up to four readings of one place, in mm on one layer: the seam's two layers, on the wearer's right and left. */
export interface Readings {
	readonly rightA?: number;
	readonly rightB?: number;
	readonly leftA?: number;
	readonly leftB?: number;
}

/** `alike` within 1/8″, `apart` up to 1/4″, `far apart` beyond (common practice, no source). */
export type Likeness = 'none' | 'one' | 'alike' | 'apart' | 'far apart';

export interface ReadReadings {
	readonly count: number;
	/** Of all readings, in mm; absent when there are none, as are the averages by side and by layer. */
	readonly average?: number;
	readonly right?: number;
	readonly left?: number;
	readonly a?: number;
	readonly b?: number;
	/** Greatest less least, in mm. */
	readonly spread: number;
	readonly likeness: Likeness;
	/** What to ask or offer, when there is something to ask or offer. */
	readonly sentence?: string;
}

const alikeWithin = inch / 8;
const farApartOver = inch / 4;
/** Readings typed in sixteenths are compared as typed: this much is arithmetic, not cloth. */
const slack = 1e-6;

/** What up to four readings of one place come to: averages, how far apart they are, and the sentence to say about it. */
export function readReadings({ rightA, rightB, leftA, leftB }: Readings, unit: Unit): ReadReadings {
	const all = [rightA, rightB, leftA, leftB].filter((reading) => reading !== undefined);
	const spread = all.length === 0 ? 0 : Math.max(...all) - Math.min(...all);
	const likeness = likenessOf(all.length, spread);
	const averages = {
		average: averageOf(all),
		right: averageOf([rightA, rightB]),
		left: averageOf([leftA, leftB]),
		a: averageOf([rightA, leftA]),
		b: averageOf([rightB, leftB])
	};
	return {
		count: all.length,
		...averages,
		spread,
		likeness,
		sentence: sentenceOf(likeness, averages.average ?? 0, spread, unit)
	};
}

function likenessOf(count: number, spread: number): Likeness {
	if (count === 0) return 'none';
	if (count === 1) return 'one';
	if (spread <= alikeWithin + slack) return 'alike';
	return spread <= farApartOver + slack ? 'apart' : 'far apart';
}

function sentenceOf(likeness: Likeness, average: number, spread: number, unit: Unit): string | undefined {
	const say = (mm: number) => formatLength(mm, unit, { denominator: 16, sign: 'never' }).text;
	if (likeness === 'alike')
		return spread <= slack
			? `The readings agree: take ${say(average)}?`
			: `The readings are alike within ${say(spread)}: take the average, ${say(average)}?`;
	if (likeness === 'apart')
		return `The readings are ${say(spread)} apart: take the average, ${say(average)}, or read the pins once more?`;
	if (likeness === 'far apart') return `The readings are ${say(spread)} apart. Uneven wearer, or uneven pins?`;
	return undefined;
}

function averageOf(readings: readonly (number | undefined)[]): number | undefined {
	const given = readings.filter((reading) => reading !== undefined);
	return given.length === 0 ? undefined : given.reduce((sum, reading) => sum + reading, 0) / given.length;
}
