/** How far the points of a path move at right angles to it. */

/** mm along the outward normal at arc length s: the same everywhere, or a function with its slope. */
export type Amount = number | ((s: number) => { readonly value: number; readonly slope: number });

/** Amount and slope at s, whichever form the amount has. */
export function amountAt(amount: Amount, s: number): { value: number; slope: number } {
	return typeof amount === 'number' ? { value: amount, slope: 0 } : amount(s);
}
