import { expect, test } from 'vitest';
import { svgPathProperties } from 'svg-path-properties';
import { pointMark } from '../../../src/lib/ui/drawing/point-marks.ts';

test('a buttonhole runs from end to end at the scale of the drawing, with a bar square across each end', () => {
	const drawn = pointMark({ kind: 'buttonhole', at: [10, 20], to: [40, 60] });
	// A 3-4-5 triangle of 50 px, and two bars of 5 px.
	expect(new svgPathProperties(drawn).getTotalLength()).toBeCloseTo(50 + 2 * 5, 3);
	expect(drawn).toMatch(/^M10 20L40 60/);
});

test('one whose other end is not said is shown level', () => {
	expect(pointMark({ kind: 'buttonhole', at: [10, 20] })).toMatch(/^M3 20L17 20/);
});
