import { describe, expect, test } from 'vitest';
import { targetFields } from '../../../src/lib/ui/fitting/targets.ts';
import { goesOn, isHeld, keepsHand, nameOfHand, sameTyped } from '../../../src/lib/ui/outbox/same-hand.ts';

type Fields = Readonly<Record<string, string>>;

const hand: Fields = { act: 'took-in', seam: 'side', side: 'right', 'amount.level:waist': '1/4', here: 'level:waist' };
const form = {
	once: '0',
	at: 0,
	words: 'took in the side seam',
	action: '/garments/g/fittings/f?/keep&act=took-in',
	fields: { act: 'took-in', seam: 'side', side: 'right', 'amount.level:waist': '3/8', note: '' }
};

const others: readonly Fields[] = [{ seam: 'shoulder' }, { act: 'let-out' }, { alteration: 'a1' }];

test('a hand is the same for as long as only more is typed of it', () => {
	expect(nameOfHand(hand)).toBe(nameOfHand({ ...hand, 'amount.level:waist': '', side: 'left' }));
	for (const other of others) expect(nameOfHand({ ...hand, ...other })).not.toBe(nameOfHand(hand));
	expect([isHeld(hand), isHeld({ side: 'left', kept: 'a1' })]).toEqual([true, false]);
});

test('whatever an act can be done to is in the hand', () => {
	for (const of of targetFields) expect([of, isHeld({ [of]: 'a' })]).toEqual([of, true]);
});

test('what is typed goes on from an address that says no more than what is in the hand, or nothing', () => {
	const before: readonly Fields[] = [
		{},
		{ side: 'left', kept: 'a1' },
		{ seam: 'side' },
		{ ...hand, here: 'level:hip' }
	];
	for (const address of before) expect(goesOn(address, hand)).toBe(true);
	for (const address of [...others, { 'amount.level:waist': '3/8' }, { ...hand, note: 'Loose' }])
		expect(goesOn(address, hand)).toBe(false);
});

test('two hands say the same where an address would', () => {
	const { act, ...rest } = hand;
	expect(sameTyped(hand, { ...rest, note: ' ', act: act!, kept: '' })).toBe(true);
	expect(sameTyped(hand, rest)).toBe(false);
	expect(sameTyped(hand, { ...hand, note: 'Loose' })).toBe(false);
});

test('a form that waits keeps the hand that it was sent of, with what was typed last and before', () => {
	expect(keepsHand(form, hand)).toBe(true);
	expect(keepsHand(form, { act: 'took-in', seam: 'side' })).toBe(true);
});

describe('it does not keep', () => {
	test.each([
		['what is taken in on another seam', form, { ...hand, seam: 'shoulder' }],
		['a kept one that is changed', form, { ...hand, alteration: 'a1' }],
		['an empty hand', form, { side: 'right' }],
		['one that was answered, and is to be looked at', { ...form, answer: { status: 409, sentence: '' } }, hand],
		['one that says something else', { ...form, action: '/garments/g/fittings/f?/observe' }, hand]
	])('%s', (_, one, typed) => {
		expect(keepsHand(one, typed)).toBe(false);
	});
});
