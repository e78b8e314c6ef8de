import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../src/lib/measure/parse-length.ts';
import type { LengthOptions } from '../../src/lib/measure/parse-length.ts';
import type { Unit } from '../../src/lib/measure/units.ts';

function mm(typed: string, unit: Unit = 'in', options?: LengthOptions): number {
	const parsed = parseLength(typed, unit, options);
	if ('problem' in parsed) throw new Error(`${typed}: ${parsed.problem}`);
	return parsed.mm;
}

function problem(typed: string, unit: Unit = 'in', options?: LengthOptions) {
	const parsed = parseLength(typed, unit, options);
	if ('mm' in parsed) throw new Error(`${typed} was read as ${parsed.mm} mm`);
	return parsed;
}

describe('a length as typed', () => {
	// International yard and pound agreement, in force 1 July 1959: one inch is 25.4 mm.
	it.each([
		['36 in', 914.4],
		['1/16', 1.5875],
		['1/8', 3.175],
		['1/4', 6.35],
		['3/8', 9.525],
		['1/2', 12.7],
		['5/8', 15.875],
		['3/4', 19.05],
		['2 1/2', 63.5],
		['1 yd', 914.4]
	])('%s is %d mm to the last bit', (typed, expected) => {
		expect(mm(typed)).toBe(expected);
	});

	it('keeps 5/8″ apart from the 15 mm that it is often sold as (common practice, no source)', () => {
		expect(mm('5/8') - mm('15 mm')).toBeCloseTo(0.875, 12);
	});

	it.each([
		['1-1/4', 31.75],
		['3-1/2', 88.9],
		['1 and 1/4', 31.75],
		['1¼', 31.75],
		['⅜', 9.525],
		['3⅜', 85.725],
		['3-⅜', 85.725],
		['1³⁄₈', 34.925],
		['1 3⁄8', 34.925],
		['３／８', 9.525],
		['.5', 12.7],
		['0,5', 12.7],
		['0.5', 12.7],
		['3 1/2"', 88.9],
		['3½″', 88.9],
		["3½''", 88.9],
		['3 1/2”', 88.9],
		['1 1/2in.', 38.1],
		['1 1/2 INCHES', 38.1],
		['1 ft 2 in', 355.6],
		['1′ 2″', 355.6],
		["1'2 1/2", 368.3],
		['1 yd 3 in', 990.6],
		['0.6 cm', 6],
		['6mm', 6],
		['1 m 20', 1200],
		['\u00a03 / 8\u2009', 9.525],
		['1\u202f1/4', 31.75],
		['1\u200b 1/4', 31.75],
		['+1/4', 6.35],
		['0', 0],
		['0/8', 0],
		['1/32', 0.79375]
	])('reads %s', (typed, expected) => {
		expect(mm(typed)).toBeCloseTo(expected, 12);
	});

	it('takes a bare number in the unit of the user and leaves a marked one alone', () => {
		expect(mm('2', 'cm')).toBe(20);
		expect(mm('2', 'in')).toBe(50.8);
		expect(mm('2 in', 'cm')).toBe(50.8);
		expect(mm('3 1/2', 'cm')).toBe(35);
	});

	it.each(['-6 mm', '−6 mm', '–6 mm', '- 6 mm'])('reads the minus of %s', (typed) => {
		expect(mm(typed, 'in', { allowNegative: true })).toBe(-6);
	});

	it('never gives a minus nought', () => {
		expect(Object.is(mm('-0', 'in', { allowNegative: true }), 0)).toBe(true);
		expect(Object.is(mm('-0'), 0)).toBe(true);
	});
});

describe('a length that cannot be read', () => {
	it.each([
		['', 'Write a length here, such as 3/8 or 1 1/4.'],
		[' \u00a0', 'Write a length here, such as 3/8 or 1 1/4.'],
		['1/0', 'Nothing can be divided by 0, so 1/0 is no length. Write a fraction such as 3/8.'],
		['1 1/0', 'Nothing can be divided by 0, so 1 1/0 is no length. Write a fraction such as 3/8.'],
		['ten', '“ten” is not in figures. Write a length such as 3/8 or 1 1/4.'],
		['NaN', '“NaN” is not in figures. Write a length such as 3/8 or 1 1/4.'],
		['Infinity', '“Infinity” is not in figures. Write a length such as 3/8 or 1 1/4.'],
		['∞', '“∞” is not in figures. Write a length such as 3/8 or 1 1/4.'],
		['1e400', '1e400 is not written out. Write a length such as 3/8 or 1 1/4.'],
		['1 1/2 1/2', '1 1/2 1/2 reads as more than one length. Write one, such as 3/8 or 1 1/4.'],
		['½½', '1/2 1/2 reads as more than one length. Write one, such as 3/8 or 1 1/4.'],
		['½5', '1/2 5 reads as more than one length. Write one, such as 3/8 or 1 1/4.'],
		['3²', '3 2 reads as more than one length. Write one, such as 3/8 or 1 1/4.'],
		['1 000', '1 000 reads as more than one length. Write one, such as 3/8 or 1 1/4.'],
		['1,000.5', '1,000.5 reads as more than one length. Write one, such as 3/8 or 1 1/4.'],
		['1.5 1/2', '1.5 1/2 reads as more than one length. Write one, such as 3/8 or 1 1/4.'],
		['2 in 1 ft', '2 in 1 ft reads as more than one length. Write one, such as 3/8 or 1 1/4.'],
		['3-4', '“-4” is left over after the length. Write one length, such as 3/8 or 1 1/4.'],
		['1/2/4', '“/4” is left over after the length. Write one length, such as 3/8 or 1 1/4.'],
		['--5', '“-5” is not read as a length. Write it such as 3/8 or 1 1/4.'],
		['/8', '“/8” is not read as a length. Write it such as 3/8 or 1 1/4.'],
		['3 apples', '“apples” is not a unit known here. Write in, ft, yd, mm, cm or m after the figures.'],
		['1 constructor', '“constructor” is not a unit known here. Write in, ft, yd, mm, cm or m after the figures.'],
		['9'.repeat(100), 'That is too long for one length. Write it such as 3/8 or 1 1/4.']
	])('%j gets its sentence', (typed, sentence) => {
		expect(problem(typed)).toEqual({ problem: sentence });
	});

	it('gives a metric example to a metric user', () => {
		expect(problem('', 'cm').problem).toBe('Write a length here, such as 6 mm or 1.5.');
	});

	it.each([
		['9/8', 'Eighths go up to 7: 9/8 is 1 1/8. Write 1 1/8?', '1 1/8'],
		['1 9/8', 'Eighths go up to 7: 1 9/8 is 2 1/8. Write 2 1/8?', '2 1/8'],
		['8/8', 'Eighths go up to 7: 8/8 is 1. Write 1?', '1'],
		['3/2 in', 'Halves go up to 1: 3/2 is 1 1/2. Write 1 1/2?', '1 1/2 in'],
		['20/16', 'Sixteenths go up to 15: 20/16 is 1 1/4. Write 1 1/4?', '1 1/4'],
		['1/3', 'A tape has halves, quarters, eighths, sixteenths: 1/3 is about 5/16. Write 5/16?', '5/16'],
		['1 2/3', 'A tape has halves, quarters, eighths, sixteenths: 1 2/3 is about 1 11/16. Write 1 11/16?', '1 11/16'],
		['1/64', 'A tape has halves, quarters, eighths, sixteenths: 1/64 is about 1/32. Write 1/32?', '1/32'],
		['2/3 cm', 'A metric length is written with a point: 2/3 is about 0.67. Write 0.67?', '0.67 cm'],
		['12" 3/8', 'The mark goes after the fraction. Write 12 3/8 in?', '12 3/8 in'],
		['1 - 1/4', 'The dash leaves two readings. Write 1 1/4?', '1 1/4'],
		['-6 mm', '-6 mm is less than nothing, which this length cannot be. Write 6 mm?', '6 mm'],
		['914', '914 is over 3 m, the most that makes sense here. Did you mean 914 mm?', '914 mm'],
		['120 in', '120 in is over 3 m, the most that makes sense here. Did you mean 120 cm?', '120 cm']
	])('%s is asked about, with what to write instead', (typed, sentence, suggestion) => {
		expect(problem(typed)).toEqual({ problem: sentence, suggestion });
	});

	it('suggests only what it reads itself', () => {
		for (const typed of [
			'9/8',
			'-9/8',
			'1/3',
			'7/5 cm',
			'12" 3/8',
			'1 - 1/4',
			'-6 mm',
			'914',
			'-914',
			'3/2"',
			'1 ft 9/8 in'
		]) {
			const { suggestion } = problem(typed);
			expect(suggestion, typed).toBeDefined();
			expect(Number.isFinite(mm(suggestion ?? '', 'in', { allowNegative: true })), suggestion).toBe(true);
		}
	});

	it('holds a length to the most that makes sense in its place, either way', () => {
		expect(mm('1', 'in', { max: 25.4 })).toBe(25.4);
		expect(problem('1 1/16', 'in', { max: 25.4 }).problem).toContain('over 1″');
		expect(problem('-2', 'in', { max: 25.4, allowNegative: true }).suggestion).toBe('-2 cm');
	});
});

describe('any length', () => {
	const marked = fc.constantFrom('', ' in', '"', '″', ' inches');

	it('in thirty-seconds is the fraction of whole tenths of a millimetre (exact integers)', () => {
		const part = fc.constantFrom(2, 4, 8, 16, 32);
		fc.assert(
			fc.property(fc.nat(100), part, fc.nat(31), marked, (whole, bottom, n, mark) => {
				const top = n % bottom;
				const text = top === 0 ? `${whole}${mark}` : `${whole} ${top}/${bottom}${mark}`;
				// 254 tenths of a millimetre to the inch; all numbers are whole, so both sides are exact.
				expect(mm(text) * 10 * bottom).toBeCloseTo((whole * bottom + top) * 254, 6);
			})
		);
	});

	it('is either a finite length or a sentence, whatever was typed', () => {
		const ink = fc.string({ unit: fc.constantFrom(...'0123456789/.,-−¼⅜½ ⁄"″\'′incmft eE+&¹²ab') });
		fc.assert(
			fc.property(fc.oneof(ink, fc.string({ unit: 'grapheme' })), fc.constantFrom<Unit>('in', 'cm'), (typed, unit) => {
				const parsed = parseLength(typed, unit, { allowNegative: true });
				if ('mm' in parsed) {
					expect(Math.abs(parsed.mm)).toBeLessThanOrEqual(3000);
				} else {
					expect(parsed.problem).toMatch(/[.?]$/);
				}
			}),
			{ numRuns: 2000 }
		);
	});
});
