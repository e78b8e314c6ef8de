import { describe, expect, test } from 'vitest';
import { carryEach } from '../../../../src/lib/ui/fitting/carried/carry-each.ts';
import { effectOf } from '../../../../src/lib/ui/fitting/carried/effect.ts';
import { pinsOfEach } from '../../../../src/lib/ui/fitting/carried/pins-of-each.ts';
import { asAlterations } from '../../../../src/lib/ui/fitting/form/read-alteration.ts';
import type { Typed } from '../../../../src/lib/ui/fitting/typed.ts';
import { alterationTitle } from '../../../../src/lib/ui/fitting/words/alteration.ts';
import { jacket } from '../drafts.ts';
import { readTyped } from '../read-typed.ts';

function carried(typed: Typed) {
	const read = readTyped(jacket, typed);
	return { read, each: carryEach(jacket, asAlterations(read.intents)) };
}

const title = (typed: Typed) => {
	const { read, each } = carried(typed);
	return alterationTitle(jacket, each[0].alteration, 'in', read.act);
};
const effect = (typed: Typed) => {
	const { read, each } = carried(typed);
	return effectOf(each, jacket, { unit: 'in', measured: read.measured });
};

const fold = { act: 'folded-across', across: 'waist' };
const back = { ticked: 'yes', 'piece.back': 'yes', 'piece.side-back': 'yes', off: '2 1/2' };
const wedge = { ...fold, ...back, shape: 'wedge', first: '1/2', last: '0' };

describe('cloth folded or slashed across, in words', () => {
	test.each([
		[
			{ ...fold, first: '1/2' },
			'Back, side back, under-arm and front, folded across 1/2″, 2 1/2″ above the waist, both sides'
		],
		[
			wedge,
			'Back and side back, folded across 1/2″ at the centre-back seam, to nothing at the under-arm seam, 2 1/2″ above the waist, both sides'
		],
		[
			{ ...fold, act: 'slashed', across: 'half-way', first: '1/4', sides: 'left' },
			'Back and front, slashed and opened 1/4″, half way between underarm and neck, left side only'
		],
		[
			{ act: 'slashed', across: 'elbow', off: '0', ticked: 'yes', 'piece.top-sleeve': 'yes', first: '1/4' },
			'Top sleeve, slashed and opened 1/4″, on the elbow line, both sleeves'
		],
		[{ ...fold, read: 'later' }, 'Back, side back, under-arm and front, folded across, both sides, not read yet']
	] as const)('%o', (typed, words) => {
		expect(title(typed)).toBe(words);
	});

	test('its sum says how much and where, a tuck by its depth as well', () => {
		const { sum, at, fold: tuck } = effect({ ...fold, first: '1/4', measured: 'one-layer' });
		expect(sum?.text).toBe('1/2″ shorter');
		expect(at).toBe('2 1/2″ above the waist, on the back, side back, under-arm and front');
		expect(tuck?.text).toBe('1/4″ deep, laid double = 1/2″ taken out');
		expect(effect(wedge).sum?.text).toBe('1/2″ shorter at the centre-back seam, to nothing at the under-arm seam');
	});

	test('every seam that it crosses is told, one that goes by the name of a piece as well', () => {
		const { neighbours } = effect({ ...fold, first: '1/2' });
		for (const seam of ['centre-back', 'side-back', 'under-arm', 'side'])
			expect(neighbours.join(' ')).toContain(`The ${seam} seam is shorter by`);
	});

	test('each piece has one pin where its cut ends, with how much shorter it is there', () => {
		const pins = pinsOfEach(carried({ ...fold, first: '1/2' }).each, () => 4);
		expect(pins.map(({ number, feature, word, amount }) => [number, feature, word, amount])).toEqual([
			[4, 'back/centre-back', 'shorter', 12.7],
			[4, 'side-back/side-back', 'shorter', 12.7],
			[4, 'under-arm/under-arm-back', 'shorter', 12.7],
			[4, 'front/front-edge', 'shorter', 12.7]
		]);
		expect(pinsOfEach(carried({ ...wedge, sides: 'left' }).each, () => 4)[0].feature).toBe('back@left/centre-back');
	});
});

describe('a slash for the bust', () => {
	const slash = { act: 'slashed', piece: 'front', first: '1/2' };
	test('hinges 3/4″ below the armhole notch (The Dressmaker, part 7), parts by what was read, and keeps the armhole’s length', () => {
		const { read, each } = carried(slash);
		expect(read.intents[0]).toMatchObject({
			hinge: { notch: 'armhole-front', offset: expect.closeTo(-19.05, 9) },
			gap: 12.7
		});
		expect(each[0].unplaced).toBeUndefined();
		const armhole = each[0].step!.touched.find(({ feature }) => feature === 'front/armhole')!;
		expect(armhole.after).toBeCloseTo(armhole.before, 6);
	});

	test('is said by the gap, and lapped for a smaller bust', () => {
		expect(title(slash)).toBe('Front, slashed for a fuller bust, 1/2″, both sides');
		expect(title({ ...slash, bust: 'smaller' })).toBe('Front, lapped for a smaller bust, 1/2″, both sides');
		expect(effect(slash).sum?.text).toBe('1/2″ wider at the bust point, on each half = 1″ wider in all');
	});
});

describe('marks in words', () => {
	test.each([
		[
			{ act: 'marked', piece: 'front', done: 'moved', up: '1/2', upWay: 'down', aside: '1/4' },
			'Front, moved the bust point 1/2″ down, 1/4″ towards the front edge, both sides'
		],
		[
			{ act: 'marked', piece: 'back', done: 'from-edge', place: 'centre-back|level:bust', in: '3' },
			'Back, marked the bust point, 3″ in from the centre back at the bust, both sides'
		],
		[
			{ act: 'marked', seam: 'side', at: 'level:waist', from: '-1', sides: 'right' },
			'Under-arm, snipped a notch on the side, 1″ above the waist, right side only'
		],
		[
			{ act: 'marked', piece: 'front', done: 'remove', mark: 'side-high' },
			'Front, took a notch off the side, both sides'
		]
	] as const)('%o', (typed, words) => {
		expect(title(typed)).toBe(words);
	});

	test('buttonholes by how far apart and how long; one pin through the first, one through a notch on each piece', () => {
		const holes = {
			act: 'marked',
			edge: 'front/front-edge',
			firstAt: 'end:start',
			firstFrom: '1',
			lastAt: 'level:waist',
			count: '6',
			diameter: '5/8',
			thickness: '1/8'
		};
		expect(effect(holes).sum?.text).toMatch(/^6 buttonholes, .* apart, each 3\/4″ long$/);
		expect(pinsOfEach(carried(holes).each, () => 2).map(({ feature, word }) => [feature, word])).toEqual([
			['front/buttonhole-1', 'buttonholes']
		]);
		const notch = carried({ act: 'marked', seam: 'side', at: 'level:waist', from: '1' });
		expect(pinsOfEach(notch.each, () => 2).map(({ feature, word }) => [feature, word])).toEqual([
			['under-arm/side', 'notch'],
			['front/side', 'notch']
		]);
	});
});
