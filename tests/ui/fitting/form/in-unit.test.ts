import { describe, expect, test } from 'vitest';
import { parseLength } from '../../../../src/lib/measure/parse-length.ts';
import { inUnit } from '../../../../src/lib/ui/fitting/form/in-unit.ts';

const mm = (text: string, unit: 'in' | 'cm') => {
	const read = parseLength(text, unit, { allowNegative: true });
	return 'mm' in read ? read.mm : read.problem;
};

describe('a length typed in one unit is the same on a page in the other: ', () => {
	// 25.4 mm to the inch: the international yard and pound agreement of 1959.
	test.each([
		['1/4', 'in', 6.35, '1/4 in'],
		['1 1/4', 'in', 31.75, '1 1/4 in'],
		['¼', 'in', 6.35, '¼ in'],
		['1½', 'in', 38.1, '1½ in'],
		['-1/8', 'in', -3.175, '-1/8 in'],
		['.5', 'in', 12.7, '.5 in'],
		['2,5', 'cm', 25, '2,5 cm'],
		['3/8″', 'in', 9.525, '3/8″'],
		['6 mm', 'in', 6, '6 mm'],
		['6 mm', 'cm', 6, '6 mm']
	] as const)('%s %s', (text, was, length, then) => {
		const unit = was === 'in' ? 'cm' : 'in';
		const { 'amount.level:waist': there } = inUnit({ 'amount.level:waist': text, unit: was }, unit);
		expect([there, mm(text, was)]).toEqual([then, expect.closeTo(length, 9)]);
		expect(mm(there, unit)).toBeCloseTo(length, 9);
	});
});

test('what is no length, or says no unit, stays; once said it is not said again', () => {
	const typed = { count: '6', note: '2', revision: '3', 'amount.all': 'deep', width: '1/2', 'left.end:start': '' };
	expect(inUnit(typed, 'cm')).toBe(typed);
	expect(inUnit({ ...typed, unit: 'cm' }, 'cm')).toEqual({ ...typed, unit: 'cm' });
	const there = inUnit({ ...typed, unit: 'in' }, 'cm');
	expect(there).toEqual({ ...typed, width: '1/2 in', unit: 'cm' });
	expect(inUnit(there, 'in')).toEqual({ ...there, unit: 'in' });
	expect(inUnit({ width: '1/2', unit: 'ell' }, 'cm')).toEqual({ width: '1/2', unit: 'ell' });
});
