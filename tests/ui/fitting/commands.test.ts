import { describe, expect, test } from 'vitest';
import { afterCommand } from '../../../src/lib/ui/fitting/commands.ts';
import { addressOf, lengthTyped } from '../../../src/lib/ui/fitting/typed.ts';
import { parseLength } from '../../../src/lib/measure/parse-length.ts';

const form = { act: 'took-in', seam: 'side', places: 'end:start level:waist end:finish' };

describe('the buttons of the form', () => {
	test('− and + go by sixteenths, or by millimetres, and not below nothing', () => {
		const press = (text: string, word: string, unit: 'in' | 'cm' = 'in') =>
			afterCommand({ ...form, 'amount.level:waist': text, do: `${word}:amount.level:waist` }, unit)[
				'amount.level:waist'
			];
		expect(press('', 'up')).toBe('1/16');
		expect(press('3/16', 'up')).toBe('1/4');
		expect(press('1', 'down')).toBe('15/16');
		expect(press('1/16', 'down')).toBe('0');
		expect(press('0', 'down')).toBe('0');
		expect(press('', 'up', 'cm')).toBe('1 mm');
		expect(press('9 mm', 'up', 'cm')).toBe('1 cm');
		// What is not a length is left for its own sentence.
		expect(press('ten', 'up')).toBe('ten');
	});

	test('the rule sets the amount of its place, which is then the chosen one', () => {
		const after = afterCommand({ ...form, do: 'set:6.35:amount.level:waist' }, 'in');
		expect(after).toEqual({ ...form, 'amount.level:waist': '1/4', here: 'level:waist' });
	});

	test('a place is added, so far from another, and taken out with all that was typed at it', () => {
		const added = afterCommand({ ...form, do: 'add', new: 'level:waist', newOffset: '1', newToward: 'start' }, 'in');
		expect(added).toEqual({ ...form, places: `${form.places} level:waist~-25.4`, here: 'level:waist~-25.4' });
		const typed = { ...added, 'amount.level:waist~-25.4': '1/4', 'rightA.level:waist~-25.4': '1/4' };
		const dropped = afterCommand({ ...typed, do: 'drop:level:waist~-25.4' }, 'in');
		expect(dropped).toEqual({ ...form, here: 'level:waist~-25.4' });
		// From an end it is always inwards.
		const inwards = afterCommand({ ...form, do: 'add', new: 'end:finish', newOffset: '1', newToward: 'start' }, 'in');
		expect(inwards.here).toBe('end:finish~25.4');
	});

	test('averages are taken of what was read: of all, of each side, or of each layer', () => {
		// 1/4, 5/16, 1/8 and 3/16: mean 7/32; right 9/32, left 5/32; layer a 3/16, layer b 1/4.
		const read = {
			...form,
			'rightA.level:waist': '1/4',
			'rightB.level:waist': '5/16',
			'leftA.level:waist': '1/8',
			'leftB.level:waist': '3/16',
			do: 'average'
		};
		const mm = (text: string) => (parseLength(text, 'in') as { mm: number }).mm / 25.4;
		const all = afterCommand(read, 'in');
		expect(mm(all['amount.level:waist'])).toBeCloseTo(7 / 32, 4);
		expect(all.averaged).toBe('yes');
		const each = afterCommand({ ...read, sides: 'each' }, 'in');
		expect([each['amount.level:waist'], each['left.level:waist']].map(mm)).toEqual([
			expect.closeTo(9 / 32, 4),
			expect.closeTo(5 / 32, 4)
		]);
		const layers = afterCommand({ ...read, measured: 'each-layer' }, 'in');
		expect([layers['amount.level:waist'], layers['other.level:waist']]).toEqual(['3/16', '1/4']);
		const four = afterCommand({ ...read, measured: 'each-layer', sides: 'each' }, 'in');
		expect(['amount', 'other', 'left', 'leftOther'].map((name) => four[`${name}.level:waist`])).toEqual([
			'1/4',
			'5/16',
			'1/8',
			'3/16'
		]);
	});

	test('halving halves every amount', () => {
		const after = afterCommand({ ...form, 'amount.level:waist': '1/4', 'left.level:waist': '1/8', do: 'halve' }, 'in');
		expect(after).toMatchObject({ 'amount.level:waist': '1/8', 'left.level:waist': '1/16' });
	});

	test.each(['', 'nothing', 'toString', '__proto__', 'constructor:x', 'up', 'set:x:y', 'add'])(
		'%j changes nothing',
		(word) => {
			const { here: _, ...after } = afterCommand({ ...form, do: word }, 'in');
			expect({ ...form, ...after }).toMatchObject(form);
			expect(after.do).toBeUndefined();
		}
	);
});

test('a length put into a field is read again as the same length', () => {
	for (const unit of ['in', 'cm'] as const)
		for (const mm of [0, 3.175, -6.35, 1.5875, 6, 15, 123.5, 25.4 * 1.25, 7.77, -0.333]) {
			const read = parseLength(lengthTyped(mm, unit), unit, { allowNegative: true });
			expect(read, `${mm} ${unit}: ${lengthTyped(mm, unit)}`).toEqual({ mm: expect.closeTo(mm, 3) });
		}
	expect(lengthTyped(31.75, 'in')).toBe('1 1/4');
	expect(lengthTyped(-6.35, 'in')).toBe('-1/4');
});

test('an address says what the fields say, and leaves out what they do not', () => {
	expect(addressOf({ act: 'took-in', note: '', 'amount.level:waist': '1 1/4' }, { act: 'let-out', seam: 'side' })).toBe(
		'?act=let-out&amount.level%3Awaist=1+1%2F4&seam=side'
	);
});
