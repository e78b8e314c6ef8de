import fc from 'fast-check';
import { expect, it } from 'vitest';
import { contains } from '../../../src/lib/engine/geometry/contains.ts';
import { cuttingLines } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { measured } from '../../../src/lib/engine/geometry/accuracy.ts';
import { nearestOn } from '../../../src/lib/engine/geometry/nearest.ts';
import { parsePathData } from '../../../src/lib/engine/geometry/path-data.ts';
import { pathLength, pointAt } from '../../../src/lib/engine/geometry/path.ts';
import { reuse } from '../../../src/lib/engine/cutting/reuse.ts';
import { selfCrossings } from '../../../src/lib/engine/geometry/self-crossing.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';
import type { Path } from '../../../src/lib/engine/geometry/types.ts';
import { arbitraryDraft } from '../../support/arbitrary-draft.ts';

function pathOf(data: string): Path {
	const parsed = parsePathData(data);
	if ('problem' in parsed) throw new Error(parsed.problem);
	return parsed.path;
}

/** Allowances that differ from edge to edge, some of them nothing, some wider than the hollows. */
const uneven = (draft: Draft, widths: readonly number[]): Record<string, number> =>
	Object.fromEntries(
		draft.pieces.flatMap((piece) =>
			piece.edges.map(({ id }, i): [string, number] => [`${piece.id}/${id}`, widths[i % widths.length]])
		)
	);
const widths = fc.array(fc.constantFrom(0, 3, 6.35, 9.525, 15, 25.4, 40), { minLength: 1, maxLength: 5 });

it('[CLOSED] a cutting line is closed, finite, clockwise and crosses itself nowhere, whatever the allowances', () => {
	fc.assert(
		fc.property(arbitraryDraft, widths, (draft, list) => {
			for (const cut of cuttingLines(draft, { default: 10, edges: uneven(draft, list) })) {
				const outline = pathOf(cut.outline);
				outline.forEach((segment, i) => expect(outline[(i + 1) % outline.length].from).toEqual(segment.to));
				expect(cut.outline).not.toMatch(/NaN|Infinity/);
				expect(cut.area).toBeGreaterThan(0);
				expect(selfCrossings(outline, measured)).toEqual([]);
			}
		}),
		{ numRuns: 150 }
	);
});

it('no cutting line comes nearer to its edge than the edge’s allowance, and none leaves cloth of the piece outside', () => {
	fc.assert(
		fc.property(arbitraryDraft, fc.constantFrom(5, 12.7, 25.4), (draft, allowance) => {
			for (const cut of cuttingLines(draft, { default: allowance })) {
				// The mouth of a dart is cut as it will be pressed, which may be inside the mouth as drawn.
				if (cut.fold || cut.darts.length > 0) continue;
				const outline = pathOf(cut.outline);
				for (const { stitching } of cut.edges) {
					const edge = pathOf(stitching);
					for (let i = 1; i < 10; i++) {
						const at = pointAt(edge, (i * pathLength(edge)) / 10);
						expect(contains(outline, at)).toBe(true);
						expect(nearestOn(outline, at, measured).distance).toBeGreaterThan(allowance - 0.02);
					}
				}
			}
		}),
		{ numRuns: 100 }
	);
});

it('a toile laid under its own pattern is restitched, and with wider allowances never the better', () => {
	fc.assert(
		fc.property(arbitraryDraft, (draft) => {
			const cloth = cuttingLines(draft, { default: 15 });
			for (const { verdict, shortBy } of reuse(cloth, cloth)) {
				expect(verdict).toBe('restitch');
				expect(shortBy).toBe(0);
			}
			const wider = reuse(cloth, cuttingLines(draft, { default: 20 }));
			for (const { verdict, shortBy } of wider) {
				expect(verdict).not.toBe('restitch');
				expect(shortBy).toBeGreaterThan(4.9);
			}
		}),
		{ numRuns: 30 }
	);
});
