import { describe, expect, test } from 'vitest';
import { carry, parseAlteration } from '../../../../src/lib/engine/index.ts';
import { carryEach, pinsOfCarried } from '../../../../src/lib/ui/fitting/carried/carry-each.ts';
import { earlierWork, tellEarlier } from '../../../../src/lib/ui/fitting/carried/earlier.ts';
import { effectOf } from '../../../../src/lib/ui/fitting/carried/effect.ts';
import { boxes, inch, jacket } from '../drafts.ts';

const quarter = inch / 4;
const waist = { level: 'waist' } as const;
const ends = [
	{ at: { end: 'start' }, a: 0, b: 0 },
	{ at: { end: 'finish' }, a: 0, b: 0 }
];

function effect(intents: object[], draft = boxes, more: Partial<Parameters<typeof effectOf>[2]> = {}) {
	const carried = carryEach(
		draft,
		intents.map((intent, i) => parseAlteration({ id: `x${i}`, ...intent }))
	);
	return effectOf(carried, draft, { unit: 'in', ...more });
}
const evenly = (a: number, b = a, on = 'both') => ({
	kind: 'seam',
	seam: 'side',
	on,
	pins: [{ at: { fraction: 0.5 }, a, b }]
});

describe('what an alteration does, where plain arithmetic knows it', () => {
	test('a quarter on each layer at both sides is a half at the seam and an inch round', () => {
		const pins = [ends[0], { at: waist, a: -quarter, b: -quarter }, ends[1]];
		const done = effect([{ kind: 'seam', seam: 'side', pins }]);
		expect(done.sum?.text).toBe('1/4″ on each layer = 1/2″ at this seam = 1″ round the waist');
		expect(done.at).toBe('Waist line');
		expect(done.levels).toEqual(['waist']);
	});

	test('on the right alone it is a half round', () => {
		const pins = [ends[0], { at: waist, a: -quarter, b: -quarter }, ends[1]];
		expect(effect([{ kind: 'seam', seam: 'side', on: 'right', pins }]).sum?.text).toBe(
			'1/4″ on each layer = 1/2″ at this seam = 1/2″ round the waist, right side only'
		);
	});

	test('a whole fold says that it was halved', () => {
		expect(effect([evenly(-quarter)], boxes, { measured: 'whole-fold' }).fold?.text).toBe(
			'1/2″ across the fold = 1/4″ on each layer'
		);
	});

	test('the sum is of the chosen place, if something was pinned there', () => {
		const pins = [
			{ at: { end: 'start' }, a: -inch / 8, b: -inch / 8 },
			{ at: waist, a: -quarter, b: -quarter }
		];
		const at = (here: string) => effect([{ kind: 'seam', seam: 'side', pins }], boxes, { here }).sum?.text;
		expect(at('end:start')).toBe('1/8″ on each layer = 1/4″ at this seam');
		expect(at('end:finish')).toBe('1/4″ on each layer = 1/2″ at this seam = 1″ round the waist');
	});

	// Level armholes, plumb side seams: what comes off each side edge comes off the armhole. 20 mm of fullness before.
	test('the armhole loses what both layers lose, and the sleeve head gathers that much more', () => {
		// 12.7 mm off: 32.7 mm in all is 1 5/16 in (33.3) to the sixteenth; 20 mm is 13/16 (20.6).
		expect(effect([evenly(-quarter)]).neighbours).toEqual([
			'The armhole is shorter by 1/2″; the sleeve head gathers that much more, 1 5/16″ in all, not 13/16″.'
		]);
	});

	test('let out so far that the sleeve head is too short for it, that is said', () => {
		// 15 mm onto each layer: 30 mm longer, 10 mm short: 3/8 in.
		expect(effect([evenly(15)]).neighbours).toEqual([
			'The armhole is longer by 1 3/16″; the sleeve head gathers that much less, and is then short by 3/8″.'
		]);
	});

	test('on one side alone it is that side’s armhole', () => {
		expect(effect([evenly(-quarter, -quarter, 'left')]).neighbours).toEqual([
			'The left armhole is shorter by 1/2″; the sleeve head gathers that much more, 1 5/16″ in all, not 13/16″.'
		]);
	});

	test('right and left by their own amounts are told together', () => {
		const done = effect([evenly(-quarter, -quarter, 'right'), evenly(-inch / 8, -inch / 8, 'left')]);
		expect(done.neighbours).toHaveLength(2);
		expect(done.neighbours[0]).toContain('The right armhole is shorter by 1/2″');
		expect(done.neighbours[1]).toContain('The left armhole is shorter by 1/4″');
	});

	test('two layers that keep their lengths walk as they did; one that does not is told', () => {
		expect(effect([evenly(-quarter)]).mates).toEqual([
			'The front and the back keep their lengths to each other: the seam walks as it did.'
		]);
		// A plumb line of 400 mm pinned out by 60 mm half way on one layer alone: two slopes, longer by the chord at least
		// (2·√(200² + 60²) − 400 = 17.6 mm), so by more than 5/8 in.
		const pins = [ends[0], { at: { fraction: 0.5 }, a: 60, b: 0 }, ends[1]];
		const [mate] = effect([{ kind: 'seam', seam: 'side', pins }]).mates;
		expect(mate).toMatch(
			/^The front gets (11\/16|3\/4|13\/16|7\/8|15\/16|1)″ longer along this seam against the back\.$/
		);
	});

	test('a centre seam is its own mirror image', () => {
		const done = effect([{ kind: 'seam', seam: 'centre-back', pins: [{ at: { fraction: 0.5 }, a: -quarter }] }]);
		expect(done.mates).toEqual(['Its two layers are mirror images of one another, and move alike.']);
		expect(done.sum?.text).toBe('1/4″ on each layer = 1/2″ at this seam');
	});

	test('what cannot be carried says why, and nothing else', () => {
		const dart = { kind: 'dart', edge: 'front/armhole', at: { end: 'start' }, intake: 30, point: [100, 100] };
		const done = effect([dart]);
		expect(done.refused).toContain('run off the end');
		expect(done.neighbours).toEqual([]);
		expect(done.levels).toEqual([]);
	});

	test('a chalked edge says how far and which way', () => {
		const pins = [
			{ at: { end: 'start' }, move: 0 },
			{ at: { end: 'finish' }, move: -(3 / 8) * inch }
		];
		expect(effect([{ kind: 'edge', edge: 'front/neck', pins }], jacket).sum?.text).toBe('3/8″ lower');
	});
});

test('one by one they come to the same lines as together', () => {
	const alterations = [
		parseAlteration({ id: 'a', ...evenly(-quarter, -quarter, 'right') }),
		parseAlteration({ id: 'b', ...evenly(3, 1) }),
		parseAlteration({ id: 'c', kind: 'seam', seam: 'yoke', pins: [{ at: waist, a: 1, b: 1 }] })
	];
	const each = carryEach(boxes, alterations);
	const together = carry(boxes, alterations, { queries: false });
	expect(each[each.length - 1].after).toEqual(together.draft);
	expect(each.flatMap(({ step }) => step ?? [])).toEqual(together.applied);
	expect(each[2].unplaced).toEqual(together.unplaced[0]);
	expect(pinsOfCarried(each, () => 7).every(({ number }) => number === 7)).toBe(true);
});

describe('the work of earlier fittings', () => {
	const then = {
		fitting: 'Fitting 1',
		number: 2,
		intent: parseAlteration({
			id: 'then',
			kind: 'seam',
			seam: 'side',
			pins: [ends[0], { at: waist, a: inch / 8, b: inch / 8 }, ends[1]]
		}),
		draft: boxes,
		how: 'over stays, pinned by M. Thorne'
	};
	const now = (mm: number, seam = 'side') =>
		parseAlteration({ id: 'now', kind: 'seam', seam, pins: [ends[0], { at: waist, a: mm, b: mm }, ends[1]] });

	test('is shown at the same seam, the latest first', () => {
		const later = { ...then, fitting: 'Fitting 2', number: 1 };
		expect(
			earlierWork(boxes, now(3), tellEarlier([then, later], 'in'), 'in').map(({ who, words }) => [who, words])
		).toEqual([
			['Fitting 2, alteration 1', 'let out 1/8″ at the waist, both sides'],
			['Fitting 1, alteration 2', 'let out 1/8″ at the waist, both sides']
		]);
		expect(earlierWork(boxes, now(3, 'armhole'), tellEarlier([then], 'in'), 'in')).toEqual([]);
	});

	test('gone the other way at the same place, it says how it was pinned then', () => {
		expect(earlierWork(boxes, now(-3), tellEarlier([then], 'in'), 'in')[0].opposite).toEqual({
			places: ['Waist line'],
			how: 'over stays, pinned by M. Thorne'
		});
		expect(earlierWork(boxes, now(3), tellEarlier([then], 'in'), 'in')[0].opposite).toBeUndefined();
	});
});
