import { describe, expect, it } from 'vitest';
import { edgeLength } from '../../../../src/lib/engine/draft/length.ts';
import { pieceArea } from '../../../../src/lib/engine/draft/outline.ts';
import { garmentRounds } from '../../../../src/lib/engine/draft/round.ts';
import { findNotch } from '../../../../src/lib/engine/draft/find.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';

const quarter = 6.35;
const all = (a: number, b = a, on = 'both') => ({
	id: 'one',
	kind: 'seam',
	on,
	seam: 'side',
	pins: [{ at: { level: 'waist' }, a, b }]
});
const atWaist = (a: number, b = a) => ({
	id: 'one',
	kind: 'seam',
	seam: 'side',
	pins: [
		{ at: { end: 'start' }, a: 0, b: 0 },
		{ at: { level: 'waist' }, a, b },
		{ at: { end: 'finish' }, a: 0, b: 0 }
	]
});
const round = (draft: Parameters<typeof garmentRounds>[0], level: string) =>
	garmentRounds(draft).find((one) => one.level === level)!.round;

describe('a seam taken in or let out', () => {
	// Plain arithmetic, and the rule of dividing over the seams in a costume textbook, ch. 17 "Pattern Alterations", Central
	// Washington University: 1/4 in on each layer at both side seams takes 1 in off the round.
	it('1/4 in on each layer at both side seams takes exactly 1 in off the waist', () => {
		const draft = plainBodice();
		const { draft: after, applied } = carried(draft, atWaist(-quarter));
		expect(round(after, 'waist') - round(draft, 'waist')).toBeCloseTo(-25.4, 6);
		expect(applied[0].round.find((one) => one.level === 'waist')!.change).toBeCloseTo(-25.4, 6);
	});

	it('leaves every level outside the taper as it was', () => {
		const draft = plainBodice();
		const pins = [
			{ at: { end: 'start' }, a: 0, b: 0 },
			{ at: { end: 'start', offset: 100 }, a: 0, b: 0 },
			{ at: { level: 'waist' }, a: -quarter, b: -quarter },
			{ at: { end: 'finish' }, a: 0, b: 0 }
		];
		const { draft: after } = carried(draft, { ...atWaist(0), pins });
		expect(round(after, 'bust')).toBeCloseTo(round(draft, 'bust'), 9);
	});

	it('keeps both sides of the seam the same length', () => {
		const { draft: after } = carried(plainBodice(), atWaist(-quarter));
		expect(edgeLength(after, 'front/side')).toBeCloseTo(edgeLength(after, 'back/side'), 3);
	});

	it('keeps corners exactly where the amount fades to nothing', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, atWaist(-quarter));
		expect(after.pieces[0].edges[1]).toBe(draft.pieces[0].edges[1]);
		expect(after.pieces[0].edges[3]).toBe(draft.pieces[0].edges[3]);
	});

	it('one pin lets the whole seam out evenly: the straight seam stays straight and gains area in proportion', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, all(10));
		const side = after.pieces[0].edges[2].path;
		expect(side.every((segment) => segment.kind === 'line')).toBe(true);
		expect(side[0].from[0]).toBeCloseTo(260, 9);
		// The armhole runs straight on at its end slope of 20 in 100, so the strip added is 10 wide and 300 to 298 long.
		expect(pieceArea(after, 'front') - pieceArea(draft, 'front')).toBeCloseTo(10 * 299, 6);
	});

	it('a seam moved forward changes no round', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, all(6, -6));
		// Girth of a closed ring is the sum of its sewn widths, wherever the seams lie: elementary.
		expect(round(after, 'waist')).toBeCloseTo(round(draft, 'waist'), 9);
	});

	it('one side only divides the pieces and takes half as much off', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, { ...atWaist(-quarter), on: 'left' });
		expect(after.pieces.map((piece) => piece.id)).toEqual(['front@right', 'front@left', 'back@right', 'back@left']);
		expect(round(after, 'waist') - round(draft, 'waist')).toBeCloseTo(-12.7, 6);
		expect(edgeLength(after, 'front@right/side')).toBe(300);
	});

	it('a centre seam has one amount for both halves, and one half can be moved alone', () => {
		const draft = plainBodice();
		const pins = [
			{ at: { end: 'start' }, a: 0 },
			{ at: { level: 'waist' }, a: -3.175 },
			{ at: { end: 'finish' }, a: 0 }
		];
		const centre = { id: 'one', kind: 'seam', seam: 'centre-back', pins };
		expect(round(carried(draft, centre).draft, 'waist') - round(draft, 'waist')).toBeCloseTo(-6.35, 6);
		expect(round(carried(draft, { ...centre, on: 'right' }).draft, 'waist') - round(draft, 'waist')).toBeCloseTo(
			-3.175,
			6
		);
	});

	it('notches ride along with the seam', () => {
		const { draft: after } = carried(plainBodice(), all(10));
		expect(findNotch(after, 'front/n1')!.notch.at).toBeCloseTo(100 + edgeLength(after, 'front/side') - 300, 1);
	});

	// Pythagoras: a straight line that runs out 10 mm over 200 is 200.2498 mm long, 20 over 150 is 1.3275 longer.
	it.each([
		[10, 200, 0.2498],
		[20, 150, 1.3275]
	])('a straight taper of %d mm over %d mm makes its seam longer as Pythagoras says', (amount, over, longer) => {
		const pins = [
			{ at: { end: 'start' }, a: 0, b: 0 },
			{ at: { end: 'start', offset: over }, a: -amount, b: -amount },
			{ at: { end: 'finish' }, a: -amount, b: -amount }
		];
		const { draft: after } = carried(plainBodice(), { ...atWaist(0), pins, shape: 'straight' });
		expect(edgeLength(after, 'front/side') - 300).toBeCloseTo(longer, 3);
		expect(edgeLength(after, 'back/side')).toBeCloseTo(edgeLength(after, 'front/side'), 6);
	});

	it('says which neighbouring edges it shortens', () => {
		const { applied } = carried(plainBodice(), all(-quarter));
		expect(applied[0].touched.map((one) => one.feature)).toEqual(['front/side', 'back/side']);
	});

	it('waits for a place that is not there, and says which', () => {
		const waiting = notCarried(plainBodice(), { ...all(3), pins: [{ at: { level: 'hip' }, a: 3, b: 3 }] });
		expect(waiting.why).toBe('no-place');
		expect(waiting.place).toEqual({ level: 'hip' });
		expect(waiting.sentence).toMatch(/hip/);
	});

	it('waits until it is read', () => {
		expect(notCarried(plainBodice(), { ...all(3), pins: [{ at: { level: 'waist' } }] }).why).toBe('not-read');
	});

	it('refuses two pins at one place', () => {
		const pins = [
			{ at: { level: 'waist' }, a: 3 },
			{ at: { end: 'start', offset: 200 }, a: 1 }
		];
		expect(notCarried(plainBodice(), { ...all(3), pins }).code).toBe('same-place');
	});

	it('refuses an unknown seam in words', () => {
		expect(notCarried(plainBodice(), { ...all(3), seam: 'princess' }).sentence).toMatch(/no seam princess/);
	});
});
