import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, test } from 'vitest';
import {
	parameterAt,
	segmentLength,
	segmentLengthBetween,
	segmentLengthTo
} from '../../../src/lib/engine/geometry/arc-length.ts';
import { formatPathData } from '../../../src/lib/engine/geometry/path-data.ts';
import { moveSegment, reflection, rotation } from '../../../src/lib/engine/geometry/motion.ts';
import { cubic, line, splitSegment } from '../../../src/lib/engine/geometry/segment.ts';
import type { Cubic, Point } from '../../../src/lib/engine/geometry/types.ts';
import { cubics, evenly, nastyCurves, raised, rombergLength } from '../../support/curves.ts';

function scaled(k: number, ...points: [Point, Point, Point, Point]): Cubic {
	const [from, control1, control2, to] = points.map(([x, y]): Point => [k * x, k * y]);
	return cubic(from, control1, control2, to);
}

const closedForms: { remark: string; curve: Cubic; length: number }[] = [
	{
		// "Finding the arc length of the parabola y = x² from (0,0) to (1,1)", mathematics questions and answers: √5/2 + ln(2 + √5)/4.
		remark: 'a parabola',
		curve: raised([0, 0], [0.5, 0], [1, 1]),
		length: Math.sqrt(5) / 2 + Math.log(2 + Math.sqrt(5)) / 4
	},
	{
		// R. T. Farouki, Pythagorean-Hodograph Curves, 2008 (from memory): speed 1 + t², so 4/3.
		remark: 'a cubic whose speed is a polynomial',
		curve: cubic([0, 0], [1 / 3, 0], [2 / 3, 1 / 3], [2 / 3, 1]),
		length: 4 / 3
	},
	{
		// W. Neile, 1657: the semicubical parabola, (13√13 − 8)/27.
		remark: 'a semicubical parabola, which starts at its cusp',
		curve: cubic([0, 0], [0, 0], [1 / 3, 0], [1, 1]),
		length: (13 * Math.sqrt(13) - 8) / 27
	},
	{
		// Derived: with u = 2t − 1 the speed is 3 |u| √(1 + u²), so 2√2 − 1.
		remark: 'a cubic with a cusp in its middle',
		curve: cubic([0, 0], [1, 1], [0, 1], [1, 0]),
		length: 2 * Math.SQRT2 - 1
	},
	{
		// Derived: x = 12t − 33t² + 22t³ turns back at t = ½ ± √132/44.
		remark: 'a straight curve that goes back over itself twice',
		curve: cubic([0, 0], [4, 0], [-3, 0], [1, 0]),
		length: (() => {
			const x = (t: number) => 12 * t - 33 * t * t + 22 * t * t * t;
			const [t, u] = [0.5 - Math.sqrt(132) / 44, 0.5 + Math.sqrt(132) / 44];
			return x(t) + (x(t) - x(u)) + (1 - x(u));
		})()
	}
];

describe('length in closed form', () => {
	test('the parabola from 0 to 1 measures 1.478942857544597', () => {
		// The same source's decimal value.
		expect(segmentLength(raised([0, 0], [0.5, 0], [1, 1]), 1e-12)).toBeCloseTo(1.478942857544597, 12);
	});

	test('the semicubical parabola measures 1.439709873371550', () => {
		expect(segmentLength(cubic([0, 0], [0, 0], [1 / 3, 0], [1, 1]), 1e-12)).toBeCloseTo(1.43970987337155, 12);
	});

	for (const { remark, curve, length } of closedForms) {
		for (const size of [1, 300]) {
			test(`${remark}, ${size} mm large, is measured as closely as asked over twelve decades`, () => {
				const large = scaled(size, curve.from, curve.control1, curve.control2, curve.to);
				for (let decade = 0; decade <= 12; decade++) {
					const accuracy = 10 ** -decade;
					const rounding = 1e-14 * size * length;
					expect(Math.abs(segmentLength(large, accuracy) - size * length)).toBeLessThanOrEqual(accuracy + rounding);
				}
			});
		}
	}

	test('a quarter circle drawn as one cubic is longer than the circle by 0.01403 %', () => {
		// The usual k = 0.5522847498 (from memory); excess derived. Radius 120: 188.4956 against 188.5220.
		const k = 120 * 0.5522847498;
		const quarter = cubic([120, 0], [120, k], [k, 120], [0, 120]);
		expect(segmentLength(quarter, 1e-9)).toBeCloseTo(188.522, 4);
		expect(segmentLength(quarter, 1e-9) / (60 * Math.PI) - 1).toBeCloseTo(0.0001403, 7);
	});

	test('a line measures by Pythagoras', () => {
		expect(segmentLength(line([10, 10], [310, 410]), 1e-9)).toBe(500);
		// A straight taper of 10 mm over 200 mm lengthens the line by 0.2498 mm, 20 over 150 by 1.3275 (Pythagoras).
		expect(segmentLength(line([0, 0], [10, 200]), 1e-9) - 200).toBeCloseTo(0.2498, 4);
		expect(segmentLength(line([0, 0], [20, 150]), 1e-9) - 150).toBeCloseTo(1.3275, 4);
	});
});

describe('length against other measures of it', () => {
	// Smooth enough that 24 points of Gauss–Legendre, which both libraries take, hold to better than a millionth.
	const smooth = [
		cubic([0, 0], [10, 60], [40, 110], [110, 140]),
		cubic([0, 0], [-5, 90], [20, 150], [95, 160]),
		cubic([200, 40], [220, 160], [215, 300], [190, 420]),
		cubic([0, 0], [900, 300], [2000, -300], [3000, 100]),
		cubic([500, 500], [500.5, 500.7], [501.2, 500.9], [501.9, 500.4])
	];

	test.each(smooth)('agrees with svg-path-properties and bezier-js on smooth curves (%#)', (curve) => {
		const ours = segmentLength(curve, 1e-10);
		const { from, control1, control2, to } = curve;
		expect(Math.abs(new Bezier(...from, ...control1, ...control2, ...to).length() - ours)).toBeLessThan(1e-6);
		expect(Math.abs(new svgPathProperties(formatPathData([curve])).getTotalLength() - ours)).toBeLessThan(1e-6);
	});

	test.each(nastyCurves)(
		'is no shorter than its chords and no longer than its control polygon: $remark',
		({ curve }) => {
			const chords = 1 << 16;
			const length = segmentLength(curve, 1e-9);
			const fine = rombergLength(curve, 0);
			expect(length).toBeGreaterThanOrEqual(fine - 1e-9);
			let sum = 0;
			for (let i = 0; i < chords; i++) sum += segmentLengthBetween(curve, i / chords, (i + 1) / chords, 1e-15);
			expect(Math.abs(sum - length)).toBeLessThan(2e-9);
			const polygon = [curve.from, curve.control1, curve.control2, curve.to];
			const round = [1, 2, 3].reduce(
				(all, i) => all + Math.hypot(polygon[i][0] - polygon[i - 1][0], polygon[i][1] - polygon[i - 1][1]),
				0
			);
			expect(length).toBeLessThanOrEqual(round + 1e-9);
		}
	);

	test('agrees with extrapolated chord sums on random curves, at every accuracy (seed 1)', () => {
		fc.assert(
			fc.property(cubics, fc.integer({ min: 1, max: 8 }), (curve, decade) => {
				const coarse = rombergLength(curve, 12);
				const fine = rombergLength(curve, 13);
				// Where the extrapolation itself is unsure (a near cusp) it judges no closer than it knows.
				const unsure = 10 * Math.abs(fine - coarse) + 1e-9;
				expect(Math.abs(segmentLength(curve, 10 ** -decade) - fine)).toBeLessThanOrEqual(10 ** -decade + unsure);
			}),
			{ seed: 1, numRuns: 150 }
		);
	});
});

describe('length keeps', () => {
	test('under turning and mirroring (seed 2)', () => {
		fc.assert(
			fc.property(cubics, evenly(-4, 4), (curve, angle) => {
				const length = segmentLength(curve, 1e-9);
				const turned = moveSegment(rotation(angle, [120, -40]), curve);
				const mirror = moveSegment(reflection([3, 4], [100, 71]), curve);
				expect(Math.abs(segmentLength(turned, 1e-9) - length)).toBeLessThan(3e-9);
				expect(Math.abs(segmentLength(mirror, 1e-9) - length)).toBeLessThan(3e-9);
			}),
			{ seed: 2, numRuns: 300 }
		);
	});

	test('when the curve is cut in two (seed 3)', () => {
		fc.assert(
			fc.property(cubics, evenly(0, 1), (curve, t) => {
				const [first, second] = splitSegment(curve, t);
				const sum = segmentLength(first, 1e-9) + segmentLength(second, 1e-9);
				expect(Math.abs(sum - segmentLength(curve, 1e-9))).toBeLessThan(4e-9);
				expect(Math.abs(segmentLengthTo(curve, t, 1e-9) - segmentLength(first, 1e-9))).toBeLessThan(3e-9);
			}),
			{ seed: 3, numRuns: 300 }
		);
	});
});

describe('the parameter at a length', () => {
	test.each(nastyCurves)('has that length before it: $remark', ({ curve }) => {
		const length = segmentLength(curve, 1e-9);
		for (const accuracy of [1e-3, 1e-6, 1e-8]) {
			for (let i = 0; i <= 20; i++) {
				const s = (i / 20) * length;
				const t = parameterAt(curve, s, accuracy);
				const [before] = t === 0 ? [line(curve.from, curve.from)] : splitSegment(curve, t);
				expect(Math.abs(segmentLength(before, 1e-10) - s)).toBeLessThanOrEqual(accuracy + 1e-9);
			}
		}
	});

	test('of the cubic with speed 1 + t² solves t + t³/3 = s', () => {
		const curve = cubic([0, 0], [1 / 3, 0], [2 / 3, 1 / 3], [2 / 3, 1]);
		for (const t of [0.1, 0.25, 0.5, 0.75, 0.9]) {
			expect(Math.abs(parameterAt(curve, t + (t * t * t) / 3, 1e-10) - t)).toBeLessThan(1e-10);
		}
	});

	test('beyond an end is that end', () => {
		const curve = cubic([0, 0], [10, 60], [40, 110], [110, 140]);
		expect(parameterAt(curve, -1, 1e-6)).toBe(0);
		expect(parameterAt(curve, 1000, 1e-6)).toBe(1);
		expect(parameterAt(line([1, 1], [1, 1]), 0.5, 1e-6)).toBe(0);
	});
});
