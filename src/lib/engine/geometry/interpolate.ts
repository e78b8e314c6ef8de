import { lengthOf } from './point.ts';

/** A curve through given values, constant beyond the ends, and its slope, d value / d x. */
export interface Interpolant {
	value(x: number): number;
	slope(x: number): number;
}

/**
 * The monotone cubic through (xs, ys): it never leaves the range of two neighbouring values and is level at both ends.
 * Inner slopes are the mean of the two secants, 0 where these differ in sign or one is 0; then each pair of slopes is
 * scaled into the circle of radius 3. `shape: 'straight'` joins the values by straight runs instead; at
 * a bend the slope is that of the run after it.
 * Thrown: xs that do not rise strictly, lists of unlike length, none at all, values that are not finite.
 * Source: F. N. Fritsch & R. E. Carlson, Monotone Piecewise Cubic Interpolation, SIAM J. Numer. Anal. 17 (1980) 238–246.
 */
export function monotoneCubic(
	xs: readonly number[],
	ys: readonly number[],
	options: { readonly shape?: 'smooth' | 'straight' } = {}
): Interpolant {
	const count = xs.length;
	if (count === 0 || ys.length !== count) throw new RangeError('monotoneCubic: as many values as places, at least one');
	for (let i = 0; i < count; i++) {
		if (!Number.isFinite(xs[i]) || !Number.isFinite(ys[i])) throw new RangeError('monotoneCubic: not a finite number');
		if (i > 0 && !(xs[i] > xs[i - 1])) throw new RangeError('monotoneCubic: places must rise strictly');
	}
	const secants: number[] = [];
	for (let i = 0; i + 1 < count; i++) secants.push((ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i]));
	const straight = options.shape === 'straight';
	const slopes = straight ? [] : limitedSlopes(secants);

	const intervalOf = (x: number): number => {
		let low = 0;
		let high = count - 2;
		while (low < high) {
			const middle = (low + high + 1) >> 1;
			if (xs[middle] <= x) low = middle;
			else high = middle - 1;
		}
		return low;
	};
	// Hermite form about the left end: y + t h (m0 + t ((3Δ − 2 m0 − m1) + t (m0 + m1 − 2Δ))).
	return {
		value(x) {
			if (!(x >= xs[0])) return ys[0];
			if (x >= xs[count - 1]) return ys[count - 1];
			const i = intervalOf(x);
			if (straight) return ys[i] + secants[i] * (x - xs[i]);
			const h = xs[i + 1] - xs[i];
			const t = (x - xs[i]) / h;
			const m0 = slopes[i];
			const quadratic = 3 * secants[i] - 2 * m0 - slopes[i + 1];
			const cubic = m0 + slopes[i + 1] - 2 * secants[i];
			return ys[i] + t * h * (m0 + t * (quadratic + t * cubic));
		},
		slope(x) {
			if (!(x >= xs[0]) || x >= xs[count - 1]) return 0;
			const i = intervalOf(x);
			if (straight) return secants[i];
			const t = (x - xs[i]) / (xs[i + 1] - xs[i]);
			const m0 = slopes[i];
			const quadratic = 3 * secants[i] - 2 * m0 - slopes[i + 1];
			const cubic = m0 + slopes[i + 1] - 2 * secants[i];
			return m0 + t * (2 * quadratic + 3 * t * cubic);
		}
	};
}

function limitedSlopes(secants: readonly number[]): number[] {
	const slopes = new Array<number>(secants.length + 1).fill(0);
	for (let i = 1; i < secants.length; i++) {
		if (secants[i - 1] * secants[i] > 0) slopes[i] = 0.5 * (secants[i - 1] + secants[i]);
	}
	for (let i = 0; i < secants.length; i++) {
		if (secants[i] === 0) {
			slopes[i] = 0;
			slopes[i + 1] = 0;
			continue;
		}
		const length = lengthOf(slopes[i], slopes[i + 1]);
		const most = 3 * Math.abs(secants[i]);
		if (length > most) {
			slopes[i] *= most / length;
			slopes[i + 1] *= most / length;
		}
	}
	return slopes;
}
