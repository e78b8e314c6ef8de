/**
 * Amounts inside the engine's sentences, in inches as the tape has them. The screens say amounts in the reader's own unit
 * from the figures that come with every sentence.
 */

/** `1 1/4″`: mm rounded to the nearest 1/16 in (or 1/`denominator`), without sign; `0` if nothing is left. */
export function inches(mm: number, denominator = 16): string {
	const parts = Math.round((Math.abs(mm) / 25.4) * denominator);
	const whole = Math.floor(parts / denominator);
	let numerator = parts - whole * denominator;
	let below = denominator;
	while (numerator > 0 && numerator % 2 === 0) {
		numerator /= 2;
		below /= 2;
	}
	if (numerator === 0) return whole === 0 ? '0' : `${whole}″`;
	return `${whole > 0 ? `${whole} ` : ''}${numerator}/${below}″`;
}

/** As `inches`, rounded down to the tape's next mark below: for the greatest amount that works. */
export function inchesBelow(mm: number, denominator = 16): string {
	return inches(floorToTape(mm, denominator), denominator);
}

/** mm rounded towards nothing to a mark of the tape. */
export function floorToTape(mm: number, denominator = 16): number {
	const mark = 25.4 / denominator;
	return Math.sign(mm) * Math.floor(Math.abs(mm) / mark + 1e-9) * mark;
}
