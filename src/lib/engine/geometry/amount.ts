/** How far the points of a path move at right angles to it. */

/** mm along the outward normal at arc length s: the same everywhere, or a function with its slope. */
export type Amount = number | VaryingAmount;

export interface VaryingAmount {
	value(s: number): number;
	/** mm per mm. */
	slope(s: number): number;
}

export function valueAt(amount: Amount, s: number): number {
	return typeof amount === 'number' ? amount : amount.value(s);
}

/** The amount so many times as large. */
export function timesAmount(amount: Amount, factor: number): Amount {
	if (typeof amount === 'number') return amount * factor;
	return { value: (s) => amount.value(s) * factor, slope: (s) => amount.slope(s) * factor };
}

/** How steeply it rises or falls at arc length s, mm per mm, without sign. */
export function steepness(amount: Amount, s: number): number {
	return typeof amount === 'number' ? 0 : Math.abs(amount.slope(s));
}
