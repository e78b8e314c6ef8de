import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layInRows } from '../../../src/lib/ui/drawing/row-layout.ts';
import type { Lying } from '../../../src/lib/ui/drawing/row-layout.ts';

const options = { left: 80, top: 20, right: 850, gap: 14, rowGap: 24 };

const lying = (width: number, height: number, levels: Record<string, number>): Lying => ({
	motion: [1, 0, 0, 1, 0, 0],
	box: { left: -3, top: -5, right: width - 3, bottom: height - 5 },
	levels: new Map(Object.entries(levels))
});

/** How far down a level came to lie: its own height and how far the piece was let down. */
const heightOf = (piece: Lying, motion: readonly number[], level: string) => piece.levels.get(level)! + motion[5];

describe('pieces laid in rows', () => {
	it('stand waist level with waist', () => {
		const pieces = [
			lying(100, 300, { waist: 180, hip: 240 }),
			lying(60, 150, { waist: 40 }),
			lying(70, 200, { waist: 110 })
		];
		const { laid } = layInRows(pieces, options);
		const heights = laid.map(({ motion }, i) => heightOf(pieces[i], motion, 'waist'));
		for (const height of heights) expect(height).toBeCloseTo(heights[0], 9);
	});

	it('hang on another line that they share where they have no waist', () => {
		const pieces = [lying(100, 300, { waist: 180, hip: 240 }), lying(60, 150, { hip: 30 })];
		const { laid } = layInRows(pieces, options);
		expect(heightOf(pieces[1], laid[1].motion, 'hip')).toBeCloseTo(heightOf(pieces[0], laid[0].motion, 'hip'), 9);
	});

	it('stand level at the line that was asked for', () => {
		const pieces = [lying(100, 300, { waist: 180, bust: 90 }), lying(60, 300, { waist: 170, bust: 95 })];
		const { laid } = layInRows(pieces, { ...options, anchor: 'bust' });
		expect(heightOf(pieces[1], laid[1].motion, 'bust')).toBeCloseTo(heightOf(pieces[0], laid[0].motion, 'bust'), 9);
	});

	it('never lie on one another or off the table, however many and however large', () => {
		const piece = fc.record({
			width: fc.integer({ min: 5, max: 760 }),
			height: fc.integer({ min: 5, max: 900 }),
			waist: fc.option(fc.integer({ min: 0, max: 800 }))
		});
		fc.assert(
			fc.property(fc.array(piece, { minLength: 1, maxLength: 14 }), (sizes) => {
				const pieces = sizes.map(({ width, height, waist }) => lying(width, height, waist === null ? {} : { waist }));
				const { laid, bottom } = layInRows(pieces, options);
				expect(laid).toHaveLength(pieces.length);
				laid.forEach(({ box }, i) => {
					expect(box.left).toBeGreaterThanOrEqual(options.left - 1e-9);
					expect(box.right).toBeLessThanOrEqual(options.right + 0.02);
					expect(box.top).toBeGreaterThanOrEqual(options.top - 1e-9);
					expect(box.bottom).toBeLessThanOrEqual(bottom + 1e-9);
					for (const { box: other } of laid.slice(0, i)) {
						const apart =
							box.left >= other.right + options.gap - 1e-6 ||
							other.left >= box.right + options.gap - 1e-6 ||
							box.top >= other.bottom + options.rowGap - 1e-6 ||
							other.top >= box.bottom + options.rowGap - 1e-6;
						expect(apart).toBe(true);
					}
				});
			})
		);
	});
});
