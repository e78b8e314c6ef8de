import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { stitchedLength } from '../../../src/lib/engine/draft/length.ts';
import { findInnerPoint, findPlace, findPlaceOnSeam } from '../../../src/lib/engine/draft/place.ts';
import { runLength } from '../../../src/lib/engine/draft/seam.ts';
import type { Place } from '../../../src/lib/engine/draft/types.ts';
import { bodice, draftFile, rectangleFile } from '../../support/drafts.ts';

// Hem from right to left, 200 long, with a mouth from 100 to 120; side 300 long downwards.
const panel = parseDraft(
	draftFile([
		rectangleFile({
			darts: [{ id: 'dart', edge: 'hem', from: 100, to: 120, point: [90, 200] }],
			notches: [
				{ id: 'n1', edge: 'hem', at: 60 },
				{ id: 'n2', edge: 'hem', at: 110 }
			],
			levels: [
				{
					level: 'waist',
					line: [
						[10, 120],
						[20, 120]
					]
				},
				{ level: 'hip', edge: 'hem' }
			],
			marks: [{ id: 'bust-point', kind: 'bust-point', at: [100, 100] }]
		})
	])
);

function onHem(place: Place) {
	return findPlace(panel, 'panel/hem', place);
}

const close = (s: number, stitched: number) => ({ s: expect.closeTo(s, 9), stitched: expect.closeTo(stitched, 9) });

describe('a place on an edge', () => {
	it('from an end goes inwards and steps over the mouth', () => {
		expect(onHem({ end: 'start' })).toEqual(close(0, 0));
		expect(onHem({ end: 'finish' })).toEqual(close(200, 180));
		expect(onHem({ end: 'start', offset: 30 })).toEqual(close(30, 30));
		expect(onHem({ end: 'start', offset: 110 })).toEqual(close(130, 110));
		expect(onHem({ end: 'finish', offset: 90 })).toEqual(close(90, 90));
	});

	it('by fraction is along the stitched line', () => {
		expect(onHem({ fraction: 0.5 })).toEqual(close(90, 90));
		expect(onHem({ fraction: 1 })).toEqual(close(200, 180));
		expect(onHem({ fraction: 0.75, offset: 5 })).toEqual(close(160, 140));
	});

	it('at a notch, and a way from it toward start and finish', () => {
		expect(onHem({ notch: 'n1' })).toEqual({ s: 60, stitched: 60 });
		expect(onHem({ notch: 'n1', offset: -20 })).toEqual(close(40, 40));
		expect(onHem({ notch: 'n1', offset: 50 })).toEqual(close(130, 110));
	});

	it('that a mouth has swallowed is at its start', () => {
		expect(onHem({ notch: 'n2' })).toEqual(close(100, 100));
	});

	it('that a mouth has swallowed is at the end of it that is met first, from whichever end it is counted', () => {
		const { to, from } = panel.pieces[0].darts[0];
		const length = stitchedLength(panel, 'panel/hem');
		expect(onHem({ end: 'start', offset: from })).toEqual(close(from, from));
		expect(onHem({ end: 'finish', offset: length - from })).toEqual(close(to, from));
		expect(onHem({ fraction: from / length })).toEqual(close(from / length > 0.5 ? to : from, from));
	});

	it('where the balance line crosses, a minus toward the start', () => {
		expect(findPlace(panel, 'panel/side', { level: 'waist' })).toEqual(close(120, 120));
		expect(findPlace(panel, 'panel/side', { level: 'waist', offset: -20 })).toEqual(close(100, 100));
		expect(findPlace(panel, 'panel/centre', { level: 'waist', offset: -20 })).toEqual(close(160, 160));
	});

	it('at a level that lies on the neighbouring edge is the corner', () => {
		expect(findPlace(panel, 'panel/side', { level: 'hip' })).toEqual(close(300, 300));
		expect(findPlace(panel, 'panel/centre', { level: 'hip', offset: 25 })).toEqual(close(25, 25));
	});

	it.each<[string, string, Place, RegExp]>([
		['an unknown piece', 'hood/side', { end: 'start' }, /no edge hood\/side.*panel/],
		['an unknown edge', 'panel/brim', { end: 'start' }, /no edge panel\/brim.*top, side, hem, centre/],
		['an unknown level', 'panel/side', { level: 'knee' }, /no knee line.*waist, hip/],
		['a level that does not reach the edge', 'panel/top', { level: 'waist' }, /does not cross panel\/top/],
		['the edge that the level is', 'panel/hem', { level: 'hip' }, /lies along panel\/hem.*end, a notch or a fraction/],
		['an unknown notch', 'panel/hem', { notch: 'n9' }, /no notch n9.*n1, n2/],
		['a notch of another edge', 'panel/side', { notch: 'n1' }, /on panel\/hem, not on panel\/side/],
		['beyond the finish', 'panel/hem', { end: 'start', offset: 190 }, /10 mm beyond the finish.*180 mm long/],
		['beyond the start', 'panel/hem', { notch: 'n1', offset: -64 }, /4 mm beyond the start/],
		['outwards from an end', 'panel/hem', { end: 'finish', offset: -1 }, /beyond the finish/],
		['no fraction', 'panel/hem', { fraction: 1.2 }, /between 0 and 1/],
		['no number', 'panel/hem', { fraction: NaN }, /between 0 and 1/],
		['an offset that is no number', 'panel/hem', { end: 'start', offset: NaN }, /length/]
	])('cannot be found: %s', (_, edge, place, sentence) => {
		expect(findPlace(panel, edge, place)).toEqual({ problem: expect.stringMatching(sentence) });
	});

	it('on a level that crosses twice must say which, counted from the start', () => {
		const draft = parseDraft(
			draftFile([
				{
					id: 'p',
					cut: 'single',
					edges: [
						{ id: 'head', kind: 'open', path: 'M 0 100 L 0 0 L 100 0 L 100 100' },
						{ id: 'base', kind: 'open', path: 'M 100 100 L 0 100' }
					],
					levels: [
						{
							level: 'cap',
							line: [
								[40, 30],
								[60, 30]
							]
						}
					]
				}
			])
		);
		expect(findPlace(draft, 'p/head', { level: 'cap' })).toEqual({ problem: expect.stringMatching(/2 times.*"nth"/) });
		expect(findPlace(draft, 'p/head', { level: 'cap', nth: 1 })).toEqual(close(70, 70));
		expect(findPlace(draft, 'p/head', { level: 'cap', nth: 2, offset: 5 })).toEqual(close(235, 235));
		expect(findPlace(draft, 'p/head', { level: 'cap', nth: 3 })).toEqual({
			problem: expect.stringMatching(/no crossing 3/)
		});
	});
});

describe('a place on a seam', () => {
	const armhole = (side: 'a' | 'b', place: Place) => findPlaceOnSeam(bodice, 'armhole', side, place);
	const lengthA = runLength(bodice, bodice.seams.find(({ id }) => id === 'armhole')!.a);

	it('starts and finishes as the seam is walked, whichever way its edges run', () => {
		expect(armhole('a', { end: 'start' })).toMatchObject({ edge: 'back/armhole', stitchedOnSeam: 0 });
		expect(armhole('a', { end: 'start' })).toHaveProperty('s', expect.closeTo(203.3504663, 5));
		expect(armhole('a', { end: 'finish', offset: 10 })).toEqual({
			edge: 'front/armhole',
			s: expect.closeTo(10, 6),
			stitchedOnSeam: expect.closeTo(lengthA - 10, 6)
		});
		expect(armhole('b', { end: 'start', offset: 10 })).toMatchObject({ edge: 'sleeve/head', s: expect.closeTo(10, 9) });
	});

	it('at a notch on side a is its mate on side b', () => {
		expect(armhole('a', { notch: 'back-notch' })).toMatchObject({ edge: 'back/armhole', s: 120 });
		expect(armhole('b', { notch: 'back-notch' })).toEqual({ edge: 'sleeve/head', s: 83.4, stitchedOnSeam: 83.4 });
		expect(armhole('b', { notch: 'front-notch' })).toMatchObject({ edge: 'sleeve/head', s: 352.5 });
		const a = armhole('a', { fraction: 0.5 });
		const b = armhole('b', { fraction: 0.5 });
		expect(a).toHaveProperty('stitchedOnSeam', expect.closeTo(lengthA / 2, 6));
		expect(b).toMatchObject({ edge: 'sleeve/head' });
		const side = (which: 'a' | 'b') => findPlaceOnSeam(bodice, 'side', which, { notch: 'side-notch' });
		expect(side('a')).toEqual({ edge: 'back/side', s: 90, stitchedOnSeam: expect.closeTo(90, 9) });
		expect(side('b')).toMatchObject({ edge: 'front/side', s: 111.34 });
		expect(side('b')).toHaveProperty('stitchedOnSeam', expect.closeTo(201.5650270769 - 111.34, 5));
	});

	it('with two notches of one name on side a must be told apart', () => {
		const notch = (edge: string) => [{ id: 'n', edge, at: 50 }];
		const file = draftFile(
			[
				rectangleFile({ id: 'upper', height: 100, notches: notch('side') }),
				rectangleFile({ id: 'lower', height: 100, notches: notch('side') }),
				rectangleFile({ id: 'long', height: 200 })
			],
			[{ id: 's', a: [{ edge: 'upper/side' }, { edge: 'lower/side' }], b: [{ edge: 'long/side' }] }]
		);
		expect(findPlaceOnSeam(parseDraft(file), 's', 'a', { notch: 'n' })).toEqual({
			problem: expect.stringMatching(/more than one notch n: upper\/n, lower\/n/)
		});
	});

	it('at a level is the corner where both sides meet it', () => {
		for (const side of ['a', 'b'] as const) {
			expect(findPlaceOnSeam(bodice, 'side', side, { level: 'waist' })).toHaveProperty(
				'stitchedOnSeam',
				expect.closeTo(201.5650270769, 6)
			);
			expect(findPlaceOnSeam(bodice, 'side', side, { level: 'bust' })).toHaveProperty(
				'stitchedOnSeam',
				expect.closeTo(0, 6)
			);
		}
	});

	it('in a run of two edges is on the one that holds it, and a corner of both counts once', () => {
		expect(findPlaceOnSeam(bodice, 'neck', 'a', { end: 'start', offset: 100 })).toEqual({
			edge: 'front/neck',
			s: expect.closeTo(100 - 74.4861422244, 6),
			stitchedOnSeam: 100
		});
		// The bust line ends at both underarms: the start of the run and its middle.
		expect(findPlaceOnSeam(bodice, 'armhole', 'a', { level: 'bust' })).toEqual({
			problem: expect.stringMatching(/2 times/)
		});
	});

	it('on either side of a centre seam is the same', () => {
		const place = { end: 'finish', offset: 40 } as const;
		expect(findPlaceOnSeam(bodice, 'centre-back', 'b', place)).toEqual(
			findPlaceOnSeam(bodice, 'centre-back', 'a', place)
		);
		expect(findPlaceOnSeam(bodice, 'centre-back', 'b', { notch: 'centre-notch' })).toMatchObject({ s: 200 });
	});

	it.each<[string, string, 'a' | 'b', Place, RegExp]>([
		['an unknown seam', 'inseam', 'a', { end: 'start' }, /no seam inseam.*centre-back/],
		['beyond the seam', 'side', 'b', { end: 'start', offset: 300 }, /beyond the finish of side b of the seam side/],
		['an unknown notch', 'side', 'a', { notch: 'n9' }, /no notch n9/],
		['a level that is not there', 'side', 'a', { level: 'knee' }, /no knee line/]
	])('cannot be found: %s', (_, seam, side, place, sentence) => {
		expect(findPlaceOnSeam(bodice, seam, side, place)).toEqual({ problem: expect.stringMatching(sentence) });
	});

	it('says which notch has no mate', () => {
		const file = draftFile(
			[rectangleFile({ notches: [{ id: 'n', edge: 'side', at: 50 }] }), rectangleFile({ id: 'other' })],
			[{ id: 's', a: [{ edge: 'panel/side' }], b: [{ edge: 'other/side' }] }]
		);
		expect(findPlaceOnSeam(parseDraft(file), 's', 'b', { notch: 'n' })).toEqual({
			problem: expect.stringMatching(/panel\/n has no mate on side b/)
		});
	});
});

describe('a point inside a piece', () => {
	it('square in from an edge', () => {
		const from = { edge: 'panel/side', end: 'start', offset: 50 } as const;
		expect(findInnerPoint(panel, 'panel', { from, in: 30 })).toEqual({
			point: [expect.closeTo(170, 9), expect.closeTo(50, 9)]
		});
		expect(findInnerPoint(panel, 'panel', { from: { edge: 'panel/hem', end: 'finish' }, in: 30 })).toEqual({
			point: [expect.closeTo(0, 9), expect.closeTo(270, 9)]
		});
	});

	it('short of a mark, coming from an edge', () => {
		const toward = { edge: 'panel/side', level: 'waist', offset: -20 } as const;
		expect(findInnerPoint(panel, 'panel', { mark: 'bust-point', toward, short: 25 })).toEqual({
			point: [expect.closeTo(125, 9), expect.closeTo(100, 9)]
		});
		expect(findInnerPoint(panel, 'panel', { mark: 'bust-point', toward })).toEqual({ point: [100, 100] });
	});

	it('by its coordinates', () => {
		expect(findInnerPoint(panel, 'panel', [12, 34])).toEqual({ point: [12, 34] });
	});

	it.each([
		['an unknown piece', 'hood', [1, 2] as const, /no piece hood/],
		['coordinates that are no numbers', 'panel', [1, NaN] as const, /two lengths/],
		['an unknown mark', 'panel', { mark: 'm', toward: { edge: 'panel/hem', end: 'start' } } as const, /no mark m/],
		[
			'an edge of another piece',
			'panel',
			{ from: { edge: 'hood/hem', end: 'start' }, in: 3 } as const,
			/no edge hood\/hem/
		],
		[
			'farther short than the way there',
			'panel',
			{ mark: 'bust-point', toward: { edge: 'panel/side', level: 'waist', offset: -20 }, short: 120 } as const,
			/only 100 mm.*120 mm short is too much/
		]
	])('cannot be found: %s', (_, piece, point, sentence) => {
		expect(findInnerPoint(panel, piece, point)).toEqual({ problem: expect.stringMatching(sentence) });
	});

	it('on the edge of a piece that is not this one is refused by name', () => {
		expect(findInnerPoint(bodice, 'front', { from: { edge: 'back/side', end: 'start' }, in: 10 })).toEqual({
			problem: expect.stringMatching(/back\/side is not on front/)
		});
	});
});
