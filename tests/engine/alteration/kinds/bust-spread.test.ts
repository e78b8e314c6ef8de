import { describe, expect, it } from 'vitest';
import { dartLegs } from '../../../../src/lib/engine/draft/dart-legs.ts';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import { edgeLength, stitchedLength } from '../../../../src/lib/engine/draft/length.ts';
import { garmentRounds } from '../../../../src/lib/engine/draft/round.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { check } from '../../../../src/lib/engine/review/check.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { draftsApart, pointsAlong } from '../../../support/apart.ts';
import { plainBodiceFile } from '../../../support/plain-bodice.ts';

/** Lengths and places that a closed form gives agree to this, mm. */
const exact = 1e-6;

/** The plain bodice with a notch in the front armhole, whose bust point lies at (110, 170). */
function bodice(dart?: object): Draft {
	const file = JSON.parse(JSON.stringify(plainBodiceFile));
	file.pieces[0].notches.push({ id: 'balance', edge: 'armhole', at: 80 });
	if (dart) file.pieces[0].darts = [dart];
	return parseDraft(file);
}

// Slashed from the waist up to the bust and on to within 3/4 in of the front armhole notch: The Dressmaker (Butterick, 2nd ed. c. 1916),
// fitting a close lining, small and full bust.
const bust = (gap: number, more: object = {}) => ({
	id: 'bust',
	kind: 'bust-spread',
	piece: 'front',
	point: { mark: 'bust-point', toward: { edge: 'front/hem', fraction: 0.5 }, short: 0 },
	base: { edge: 'front/hem', end: 'start', offset: 140 },
	hinge: { edge: 'front/armhole', notch: 'balance', offset: 19.05 },
	dart: { edge: 'front/side', end: 'start', offset: 40 },
	centre: { edge: 'front/centre', end: 'start', offset: 280 },
	gap,
	...more
});

const front = (draft: Draft) => draft.pieces.find((piece) => piece.id === 'front')!;
const edgeOf = (draft: Draft, id: string) => front(draft).edges.find((edge) => edge.id === id)!;
const bustPoint = (draft: Draft) => front(draft).marks[0].at;
const round = (draft: Draft, level: string) => garmentRounds(draft).find((one) => one.level === level)!.round;
const angleOf = (draft: Draft) => dartLegs(front(draft), front(draft).darts[0]).angle;

describe('a front slashed and spread for a fuller bust', () => {
	const before = bodice();
	const { draft: after } = carried(before, bust(12.7));

	it('parts at the bust point by the gap, at right angles to the base line', () => {
		// The base line hangs plumb, so that is straight across.
		expect(bustPoint(after)[0] - bustPoint(before)[0]).toBeCloseTo(12.7, 9);
	});

	it('leaves the armhole its length, and everything above the hinge where it was', () => {
		expect(Math.abs(edgeLength(after, 'front/armhole') - edgeLength(before, 'front/armhole'))).toBeLessThan(exact);
		const hinged = 80 + 19.05;
		let along = 0;
		let last = edgeOf(before, 'armhole').path[0].from;
		const line = pointsAlong(edgeOf(after, 'armhole').path, 2000);
		for (const point of pointsAlong(edgeOf(before, 'armhole').path, 500)) {
			along += Math.hypot(point[0] - last[0], point[1] - last[1]);
			last = point;
			const away = Math.min(...line.map((one) => Math.hypot(one[0] - point[0], one[1] - point[1])));
			if (along < hinged - 1) expect(away).toBeLessThan(0.1);
			else if (along > hinged + 20) expect(away).toBeGreaterThan(0.5);
		}
	});

	it('keeps the base lines parallel, the gap apart, and the hem that much longer', () => {
		expect(edgeLength(after, 'front/hem') - edgeLength(before, 'front/hem')).toBeCloseTo(12.7, 6);
		const lowered = bustPoint(after)[1] - bustPoint(before)[1];
		expect(lowered).toBeGreaterThan(0);
		expect(edgeLength(after, 'front/centre') - edgeLength(before, 'front/centre')).toBeCloseTo(lowered, 6);
		for (const segment of edgeOf(after, 'hem').path) expect(segment.to[1]).toBeCloseTo(450 + lowered, 6);
	});

	it('opens a dart at the side with its point at the bust point, as wide an angle as the upper part turned', () => {
		const [dart] = front(after).darts;
		expect(dart.id).toBe('bust');
		expect(dart.edge).toBe('side');
		expect(dart.point).toEqual(bustPoint(after));
		// The side above the dart, plumb before, leans by the turn.
		const { from, to } = edgeOf(after, 'side').path[0];
		const lean = Math.abs(Math.atan2(to[0] - from[0], to[1] - from[1]));
		expect(angleOf(after)).toBeCloseTo(lean, 9);
		const { from: one, to: other } = dartLegs(front(after), dart);
		const length = (leg: typeof one) => Math.hypot(leg[0].to[0] - leg[0].from[0], leg[0].to[1] - leg[0].from[1]);
		expect(length(one)).toBeCloseTo(length(other), 6);
	});

	it('leaves the side seam as long as it was, sewn', () => {
		expect(stitchedLength(after, 'front/side')).toBeCloseTo(300, 6);
	});

	// Slash and spread of y on a half draft adds 2y to the whole at that level: arithmetic, common practice in full-bust work.
	it('adds an inch round the bust and the waist for half an inch of gap', () => {
		expect(round(after, 'waist') - round(before, 'waist')).toBeCloseTo(25.4, 6);
		expect(Math.abs(round(after, 'bust') - round(before, 'bust') - 25.4)).toBeLessThan(1.6);
	});

	it('spread twice by half is spread once by the whole', () => {
		const twice = carried(carried(before, bust(6.35)).draft, bust(6.35)).draft;
		expect(draftsApart(twice, after, 16)).toBeLessThan(exact);
		expect(front(twice).darts).toHaveLength(1);
		expect(angleOf(twice)).toBeCloseTo(angleOf(after), 9);
	});

	it('does not cross itself, also from another hinge, by much, or with the centre left alone', () => {
		for (const change of [
			{},
			{ gap: 40 },
			{ centre: undefined },
			{ hinge: { edge: 'front/armhole', end: 'start', offset: 5 } },
			{ hinge: { edge: 'front/armhole', end: 'finish', offset: 5 } }
		]) {
			const { draft } = carried(bodice(), bust(12.7, change));
			expect(check(draft).filter((query) => query.code === 'crosses')).toEqual([]);
		}
	});
});

describe('lapped for a smaller bust', () => {
	// Lapped along the same lines instead of spread: the same handbook.
	it('undoes the spread exactly, on the spread draft with the moved point', () => {
		const before = bodice();
		for (const gap of [3, 12.7, 30]) {
			const { draft: spread } = carried(before, bust(gap));
			const { draft: back } = carried(spread, bust(-gap));
			expect(draftsApart(back, before, 16)).toBeLessThan(exact);
			expect(draftsApart(before, back, 16)).toBeLessThan(exact);
			expect(front(back).darts).toEqual([]);
			expect(bustPoint(back)[0]).toBeCloseTo(110, 9);
			expect(bustPoint(back)[1]).toBeCloseTo(170, 9);
			for (const level of ['bust', 'waist']) expect(round(back, level)).toBeCloseTo(round(before, level), 6);
		}
	});

	it('narrows the dart that is there and takes the gap out of the hem; the armhole keeps its length', () => {
		const before = bodice({ id: 'bust-dart', edge: 'side', from: 20, to: 60, point: [110, 170] });
		const dart = { edge: 'front/side', end: 'start', offset: 20 };
		const { draft: after } = carried(before, bust(-12.7, { dart }));
		expect(edgeLength(after, 'front/hem')).toBeCloseTo(250 - 12.7, 6);
		expect(edgeLength(after, 'front/armhole')).toBeCloseTo(edgeLength(before, 'front/armhole'), 6);
		expect(stitchedLength(after, 'front/side')).toBeCloseTo(260, 6);
		expect(front(after).darts.map(({ id }) => id)).toEqual(['bust-dart']);
		expect(angleOf(after)).toBeGreaterThan(0);
		expect(angleOf(after)).toBeLessThan(angleOf(before));
		expect(round(before, 'waist') - round(after, 'waist')).toBeCloseTo(25.4, 6);
	});

	it('needs a dart to close, wide enough, and says how much works', () => {
		expect(notCarried(bodice(), bust(-12.7)).code).toBe('no-dart');
		const narrow = bodice({ id: 'bust-dart', edge: 'side', from: 39, to: 43, point: [110, 170] });
		const dart = { edge: 'front/side', end: 'start', offset: 39 };
		const refusal = notCarried(narrow, bust(-12.7, { dart }));
		expect(refusal.code).toBe('dart-too-narrow');
		const [offered] = refusal.settle as unknown as { gap: number }[];
		expect(offered.gap).toBeLessThan(0);
		expect(offered.gap).toBeGreaterThan(-12.7);
		carried(narrow, { ...offered });
	});
});

describe('refused, with what would be right', () => {
	it('a hinge so level with the point that it cannot part by so much, with the greatest gap that works', () => {
		const level = {
			hinge: { edge: 'front/side', end: 'start', offset: 15 },
			dart: { edge: 'front/side', end: 'start', offset: 60 }
		};
		const refusal = notCarried(bodice(), bust(120, level));
		expect(refusal.code).toBe('hinge-level');
		const [offered] = refusal.settle as unknown as { gap: number }[];
		expect(offered.gap).toBeGreaterThan(0);
		carried(bodice(), { ...offered });
	});

	it('places that do not follow one another, a point on the outline, a place that is not there', () => {
		expect(notCarried(bodice(), bust(5, { centre: { edge: 'front/side', end: 'finish', offset: 30 } })).code).toBe(
			'bust-places'
		);
		expect(notCarried(bodice(), bust(5, { hinge: { edge: 'front/hem', end: 'start', offset: 60 } })).code).toBe(
			'bust-places'
		);
		expect(
			notCarried(bodice(), bust(5, { point: { from: { edge: 'front/side', fraction: 0.5 }, in: 0.2 } })).code
		).toBe('point-outside');
		expect(notCarried(bodice(), bust(5, { base: { edge: 'front/hem', notch: 'none' } })).why).toBe('no-place');
	});

	it('a dart that opens there and is aimed elsewhere', () => {
		const other = bodice({ id: 'bust-dart', edge: 'side', from: 39, to: 43, point: [140, 180] });
		expect(notCarried(other, bust(5, { dart: { edge: 'front/side', end: 'start', offset: 39 } })).code).toBe(
			'dart-elsewhere'
		);
	});
});

it('without an amount it waits to be read', () => {
	const { gap: _, ...unread } = bust(0);
	expect(notCarried(bodice(), unread).why).toBe('not-read');
});
