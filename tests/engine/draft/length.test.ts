import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { edgeOf } from '../../../src/lib/engine/draft/find.ts';
import {
	edgeLength,
	edgeStitchedLength,
	fromStitched,
	stitchedLength,
	toStitched
} from '../../../src/lib/engine/draft/length.ts';
import { bodice, draftFile, hodographFile, pieceOf, rectangleFile, roundArmholeFile } from '../../support/drafts.ts';

const darted = pieceOf(
	rectangleFile({
		darts: [
			{ id: 'first', edge: 'hem', from: 40, to: 60, point: [150, 200] },
			{ id: 'second', edge: 'hem', from: 100, to: 130, point: [85, 200] }
		]
	})
);
const hem = edgeOf(darted, 'hem')!;

describe('lengths', () => {
	it('of a curve of rational length is 4k/3 (Farouki & Sakkalis 1990)', () => {
		const draft = parseDraft(draftFile([hodographFile(90)]));
		expect(edgeLength(draft, 'panel/curve')).toBeCloseTo(120, 9);
	});

	it('a U-shaped armhole lowered by 10 mm is 20 mm longer (elementary: two straight sides)', () => {
		const before = parseDraft(draftFile([roundArmholeFile(100)]));
		const after = parseDraft(draftFile([roundArmholeFile(110)]));
		expect(edgeLength(after, 'panel/armhole') - edgeLength(before, 'panel/armhole')).toBeCloseTo(20, 9);
	});

	it('the drawn length of an edge holds its dart mouths, the stitched length does not', () => {
		expect(edgeLength(bodice, 'front/waist')).toBeCloseTo(225, 9);
		expect(stitchedLength(bodice, 'front/waist')).toBeCloseTo(225 - 25 - 20, 9);
		expect(edgeStitchedLength(darted, hem)).toBeCloseTo(200 - 20 - 30, 9);
	});

	it('a dart 3 mm wider on each leg takes 6 mm out of its edge (arithmetic)', () => {
		const withDart = (from: number, to: number) =>
			parseDraft(draftFile([rectangleFile({ darts: [{ id: 'd', edge: 'hem', from, to, point: [100, 200] }] })]));
		const narrow = stitchedLength(withDart(90, 110), 'panel/hem');
		const wide = stitchedLength(withDart(87, 113), 'panel/hem');
		expect(narrow - wide).toBeCloseTo(6, 9);
	});

	it('throws for a name that is no edge', () => {
		expect(() => edgeLength(bodice, 'front/brim')).toThrow('front/brim');
		expect(() => stitchedLength(bodice, 'brim')).toThrow();
	});
});

describe('along an edge with two mouths', () => {
	it.each([
		[0, 0],
		[40, 40],
		[50, 40],
		[60, 40],
		[70, 50],
		[100, 80],
		[115, 80],
		[130, 80],
		[200, 150]
	])('%d mm drawn is %d mm stitched', (s, stitched) => {
		expect(toStitched(darted, hem, s)).toBeCloseTo(stitched, 12);
	});

	it.each([
		[0, 0],
		[39, 39],
		[40, 40],
		[41, 61],
		[79, 99],
		[80, 100],
		[81, 131],
		[150, 200]
	])('%d mm stitched is %d mm drawn, at a mouth its start', (stitched, s) => {
		expect(fromStitched(darted, hem, stitched)).toBeCloseTo(s, 12);
	});

	it('an edge that ends in a mouth is stitched to its drawn end', () => {
		const piece = pieceOf(rectangleFile({ darts: [{ id: 'd', edge: 'hem', from: 180, to: 200, point: [10, 200] }] }));
		expect(fromStitched(piece, edgeOf(piece, 'hem')!, 180)).toBe(200);
	});

	it('a hair’s breadth into a mouth that begins the edge is still its start, as it is from the other end', () => {
		const piece = pieceOf(rectangleFile({ darts: [{ id: 'dart', edge: 'hem', from: 0, to: 30, point: [150, 200] }] }));
		const hem = piece.edges[2];
		for (const near of [0, 1e-300, 1e-12]) expect(fromStitched(piece, hem, near)).toBeCloseTo(0, 9);
		expect(fromStitched(piece, hem, 1e-6)).toBeCloseTo(30 + 1e-6, 9);
		expect(fromStitched(piece, hem, 170 - 1e-12)).toBeCloseTo(200, 9);
	});
});

describe('a skirt laid in pleats', () => {
	const piece = pieceOf(rectangleFile({ width: 900, pleats: [{ edge: 'hem', from: 100, to: 700, turned: 400 }] }));
	const edge = edgeOf(piece, 'hem')!;

	it('is sewn to a band as long as what is not turned under', () => {
		expect(edgeStitchedLength(piece, edge)).toBeCloseTo(500, 9);
	});

	it('takes up the cloth evenly: the middle of the pleats is the middle of what they are laid to', () => {
		expect(toStitched(piece, edge, 400)).toBeCloseTo(200, 9);
		expect(fromStitched(piece, edge, 200)).toBeCloseTo(400, 9);
		expect(fromStitched(piece, edge, 300)).toBeCloseTo(700, 9);
		expect(toStitched(piece, edge, 800)).toBeCloseTo(400, 9);
	});
});
