import { describe, expect, test } from 'vitest';
import { keepsHand } from '../../../src/lib/ui/outbox/keeps-hand.ts';

const hand = { act: 'took-in', seam: 'side', side: 'right', 'amount.level:waist': '1/4', here: 'level:waist' };
const form = {
	once: '0',
	at: 0,
	words: 'took in the side seam',
	action: '/garments/g/fittings/f?/keep&act=took-in',
	fields: { act: 'took-in', seam: 'side', side: 'right', 'amount.level:waist': ' 1/4', note: '', here: 'level:bust' }
};

test('a form that waits keeps the hand that it was sent of, wherever that is looked at', () => {
	expect(keepsHand(form, hand)).toBe(true);
	expect(keepsHand(form, { ...hand, here: 'level:hip', side: 'left' })).toBe(true);
});

describe('it does not keep', () => {
	test.each([
		['a hand with another amount', form, { ...hand, 'amount.level:waist': '3/8' }],
		['a hand with more in it', form, { ...hand, note: 'Loose' }],
		['an empty hand', form, { side: 'right' }],
		['one that was answered, and is to be looked at', { ...form, answer: { status: 409, sentence: '' } }, hand],
		['one that says something else', { ...form, action: '/garments/g/fittings/f?/observe' }, hand]
	])('%s', (_, one, typed) => {
		expect(keepsHand(one, typed)).toBe(false);
	});
});
