import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { svgPathProperties } from 'svg-path-properties';
import { formatPathData, parsePathData } from '../../../src/lib/engine/geometry/path-data.ts';
import { pathLength } from '../../../src/lib/engine/geometry/path.ts';
import { cubic, line } from '../../../src/lib/engine/geometry/segment.ts';
import type { Path, Point, Segment } from '../../../src/lib/engine/geometry/types.ts';
import { paths } from '../../support/curves.ts';

const read = (text: string): Path => {
	const result = parsePathData(text);
	if ('problem' in result) throw new Error(result.problem);
	return result.path;
};

test('absolute M, L and C are read, in any of SVG’s spellings', () => {
	const path = [line([0, 0], [10, 0]), cubic([10, 0], [12, 5], [14, 9], [20, 10])];
	expect(read('M 0 0 L 10 0 C 12 5 14 9 20 10')).toEqual(path);
	expect(read('M0,0L10,0C12,5,14,9,20,10')).toEqual(path);
	expect(read('  M 0 0 10 0\n\tC 12 5 14 9 2e1 10.0 ')).toEqual(path);
	expect(read('M-1-2L.5.25')).toEqual([line([-1, -2], [0.5, 0.25])]);
});

// Every finite double but negative zero, which SVG numbers do not tell from zero.
const double = fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => (x === 0 ? 0 : x));
const wildPoints: fc.Arbitrary<Point> = fc.tuple(double, double);

test('what is written is read back to the bit, with the largest and smallest numbers there are (seed 81)', () => {
	fc.assert(
		fc.property(
			wildPoints,
			fc.array(fc.oneof(fc.tuple(wildPoints), fc.tuple(wildPoints, wildPoints, wildPoints)), {
				minLength: 1,
				maxLength: 6
			}),
			(start, parts) => {
				const path: Segment[] = [];
				let at = start;
				for (const part of parts) {
					path.push(part.length === 1 ? line(at, part[0]) : cubic(at, part[0], part[1], part[2]));
					at = path[path.length - 1].to;
				}
				expect(read(formatPathData(path))).toEqual(path);
			}
		),
		{ seed: 81, numRuns: 500 }
	);
});

test('joints that were one point are one point when read', () => {
	const path = read('M 0.1 0.2 L 0.30000000000000004 1e-7 C 1 2 3 4 5 6 L 7 8');
	path.slice(1).forEach((segment, i) => expect(segment.from).toBe(path[i].to));
	expect(formatPathData(path)).toBe('M 0.1 0.2 L 0.30000000000000004 1e-7 C 1 2 3 4 5 6 L 7 8');
});

test('another reader of SVG paths sees the same curve (seed 82)', () => {
	fc.assert(
		fc.property(paths, (path) => {
			fc.pre(pathLength(path) > 1);
			const other = new svgPathProperties(formatPathData(path));
			const end = other.getPointAtLength(other.getTotalLength() + 1);
			const { to } = path[path.length - 1];
			expect(Math.hypot(end.x - to[0], end.y - to[1])).toBeLessThan(1e-6);
			// That library's fixed rule is off by tenths of a millimetre near cusps.
			expect(Math.abs(other.getTotalLength() - pathLength(path))).toBeLessThan(0.005 * pathLength(path));
		}),
		{ seed: 82, numRuns: 100 }
	);
});

describe('refused, with a sentence that says what would be right', () => {
	test.each([
		['nothing at all', '', /needs an M/],
		['only spaces', ' \n ', /needs an M/],
		['only a point', 'M 1 2', /at least one L or C/],
		['relative lines', 'M 0 0 l 1 1', /command l: only the absolute/],
		['relative curves', 'M 0 0 c 1 1 2 2 3 3', /command c: only the absolute/],
		['a relative start', 'm 0 0 L 1 1', /command m: only the absolute/],
		['a relative start with points after it', 'm 0 0 1 1', /command m: only the absolute/],
		['level lines', 'M 0 0 H 5', /command H/],
		['plumb lines', 'M 0 0 V 5', /command V/],
		['quadratic curves', 'M 0 0 Q 1 1 2 0', /command Q/],
		['smooth curves', 'M 0 0 S 1 1 2 0', /command S/],
		['arcs', 'M 0 0 A 5 5 0 0 1 10 10', /command A/],
		['a closing command', 'M 0 0 L 1 1 Z', /command Z/],
		['a second start', 'M 0 0 L 1 1 M 5 5 L 6 6', /more than one M/],
		['a number too large to hold', 'M 0 0 L 1e400 0', /too large/],
		['a number too large to hold, below zero', 'M -1e400 0 L 0 0', /too large/],
		['what is not a number', 'M 0 0 L NaN 0', /cannot be read/],
		['infinity in words', 'M 0 0 L Infinity 0', /cannot be read/],
		['a missing number', 'M 0 0 L 5', /cannot be read/],
		['too few numbers for a curve', 'M 0 0 C 1 2 3 4 5', /cannot be read/],
		['a start that is missing', 'L 0 0 L 1 1', /cannot be read/],
		['words', 'waist', /cannot be read/],
		['a unit', 'M 0 0 L 5mm 0', /./]
	])('%s', (_, text, sentence) => {
		const result = parsePathData(text);
		expect(result).toHaveProperty('problem');
		expect((result as { problem: string }).problem).toMatch(sentence);
		expect((result as { problem: string }).problem).toMatch(/^The path .*\.$/s);
	});

	test('coordinates that are not finite are never written', () => {
		expect(() => formatPathData([line([0, 0], [NaN, 0])])).toThrow(RangeError);
		expect(() => formatPathData([line([0, 0], [0, Infinity])])).toThrow(RangeError);
	});
});
