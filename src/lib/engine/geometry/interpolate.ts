import { lengthOf } from './point.ts';

/** A curve through given values; both are constant beyond the ends. `slope` is d value / d x. */
export type Interpolant = (x: number) => { value: number; slope: number };

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

	return (x) => {
		if (!(x >= xs[0])) return { value: ys[0], slope: 0 };
		if (x >= xs[count - 1]) return { value: ys[count - 1], slope: 0 };
		let low = 0;
		let high = count - 2;
		while (low < high) {
			const middle = (low + high + 1) >> 1;
			if (xs[middle] <= x) low = middle;
			else high = middle - 1;
		}
		if (straight) return { value: ys[low] + secants[low] * (x - xs[low]), slope: secants[low] };
		// Hermite form about the left end: y + t h (m0 + t ((3Δ − 2 m0 − m1) + t (m0 + m1 − 2Δ))).
		const h = xs[low + 1] - xs[low];
		const t = (x - xs[low]) / h;
		const m0 = slopes[low];
		const quadratic = 3 * secants[low] - 2 * m0 - slopes[low + 1];
		const cubic = m0 + slopes[low + 1] - 2 * secants[low];
		return {
			value: ys[low] + t * h * (m0 + t * (quadratic + t * cubic)),
			slope: m0 + t * (2 * quadratic + 3 * t * cubic)
		};
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
