import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { oneWayRoot, rootsBetween } from '../../../src/lib/engine/geometry/roots.ts';

/** Coefficients, constant term first, of a product of (t − root). */
const withRoots = (roots: readonly number[]) =>
	roots.reduce((product, root) => [0, ...product].map((c, i) => c - root * (product[i] ?? 0)), [1]);

test('the roots that a polynomial was made from are found (seed 91)', () => {
	fc.assert(
		fc.property(fc.uniqueArray(fc.integer({ min: -20, max: 120 }), { minLength: 1, maxLength: 5 }), (hundredths) => {
			const roots = hundredths.map((h) => h / 100).sort((a, b) => a - b);
			const inside = roots.filter((root) => root >= 0 && root <= 1);
			const found = rootsBetween(withRoots(roots), 0, 1).filter((t) => t > 1e-6 && t < 1 - 1e-6);
			const strictly = inside.filter((root) => root > 0 && root < 1);
			expect(found).toHaveLength(strictly.length);
			found.forEach((t, i) => expect(Math.abs(t - strictly[i])).toBeLessThan(1e-7));
		}),
		{ seed: 91, numRuns: 500 }
	);
});

describe('nearly of a lower degree', () => {
	test.each([0, 1e-300, 1e-18, 1e-12, -1e-18])('a leading term of %d changes nothing', (leading) => {
		// (t − ¼)(t − ¾), and t − ½ with no quadratic either.
		const quadratic = rootsBetween([3 / 16, -1, 1, leading], 0, 1);
		expect(quadratic).toHaveLength(2);
		expect(quadratic[0]).toBeCloseTo(0.25, 10);
		expect(quadratic[1]).toBeCloseTo(0.75, 10);
		const single = rootsBetween([-0.5, 1, leading, leading], 0, 1);
		expect(single).toHaveLength(1);
		expect(single[0]).toBeCloseTo(0.5, 10);
	});

	test('constants have no roots, and a polynomial that is 0 none to give', () => {
		expect(rootsBetween([5], 0, 1)).toEqual([]);
		expect(rootsBetween([5, 0, 0, 0], 0, 1)).toEqual([]);
		expect(rootsBetween([0, 0, 0, 0], 0, 1)).toEqual([]);
	});
});

test('roots at the ends of the interval count', () => {
	expect(rootsBetween([0, 1], 0, 1)).toHaveLength(1);
	expect(rootsBetween([0, 1], 0, 1)[0]).toBeCloseTo(0, 15);
	expect(rootsBetween([-1, 1], 0, 1)).toEqual([1]);
	expect(rootsBetween([0, -1, 1], 0, 1)).toEqual([0, 1]);
	expect(rootsBetween([0, 1, -3, 2], 0, 1)).toEqual([0, 0.5, 1]);
});

test('the root of a cubic that only rises or falls is the one that was put there (seed 92)', () => {
	const share = fc.integer({ min: 1, max: 999 }).map((thousandths) => thousandths / 1000);
	fc.assert(
		fc.property(share, share, fc.integer({ min: 1, max: 40 }), fc.boolean(), (root, apex, size, falls) => {
			// (t − root) × (size + (t − apex)²): no other root, and rising wherever size is more than a third.
			const sign = falls ? -1 : 1;
			const [c0, c1] = [size + apex * apex, -2 * apex];
			const k = [-root * c0, c0 - root * c1, c1 - root, 1].map((one) => sign * one) as [number, number, number, number];
			expect(Math.abs(oneWayRoot(...k) - root)).toBeLessThan(1e-14);
		}),
		{ seed: 92, numRuns: 500 }
	);
});
