/** Arc lengths along a stretch of a curve whose speed is known at even steps of its parameter. */

/** Steps in one stretch; speeds are given at both ends and between them. */
export const steps = 8;

/**
 * Lengths are integrals of the polynomial through all nine speeds (Newton–Cotes; M. Abramowitz & I. A. Stegun, Handbook of
 * Mathematical Functions, 1964, 25.4.18 for the whole): row i holds what each speed counts up to step i, in steps.
 */
const shares = Array.from({ length: steps + 1 }, (_, upTo) =>
	Float64Array.from({ length: steps + 1 }, (_, node) => integralOf(lagrange(node), upTo))
);

/**
 * Puts the length up to each step, from the first, in `lengths`: `steps` + 1 numbers, the first 0.
 *
 * @param speeds mm per unit of the parameter, `steps` + 1 of them
 * @param step how much of the parameter one step is
 */
export function evenLengths(speeds: Float64Array, step: number, lengths: Float64Array): void {
	for (let i = 0; i <= steps; i++) {
		const share = shares[i];
		let sum = 0;
		for (let j = 0; j <= steps; j++) sum += share[j] * speeds[j];
		lengths[i] = sum * step;
	}
}

/** Coefficients, lowest first, of the polynomial that is 1 at one node and 0 at the others. */
function lagrange(node: number): number[] {
	let coefficients = [1];
	for (let other = 0; other <= steps; other++) {
		if (other === node) continue;
		const by = node - other;
		coefficients = [...coefficients, 0].map((one, k) => ((coefficients[k - 1] ?? 0) - other * (one ?? 0)) / by);
	}
	return coefficients;
}

/** From 0 to x. */
function integralOf(coefficients: readonly number[], x: number): number {
	return coefficients.reduce((sum, coefficient, k) => sum + (coefficient * Math.pow(x, k + 1)) / (k + 1), 0);
}
