import { describe, expect, test } from 'vitest';
import {
	findPlace,
	heightAbove,
	lineAcross,
	parseDraft,
	piecesAcross,
	placeBeside,
	plumbBelow,
	pointAt
} from '../../../src/lib/engine/index.ts';
import { bodice, draftFile, pieceOf, rectangleFile } from '../../support/drafts.ts';

/** A rectangle 200 by 300 mm whose level slopes 3 in 4: 36.87°. */
const sloped = pieceOf(
	rectangleFile({
		levels: [
			{
				level: 'waist',
				line: [
					[20, 210],
					[180, 90]
				]
			}
		]
	})
);

describe('a line beside a level', () => {
	test('is parallel to it, so far off at right angles, and ends on the outline', () => {
		const line = lineAcross(sloped, 'waist', 40)!;
		// 40 mm off a slope of 3 in 4 is 50 mm straight up: from (0, 175) to (200, 25).
		expect(line.ends.map(({ point }) => point.map((mm) => Number(mm.toFixed(6))))).toEqual([
			[0, 175],
			[200, 25]
		]);
		expect(line.width).toBeCloseTo(250, 9);
		expect(line.ends.map(({ place }) => place)).toEqual([
			{ edge: 'panel/centre', level: 'waist', offset: 50 },
			{ edge: 'panel/side', level: 'waist', offset: -50 }
		]);
		for (const { point } of line.ends) expect(heightAbove(sloped, 'waist', point)).toBeCloseTo(40, 9);
	});

	test('that passes the piece by is none, nor is one beside a level that it has not', () => {
		expect(lineAcross(sloped, 'waist', 400)).toBeUndefined();
		expect(lineAcross(sloped, 'hip', 0)).toBeUndefined();
	});

	test('ends where a level does not cross the edge so far from the nearer end of it', () => {
		const piece = pieceOf(
			rectangleFile({
				levels: [
					{
						level: 'waist',
						line: [
							[20, 150],
							[180, 150]
						]
					}
				]
			})
		);
		const draft = parseDraft(
			draftFile([
				rectangleFile({
					levels: [
						{
							level: 'waist',
							line: [
								[20, 150],
								[180, 150]
							]
						}
					]
				})
			])
		);
		expect(placeBeside(piece, piece.edges[0], 'waist', 30)).toEqual({ edge: 'panel/top', end: 'start', offset: 30 });
		expect(placeBeside(piece, piece.edges[0], 'waist', 180)).toEqual({ edge: 'panel/top', end: 'finish', offset: 20 });
		const found = findPlace(draft, 'panel/top', { end: 'finish', offset: 20 });
		expect('problem' in found ? NaN : pointAt(piece.edges[0].path, found.s)[0]).toBeCloseTo(180, 9);
	});

	test('plumb below a point lies the first edge under it, told by its stitched length past a dart’s mouth', () => {
		const darted = pieceOf(rectangleFile({ darts: [{ id: 'd', edge: 'hem', from: 40, to: 60, point: [150, 200] }] }));
		// The hem runs from (200, 300) to the left: x = 80 is 120 mm along it, less the mouth of 20.
		expect(plumbBelow(darted, [80, 100])).toEqual({ edge: 'panel/hem', end: 'start', offset: 100 });
		expect(plumbBelow(darted, [80, 400])).toBeUndefined();
	});
});

describe('the pieces that a level runs across', () => {
	test('stand in the order in which they are sewn to one another, whichever way each lies', () => {
		const level = [
			{
				level: 'waist',
				line: [
					[20, 150],
					[180, 150]
				]
			}
		];
		const panel = (id: string) => rectangleFile({ id, levels: level });
		// c is sewn by its side to the side of a: it is walked from right to left.
		const draft = parseDraft(
			draftFile(
				[panel('b'), panel('a'), panel('c')],
				[
					{ id: 'one', a: [{ edge: 'b/side' }], b: [{ edge: 'a/centre', reversed: true }] },
					{ id: 'two', a: [{ edge: 'a/side' }], b: [{ edge: 'c/side' }] }
				]
			)
		);
		const runs = piecesAcross(draft, 'waist');
		expect(
			runs.map(({ ring, pieces }) => ({ ring, pieces: pieces.map((one) => [one.piece.id, one.forward]) }))
		).toEqual([
			{
				ring: false,
				pieces: [
					['b', true],
					['a', true],
					['c', false]
				]
			}
		]);
	});

	test('a sleeve is a run of its own, sewn to itself all round', () => {
		const rings = ['upper-arm', 'elbow', 'wrist', 'bust', 'waist'].flatMap((level) => piecesAcross(bodice, level));
		const sleeve = rings.filter(({ pieces }) => pieces.some(({ piece }) => piece.limb));
		expect(sleeve.length).toBeGreaterThan(0);
		for (const { ring, pieces } of sleeve) expect([ring, pieces.length]).toEqual([true, 1]);
		for (const { ring, pieces } of rings) if (!pieces[0].piece.limb) expect(ring).toBe(false);
	});
});
