/** Arc lengths along a stretch of a curve whose speed is known at even steps of its parameter. */

/** Steps in one stretch; speeds are given at both ends and between them. */
export const steps = 8;
/** Nodes are counted from the middle one: less is lost to rounding. */
const middle = steps / 2;

/**
 * Lengths are integrals of the polynomial through all nine speeds (Newton–Cotes; M. Abramowitz & I. A. Stegun, Handbook of
 * Mathematical Functions, 1964, 25.4.18 for the whole): row i holds what each speed counts up to half step i, in steps.
 */
const shares = Array.from({ length: 2 * steps + 1 }, (_, halves) =>
	Float64Array.from({ length: steps + 1 }, (_, node) => integralOf(lagrange(node), -middle, halves / 2 - middle))
);

/**
 * The length from the first step to a half step, 0 to 2 × `steps`, in mm.
 *
 * @param speeds mm per unit of the parameter, `steps` + 1 of them
 * @param step how much of the parameter one step is
 */
export function evenLength(speeds: Float64Array, step: number, halves: number): number {
	const share = shares[halves];
	let sum = 0;
	for (let j = 0; j <= steps; j++) sum += share[j] * speeds[j];
	return sum * step;
}

/** Coefficients, lowest first, of the polynomial that is 1 at one node and 0 at the others. */
function lagrange(node: number): number[] {
	let coefficients = [1];
	for (let other = 0; other <= steps; other++) {
		if (other === node) continue;
		const by = node - other;
		coefficients = [...coefficients, 0].map((one, k) => ((coefficients[k - 1] ?? 0) - (other - middle) * one) / by);
	}
	return coefficients;
}

function integralOf(coefficients: readonly number[], from: number, to: number): number {
	return coefficients.reduce((sum, one, k) => sum + (one * (Math.pow(to, k + 1) - Math.pow(from, k + 1))) / (k + 1), 0);
}
