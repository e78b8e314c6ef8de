import { describe, expect, it } from 'vitest';
import { parseShorthand } from '../../src/lib/measure/shorthand.ts';
import type { ShorthandContext } from '../../src/lib/measure/shorthand.ts';

const down = { start: ['armhole'], finish: ['hem'] };
const context: ShorthandContext = {
	unit: 'in',
	seams: [
		{ id: 'side', name: 'Side seam', ends: down },
		{ id: 'side-back', name: 'Side-back seam', ends: down },
		{ id: 'centre-back', name: 'Centre-back seam', also: ['CB'] },
		{ id: 'fore-sleeve', name: 'Fore sleeve seam', runs: 'up' },
		{ id: 'hind-sleeve', name: 'Hind sleeve seam', runs: 'up' }
	],
	edges: [
		{ id: 'front/neck', name: 'Front neck' },
		{ id: 'skirt/waist', name: 'Waist' }
	],
	darts: [
		{ id: 'front/front-dart', name: 'Front dart' },
		{ id: 'front/second-dart', name: 'Second dart' }
	],
	levels: [
		{ level: 'bust', name: 'Bust line' },
		{ level: 'waist', name: 'Waist line' },
		{ level: 'hip', name: 'Hip line' }
	],
	notches: ['n1']
};

function read(line: string) {
	const intent = parseShorthand(line, context);
	if ('problem' in intent) throw new Error(`${line}: ${intent.problem} (at ${intent.at})`);
	return intent;
}

function amounts(line: string): Record<string, number | undefined> {
	return Object.fromEntries(
		read(line)
			.pins.filter(({ added }) => !added)
			.map(({ place, mm }) => [Object.values(place).join(' '), mm])
	);
}

function refused(line: string) {
	const intent = parseShorthand(line, context);
	if (!('problem' in intent)) throw new Error(`${line} was read`);
	return intent;
}

describe('the shorthand line', () => {
	it('reads seam, side, act and places', () => {
		const intent = read('side R in 1/4 waist, 1/8 hip, 0 hem');
		expect(intent).toMatchObject({ target: { kind: 'seam', id: 'side' }, on: 'right', act: 'in', notRead: false });
		expect(intent.pins).toEqual([
			{ place: { end: 'start' }, mm: 0, act: 'in', added: true },
			{ place: { level: 'waist' }, mm: -6.35, act: 'in', added: false },
			{ place: { level: 'hip' }, mm: -3.175, act: 'in', added: false },
			{ place: { end: 'finish' }, mm: 0, act: 'in', added: false }
		]);
	});

	it.each([
		'IN 1/4 WAIST 1/8 HIP SIDE RIGHT',
		'took in ¼ waist and ⅛ hip, side seam, right',
		'right side: in 1/4″ at the waist line; 1/8″ at the hip line.',
		'side R waist 1/4 in, hip 1/8',
		'side r 1/4 in waist, 1/8 in hip',
		'side R in 1/2 waist 1/4 hip, whole fold',
		'side R in 6.35 mm waist, 0,3175 cm hip'
	])('reads the same from “%s”', (line) => {
		expect(read(line)).toMatchObject({ target: { id: 'side' }, on: 'right', act: 'in' });
		const { waist, hip } = amounts(line);
		expect(waist).toBeCloseTo(-6.35, 12);
		expect(hip).toBeCloseTo(-3.175, 12);
	});

	it('takes the longest name: the side-back seam is not the side seam', () => {
		expect(read('side-back L let out 1/4 hip').target.id).toBe('side-back');
		expect(read('Side back left out 1/4 hip').target.id).toBe('side-back');
	});

	it('tells the act in from the inch', () => {
		expect(amounts('side out 1/4 in waist')).toEqual({ waist: 6.35 });
		expect(amounts('side 1/4 in waist')).toEqual({ waist: -6.35 });
	});

	it('lets each place have its own act', () => {
		expect(amounts('side in 1/4 waist out 1/8 hip')).toEqual({ waist: -6.35, hip: 3.175 });
		expect(amounts('side waist 1/4 in, hip 1/8 out')).toEqual({ waist: -6.35, hip: 3.175 });
	});

	it('keeps unnamed ends still, and moves the whole seam only all along', () => {
		expect(read('side in 1/4 waist').pins.filter(({ added }) => added)).toHaveLength(2);
		const whole = read('side in 1/8 all along');
		expect(whole).toMatchObject({ allAlong: true, pins: [{ mm: -3.175, added: false }] });
		expect(whole.pins).toHaveLength(1);
	});

	it('measures from a place the way the seam runs', () => {
		expect(read('side in 1/4 2" below waist').pins[1].place).toEqual({ level: 'waist', offset: 50.8 });
		expect(read('side in 1/4 at 2 in above waist').pins[1].place).toEqual({ level: 'waist', offset: -50.8 });
		expect(read('fore sleeve in 1/4 2 below top').pins[1].place).toEqual({ end: 'finish', offset: -50.8 });
	});

	it('reads edges, darts and notches', () => {
		expect(amounts('front neck lower 3/8 half way')).toEqual({ '0.5': -9.525 });
		expect(amounts('side in 1/4 notch n1')).toEqual({ n1: -6.35 });
		expect(read('second dart wider 1/4')).toMatchObject({ target: { kind: 'dart' }, width: 6.35, pins: [] });
		expect(read('front dart narrower 1/8').width).toBe(-3.175);
	});

	it('takes a name that is also a place as the place when a seam is named', () => {
		expect(read('waist 1/4 in side').target.id).toBe('side');
		expect(read('waist out 1/4 all along').target).toEqual({ kind: 'edge', id: 'skirt/waist' });
	});

	it('keeps what was pinned and not yet read', () => {
		expect(read('side R in')).toMatchObject({ notRead: true, pins: [] });
		const places = read('side R in waist, hip');
		expect(places.notRead).toBe(true);
		expect(places.pins.map(({ mm }) => mm)).toEqual([undefined, undefined]);
	});
});

describe('a shorthand line that cannot be read for certain', () => {
	it.each([
		['', 0, 'Write what was pinned'],
		['gusset in 1/4', 0, 'No seam, edge or dart of this draft is named'],
		['sleeve in 1/4', 0, 'No seam, edge or dart of this draft is named'],
		['side in 1/4 knee', 12, '“knee” is no place or act here. Places on this seam: bust, waist, hip, armhole, hem'],
		['side 1/4 waist', 14, 'In or out'],
		['side in 1/4', 8, 'Where?'],
		['side in 1/4, 1/8 waist', 13, 'Write a place between the two'],
		['side in 1/4 waist and hip', 22, 'How much there?'],
		['side in 1/4 waist, 1/8 waist', 19, 'This place comes twice'],
		['side R in 1/4 waist, L in 1/8 hip', 21, 'One line is for one side'],
		['side in 9/8 waist', 8, 'Eighths go up to 7: 9/8 is 1 1/8'],
		['side in 1/0 waist', 8, 'Nothing can be divided by 0'],
		['side in -1/4 waist', 8, 'less than nothing'],
		['side in below waist', 8, 'Write how far before'],
		['side in 1/4 waist, shoulder', 19, '“shoulder” is no place'],
		['side wider 1/4 waist', 20, 'Only a dart is made wider'],
		['front dart in 1/4', 17, 'wider or narrower'],
		['side in $ waist', 8, '“$” is no place']
	])('“%s” is refused at %d', (line, at, sentence) => {
		const { problem, at: where } = refused(line);
		expect(problem).toContain(sentence);
		expect(where).toBe(at);
	});

	it('asks which of two names was meant', () => {
		const two = { ...context, seams: [...context.seams, { id: 'side-2', name: 'Side seam' }] };
		const intent = parseShorthand('side in 1/4 waist', two);
		expect('problem' in intent && intent.problem).toBe('That could be Side seam or Side seam. Write more of its name.');
	});
});
