import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { selfCrossings } from '../../src/lib/engine/geometry/self-crossing.ts';
import { signedArea } from '../../src/lib/engine/geometry/area.ts';
import { outlineOf } from '../../src/lib/engine/draft/outline.ts';
import { runLength, sideOf } from '../../src/lib/engine/draft/seam.ts';
import { arbitraryDraft } from './arbitrary-draft.ts';

describe('random drafts', () => {
	it('have simple clockwise outlines that close to the bit, and seams whose sides are of one length', () => {
		fc.assert(
			fc.property(arbitraryDraft, (draft) => {
				for (const piece of draft.pieces) {
					const outline = outlineOf(piece);
					outline.forEach((segment, i) => expect(outline[(i + 1) % outline.length].from).toEqual(segment.to));
					expect(signedArea(outline)).toBeGreaterThan(100);
					expect(selfCrossings(outline, 1e-6)).toEqual([]);
				}
				for (const seam of draft.seams) {
					expect(runLength(draft, sideOf(seam, 'b'))).toBeCloseTo(runLength(draft, seam.a), 6);
				}
			}),
			{ seed: 20_000, numRuns: 200 }
		);
	});

	it('are of every kind', () => {
		const drafts = fc.sample(arbitraryDraft, { seed: 7, numRuns: 200 });
		const pieces = drafts.flatMap((draft) => draft.pieces);
		const seams = drafts.flatMap((draft) => draft.seams);
		const some = (holds: boolean) => expect(holds).toBe(true);
		some(pieces.some(({ cut }) => cut === 'fold'));
		some(pieces.some(({ darts }) => darts.length > 0));
		some(pieces.some(({ foldDarts }) => foldDarts.length > 0));
		some(pieces.some(({ pleats }) => pleats.length > 0));
		some(pieces.some(({ edges }) => edges.some(({ lap }) => lap !== 0)));
		some(seams.some(({ b }) => b === 'mirror'));
		some(seams.some(({ b }) => b !== 'mirror' && b[0].reversed));
		some(seams.some(({ a, b }) => b !== 'mirror' && a.length === 2));
		some(drafts.some((draft) => draft.pieces.length === 5));
	});
});
