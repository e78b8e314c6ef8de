import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { expect, test } from 'vitest';
import { edgeLength, flatten } from '../../src/lib/engine/index.ts';
import { nameId } from '../../src/lib/output/name-id.ts';
import { layPatternSheet } from '../../src/lib/output/sheet.ts';
import { writeSvg } from '../../src/lib/output/svg.ts';
import { planTiles } from '../../src/lib/output/tiled/plan-tiles.ts';
import { arbitraryDraft } from '../support/arbitrary-draft.ts';
import { printedInput } from './support/printed-input.ts';
import { byId, readSvg } from './support/read-svg.ts';

const seed = 1898;
const runs = { numRuns: 60, seed };
const lines = fc.constantFrom('with allowances' as const, 'stitching only' as const);
const allowance = fc.constantFrom(0, 6.35, 19.05);

test(`any draft is written true to size, well-formed and with every edge once (seed ${seed})`, () => {
	fc.assert(
		fc.property(arbitraryDraft, lines, allowance, (draft, lines, mm) => {
			const elements = readSvg(writeSvg({ ...printedInput, draft, lines, allowances: { default: mm } }));
			const ids = elements.flatMap(({ attributes }) => attributes.id ?? []);
			expect(new Set(ids).size).toBe(ids.length);
			for (const { attributes } of elements) if (attributes.d) expect(attributes.d).toMatch(/^[MLCZ\d. -]+$/);
			for (const piece of draft.pieces) {
				for (const edge of piece.edges) {
					const { d } = byId(elements, nameId('edge', piece.id, edge.id)).attributes;
					const length = edgeLength(draft, `${piece.id}/${edge.id}`);
					expect(Math.abs(new svgPathProperties(d).getTotalLength() - length)).toBeLessThan(0.01 + length * 1e-5);
				}
			}
		}),
		runs
	);
});

test(`any draft’s pieces lie on the sheet, apart, below the heading (seed ${seed})`, () => {
	fc.assert(
		fc.property(arbitraryDraft, allowance, (draft, mm) => {
			const sheet = layPatternSheet({ ...printedInput, draft, allowances: { default: mm } });
			const boxes = sheet.pieces.map(({ outline }) => {
				const points = flatten(outline, 0.05);
				const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
				return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
			});
			boxes.forEach((one, i) => {
				expect(one.left).toBeGreaterThan(14.9);
				expect(one.top).toBeGreaterThan(15 + 101.6);
				expect(one.right).toBeLessThan(sheet.width - 14.9);
				expect(one.bottom).toBeLessThan(sheet.height - 14.9);
				for (const other of boxes.slice(i + 1))
					expect(
						Math.max(other.left - one.right, one.left - other.right, other.top - one.bottom, one.top - other.bottom)
					).toBeGreaterThan(15.9);
			});
		}),
		runs
	);
});

test(`of any draft every point of every outline is on a sheet of the tiled pattern (seed ${seed})`, () => {
	fc.assert(
		fc.property(arbitraryDraft, fc.constantFrom('A4' as const, 'Letter' as const), (draft, paper) => {
			const { pieces, tiles } = planTiles({ ...printedInput, draft }, paper);
			for (const { outline } of pieces)
				for (const [x, y] of flatten(outline, 0.5))
					expect(tiles.some(({ own }) => x >= own.left && x <= own.right && y >= own.top && y <= own.bottom)).toBe(
						true
					);
		}),
		runs
	);
});
