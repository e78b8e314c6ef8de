import { describe, expect, test } from 'vitest';
import { carry, parseAlteration } from '../../../src/lib/engine/index.ts';
import { handOf, withPlaces } from '../../../src/lib/ui/fitting/hand.ts';
import { furtherPlaces, placeProblem, usualPlaces } from '../../../src/lib/ui/fitting/place/places-offered.ts';
import { edgesOfTarget, targetsFor } from '../../../src/lib/ui/fitting/targets.ts';
import { boxes, inch, jacket } from './drafts.ts';

const names = (places: readonly { readonly name: string }[]) => places.map(({ name }) => name);
const side = { of: 'seam', id: 'side' } as const;

describe('the places of a line', () => {
	test('a seam begins with its ends and the balance lines that cross it, in order', () => {
		expect(names(usualPlaces(jacket, side, 'in'))).toEqual(['Armhole', 'Bust line', 'Waist line', 'Hip line', 'Hem']);
		// The waist of the boxes lies half way down: half way is the same place and is not offered beside it.
		expect(names(usualPlaces(boxes, side, 'in'))).toEqual(['Armhole', 'Waist line', 'Hem']);
		expect(usualPlaces(boxes, side, 'in').map(({ at }) => at)).toEqual([0, 200, 400]);
	});

	test('a line that nothing crosses has its middle', () => {
		expect(names(usualPlaces(jacket, { of: 'edge', id: 'front/neck' }, 'in'))).toEqual([
			'Shoulder',
			'Half way',
			'Front edge'
		]);
	});

	test('ends that run into edges of one name are told apart by their pieces', () => {
		expect(names(usualPlaces(jacket, { of: 'seam', id: 'armhole' }, 'in'))).toEqual([
			'Shoulder, back',
			'Half way',
			'Shoulder, front'
		]);
	});

	test('notches are offered by their order; one that lies on a balance line is that line', () => {
		const offered = names(furtherPlaces(jacket, side, [], 'in'));
		expect(offered).toContain('First notch');
		expect(offered).not.toContain('Second notch');
		expect(names(furtherPlaces(jacket, side, ['level:waist'], 'in'))).not.toContain('Waist line');
	});

	test('a place must be on both layers of a seam', () => {
		expect(placeProblem(boxes, side, { notch: 'n1' })).toBeUndefined();
		expect(placeProblem(boxes, side, { level: 'hip' })).toContain('hip');
		expect(placeProblem(boxes, { of: 'seam', id: 'nothing' }, { level: 'waist' })).toContain('no seam nothing');
	});
});

describe('what the hand holds', () => {
	test('nothing yet: every act is offered', () => {
		const hand = handOf(jacket, {}, 'in');
		expect(hand.act).toBeUndefined();
		expect(hand.acts.map(({ key }) => key)).toContain('took-in');
	});

	test('act first: what it can be done to', () => {
		expect(names(handOf(jacket, { act: 'took-in' }, 'in').targets)).toContain('Side seam');
		expect(names(handOf(jacket, { act: 'chalked' }, 'in').targets)).toEqual(
			expect.arrayContaining(['Front neck', 'Back hem', 'Front armhole'])
		);
		expect(names(handOf(jacket, { act: 'chalked' }, 'in').targets)).not.toContain('Front side');
		expect(names(handOf(jacket, { act: 'changed-dart' }, 'in').targets)).toEqual(['Front dart', 'Front second dart']);
	});

	test('seam first: what can be done to it', () => {
		const hand = handOf(jacket, { seam: 'side' }, 'in');
		expect(hand.target).toMatchObject({ name: 'Side seam', note: 'under-arm to front' });
		expect(hand.acts.map(({ key }) => key)).toEqual(['took-in', 'let-out', 'moved-seam', 'marked']);
		expect(handOf(jacket, { edge: 'front/neck' }, 'in').acts.map(({ key }) => key)).toEqual([
			'new-dart',
			'chalked',
			'open-edge',
			'marked'
		]);
	});

	test('an act that cannot be done to what is named asks again what it is done to', () => {
		const hand = handOf(jacket, { act: 'chalked', edge: 'front/side' }, 'in');
		expect(hand.target).toBeUndefined();
		expect(hand.targets.length).toBeGreaterThan(0);
	});

	test('both: its rows, with what was typed as the little picture shows it', () => {
		const typed = {
			act: 'let-out',
			seam: 'side',
			measured: 'whole-fold',
			'amount.level:waist': '1/2',
			places: 'level:waist end:finish'
		};
		const { pins } = handOf(jacket, typed, 'in');
		expect(pins!.rows.map(({ name, a, b, here }) => [name, a, b, here])).toEqual([
			['Waist line', inch / 4, inch / 4, true],
			['Hem', 0, 0, false]
		]);
		expect(pins).toMatchObject({ layers: ['Under-arm', 'Front'], oneLayer: false, fold: true });
	});

	test('which way it goes is asked where the act does not say', () => {
		const ways = (typed: Record<string, string>) => handOf(jacket, typed, 'in').pins?.ways?.map(({ label }) => label);
		expect(ways({ act: 'took-in', seam: 'side' })).toBeUndefined();
		expect(ways({ act: 'moved-seam', seam: 'side' })).toEqual(['Towards the under-arm', 'Towards the front']);
		expect(ways({ act: 'chalked', edge: 'front/neck' })).toEqual(['Lower', 'Higher']);
		expect(ways({ act: 'chalked', edge: 'back/hem' })).toEqual(['Shorter', 'Longer']);
		expect(ways({ act: 'open-edge', edge: 'front/front-edge' })).toEqual(['Taken off', 'Added']);
	});

	test('a dart to be changed says how wide and how long it is', () => {
		const { dart } = handOf(boxes, { act: 'changed-dart', dart: 'back/waist-dart' }, 'in');
		expect(dart).toMatchObject({
			width: expect.closeTo(20, 9),
			length: expect.closeTo(250, 9),
			bustPoint: false,
			twoPoints: false
		});
	});
});

test('an address that names no places has those that a line begins with, those it adds and those it has amounts for', () => {
	const typed = withPlaces(
		boxes,
		{ act: 'took-in', seam: 'side', add: 'notch:n1', 'amount.fraction:0.25': '1/4' },
		'in'
	);
	expect(typed).toEqual({
		act: 'took-in',
		seam: 'side',
		'amount.fraction:0.25': '1/4',
		places: 'end:start level:waist end:finish fraction:0.25 notch:n1'
	});
	expect(withPlaces(boxes, { act: 'took-in', seam: 'none' }, 'in')).toEqual({ act: 'took-in', seam: 'none' });
});

test('a draft divided by one-sided work offers each thing once, and chalks both its halves', () => {
	const right = parseAlteration({
		id: 'r',
		kind: 'seam',
		seam: 'side',
		on: 'right',
		pins: [{ at: { fraction: 0.5 }, a: -3, b: -3 }]
	});
	const { draft } = carry(boxes, [right]);
	expect(names(targetsFor(draft, 'seam'))).toEqual(names(targetsFor(boxes, 'seam')));
	expect([...edgesOfTarget(draft, side)].sort()).toEqual([
		'back@left/side',
		'back@right/side',
		'front@left/side',
		'front@right/side'
	]);
	expect(names(usualPlaces(draft, side, 'in'))).toEqual(['Armhole', 'Waist line', 'Hem']);
});
