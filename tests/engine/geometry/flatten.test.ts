import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cut } from '../../../src/lib/engine/geometry/accuracy.ts';
import { flatten } from '../../../src/lib/engine/geometry/flatten.ts';
import { line } from '../../../src/lib/engine/geometry/segment.ts';
import { distanceToPolyline, nastyCurves, paths, raised, sampled } from '../../support/curves.ts';

test.each(nastyCurves)('keeps within the accuracy asked for: $remark', ({ curve }) => {
	for (const accuracy of [1, 0.1, cut]) {
		const polyline = flatten([curve], accuracy);
		for (const point of sampled([curve], 777)) {
			expect(distanceToPolyline(point, polyline)).toBeLessThanOrEqual(accuracy * (1 + 1e-9) + 1e-12);
		}
	}
});

test('keeps ends and joints to the bit and lies within the accuracy, on random chains (seed 71)', () => {
	fc.assert(
		fc.property(paths, fc.constantFrom(3, 0.3, 0.05), (path, accuracy) => {
			const polyline = flatten(path, accuracy);
			expect(polyline[0]).toBe(path[0].from);
			for (const { to } of path) expect(polyline).toContain(to);
			for (const point of sampled(path, 101)) {
				expect(distanceToPolyline(point, polyline)).toBeLessThanOrEqual(accuracy * (1 + 1e-9));
			}
		}),
		{ seed: 71, numRuns: 60 }
	);
});

test('a line stays one chord, and a parabola is cut as its sagitta says', () => {
	expect(flatten([line([0, 0], [300, 400])], 0.01)).toEqual([
		[0, 0],
		[300, 400]
	]);
	// Derived: n equal steps over a parabola of sagitta 50 leave 50/n² each: 0.01 mm needs √5000, 71 chords.
	expect(flatten([raised([-100, 100], [0, 0], [100, 100])], 0.01)).toHaveLength(72);
});

test('an accuracy that is not above 0 is refused', () => {
	expect(() => flatten([line([0, 0], [1, 1])], 0)).toThrow(RangeError);
	expect(() => flatten([line([0, 0], [1, 1])], NaN)).toThrow(RangeError);
});
