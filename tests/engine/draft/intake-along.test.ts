import { describe, expect, it } from 'vitest';
import { intakeAlong } from '../../../src/lib/engine/draft/intake-along.ts';
import { pieceOf, rectangleFile } from '../../support/drafts.ts';

const piece = pieceOf(
	rectangleFile({
		darts: [
			{ id: 'waist', edge: 'hem', from: 90, to: 110, point: [100, 180] },
			{ id: 'bust', edge: 'side', from: 140, to: 160, point: [120, 150] }
		],
		foldDarts: [
			{
				id: 'fold',
				ends: [
					[50, 50],
					[50, 150]
				],
				widest: { at: 0.5, intake: 12 }
			}
		]
	})
);
const [waist, bust] = piece.darts;
const [fold] = piece.foldDarts;

describe('the width that a dart takes along a line', () => {
	it('shrinks evenly from mouth to point (similar triangles)', () => {
		expect(intakeAlong(piece, waist, [0, 240], [200, 240])).toBeCloseTo(10, 9);
		expect(intakeAlong(piece, waist, [0, 210], [200, 210])).toBeCloseTo(5, 9);
	});

	it('is nothing at the point and beyond it', () => {
		expect(intakeAlong(piece, waist, [0, 180], [200, 180])).toBeCloseTo(0, 9);
		expect(intakeAlong(piece, waist, [0, 170], [200, 170])).toBe(0);
	});

	it('is the whole intake along the mouth', () => {
		expect(intakeAlong(piece, waist, [0, 300], [200, 300])).toBeCloseTo(20, 9);
	});

	it('is the whole intake of a fold dart where it is widest, through both corners', () => {
		expect(intakeAlong(piece, fold, [0, 100], [200, 100])).toBeCloseTo(12, 9);
		expect(intakeAlong(piece, fold, [0, 75], [200, 75])).toBeCloseTo(6, 9);
	});

	it('is nothing for a balance line that runs in at the mouth and down the middle to the point', () => {
		expect(intakeAlong(piece, bust, [0, 150], [200, 150])).toBe(0);
	});

	it('is nothing along a fold dart from end to end', () => {
		expect(intakeAlong(piece, fold, [50, 0], [50, 200])).toBe(0);
	});

	it('does not depend on which way the line runs', () => {
		expect(intakeAlong(piece, waist, [200, 240], [0, 240])).toBeCloseTo(10, 9);
	});

	it('of a slanting line is the stretch between the legs', () => {
		// Legs x = 100 ± (y − 180)/12; the line y = x + 140 meets them at x where x − 100 = ±(x − 40)/12.
		const right = (100 - 40 / 12) / (1 - 1 / 12);
		const left = (100 + 40 / 12) / (1 + 1 / 12);
		expect(intakeAlong(piece, waist, [0, 140], [100, 240])).toBeCloseTo((right - left) * Math.SQRT2, 9);
	});
});
