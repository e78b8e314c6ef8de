import { describe, expect, it } from 'vitest';
import { clothArea, pieceArea } from '../../../../src/lib/engine/draft/outline.ts';
import { foldDartLegs } from '../../../../src/lib/engine/draft/dart-legs.ts';
import { findFoldDart, findPiece } from '../../../../src/lib/engine/draft/find.ts';
import { garmentRounds } from '../../../../src/lib/engine/draft/round.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { pointsAlong } from '../../../support/apart.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';

/** A fold up and down the front, plumb, 125 mm from the side seam: from 60 mm below the armhole's end to 60 above the hem. */
const fold = (intake: number | undefined, at = 0.5, fields: object = {}) => ({
	id: 'fold',
	kind: 'fold-dart',
	piece: 'front',
	ends: [
		{ from: { edge: 'front/side', end: 'start', offset: 60 }, in: 125 },
		{ from: { edge: 'front/side', end: 'finish', offset: 60 }, in: 125 }
	],
	widest: { at, ...(intake !== undefined && { intake }) },
	...fields
});
const round = (draft: Draft, level: string) => garmentRounds(draft).find((one) => one.level === level)!.round;

describe('a fold pinned out inside a piece', () => {
	it('is as wide as asked where it is widest, and runs to nothing at both its points', () => {
		const { draft } = carried(plainBodice(), fold(16, 0.25));
		const { foldDart } = findFoldDart(draft, 'front/fold')!;
		expect(foldDart.ends).toEqual([
			[expect.closeTo(125, 9), expect.closeTo(210, 9)],
			[expect.closeTo(125, 9), expect.closeTo(390, 9)]
		]);
		const legs = foldDartLegs(foldDart);
		const xs = [legs.left, legs.right].map((leg) => pointsAlong(leg, 200).map(([x]) => x));
		expect(Math.max(...xs.flat())).toBeCloseTo(125 + 8, 9);
		expect(Math.min(...xs.flat())).toBeCloseTo(125 - 8, 9);
		// A quarter of the way down 180 mm.
		const widest = pointsAlong(legs.left, 200).find(([x]) => Math.abs(Math.abs(x - 125) - 8) < 1e-9)!;
		expect(widest[1]).toBeCloseTo(210 + 45, 6);
	});

	// Two triangles on one base: half of length times width, elementary.
	it('takes half its length times its width of cloth, and nothing off the outline', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, fold(16));
		expect(pieceArea(after, 'front')).toBe(pieceArea(draft, 'front'));
		const [was, is] = [draft, after].map((one) => clothArea(findPiece(one, 'front')!));
		expect(was - is).toBeCloseTo((180 * 16) / 2, 6);
	});

	// The waist lies at 350: 40 of the 90 mm from the lower point up to the widest, so 16 · 40/90 wide, on two fronts (similar triangles).
	it('takes its width where a level crosses it off the round, twice, and nothing where none does', () => {
		const draft = plainBodice();
		const { draft: after, applied } = carried(draft, fold(16));
		expect(round(after, 'waist') - round(draft, 'waist')).toBeCloseTo((-2 * 16 * 40) / 90, 6);
		expect(round(after, 'bust')).toBeCloseTo(round(draft, 'bust'), 9);
		expect(applied[0].round).toEqual([{ level: 'waist', change: expect.closeTo((-2 * 16 * 40) / 90, 6) }]);
	});

	it('on the left only, leaves the right front without it', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, fold(16, 0.5, { on: 'left' }));
		expect(findPiece(after, 'front@left')!.foldDarts).toHaveLength(1);
		expect(findPiece(after, 'front@right')!.foldDarts).toEqual([]);
		expect(round(after, 'waist') - round(draft, 'waist')).toBeCloseTo((-16 * 40) / 90, 6);
	});

	it('is refused where it would leave the piece, has no length, or is nowhere', () => {
		const [first] = fold(16).ends;
		const wide = notCarried(plainBodice(), fold(300));
		expect(wide.code).toBe('fold-leaves');
		const [offer] = wide.settle as unknown as { widest: { intake: number } }[];
		// The side lies 125 mm away on one side, the centre 125 on the other: at most 250 wide.
		expect(offer.widest.intake).toBeLessThan(250);
		expect(offer.widest.intake).toBeGreaterThan(250 - 300 / 32 - 25.4 / 16);
		carried(plainBodice(), { ...offer });
		expect(notCarried(plainBodice(), fold(16, 0.5, { ends: [first, first] })).code).toBe('fold-short');
		const nowhere = { ...first, from: { ...first.from, edge: 'front/none' } };
		expect(notCarried(plainBodice(), fold(16, 0.5, { ends: [first, nowhere] })).why).toBe('no-place');
	});

	it('waits until its width is read', () => {
		expect(notCarried(plainBodice(), fold(undefined)).why).toBe('not-read');
	});
});
