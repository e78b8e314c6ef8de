import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDraft } from '../../src/lib/engine/index.ts';
import { layPatternSheet, longestSide, SheetTooLarge } from '../../src/lib/output/sheet.ts';
import { layOnShelves } from '../../src/lib/output/shelves.ts';
import { printedInput } from './support/printed-input.ts';

describe('shelves', () => {
	const size = fc.record({ width: fc.integer({ min: 1, max: 900 }), height: fc.integer({ min: 1, max: 900 }) });

	test('no two rectangles come nearer than the gap, and none leaves the sheet', () => {
		fc.assert(
			fc.property(fc.array(size, { maxLength: 20 }), fc.integer({ min: 100, max: 2000 }), (sizes, width) => {
				const { corners, ...sheet } = layOnShelves(sizes, width, 16);
				const widest = Math.max(0, ...sizes.map((one) => one.width));
				expect(sheet.width).toBeLessThanOrEqual(Math.max(width, widest));
				sizes.forEach((one, i) => {
					const [x, y] = corners[i];
					expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
					expect(x + one.width).toBeLessThanOrEqual(sheet.width);
					expect(y + one.height).toBeLessThanOrEqual(sheet.height);
					sizes.slice(i + 1).forEach((other, k) => {
						const [u, v] = corners[i + 1 + k];
						const apart = Math.max(u - x - one.width, x - u - other.width, v - y - one.height, y - v - other.height);
						expect(apart).toBeGreaterThanOrEqual(16);
					});
				});
			})
		);
	});

	test('two tall and two low pieces stand on two shelves, in the order given, their feet level', () => {
		const sizes = [
			{ width: 40, height: 20 },
			{ width: 40, height: 100 },
			{ width: 40, height: 30 },
			{ width: 40, height: 90 }
		];
		expect(layOnShelves(sizes, 100, 10)).toEqual({
			corners: [
				[0, 120],
				[0, 0],
				[50, 110],
				[50, 10]
			],
			width: 90,
			height: 140
		});
	});
});

const strip = (id: string, width: number, height: number) => ({
	id,
	name: id,
	cut: 'single',
	edges: [
		{ id: 'top', name: 'Top', kind: 'open', path: `M 0 0 L ${width} 0` },
		{ id: 'right', name: 'Right', kind: 'open', path: `M ${width} 0 L ${width} ${height}` },
		{ id: 'foot', name: 'Foot', kind: 'open', path: `M ${width} ${height} L 0 ${height}` },
		{ id: 'left', name: 'Left', kind: 'open', path: `M 0 ${height} L 0 0` }
	]
});
const withPieces = (...pieces: object[]) => ({
	...printedInput,
	draft: parseDraft({ format: 'pin-to-paper/draft@1', name: 'Strips', pieces, seams: [] })
});

describe('the sheet', () => {
	test('is as wide as an A0 sheet at the most where the pieces allow (841 mm, ISO 216)', () => {
		const pieces = Array.from({ length: 9 }, (_, i) => strip(`p${i}`, 300, 200));
		expect(layPatternSheet(withPieces(...pieces)).width).toBeLessThanOrEqual(841);
	});

	// 14 400 units of 1/72 in, ISO 32000-1, annex C.2.
	test('has no side over 5.08 m: where the pieces would make it longer it is made wider', () => {
		const pieces = Array.from({ length: 9 }, (_, i) => strip(`p${i}`, 700, 900));
		const { width, height } = layPatternSheet(withPieces(...pieces));
		expect(longestSide).toBeCloseTo((14400 * 25.4) / 72, 9);
		expect(width).toBeGreaterThan(841);
		expect(Math.max(width, height)).toBeLessThanOrEqual(longestSide);
	});

	test('is refused with a sentence where a piece is longer than that', () => {
		const lay = () => layPatternSheet(withPieces(strip('train', 5200, 900)));
		expect(lay).toThrow(SheetTooLarge);
		expect(lay).toThrow(/5\.\d\d by .* no page may be longer than 5\.08 m/);
	});

	test('of a draft without pieces has its heading', () => {
		const sheet = layPatternSheet({ ...printedInput, draft: { name: 'Empty', pieces: [], seams: [] } });
		expect(sheet.pieces).toEqual([]);
		expect(sheet.height).toBeGreaterThan(101.6);
	});
});
