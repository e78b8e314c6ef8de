import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { compare } from '../../../src/lib/engine/review/compare.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';
import { bodice } from '../../support/drafts.ts';
import { plainBodice } from '../../support/plain-bodice.ts';

const altered = (draft: Draft, ...alterations: object[]) =>
	carryAlterations(draft, alterations.map(parseAlteration)).draft;
const edge = (comparison: ReturnType<typeof compare>, name: string) =>
	comparison.edges.find((one) => one.edge === name)!;
const move = (comparison: ReturnType<typeof compare>, name: string, at: string) =>
	edge(comparison, name).moves.find((one) => one.at === at)?.move;

const taperedIn = {
	id: 'one',
	kind: 'seam',
	seam: 'side',
	pins: [
		{ at: { end: 'start' }, a: 0, b: 0 },
		{ at: { level: 'waist' }, a: -6.35, b: -6.35 },
		{ at: { end: 'finish' }, a: 3, b: 3 }
	]
};

describe('two versions compared', () => {
	it('says at every place how far the line moved, outward positive, and where most', () => {
		const found = compare(plainBodice(), altered(plainBodice(), taperedIn));
		const side = edge(found, 'front/side');
		expect(side.moves.map(({ at }) => at)).toEqual(['start', 'bust', 'n1', 'waist', 'finish']);
		expect(move(found, 'front/side', 'start')).toBeCloseTo(0, 6);
		expect(move(found, 'front/side', 'waist')).toBeCloseTo(-6.35, 2);
		expect(move(found, 'front/side', 'finish')).toBeCloseTo(3, 6);
		expect(move(found, 'back/side', 'waist')).toBeCloseTo(-6.35, 2);
		expect(side.greatest.move).toBeCloseTo(-6.35, 2);
		expect(side.greatest.at).toBe('waist');
		expect(side.before).toBe(300);
		expect(side.after).toBeGreaterThan(300);
	});

	it('says nothing moved where nothing did, though a corner was trimmed', () => {
		const found = compare(
			plainBodice(),
			altered(plainBodice(), {
				id: 'one',
				kind: 'edge',
				edge: 'front/hem',
				pins: [{ at: { end: 'start' }, move: -25 }]
			})
		);
		expect(edge(found, 'front/side')).toMatchObject({ before: 300, greatest: { move: 0 } });
		expect(edge(found, 'front/side').after).toBeCloseTo(275, 6);
		expect(edge(found, 'front/hem').greatest.move).toBeCloseTo(-25, 9);
		expect(edge(found, 'back/hem').greatest.move).toBe(0);
	});

	it('finds the greatest move where it lies between the named places', () => {
		const bulge = {
			id: 'one',
			kind: 'edge',
			edge: 'front/side',
			pins: [
				{ at: { end: 'start' }, move: 0 },
				{ at: { end: 'start', offset: 137 }, move: 9 },
				{ at: { end: 'finish' }, move: 0 }
			]
		};
		const { greatest } = edge(compare(plainBodice(), altered(plainBodice(), bulge)), 'front/side');
		expect(Math.abs(greatest.move - 9)).toBeLessThan(0.01);
		expect(Math.abs(greatest.s - 137)).toBeLessThan(2);
		expect(greatest.at).toBe('n1');
	});

	it('holds the areas of the pieces against one another', () => {
		const down = { id: 'one', kind: 'edge', edge: 'front/hem', pins: [{ at: { end: 'start' }, move: 10 }] };
		const [front, back] = compare(plainBodice(), altered(plainBodice(), down)).pieces;
		expect(front.areaAfter! - front.areaBefore!).toBeCloseTo(2500, 6);
		expect(back.areaAfter).toBe(back.areaBefore);
	});

	it('tells which darts are new, changed and gone, and passes over the others', () => {
		const after = altered(
			bodice,
			{ id: 'one', kind: 'dart-set', dart: 'back/waist-dart', intake: 31 },
			{ id: 'two', kind: 'dart-set', dart: 'front/side-dart', intake: 0 },
			{
				id: 'hem-dart',
				kind: 'dart',
				edge: 'sleeve/wrist',
				at: { fraction: 0.5 },
				intake: 12,
				point: { from: { edge: 'sleeve/wrist', fraction: 0.5 }, in: 90 }
			}
		);
		const { darts } = compare(bodice, after);
		const named = Object.fromEntries(darts.map((one) => [one.dart, one]));
		expect(Object.keys(named).sort()).toEqual(['back/waist-dart', 'front/side-dart', 'sleeve/hem-dart']);
		expect(named['back/waist-dart'].before!.intake).toBeCloseTo(25, 9);
		expect(named['back/waist-dart'].after!.intake).toBeCloseTo(31, 6);
		expect(named['front/side-dart'].after).toBeUndefined();
		expect(named['sleeve/hem-dart'].before).toBeUndefined();
		expect(named['sleeve/hem-dart'].after!.length).toBeCloseTo(90, 6);
	});

	it('holds both halves of a divided piece against the whole one', () => {
		const left = { ...taperedIn, on: 'left' };
		const found = compare(plainBodice(), altered(plainBodice(), left));
		expect(move(found, 'front@left/side', 'waist')).toBeCloseTo(-6.35, 2);
		expect(move(found, 'front@right/side', 'waist')).toBe(0);
		expect(found.pieces.map(({ piece }) => piece)).toEqual(['front@right', 'front@left', 'back@right', 'back@left']);
	});

	it('holds an opened fold piece against both its halves', () => {
		const longer = {
			id: 'one',
			kind: 'edge',
			edge: 'collar/end',
			on: 'left',
			pins: [{ at: { end: 'start' }, move: 7 }]
		};
		const found = compare(bodice, altered(bodice, longer));
		expect(edge(found, 'collar/end@left').greatest.move).toBeCloseTo(7, 6);
		expect(edge(found, 'collar/end@right').greatest.move).toBeCloseTo(0, 6);
		expect(edge(found, 'collar/neck@left').greatest.move).toBeCloseTo(0, 6);
		const collar = found.pieces.find(({ piece }) => piece === 'collar')!;
		expect(collar.areaAfter! - collar.areaBefore!).toBeCloseTo(7 * 40, 6);
	});

	it('do not count the peak of a trued mouth as cloth let out', () => {
		const trued = altered(bodice, { id: 'one', kind: 'true-dart', dart: 'back/waist-dart', reach: 20 });
		const { greatest } = edge(compare(bodice, trued), 'back/waist');
		const peak = Math.max(...trued.pieces[0].edges[4].path.map(({ to }) => to[1])) - 420;
		expect(peak).toBeGreaterThan(1);
		expect(greatest.move).toBeLessThan(peak / 2);
	});

	it('turned about gives the same moves the other way, and to itself none', () => {
		const after = altered(plainBodice(), taperedIn);
		expect(move(compare(after, plainBodice()), 'front/side', 'finish')).toBeCloseTo(-3, 2);
		for (const { greatest, moves } of compare(after, after).edges) {
			expect(greatest.move).toBe(0);
			expect(moves.every((one) => one.move === 0)).toBe(true);
		}
	});
});
