import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseAlteration } from '../../../../src/lib/engine/index.ts';
import { formOfAlteration, type Recorded } from '../../../../src/lib/ui/fitting/form/form-of-alteration.ts';
import { inUnit } from '../../../../src/lib/ui/fitting/form/in-unit.ts';
import { readAlteration } from '../../../../src/lib/ui/fitting/form/read-alteration.ts';
import { boxes, inch } from '../drafts.ts';

/** The intent that its form, read again, comes to. */
function again(recorded: Recorded, unit: 'in' | 'cm' = 'in') {
	const form = formOfAlteration(boxes, recorded, unit);
	if (!form) return undefined;
	const read = readAlteration(boxes, form, unit);
	if ('problems' in read) throw new Error(JSON.stringify({ form, read }));
	expect(read.read.intents).toHaveLength(1);
	// On a page whose lengths are in the other unit by now it is the same.
	const other = unit === 'in' ? 'cm' : 'in';
	expect(readAlteration(boxes, inUnit({ ...form, unit }, other), other)).toEqual(read);
	return read.read;
}

const sixteenths = fc.integer({ min: -24, max: 24 }).map((n) => (n * inch) / 16 || 0);
const odd = fc.double({ min: -30, max: 30, noNaN: true }).map((mm) => Math.round(mm * 1000) / 1000 || 0);
const amount = fc.oneof(sixteenths, odd);
const on = fc.constantFrom('both' as const, 'right' as const, 'left' as const);
const inner = fc.subarray(
	[{ level: 'waist' }, { notch: 'n1' }, { fraction: 0.3 }, { end: 'start' as const, offset: 20 }],
	{
		minLength: 1
	}
);

function close(intent: unknown): unknown {
	return JSON.parse(JSON.stringify(intent), (_, value: unknown) =>
		typeof value === 'number' ? expect.closeTo(value, 2) : value
	);
}

describe('an alteration put back into its form and read again is the same alteration:', () => {
	test('a seam, its layers alike or not, on any side', () => {
		fc.assert(
			fc.property(
				inner,
				fc.array(fc.tuple(amount, amount), { minLength: 6, maxLength: 6 }),
				on,
				fc.boolean(),
				fc.constantFrom('in' as const, 'cm' as const),
				fc.constantFrom('one-layer' as const, 'whole-fold' as const, null),
				(places, amounts, side, unlike, unit, measured) => {
					const at = [{ end: 'start' as const }, ...places, { end: 'finish' as const }];
					const pins = at.map((place, i) => ({
						at: place,
						a: amounts[i][0],
						b: unlike ? amounts[i][1] : amounts[i][0]
					}));
					fc.pre(pins.some(({ a, b }) => a !== 0 || b !== 0));
					const intent = { kind: 'seam', seam: 'side', on: side, pins };
					parseAlteration({ id: 'x', ...intent });
					expect(again({ intent, act: 'took-in', measured }, unit)!.intents[0]).toEqual(close(intent));
				}
			),
			{ numRuns: 300, seed: 8 }
		);
	});

	test('a moved seam, either way', () => {
		for (const a of [inch / 4, -inch / 8]) {
			const pins = [
				{ at: { end: 'start' }, a: 0, b: 0 },
				{ at: { level: 'waist' }, a, b: -a },
				{ at: { end: 'finish' }, a: 0, b: 0 }
			];
			const intent = { kind: 'seam', seam: 'side', on: 'both', pins };
			const read = again({ intent, act: 'moved-seam' })!;
			expect(read.intents[0]).toEqual(intent);
			expect(read.act).toBe('moved-seam');
		}
	});

	test('a chalked edge, and one that is moved evenly', () => {
		fc.assert(
			fc.property(fc.tuple(amount, amount, amount), on, ([s, m, f], side) => {
				fc.pre([s, m, f].some((move) => move !== 0));
				const pins = [
					{ at: { end: 'start' }, move: s },
					{ at: { fraction: 0.5 }, move: m },
					{ at: { end: 'finish' }, move: f }
				];
				const intent = { kind: 'edge', edge: 'front/hem', on: side, pins };
				expect(again({ intent, act: 'chalked' })!.intents[0]).toEqual(close(intent));
			}),
			{ numRuns: 200, seed: 15 }
		);
		const even = { kind: 'edge', edge: 'front/hem', on: 'both', pins: [{ at: { fraction: 0.5 }, move: -inch }] };
		expect(again({ intent: even })!.intents[0]).toEqual(even);
	});

	test.each<[string, Recorded['intent'] & Record<string, unknown>]>([
		[
			'a dart so far in',
			{
				kind: 'dart',
				edge: 'front/armhole',
				on: 'right',
				at: { fraction: 0.5, offset: 12.7 },
				intake: 9.525,
				point: { from: { edge: 'front/armhole', fraction: 0.5, offset: 12.7 }, in: 76.2 }
			}
		],
		[
			'a dart short of the bust point',
			{
				kind: 'dart',
				edge: 'front/armhole',
				on: 'both',
				at: { fraction: 0.5 },
				intake: 9.525,
				point: { mark: 'bust-point', toward: { edge: 'front/armhole', fraction: 0.5 }, short: 25.4 }
			}
		],
		['a dart made wider', { kind: 'dart-set', dart: 'back/waist-dart', on: 'left', intake: 20 + inch / 4 }],
		['a dart to a width', { kind: 'dart-set', dart: 'back/waist-dart', on: 'both', intake: inch / 2 }],
		['a dart taken out', { kind: 'dart-set', dart: 'back/waist-dart', on: 'both', intake: 0 }],
		['a dart made shorter', { kind: 'dart-set', dart: 'back/waist-dart', on: 'both', point: [100, 150 + inch] }]
	])('%s', (_, intent) => {
		expect(again({ intent })!.intents[0]).toEqual(close(intent));
	});

	test('with its readings, its note and what it answers', () => {
		const intent = {
			kind: 'seam',
			seam: 'side',
			on: 'both',
			pins: [
				{ at: { end: 'start' }, a: 0, b: 0 },
				{ at: { level: 'waist' }, a: -6.35, b: -6.35 },
				{ at: { end: 'finish' }, a: 0, b: 0 }
			]
		};
		const places = [{ at: { level: 'waist' }, rightA: -12.7, leftA: -11.1125 }];
		const read = again({ intent, measured: 'whole-fold', readings: { places }, note: 'uneven', answers: 'o1' })!;
		expect(read).toMatchObject({ measured: 'whole-fold', note: 'uneven', answers: 'o1' });
		expect(read.readings.places.find(({ at }) => 'level' in at)).toEqual(close(places[0]));
	});
});

test('one that is not read yet keeps its places and asks for amounts', () => {
	const form = formOfAlteration(
		boxes,
		{
			intent: { kind: 'seam', seam: 'side', on: 'right', pins: [{ at: { level: 'waist' } }] } as Recorded['intent'],
			act: 'let-out'
		},
		'in'
	)!;
	expect(form).toMatchObject({ act: 'let-out', seam: 'side', sides: 'right', places: 'level:waist' });
	expect(Object.keys(form).some((name) => name.startsWith('amount.'))).toBe(false);
});

test.each<[string, Recorded['intent'] & Record<string, unknown>]>([
	[
		'straight runs between its pins',
		{ kind: 'seam', seam: 'side', on: 'both', shape: 'straight', pins: [{ at: { fraction: 0.5 }, a: 1, b: 1 }] }
	],
	['a point to the side of its fold', { kind: 'dart-set', dart: 'back/waist-dart', on: 'both', point: [130, 150] }],
	[
		'a point square in from some edge',
		{
			kind: 'dart-set',
			dart: 'back/waist-dart',
			on: 'both',
			point: { from: { edge: 'back/hem', fraction: 0.5 }, in: 90 }
		}
	],
	['a kind without a form', { kind: 'true-seam', seam: 'side', on: 'both', end: 'finish', take: 'a' }]
])('what the form cannot say whole it does not take: %s', (_, intent) => {
	expect(formOfAlteration(boxes, { intent }, 'in')).toBeUndefined();
});
