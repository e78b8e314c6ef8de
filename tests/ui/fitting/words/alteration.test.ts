import { describe, expect, test } from 'vitest';
import { carry, parseAlteration } from '../../../../src/lib/engine/index.ts';
import { alterationAmounts, alterationTitle, greatestAmount } from '../../../../src/lib/ui/fitting/words/alteration.ts';
import { boxes, inch, jacket } from '../drafts.ts';

const quarter = inch / 4;
const eighth = inch / 8;
const start = { end: 'start' } as const;
const finish = { end: 'finish' } as const;
const waist = { level: 'waist' } as const;

describe('an alteration is told by what it was made to, what was done, where, and on which sides:', () => {
	const told = (intent: object, act?: string, draft = jacket) =>
		alterationTitle(draft, parseAlteration({ id: 'x', ...intent }), 'in', act);
	const seam = (pins: object[], more: object = {}) => ({ kind: 'seam', seam: 'side', pins, ...more });

	test.each<[string, object]>([
		[
			'Side seam, took in 1/4″ at the waist, both sides',
			seam([
				{ at: start, a: 0, b: 0 },
				{ at: waist, a: -quarter, b: -quarter },
				{ at: finish, a: 0, b: 0 }
			])
		],
		[
			'Side seam, took in 1/4″ all along, right side only',
			seam([{ at: start, a: -quarter, b: -quarter }], { on: 'right' })
		],
		[
			'Side seam, took in 1/8″ from the bust to the waist, both sides',
			seam([
				{ at: start, a: 0, b: 0 },
				{ at: { level: 'bust' }, a: -eighth, b: -eighth },
				{ at: waist, a: -eighth, b: -eighth },
				{ at: finish, a: 0, b: 0 }
			])
		],
		[
			'Side seam, took in 1/4″ at the waist, let out 1/8″ at the hem, both sides',
			seam([
				{ at: waist, a: -quarter, b: -quarter },
				{ at: finish, a: eighth, b: eighth }
			])
		],
		[
			'Side seam, moved 1/8″ towards the front at the waist, both sides',
			seam([
				{ at: start, a: 0, b: 0 },
				{ at: waist, a: eighth, b: -eighth }
			])
		],
		[
			'Side seam, took in 1/4″ off the under-arm and 1/8″ off the front at the waist, both sides',
			seam([
				{ at: start, a: 0, b: 0 },
				{ at: waist, a: -quarter, b: -eighth }
			])
		],
		[
			'Side seam, let out 1/4″ onto the under-arm alone at the waist, both sides',
			seam([
				{ at: start, a: 0, b: 0 },
				{ at: waist, a: quarter, b: 0 }
			])
		],
		[
			'Side seam, took in 1/4″, 1″ below the waist, both sides',
			seam([
				{ at: start, a: 0, b: 0 },
				{ at: { level: 'waist', offset: inch }, a: -quarter, b: -quarter }
			])
		],
		[
			'Side seam, took in 1/4″ at the second notch, both sides',
			seam([
				{ at: start, a: 0, b: 0 },
				{ at: { notch: 'side-waist' }, a: -quarter, b: -quarter }
			])
		],
		// A centre seam has no sides of its own: its layers are the right and the left.
		[
			'Centre-back seam, took in 1/8″ half way',
			{
				kind: 'seam',
				seam: 'centre-back',
				pins: [
					{ at: start, a: 0 },
					{ at: { fraction: 0.5 }, a: -eighth }
				]
			}
		],
		[
			'Fore sleeve seam, took in 1/8″ at the elbow, left sleeve only',
			{
				kind: 'seam',
				seam: 'fore-sleeve',
				on: 'left',
				pins: [
					{ at: start, a: 0, b: 0 },
					{ at: { level: 'elbow' }, a: -eighth, b: -eighth }
				]
			}
		],
		[
			'Front neck, chalked 3/8″ lower at the front edge, both sides',
			{
				kind: 'edge',
				edge: 'front/neck',
				pins: [
					{ at: start, move: 0 },
					{ at: finish, move: -3 * eighth }
				]
			}
		],
		[
			'Front edge, added 1/4″ all along, both sides',
			{ kind: 'edge', edge: 'front/front-edge', pins: [{ at: start, move: quarter }] }
		],
		[
			'Back hem, made 1/4″ shorter all along, both sides',
			{ kind: 'edge', edge: 'back/hem', pins: [{ at: start, move: -quarter }] }
		],
		[
			'Front armhole, chalked 1/4″ lower at the notch, both sides',
			{
				kind: 'edge',
				edge: 'front/armhole',
				pins: [
					{ at: start, move: 0 },
					{ at: { notch: 'armhole-front' }, move: -quarter }
				]
			}
		],
		[
			'New dart, front armhole, 3/8″ wide and 3 3/4″ long, at the notch, both sides',
			{
				kind: 'dart',
				edge: 'front/armhole',
				at: { notch: 'armhole-front' },
				intake: 3 * eighth,
				point: { from: { edge: 'front/armhole', notch: 'armhole-front' }, in: 3.75 * inch }
			}
		],
		[
			'Front dart, half of it moved to the front armhole, at the notch, both sides',
			{
				kind: 'dart-swing',
				dart: 'front/front-dart',
				edge: 'front/armhole',
				at: { notch: 'armhole-front' },
				share: 0.5
			}
		],
		[
			'Front, pinned a fold inside it, 1/4″ at its widest, both sides',
			{
				kind: 'fold-dart',
				piece: 'front',
				ends: [
					[100, 150],
					[100, 250]
				],
				widest: { at: 0.5, intake: quarter }
			}
		],
		[
			'Front, folded across 1/4″ at the side seam, to nothing at the front edge, on the waist line, both sides',
			{
				kind: 'spread',
				cuts: [
					{
						piece: 'front',
						from: { edge: 'front/side', ...waist },
						to: { edge: 'front/front-edge', ...waist },
						gapFrom: -quarter,
						gapTo: 0,
						keep: 'front/neck'
					}
				]
			}
		],
		[
			'Side seam, trued at the hem on the front, both sides',
			{ kind: 'true-seam', seam: 'side', end: 'finish', take: 'b' }
		],
		[
			'Armhole seam, trued at the shoulder of the front on both pieces, both sides',
			{ kind: 'true-seam', seam: 'armhole', end: 'finish', take: 'half' }
		],
		[
			'Front, marked the bust point, both sides',
			{ kind: 'mark', piece: 'front', set: { id: 'bust-point', kind: 'bust-point', at: [1, 2] } }
		]
	])('%s', (sentence, intent) => {
		expect(told(intent)).toBe(sentence);
	});

	test('a dart that changes is told against the width it had: 20 mm between the leg ends', () => {
		const set = (intake: number) => told({ kind: 'dart-set', dart: 'back/waist-dart', intake }, undefined, boxes);
		expect(set(20 + quarter)).toBe('Back waist dart, made 1/4″ wider, to 1 1/16″, both sides');
		expect(set(20 - quarter)).toBe('Back waist dart, made 1/4″ narrower, to 9/16″, both sides');
		expect(set(0)).toBe('Back waist dart, taken out, both sides');
		// Its mouth’s middle lies at x = 100, the point at (100, 150): 12.7 mm along that line is half an inch.
		const longer = { kind: 'dart-set', dart: 'back/waist-dart', point: [100, 150 - inch / 2] };
		expect(told(longer, undefined, boxes)).toBe('Back waist dart, made 1/2″ longer, both sides');
	});

	test('what is not read yet says so, with the act that was recorded', () => {
		const pinned = seam([{ at: waist }]);
		expect(told(pinned, 'took-in')).toBe('Side seam, took in, both sides, not read yet');
		expect(told(pinned)).toBe('Side seam, both sides, not read yet');
	});

	test('in centimetres it is told in centimetres', () => {
		const intent = parseAlteration({ id: 'x', ...seam([{ at: start, a: -6, b: -6 }]) });
		expect(alterationTitle(jacket, intent, 'cm')).toBe('Side seam, took in 6 mm all along, both sides');
	});

	test('a kind that has no words of its own is told by its name, a seam that is not there by its id', () => {
		expect(alterationTitle(jacket, { kind: 'some-new-kind' }, 'in')).toBe('Some new kind, not read yet');
		expect(told({ kind: 'seam', seam: 'hip-yoke', pins: [{ at: start, a: quarter, b: quarter }] })).toBe(
			'Hip yoke, let out 1/4″ all along, both sides'
		);
	});
});

test('amounts come in the order of the line, whatever the order of the pins, with the greatest of them found', () => {
	const intent = parseAlteration({
		id: 'x',
		kind: 'seam',
		seam: 'side',
		pins: [
			{ at: finish, a: eighth, b: eighth },
			{ at: waist, a: -quarter, b: -eighth },
			{ at: start, a: 0, b: 0 }
		]
	});
	const amounts = alterationAmounts(jacket, intent, 'in');
	expect(amounts).toEqual([
		{ place: 'Armhole', mm: 0, word: 'not moved' },
		{ place: 'Waist line', mm: -quarter, other: -eighth, way: 'in', word: 'in' },
		{ place: 'Hem', mm: eighth, way: 'out', word: 'out' }
	]);
	expect(greatestAmount(amounts)).toBe(amounts[1]);
	expect(greatestAmount(amounts.slice(0, 1))).toBeUndefined();
});

test('names stay those of the whole after one side was altered alone', () => {
	const pins = [{ at: start, a: -3, b: -3 }];
	const right = parseAlteration({ id: 'one', kind: 'seam', seam: 'side', on: 'right', pins });
	const { draft } = carry(jacket, [right]);
	expect(draft.pieces.some(({ id }) => id === 'front@left')).toBe(true);
	const both = parseAlteration({
		id: 'two',
		kind: 'seam',
		seam: 'side',
		pins: [
			{ at: start, a: 0, b: 0 },
			{ at: waist, a: eighth, b: -eighth }
		]
	});
	expect(alterationTitle(draft, both, 'in')).toBe('Side seam, moved 1/8″ towards the front at the waist, both sides');
});
