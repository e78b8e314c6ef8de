import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import { edgeLength } from '../../../../src/lib/engine/draft/length.ts';
import { pieceArea } from '../../../../src/lib/engine/draft/outline.ts';
import { garmentRounds } from '../../../../src/lib/engine/draft/round.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { plainBodice, plainBodiceFile } from '../../../support/plain-bodice.ts';

const round = (draft: Draft, level: string) => garmentRounds(draft).find((one) => one.level === level)!.round;
const across = (gapFrom: number, gapTo = gapFrom) => ({
	id: 'one',
	kind: 'spread',
	cuts: [
		{
			piece: 'front',
			from: { edge: 'front/centre', end: 'start', offset: 200 },
			to: { edge: 'front/side', end: 'start', offset: 100 },
			gapFrom,
			gapTo,
			keep: 'front/hem'
		}
	]
});
const upAndDown = (gap: number) => ({
	id: 'one',
	kind: 'spread',
	cuts: [
		{
			piece: 'front',
			from: { edge: 'front/shoulder', end: 'start', offset: 60 },
			to: { edge: 'front/hem', end: 'finish', offset: 100 },
			gapFrom: gap,
			gapTo: gap,
			keep: 'front/centre'
		}
	]
});

describe('a piece slashed and opened', () => {
	it('opened evenly across is longer by the gap, with its area larger by gap times width', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, across(12));
		expect(edgeLength(after, 'front/side')).toBeCloseTo(312, 6);
		expect(edgeLength(after, 'front/centre')).toBeCloseTo(402, 6);
		// Cut and spread by a parallel shift: area grows by the shift times the width of the cut (elementary).
		expect(pieceArea(after, 'front') - pieceArea(draft, 'front')).toBeCloseTo(12 * 250, 6);
		expect(round(after, 'waist')).toBeCloseTo(round(draft, 'waist'), 9);
		expect(round(after, 'bust')).toBeCloseTo(round(draft, 'bust'), 9);
	});

	// A fold is half as deep as what it takes away: costume textbook, ch. 17, Central Washington University. A tuck 6 mm deep
	// shortens by 12.
	it('a fold 6 mm deep across makes it 12 mm shorter, and opening it again gives it back', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, across(-12));
		expect(edgeLength(after, 'front/side')).toBeCloseTo(288, 6);
		expect(pieceArea(draft, 'front') - pieceArea(after, 'front')).toBeCloseTo(12 * 250, 6);
	});

	it('opened to nothing at the side, keeps the side its length exactly', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, across(10, 0));
		expect(edgeLength(after, 'front/side')).toBeCloseTo(300, 6);
		expect(edgeLength(after, 'front/centre')).toBeCloseTo(400, 1);
	});

	it('opened up and down by y adds 2y to the round where it is cut', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, upAndDown(12.7));
		// Slash and spread of y on a half draft adds 2y to the whole: plain arithmetic.
		expect(round(after, 'bust') - round(draft, 'bust')).toBeCloseTo(25.4, 1);
		expect(round(after, 'waist') - round(draft, 'waist')).toBeCloseTo(25.4, 1);
	});

	it('lets notches and marks ride with their part', () => {
		const { draft } = carried(plainBodice(), across(12));
		expect(draft.pieces[0].marks[0].at[1]).toBeCloseTo(170 - 12, 6);
		// The slash runs through the notch at 100 mm: it stays with the part that stays, below the opening.
		expect(draft.pieces[0].notches[0].at).toBeCloseTo(112, 6);
	});

	it('refuses a slash from one place to itself, and an edge to keep that is cut', () => {
		const same = across(5);
		expect(notCarried(plainBodice(), { ...same, cuts: [{ ...same.cuts[0], to: same.cuts[0].from }] }).code).toBe(
			'slash-short'
		);
		expect(notCarried(plainBodice(), { ...same, cuts: [{ ...same.cuts[0], keep: 'front/side' }] }).code).toBe(
			'keep-cut'
		);
	});

	it('lets a pleat begin or end at the fold where its own beginning or end was folded away', () => {
		const file = JSON.parse(JSON.stringify(plainBodiceFile));
		// The hem runs from x = 250 to 0; the fold takes 90 to 110, and moves what lies beyond it up to the side.
		for (const [from, to, end, offset, begins, ends] of [
			[50, 150, 'finish', 100, 50, 140],
			[150, 230, 'start', 150, 140, 210]
		] as const) {
			file.pieces[0].pleats = [{ edge: 'hem', from, to, turned: 30 }];
			const fold = upAndDown(-20).cuts[0];
			const { draft } = carried(parseDraft(file), {
				...upAndDown(-20),
				cuts: [{ ...fold, to: { edge: 'front/hem', end, offset }, keep: 'front/side' }]
			});
			expect(edgeLength(draft, 'front/hem')).toBeCloseTo(230, 6);
			expect(draft.pieces[0].pleats[0].from).toBeCloseTo(begins, 6);
			expect(draft.pieces[0].pleats[0].to).toBeCloseTo(ends, 6);
		}
	});
});
