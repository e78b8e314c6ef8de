import { Bezier } from 'bezier-js';
import { expect, test } from 'vitest';
import { evenLength, steps } from '../../../src/lib/engine/geometry/even-lengths.ts';

const speedsOf = (speed: (t: number) => number) => Float64Array.from({ length: steps + 1 }, (_, i) => speed(i / steps));

// Closed Newton–Cotes formulae of nine points are exact for polynomials of degree 9 (Abramowitz & Stegun 25.4.18); up to a
// place between, the polynomial through nine points is, of degree 8.
test.each([0, 1, 2, 5, 8])(
	'the length at a speed of t to the power of %d is that of its integral, at each half step',
	(power) => {
		const speeds = speedsOf((t) => t ** power);
		for (let half = 0; half <= 2 * steps; half++)
			expect(evenLength(speeds, 1 / steps, half)).toBeCloseTo((half / (2 * steps)) ** (power + 1) / (power + 1), 12);
	}
);

test('the weights of the whole are the published ones', () => {
	// 4h/14175 × (989, 5888, −928, 10496, −4540, …): Abramowitz & Stegun 25.4.18.
	const published = [989, 5888, -928, 10496, -4540, 10496, -928, 5888, 989].map((weight) => (4 * weight) / 14175);
	published.forEach((weight, node) => {
		const speeds = new Float64Array(steps + 1);
		speeds[node] = 1;
		expect(evenLength(speeds, 1, 2 * steps)).toBeCloseTo(weight, 11);
	});
});

test('along a third of an armhole it is another library’s length', () => {
	const whole = new Bezier(0, 0, -5, 90, 20, 150, 95, 160);
	const part = whole.split(0.3, 0.63);
	const speeds = speedsOf((t) => {
		const { x, y } = part.derivative(t);
		return Math.hypot(x, y);
	});
	for (const half of [3, 8, 11, 16])
		expect(evenLength(speeds, 1 / steps, half)).toBeCloseTo(part.split(0, half / (2 * steps)).length(), 5);
});
