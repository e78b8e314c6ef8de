import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { easeTable, garmentRound } from '../../../src/lib/engine/review/ease-table.ts';
import { bodice } from '../../support/drafts.ts';
import { plainBodice } from '../../support/plain-bodice.ts';

const altered = (draft: Parameters<typeof garmentRound>[0], ...alterations: object[]) =>
	carryAlterations(draft, alterations.map(parseAlteration)).draft;
const round = (draft: Parameters<typeof garmentRound>[0], level: string) =>
	garmentRound(draft).find((one) => one.level === level)!.round;

describe('the round of a garment', () => {
	// The bodice is drawn to measure: bust 250 − 20 and 230 wide on one half, waist 225 − 25 − 20 − 20 and 195 − 25.
	it('is both halves of all its pieces, less darts and laps, and that of a limb by itself', () => {
		const rounds = garmentRound(bodice).map(({ level, limb, round }) => [level, limb, Number(round.toFixed(6))]);
		expect(rounds).toEqual([
			['bust', undefined, 920],
			['waist', undefined, 660],
			['upper-arm', 'both', 300],
			['wrist', 'both', 200]
		]);
	});

	// 1/4 in on each layer at both side seams is 1 in off the round: plain arithmetic.
	it('falls by 25.4 mm where 6.35 mm are taken in on each layer of both side seams', () => {
		const pins = [
			{ at: { end: 'start' }, a: 0, b: 0 },
			{ at: { level: 'bust' }, a: 0, b: 0 },
			{ at: { level: 'waist' }, a: -6.35, b: -6.35 },
			{ at: { end: 'finish' }, a: 0, b: 0 }
		];
		const before = plainBodice();
		const after = altered(before, { id: 'one', kind: 'seam', seam: 'side', pins });
		expect(round(after, 'waist') - round(before, 'waist')).toBeCloseTo(-25.4, 6);
		expect(round(after, 'bust') - round(before, 'bust')).toBeCloseTo(0, 6);
	});

	// To change a girth by Δ the total is divided over the seams there are (Central Washington University, costume text, chapter 17):
	// Δ = 1 in on one pair of seams and the centre back, six edges, is 1/6 in on each.
	it('grows by 25.4 mm where a sixth of it is let out on each of six edges', () => {
		const each = 25.4 / 6;
		const out = { at: { end: 'start' }, a: each, b: each };
		const after = altered(
			plainBodice(),
			{ id: 'one', kind: 'seam', seam: 'side', pins: [out] },
			{ id: 'two', kind: 'seam', seam: 'centre-back', pins: [{ at: { end: 'start' }, a: each }] }
		);
		for (const level of ['bust', 'waist']) {
			expect(round(after, level) - round(plainBodice(), level)).toBeCloseTo(25.4, 6);
		}
	});

	// The girth of a closed ring of seams is the sum of the sewn widths, wherever the seams lie. Elementary.
	it('stays as it is when a side seam is moved forward: + on one side, − on the other', () => {
		const moved = { id: 'one', kind: 'seam', seam: 'side', pins: [{ at: { end: 'start' }, a: 6, b: -6 }] };
		for (const level of ['bust', 'waist']) {
			expect(round(altered(plainBodice(), moved), level)).toBeCloseTo(round(plainBodice(), level), 9);
		}
	});

	// A dart widened by e on each leg takes 2e out of the edge it opens on, on a half-draft cut twice 4e out of the garment.
	it('falls by 12 mm where a waist dart is widened by 3 mm a leg, and at the bust not at all', () => {
		const wider = { id: 'one', kind: 'dart-set', dart: 'back/waist-dart', intake: 31 };
		const after = altered(bodice, wider);
		expect(round(after, 'waist') - round(bodice, 'waist')).toBeCloseTo(-12, 6);
		expect(round(after, 'bust') - round(bodice, 'bust')).toBeCloseTo(0, 9);
	});

	it('has a row for each sleeve once they differ', () => {
		const wider = {
			id: 'one',
			kind: 'edge',
			edge: 'sleeve/wrist',
			on: 'left',
			pins: [{ at: { end: 'start' }, move: 20 }]
		};
		const rows = garmentRound(altered(bodice, wider)).filter(({ level }) => level === 'wrist');
		expect(rows.map(({ limb }) => limb)).toEqual(['right', 'left']);
		// The sleeve narrows by 100 mm in 350, so 20 mm farther down it is 20/3.5 narrower.
		expect(rows[0].round).toBeCloseTo(200, 6);
		expect(rows[1].round).toBeCloseTo(200 - 20 / 3.5, 6);
	});
});

describe('the ease table', () => {
	it('sets garment against body where the body was measured, and leaves the rest open', () => {
		expect(easeTable(bodice, { bust: 880, 'upper-arm': 260 })).toEqual([
			{ level: 'bust', garment: expect.closeTo(920, 6), body: 880, ease: expect.closeTo(40, 6) },
			{ level: 'waist', garment: expect.closeTo(660, 6) },
			{ level: 'upper-arm', limb: 'both', garment: expect.closeTo(300, 6), body: 260, ease: expect.closeTo(40, 6) },
			{ level: 'wrist', limb: 'both', garment: expect.closeTo(200, 6) }
		]);
	});
});
