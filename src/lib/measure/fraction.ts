import { nearestPart } from './units.ts';

/** A number that is not negative, as whole figures: `top / bottom`. */
export interface Fraction {
	readonly top: number;
	readonly bottom: number;
}

const partNames: Readonly<Record<number, string>> = {
	2: 'Halves',
	4: 'Quarters',
	8: 'Eighths',
	16: 'Sixteenths',
	32: 'Thirty-seconds'
};

/** As a tape says it: `1 1/8`, `3/4`, `2`; in lowest terms. */
export function sayFraction({ top, bottom }: Fraction): string {
	const whole = Math.floor(top / bottom);
	const rest = top - whole * bottom;
	if (rest === 0) return String(whole);
	const divisor = commonDivisor(rest, bottom);
	const fraction = `${rest / divisor}/${bottom / divisor}`;
	return whole === 0 ? fraction : `${whole} ${fraction}`;
}

/**
 * What is wrong with `whole top/bottom` as a length on a tape, and how to write it instead; nothing if it reads.
 * Halves to thirty-seconds are read, each short of a whole.
 */
export function fractionProblem(
	whole: number,
	top: number,
	bottom: number,
	metric: boolean
): { readonly problem: string; readonly instead?: string } | undefined {
	const typed = whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
	if (bottom === 0)
		return { problem: `Nothing can be divided by 0, so ${typed} is no length. Write a fraction such as 3/8.` };
	const value = { top: whole * bottom + top, bottom };
	const parts = partNames[bottom];
	if (parts !== undefined) {
		if (top < bottom) return undefined;
		const instead = sayFraction(value);
		return { problem: `${parts} go up to ${bottom - 1}: ${typed} is ${instead}. Write ${instead}?`, instead };
	}
	const instead = metric ? String(Math.round((value.top / bottom) * 100) / 100) : onTheTape(value);
	const scale = metric ? 'A metric length is written with a point' : 'A tape has halves, quarters, eighths, sixteenths';
	return { problem: `${scale}: ${typed} is about ${instead}. Write ${instead}?`, instead };
}

function onTheTape({ top, bottom }: Fraction): string {
	const inches = top / bottom;
	const sixteenths = nearestPart(inches, 16);
	const nearest = sixteenths === 0 ? nearestPart(inches, 32) : sixteenths;
	return sayFraction({ top: nearest * 32, bottom: 32 });
}

function commonDivisor(a: number, b: number): number {
	return b === 0 ? a : commonDivisor(b, a % b);
}
