import { describe, expect, test } from 'vitest';
import type { Typed } from '../../../../src/lib/ui/fitting/typed.ts';
import type { Unit } from '../../../../src/lib/measure/units.ts';
import { boxes, inch, jacket } from '../drafts.ts';
import { problemsTyped, readTyped } from '../read-typed.ts';

const quarter = inch / 4;

const read = (typed: Typed, draft = boxes, unit?: Unit) => readTyped(draft, typed, unit);
const problems = (typed: Typed, draft = boxes) => problemsTyped(draft, typed);
const side = (typed: Typed): Typed => ({ act: 'took-in', seam: 'side', places: 'level:waist', ...typed });

describe('amounts as they are typed', () => {
	test.each([
		['3/8', (3 / 8) * inch],
		['1 1/4', 1.25 * inch],
		['1¼', 1.25 * inch],
		['0.6 cm', 6],
		['6 mm', 6],
		['.5', inch / 2]
	])('%s is taken in on each layer', (text, mm) => {
		const { intents } = read(side({ 'amount.level:waist': text }));
		expect(intents[0]).toMatchObject({
			kind: 'seam',
			seam: 'side',
			on: 'both',
			pins: [
				{ at: { end: 'start' } },
				{ at: { level: 'waist' }, a: expect.closeTo(-mm, 9), b: expect.closeTo(-mm, 9) },
				{}
			]
		});
	});

	test('with a minus sign it goes the other way: taken in by −6 mm is let out by 6 mm', () => {
		const { intents } = read(side({ 'amount.level:waist': '-6 mm' }));
		expect(intents[0].pins).toContainEqual({ at: { level: 'waist' }, a: 6, b: 6 });
	});

	test('a bare number is in the unit of the page', () => {
		expect(read(side({ 'amount.level:waist': '1.5' }), boxes, 'cm').intents[0].pins).toContainEqual({
			at: { level: 'waist' },
			a: -15,
			b: -15
		});
	});

	test.each([
		['1/0', 'no length'],
		['ten', 'not in figures'],
		['1 1/2 1/2', 'more than one length'],
		['9/8', '1 1/8'],
		['40 m', 'the most that makes sense']
	])('%s is answered with what would be right', (text, part) => {
		expect(problems(side({ 'amount.level:waist': text }))).toEqual({
			'amount.level:waist': expect.stringContaining(part)
		});
	});

	test('every wrong field has its own sentence', () => {
		const wrong = problems(
			side({
				places: 'level:waist end:finish',
				'amount.level:waist': '1/0',
				'amount.end:finish': 'ten',
				sides: 'middle'
			})
		);
		expect(Object.keys(wrong).sort()).toEqual(['amount.end:finish', 'amount.level:waist', 'sides']);
	});
});

describe('what was measured', () => {
	test('a whole fold is halved before it is carried, and kept as it was read', () => {
		const { intents, readings, measured } = read(side({ 'amount.level:waist': '1/2', measured: 'whole-fold' }));
		expect(intents[0].pins).toContainEqual({ at: { level: 'waist' }, a: -quarter, b: -quarter });
		expect(measured).toBe('whole-fold');
		expect(readings.places).toEqual([{ at: { level: 'waist' }, rightA: -inch / 2 }]);
	});

	test('each layer has its own amount, and neither is guessed', () => {
		const typed = side({ measured: 'each-layer', 'amount.level:waist': '1/4', 'other.level:waist': '1/8' });
		expect(read(typed).intents[0].pins).toContainEqual({ at: { level: 'waist' }, a: -quarter, b: -inch / 8 });
		expect(problems({ ...typed, 'other.level:waist': '' })).toEqual({
			'other.level:waist': 'How much on the back? Write 0 if nothing.'
		});
	});

	test('a moved seam gives one layer what it takes from the other', () => {
		const moved = { act: 'moved-seam', seam: 'side', places: 'level:waist', 'amount.level:waist': '1/4' };
		expect(read({ ...moved, way: 'out' }).intents[0].pins).toContainEqual({
			at: { level: 'waist' },
			a: quarter,
			b: -quarter
		});
		expect(read({ ...moved, way: 'in' }).intents[0].pins).toContainEqual({
			at: { level: 'waist' },
			a: -quarter,
			b: quarter
		});
	});

	test('a centre seam has one layer to say, and cannot be moved', () => {
		const centre = { seam: 'centre-back', places: 'level:waist', 'amount.level:waist': '1/4', measured: 'each-layer' };
		expect(read({ ...centre, act: 'took-in' }).intents[0].pins).toContainEqual({ at: { level: 'waist' }, a: -quarter });
		expect(problems({ ...centre, act: 'moved-seam' }).act).toContain('its own mirror image');
	});
});

test('both ends are always sent, 0 unless something was pinned there', () => {
	expect(read(side({ 'amount.level:waist': '1/4' })).intents[0].pins).toEqual([
		{ at: { end: 'start' }, a: 0, b: 0 },
		{ at: { level: 'waist' }, a: -quarter, b: -quarter },
		{ at: { end: 'finish' }, a: 0, b: 0 }
	]);
	const neck = { act: 'chalked', edge: 'front/hem', way: 'in', places: 'fraction:0.5', 'amount.fraction:0.5': '1/4' };
	expect(read(neck).intents[0].pins).toEqual([
		{ at: { end: 'start' }, move: 0 },
		{ at: { fraction: 0.5 }, move: -quarter },
		{ at: { end: 'finish' }, move: 0 }
	]);
});

test('all along, one amount moves the whole seam, its ends too', () => {
	const typed = { act: 'let-out', seam: 'side', along: 'all', 'amount.all': '1/4' };
	expect(read(typed).intents).toEqual([
		{ kind: 'seam', seam: 'side', on: 'both', pins: [{ at: { fraction: 0.5 }, a: quarter, b: quarter }] }
	]);
	expect(problems({ ...typed, 'amount.all': '' }).places).toContain('all along');
});

describe('sides', () => {
	const typed = side({ 'amount.level:waist': '1/4', 'left.level:waist': '1/8' });

	test.each(['both', 'right', 'left'] as const)('%s is one alteration', (sides) => {
		const { intents } = read({ ...typed, sides });
		expect(intents.map(({ on }) => on)).toEqual([sides]);
		expect(intents[0].pins).toContainEqual({ at: { level: 'waist' }, a: -quarter, b: -quarter });
	});

	test('each its own is two, the right and the left', () => {
		const { intents, readings } = read({ ...typed, sides: 'each' });
		expect(intents.map(({ on, pins }) => [on, (pins as { a: number }[])[1].a])).toEqual([
			['right', -quarter],
			['left', -inch / 8]
		]);
		expect(readings).toEqual({
			pinnedOn: 'right',
			sides: 'each',
			places: [{ at: { level: 'waist' }, rightA: -quarter, leftA: -inch / 8 }]
		});
	});

	test('a side that moves nothing is no alteration', () => {
		expect(read({ ...typed, sides: 'each', 'left.level:waist': '0' }).intents.map(({ on }) => on)).toEqual(['right']);
		expect(read({ ...typed, sides: 'each', 'amount.level:waist': '' }).intents.map(({ on }) => on)).toEqual(['left']);
	});
});

describe('readings', () => {
	test('are kept beside the amount that is carried', () => {
		const typed = side({
			'amount.level:waist': '1/4',
			'rightA.level:waist': '1/4',
			'rightB.level:waist': '5/16',
			'leftA.level:waist': '3/16',
			averaged: 'yes',
			pinnedOn: 'both'
		});
		expect(read(typed).readings).toEqual({
			pinnedOn: 'both',
			sides: 'average',
			places: [{ at: { level: 'waist' }, rightA: -quarter, rightB: -7.9375, leftA: -4.7625 }]
		});
	});

	test('without an amount ask for one', () => {
		expect(problems(side({ 'rightA.level:waist': '1/4' }))).toEqual({
			'amount.level:waist': 'The readings are there, the amount is not: take their average, or write it.'
		});
	});
});

test('pinned now and read later has its places and no amounts, whatever was typed', () => {
	const { intents, readings } = read(side({ 'amount.level:waist': 'about a finger', read: 'later' }));
	expect(intents).toEqual([{ kind: 'seam', seam: 'side', on: 'both', pins: [{ at: { level: 'waist' } }] }]);
	expect(readings.places).toEqual([]);
});

describe('what is not there is said, with what there is', () => {
	test.each<[Typed, string, string]>([
		[{}, 'act', 'what was done'],
		[{ act: 'knitted' }, 'act', 'what was done'],
		[{ act: 'took-in' }, 'seam', 'Which seam?'],
		[{ act: 'took-in', seam: 'yoke' }, 'seam', 'There is no seam “yoke” in this draft. It has: side seam'],
		[{ act: 'chalked', edge: 'front/collar' }, 'edge', 'There is no edge “front/collar”'],
		[{ act: 'changed-dart', dart: 'front/none' }, 'dart', 'back waist dart'],
		[{ act: 'took-in', seam: 'side', places: 'level:knee', 'amount.level:knee': '1/4' }, 'places', 'no knee line'],
		[{ act: 'took-in', seam: 'side', places: 'notch:n9', 'amount.notch:n9': '1/4' }, 'places', 'no notch n9'],
		[{ act: 'took-in', seam: 'side', places: 'level:waist~900', 'amount.level:waist~900': '1/4' }, 'places', 'beyond'],
		[{ act: 'took-in', seam: 'side', places: 'somewhere', 'amount.somewhere': '1/4' }, 'places', 'is no place'],
		[{ act: 'took-in', seam: 'side', places: 'level:waist' }, 'places', 'Write an amount at one place at least'],
		[
			{ act: 'took-in', seam: 'side', places: 'level:waist', 'amount.level:waist': '0' },
			'places',
			'nothing would change'
		],
		[
			{
				act: 'took-in',
				seam: 'side',
				places: 'level:waist fraction:0.5',
				'amount.level:waist': '1/4',
				'amount.fraction:0.5': '1/8'
			},
			'places',
			'at one place'
		]
	])('%j', (typed, name, part) => {
		expect(problems(typed)).toEqual({ [name]: expect.stringContaining(part) });
	});
});

describe('a new dart', () => {
	const dart = { act: 'new-dart', edge: 'front/armhole', at: 'fraction:0.5', width: '1/2', length: '3' };

	test('has a place, its whole width and its point so far in', () => {
		expect(read(dart).intents).toEqual([
			{
				kind: 'dart',
				edge: 'front/armhole',
				on: 'both',
				at: { fraction: 0.5 },
				intake: inch / 2,
				point: { from: { edge: 'front/armhole', fraction: 0.5 }, in: 76.2 }
			}
		]);
	});

	test('measured on one leg it is twice as wide', () => {
		expect(read({ ...dart, measured: 'one-layer' }).intents[0].intake).toBe(inch);
	});

	test('can point to the bust point, and open so far from a place', () => {
		const { intents } = read({ ...dart, pointBy: 'mark', short: '1', from: '1/2', at: 'fraction:0.5' });
		const at = { fraction: 0.5, offset: inch / 2 };
		expect(intents[0]).toMatchObject({
			at,
			point: { mark: 'bust-point', toward: { edge: 'front/armhole', ...at }, short: inch }
		});
		expect(problems({ ...dart, edge: 'back/hem', pointBy: 'mark' }).pointBy).toContain('no bust point marked');
	});

	test('cannot be less than nothing, nothing at all, or without a length', () => {
		expect(problems({ ...dart, width: '-1/4' }).width).toContain('less than nothing');
		expect(problems({ ...dart, width: '0' }).width).toContain('none');
		expect(problems({ ...dart, width: '', length: '' })).toEqual({
			width: expect.stringContaining('How wide?'),
			length: expect.stringContaining('How long?')
		});
		expect(problems({ ...dart, at: 'level:waist' }).at).toContain('waist');
	});
});

describe('a changed dart, 20 mm wide and 250 mm long', () => {
	const dart = { act: 'changed-dart', dart: 'back/waist-dart' };
	const intent = (typed: Typed) => read({ ...dart, ...typed }).intents[0];

	test('is made wider or narrower by so much, or to a width, or taken out', () => {
		expect(intent({ by: 'wider', width: '1/4' }).intake).toBeCloseTo(20 + quarter, 9);
		expect(intent({ by: 'narrower', width: '1/4' }).intake).toBeCloseTo(20 - quarter, 9);
		expect(intent({ by: 'to', width: '1/2' }).intake).toBe(inch / 2);
		expect(intent({ by: 'out' })).toEqual({ kind: 'dart-set', dart: 'back/waist-dart', on: 'both', intake: 0 });
	});

	test('is not made narrower than it is wide: to nothing is taken out', () => {
		expect(problems({ ...dart, by: 'narrower', width: '1' }).width).toContain('13/16″ wide');
		expect(intent({ by: 'narrower', width: '20 mm' }).intake).toBe(0);
	});

	test('gets longer and shorter along its own fold, at x = 100 from the hem upwards', () => {
		const [x, y] = intent({ by: 'keep', pointBy: 'longer', length: '1/2' }).point as number[];
		expect([x, y]).toEqual([expect.closeTo(100, 9), expect.closeTo(150 - inch / 2, 9)]);
		expect(problems({ ...dart, by: 'keep', pointBy: 'shorter', length: '10' }).length).toContain('9 7/8″ long');
	});

	test('must change in some way', () => {
		expect(problems({ ...dart, by: 'keep' }).by).toContain('Neither its width nor its point');
	});

	test('each side has its own width', () => {
		const { intents } = read({ ...dart, by: 'to', width: '1/2', leftWidth: '1/4', sides: 'each' });
		expect(intents.map(({ on, intake }) => [on, intake])).toEqual([
			['right', inch / 2],
			['left', quarter]
		]);
	});
});

test('what only the engine refuses is no fault of the form: it is kept as it was pinned', () => {
	// A dart wider than there is room for on its edge.
	const typed = { act: 'new-dart', edge: 'front/armhole', at: 'end:start', width: '2', length: '3' };
	expect(problems(typed, jacket)).toEqual({});
});
