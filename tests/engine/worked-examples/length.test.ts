/** Lengthening, shortening and balance, as dressmaking handbooks work them. */
import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { edgeLength } from '../../../src/lib/engine/draft/length.ts';
import { pieceArea } from '../../../src/lib/engine/draft/outline.ts';
import { garmentRounds } from '../../../src/lib/engine/draft/round.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';
import { check } from '../../../src/lib/engine/review/check.ts';
import { walk } from '../../../src/lib/engine/review/walk.ts';
import { carried } from '../../support/alteration-law.ts';
import { plainBodice, plainBodiceFile } from '../../support/plain-bodice.ts';

const inch = 25.4;
const round = (draft: Draft, level: string) => garmentRounds(draft).find((one) => one.level === level)!.round;
const difference = (draft: Draft, seam: string) => walk(draft).find((one) => one.seam === seam)!.difference;
const crossing = (draft: Draft) => check(draft).filter(({ code }) => code === 'crosses');

/** A fold across every piece at a height above the waist; the side seams and centres of both pieces stand plumb. */
const across = (by: number, above: number, below = 'waist') => ({
	id: 'shorter',
	kind: 'spread',
	cuts: [
		{
			piece: 'front',
			from: { edge: 'front/centre', level: below, offset: above },
			to: { edge: 'front/side', level: below, offset: -above },
			keep: 'front/hem'
		},
		{
			piece: 'back',
			from: { edge: 'back/side', level: below, offset: above },
			to: { edge: 'back/centre', level: below, offset: -above },
			keep: 'back/hem'
		}
	].map((cut) => ({ ...cut, gapFrom: by, gapTo: by }))
});

// The Dressmaker (2nd ed. c. 1916), part 4, and The New Dressmaker (1921), chapter 3: a waist lining too long below is laid in a
// pleat across every piece 2 1/2 in above the waistline. Watson, Textiles and Clothing (1907), lays the back's 2 in above
// the waist: so the height is said with the alteration.
describe('a waist lining too long, with a pleat laid across every piece', () => {
	it.each([
		['2 1/2', 2.5],
		['2', 2],
		['4', 4]
	])('%s in above the waist, takes the same off every length it crosses and off no round beside it', (_, height) => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, across(-inch / 2, height * inch));
		for (const edge of ['front/centre', 'front/side', 'back/side', 'back/centre'])
			expect(edgeLength(draft, edge) - edgeLength(after, edge)).toBeCloseTo(inch / 2, 6);
		for (const edge of ['front/shoulder', 'front/armhole', 'front/hem', 'back/neck', 'back/armhole', 'back/hem'])
			expect(edgeLength(after, edge)).toBeCloseTo(edgeLength(draft, edge), 6);
		for (const level of ['bust', 'waist']) expect(round(after, level)).toBeCloseTo(round(draft, level), 6);
		for (const seam of ['side', 'shoulder', 'centre-back']) expect(difference(after, seam)).toBeCloseTo(0, 6);
		expect(crossing(after)).toEqual([]);
	});

	// The same handbooks: lengthened at the same places, by cutting and separating.
	it('and opened again by as much, is as it was', () => {
		const draft = plainBodice();
		const shorter = carried(draft, across(-inch / 2, 2.5 * inch)).draft;
		const { draft: back } = carried(shorter, across(inch / 2, 2.5 * inch));
		for (const edge of ['front/centre', 'front/side', 'back/side', 'back/centre'])
			expect(edgeLength(back, edge)).toBeCloseTo(edgeLength(draft, edge), 6);
		expect(pieceArea(back, 'front')).toBeCloseTo(pieceArea(draft, 'front'), 4);
	});

	// The New Dressmaker: slanted sides are evened off afterwards; what is said of them is the step that the fold leaves.
	it('leaves a step where a side slants, tells it, and the seam is as even on both sides', () => {
		const file = JSON.parse(JSON.stringify(plainBodiceFile));
		file.pieces[0].edges[2].path = 'M 250 150 L 220 450';
		file.pieces[0].edges[3].path = 'M 220 450 L 0 450';
		file.pieces[1].edges[3].path = 'M 250 450 L 30 450';
		file.pieces[1].edges[4].path = 'M 30 450 L 0 150';
		const draft = parseDraft(file);
		const { draft: after, remarks } = carryAlterations(draft, [parseAlteration(across(-inch / 2, 2.5 * inch))]);
		expect(difference(after, 'side')).toBeCloseTo(0, 6);
		// The side leans in by 1 in 10: a fold of 12.7 mm leaves a step of 1.27, to within the slant of the fold.
		const steps = remarks.filter(({ code }) => code === 'bridge').map(({ where, figure }) => [where, figure]);
		expect(steps).toEqual(
			expect.arrayContaining([
				['front/side', expect.closeTo(1.27, 1)],
				['back/side', expect.closeTo(1.27, 1)]
			])
		);
	});
});

// The Dressmaker, part 4: whatever change of length the lining gets, the outer pieces get the same at the same places.
it('the outer pieces get the same change of length at the same places as the lining', () => {
	const lining = plainBodice();
	// The same pattern cut with 15 mm more all down the sides, on which the levels lie where they did.
	const outer = carried(lining, {
		id: 'wider',
		kind: 'seam',
		seam: 'side',
		pins: [{ at: { fraction: 0.5 }, a: 15, b: 15 }]
	}).draft;
	const changes = [lining, outer].map((draft) => {
		const { draft: after } = carried(draft, across(-inch / 2, 2.5 * inch));
		return ['front/centre', 'front/side', 'back/side', 'back/centre'].map(
			(edge) => edgeLength(after, edge) - edgeLength(draft, edge)
		);
	});
	for (const [i, change] of changes[0].entries()) expect(changes[1][i]).toBeCloseTo(change, 6);
});

// Size of the wedge: adjustments of 1/4 to 1 in, from a sewing page on sway backs. The angle is elementary: 2·asin(t / 2W), 2.865°
// for 10 mm over 200.
describe('a sway back, with a wedge pinned out at centre back that runs out at the side', () => {
	const panel = () =>
		parseDraft({
			format: 'pin-to-paper/draft@1',
			name: 'Back panel',
			pieces: [
				{
					id: 'back',
					cut: 'pair',
					edges: [
						{ id: 'top', kind: 'open', path: 'M 0 0 L 200 0' },
						{ id: 'centre', kind: 'seam', path: 'M 200 0 L 200 300' },
						{ id: 'hem', kind: 'open', path: 'M 200 300 L 0 300' },
						{ id: 'side', kind: 'seam', path: 'M 0 300 L 0 0' }
					],
					grain: [
						[120, 180],
						[120, 280]
					]
				}
			],
			seams: [{ id: 'centre', a: [{ edge: 'back/centre' }], b: 'mirror' }]
		});
	const wedge = (by: number) => ({
		id: 'sway',
		kind: 'spread',
		cuts: [
			{
				piece: 'back',
				from: { edge: 'back/centre', end: 'start', offset: 150 },
				to: { edge: 'back/side', end: 'finish', offset: 150 },
				gapFrom: -by,
				gapTo: 0,
				keep: 'back/hem'
			}
		]
	});

	it.each([0.25 * inch, 10, inch])(
		'of %d mm, makes centre back that much shorter and leaves the side its length',
		(by) => {
			const { draft: after } = carried(panel(), wedge(by));
			expect(edgeLength(after, 'back/side')).toBeCloseTo(300, 6);
			// What is folded away at centre back, and the step that the leaning upper half leaves there.
			const turn = 2 * Math.atan(by / 2 / 200);
			const top = after.pieces[0].edges[0].path[0];
			const leaned = Math.atan2(top.to[1] - top.from[1], top.to[0] - top.from[0]);
			expect(leaned).toBeCloseTo(turn, 9);
			expect(300 - by - edgeLength(after, 'back/centre')).toBeLessThan(0.01);
			expect(edgeLength(after, 'back/centre')).toBeLessThan(300 - by + (by * by) / 200);
			expect(crossing(after)).toEqual([]);
		}
	);

	it('of 10 mm over 200 turns the upper half by 2.865°', () => {
		const { draft: after } = carried(panel(), wedge(10));
		const top = after.pieces[0].edges[0].path[0];
		const degrees = (Math.atan2(top.to[1] - top.from[1], top.to[0] - top.from[0]) * 180) / Math.PI;
		expect(degrees).toBeCloseTo(2.865, 2);
	});
});

// The Dressmaker, part 8: for round shoulders the toile is cut across between the side-back seams and down to within 3/8 in of the
// underarm seam, and spread; the paper is slashed and spread by the same.
describe('round shoulders, slashed across the back and hinged 3/8 in from the underarm seam', () => {
	const hinge = (3 / 8) * inch;
	const slash = (by: number) => ({
		id: 'round',
		kind: 'spread',
		cuts: [
			{
				piece: 'back',
				from: { edge: 'back/centre', end: 'start', offset: 90 },
				to: { edge: 'back/armhole', end: 'start', offset: hinge },
				gapFrom: by,
				gapTo: 0,
				keep: 'back/hem'
			}
		]
	});

	it.each([inch / 2, inch])(
		'of %d mm, lengthens the back by it and leaves armhole, underarm seam and shoulder their lengths',
		(by) => {
			const draft = plainBodice();
			const { draft: after } = carried(draft, slash(by));
			for (const edge of ['side', 'armhole', 'shoulder', 'neck', 'hem'])
				expect(edgeLength(after, `back/${edge}`)).toBeCloseTo(edgeLength(draft, `back/${edge}`), 6);
			// Measured across the opening, not along its two edges, it is a hair less: by × cos of half the turn.
			expect(Math.abs(edgeLength(after, 'back/centre') - edgeLength(draft, 'back/centre') - by)).toBeLessThan(0.05);
			expect(difference(after, 'side')).toBeCloseTo(0, 6);
			expect(difference(after, 'shoulder')).toBeCloseTo(0, 6);
		}
	);

	it('the hinge stays where it was, 9.525 mm along from the underarm seam', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, slash(inch / 2));
		const along = (one: Draft) => one.pieces[1].edges[5].path[0].from;
		expect(along(after)).toEqual(along(draft));
		// Folded away again in the middle of the opening, the back is as it was.
		const [cut] = slash(-inch / 2).cuts;
		const { draft: back } = carried(after, {
			...slash(0),
			cuts: [{ ...cut, from: { ...cut.from, offset: 90 + inch / 4 } }]
		});
		expect(Math.abs(pieceArea(back, 'back') - pieceArea(draft, 'back'))).toBeLessThan(1);
	});
});
