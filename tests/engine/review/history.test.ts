import { describe, expect, it } from 'vitest';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { carry } from '../../../src/lib/engine/review/carry-and-check.ts';
import { carryOnto } from '../../../src/lib/engine/review/carry-onto.ts';
import { compare } from '../../../src/lib/engine/review/compare.ts';
import { story } from '../../../src/lib/engine/review/story.ts';
import { withdraw } from '../../../src/lib/engine/review/withdraw.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { plainBodice, plainBodiceFile } from '../../support/plain-bodice.ts';

const waistIn = (id: string, amount: number, on = 'both') =>
	parseAlteration({
		id,
		kind: 'seam',
		seam: 'side',
		on,
		pins: [
			{ at: { end: 'start' }, a: 0, b: 0 },
			{ at: { level: 'waist' }, a: -amount, b: -amount },
			{ at: { end: 'finish' }, a: 0, b: 0 }
		]
	});
const hemUp = parseAlteration({
	id: 'hem',
	kind: 'edge',
	edge: 'front/hem',
	pins: [{ at: { end: 'start' }, move: -15 }]
});
const newDart = parseAlteration({
	id: 'under-arm',
	kind: 'dart',
	edge: 'front/side',
	at: { end: 'start', offset: 60 },
	intake: 20,
	point: { from: { edge: 'front/side', end: 'start', offset: 60 }, in: 120 }
});
const wider = parseAlteration({ id: 'wider', kind: 'dart-set', dart: 'front/under-arm', intake: 26 });
const byCoordinates = parseAlteration({
	id: 'by-coordinates',
	kind: 'dart-set',
	dart: 'front/under-arm',
	point: [140, 205]
});
const history = [waistIn('one', 6), hemUp, newDart, waistIn('two', 4), wider];

describe('the story of a line', () => {
	it('is every alteration that touched it, in order, with its own share', () => {
		const chapters = story(plainBodice(), history, 'front/side');
		expect(chapters.map(({ alteration }) => alteration)).toEqual(['one', 'hem', 'under-arm', 'two', 'wider']);
		const shares = chapters.map(({ edges: [edge] }) => edge.moves.find(({ at }) => at === 'waist')!.move);
		const whole = compare(plainBodice(), carry(plainBodice(), history).draft);
		const total = whole.edges.find(({ edge }) => edge === 'front/side')!.moves.find(({ at }) => at === 'waist')!.move;
		expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(total, 1);
		expect(Math.abs(shares[0] + 6)).toBeLessThan(0.02);
		expect(shares[1]).toBe(0);
		expect(Math.abs(shares[3] + 4)).toBeLessThan(0.05);
	});

	it('of a dart tells how it came and how it changed', () => {
		const chapters = story(plainBodice(), history, 'front/under-arm');
		expect(chapters.map(({ alteration }) => alteration)).toEqual(['under-arm', 'two', 'wider']);
		expect(chapters[0].darts[0].before).toBeUndefined();
		expect(chapters[2].darts[0].after!.intake).toBeCloseTo(26, 6);
	});

	it('of a seam is that of all its edges, of one side that side’s alone', () => {
		const onLeft = [waistIn('one', 6), waistIn('two', 4, 'left')];
		expect(story(plainBodice(), onLeft, 'side')[0].edges.map(({ edge }) => edge)).toEqual(['front/side', 'back/side']);
		const names = (feature: string) => story(plainBodice(), onLeft, feature).map(({ alteration }) => alteration);
		expect(names('front@left/side')).toEqual(['one', 'two']);
		expect(names('front@right/side')).toEqual(['one']);
		expect(names('front/neck')).toEqual([]);
	});
});

describe('an alteration withdrawn', () => {
	it('is as if it had never been made, to the bit', () => {
		const { draft, unplaced, noLonger } = withdraw(plainBodice(), history, ['one']);
		expect(JSON.stringify(draft)).toBe(
			JSON.stringify(
				carry(
					plainBodice(),
					history.filter(({ id }) => id !== 'one')
				).draft
			)
		);
		expect([...unplaced, ...noLonger]).toEqual([]);
	});

	it('leaves what leaned on it waiting, not dropped', () => {
		const { applied, unplaced, noLonger, queries } = withdraw(plainBodice(), history, ['under-arm']);
		expect(applied.map(({ alteration }) => alteration)).toEqual(['one', 'hem', 'two']);
		expect(unplaced.map(({ alteration }) => alteration)).toEqual(['wider']);
		expect(noLonger).toEqual(unplaced);
		expect(queries.filter(({ code }) => code === 'unplaced')).toMatchObject([{ where: 'front/under-arm' }]);
	});

	it('that there is not is our own mistake', () => {
		expect(() => withdraw(plainBodice(), history, ['nine'])).toThrow('nine');
	});
});

describe('alterations carried onto another draft', () => {
	it('find the seams and levels of the same names, and wait where there are none', () => {
		const file = structuredClone(plainBodiceFile);
		file.pieces[0].edges[2].path = 'M 250 150 L 250 520';
		file.pieces[0].edges[3].path = 'M 250 520 L 0 520';
		file.pieces[0].edges[4].path = 'M 0 520 L 0 60';
		file.pieces[1].edges[2].path = 'M 250 20 L 250 520';
		file.pieces[1].edges[3].path = 'M 250 520 L 0 520';
		file.pieces[1].edges[4].path = 'M 0 520 L 0 150';
		file.pieces[1].notches[0].at = 270;
		const other = parseDraft(file);
		const collar = parseAlteration({
			id: 'collar',
			kind: 'edge',
			edge: 'collar/end',
			pins: [{ at: { end: 'start' }, move: 3 }]
		});
		const { draft, applied, unplaced } = carryOnto(other, [waistIn('one', 6), collar]);
		expect(applied.map(({ alteration }) => alteration)).toEqual(['one']);
		expect(unplaced.map(({ alteration, why }) => [alteration, why])).toEqual([['collar', 'no-place']]);
		const side = compare(other, draft).edges.find(({ edge }) => edge === 'front/side')!;
		expect(Math.abs(side.moves.find(({ at }) => at === 'waist')!.move + 6)).toBeLessThan(0.02);
	});

	it('wait where they were placed by bare coordinates, in the order in which they were made', () => {
		const all = [newDart, byCoordinates, waistIn('one', 6)];
		expect(carry(plainBodice(), all).unplaced).toEqual([]);
		const { applied, unplaced, queries } = carryOnto(plainBodice(), all);
		expect(applied.map(({ alteration }) => alteration)).toEqual(['under-arm', 'one']);
		expect(unplaced.map(({ alteration }) => alteration)).toEqual(['by-coordinates']);
		expect(queries.filter(({ code }) => code === 'unplaced')).toHaveLength(1);
	});
});

describe('the carry', () => {
	it('checks what came of it against the draft that it began with', () => {
		const { queries } = carry(plainBodice(), [waistIn('one', 6)]);
		expect(queries).toEqual([]);
		expect(carry(plainBodice(), [hemUp]).queries.map(({ code }) => code)).toContain('seam-length');
		expect(carry(plainBodice(), [hemUp], { queries: false }).queries).toEqual([]);
	});
});
