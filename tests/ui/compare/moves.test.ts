import { expect, test } from 'vitest';
import { compare } from '../../../src/lib/engine/index.ts';
import { dartMoves, edgeMoves } from '../../../src/lib/ui/compare/other-moves.ts';
import { roundChanges, roundWords, easeWords } from '../../../src/lib/ui/compare/round-changes.ts';
import { seamMoves, stationsOf } from '../../../src/lib/ui/compare/seam-moves.ts';
import { betweenVersions, touchedBy } from '../../../src/lib/ui/compare/touched-by.ts';
import { altered, atLevel, demoDraft } from '../demo-versions.ts';

const quarter = 6.35;
const movesOf = (after: typeof demoDraft, id: string) =>
	seamMoves(after, compare(demoDraft, after)).find(({ seam }) => seam === id)!;

test('a side seam taken in 1/4 in at the waist has moved so much there and nothing at its ends, alike on both layers', () => {
	const side = movesOf(altered(demoDraft, atLevel('side', 'waist', -quarter)), 'side');
	expect(side.edges).toEqual(['under-arm/side', 'front/side']);
	expect(side.layers).toHaveLength(1);
	const [{ at, along, layer }] = side.layers;
	expect(layer).toBeUndefined();
	expect(at.waist).toBeCloseTo(-quarter, 3);
	expect(at.top).toBe(0);
	expect(at.end).toBe(0);
	expect(at.bust).toBeLessThan(0);
	expect(along[0].at).toBe(0);
	expect(along[along.length - 1].at).toBe(1);
	expect(along.map(({ at: share }) => share)).toEqual([...along.map(({ at: share }) => share)].sort((a, b) => a - b));
});

test('a seam moved towards one of its pieces is told layer by layer, what one gains the other gives', () => {
	const { layers } = movesOf(altered(demoDraft, atLevel('under-arm-back', 'waist', 3.175, -3.175)), 'under-arm-back');
	expect(layers.map(({ layer }) => layer)).toEqual(['Side back', 'Under-arm']);
	expect(layers[0].at.waist).toBeCloseTo(3.175, 3);
	expect(layers[1].at.waist).toBeCloseTo(-3.175, 3);
});

test('a centre seam has one layer, a seam that nobody touched has not moved', () => {
	const after = altered(demoDraft, {
		kind: 'seam',
		seam: 'centre-back',
		pins: [
			{ at: { end: 'start' }, a: 0 },
			{ at: { level: 'waist' }, a: -quarter },
			{ at: { end: 'finish' }, a: 0 }
		]
	});
	expect(movesOf(after, 'centre-back').layers).toHaveLength(1);
	expect(movesOf(after, 'centre-back').layers[0].at.waist).toBeCloseTo(-quarter, 3);
	expect(movesOf(after, 'shoulder').moved).toBe(false);
});

test('the stations of a jacket are its balance lines between top and end, those of its sleeves their own', () => {
	expect(stationsOf(demoDraft, false).map(({ name }) => name)).toEqual(['top', 'bust', 'waist', 'hip', 'end']);
	expect(stationsOf(demoDraft, true).map(({ name }) => name)).toEqual(['top', 'upper arm', 'elbow', 'wrist', 'end']);
});

test('a neck chalked lower and a new dart are told by what was done, where and how much', () => {
	const after = altered(
		demoDraft,
		{
			kind: 'edge',
			edge: 'front/neck',
			pins: [
				{ at: { end: 'start' }, move: 0 },
				{ at: { end: 'finish' }, move: -9.525 }
			]
		},
		{
			kind: 'dart',
			edge: 'front/armhole',
			at: { notch: 'armhole-front' },
			intake: 9.525,
			point: { from: { edge: 'front/armhole', notch: 'armhole-front' }, in: 95.25 }
		},
		{ kind: 'dart-set', dart: 'front/front-dart', intake: 15 }
	);
	const comparison = compare(demoDraft, after);
	expect(edgeMoves(demoDraft, after, comparison, 'in')).toMatchObject([
		{ feature: 'front/neck', name: 'Front neck', words: 'most at the front edge', way: 'in', word: 'lower' }
	]);
	expect(edgeMoves(demoDraft, after, comparison, 'in')[0].mm).toBeCloseTo(9.525, 3);
	expect(
		dartMoves(demoDraft, after, comparison, 'in').map(({ name, words, mm }) => [name, words, mm.toFixed(2)])
	).toEqual([
		['Front dart', 'wider, now 9/16″', '6.36'],
		['Front armhole dart', 'new, 3 3/4″ long', '9.53']
	]);
	const back = compare(after, demoDraft);
	expect(dartMoves(after, demoDraft, back, 'in').map(({ words, way }) => [words, way])).toEqual([
		['narrower, now 5/16″', 'out'],
		['taken out', 'out']
	]);
});

// Plain arithmetic, as every handbook has it: 1/4 in on each layer of both side seams is 1 in round.
test('both side seams in by 1/4 in on each layer are said as 1 in round, and as ease lost', () => {
	const after = altered(demoDraft, atLevel('side', 'waist', -quarter));
	const waist = roundChanges(demoDraft, after, { waist: 635 }).find(({ name }) => name === 'Waist')!;
	expect(waist.change).toBeCloseTo(-25.4, 3);
	expect(waist.easeBefore! - waist.easeAfter!).toBeCloseTo(25.4, 3);
	expect(roundWords([waist], 'in')).toBe('waist smaller by 1″, all round');
	expect(easeWords([waist], 'cm')).toBe('Ease at the waist was 4.3 cm, is 1.8 cm.');
	expect(roundWords(roundChanges(demoDraft, demoDraft), 'in')).toBe('as large as it was at every balance line');
});

test('an alteration is found by the line that it was done to, in the version that first had it', () => {
	const step = (alteration: string, ...features: string[]) => ({
		alteration,
		touched: features.map((feature) => ({ feature }))
	});
	const versions = [
		{ number: 0, reason: 'base', alterations: [], steps: [] },
		{ number: 1, reason: 'carried', alterations: ['p', 'q'], steps: [step('p', 'front/side'), step('q', 'back/neck')] },
		{ number: 2, reason: 'carried', alterations: ['p', 'q', 'r'], steps: [step('r', 'front@left/side')] },
		{
			number: 3,
			reason: 'withdrawn',
			alterations: ['q', 'r'],
			steps: [step('q', 'back/neck'), step('r', 'front@left/side')]
		}
	] as const;
	expect(touchedBy(versions, ['under-arm/side', 'front/side'])).toEqual([
		{ alteration: 'p', version: 1 },
		{ alteration: 'r', version: 2 }
	]);
	expect([...betweenVersions(versions[1], versions[3])].sort()).toEqual(['p', 'r']);
	expect(betweenVersions(versions[2], versions[2]).size).toBe(0);
});
