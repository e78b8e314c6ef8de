import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength } from '../../src/lib/measure/format-length.ts';
import { parseLength } from '../../src/lib/measure/parse-length.ts';
import { nearestEighth } from '../../src/lib/measure/units.ts';
import type { Unit } from '../../src/lib/measure/units.ts';

describe('a length as read', () => {
	it.each([
		[0, '0″'],
		[3.175, '1/8″'],
		[6.35, '1/4″'],
		[9.525, '3/8″'],
		[34.925, '1 3/8″'],
		[914.4, '36″'],
		[-6.35, '−1/4″'],
		[25.3, '1″'],
		[0.4, '0″'],
		[-0.4, '0″']
	])('%d mm is written %s', (mm, text) => {
		expect(formatLength(mm, 'in').text).toBe(text);
	});

	it('is to the nearest eighth unless sixteenths are asked for, and says when it is only about that', () => {
		const eighth = formatLength(7.9375, 'in');
		expect(eighth).toMatchObject({ text: '3/8″', parts: { about: true } });
		const sixteenth = formatLength(7.9375, 'in', { denominator: 16 });
		expect(sixteenth).toMatchObject({ text: '5/16″', parts: { about: false } });
	});

	it('rounds a fifth of 18 to 3 5/8 as the table does (Vincent, aliquot parts)', () => {
		expect(nearestEighth(3.6)).toBe(3.625);
		expect(formatLength((18 / 5) * 25.4, 'in').text).toBe('3 5/8″');
	});

	it.each([
		[6, '6 mm'],
		[9.4, '9 mm'],
		[9.6, '1 cm'],
		[12.7, '1.3 cm'],
		[914.4, '91.4 cm'],
		[-6, '−6 mm']
	])('%d mm is written %s in centimetres', (mm, text) => {
		expect(formatLength(mm, 'cm').text).toBe(text);
	});

	it('gives its parts for the face to set', () => {
		expect(formatLength(-34.925, 'in').parts).toEqual({
			sign: '−',
			whole: '1',
			fraction: '3/8',
			mark: '″',
			about: false
		});
		expect(formatLength(127.5, 'cm', { denominator: 16 }).parts).toEqual({
			sign: '',
			whole: '12.75',
			fraction: '',
			mark: ' cm',
			about: false
		});
	});

	it('leaves the sign or the mark out when told', () => {
		expect(formatLength(-6.35, 'in', { sign: 'never' }).text).toBe('1/4″');
		expect(formatLength(6.35, 'in', { sign: 'always' }).text).toBe('+1/4″');
		expect(formatLength(0, 'in', { sign: 'always' }).text).toBe('0″');
		expect(formatLength(6.35, 'in', { mark: false }).text).toBe('1/4');
	});

	it('refuses what is no number', () => {
		expect(() => formatLength(Number.NaN, 'in')).toThrow('finite');
		expect(() => formatLength(Infinity, 'cm')).toThrow('finite');
	});

	it('is read back within half a sixteenth of an inch, or half a millimetre, in either unit', () => {
		const unit = fc.constantFrom<Unit>('in', 'cm');
		fc.assert(
			fc.property(fc.double({ min: -2900, max: 2900, noNaN: true }), unit, (mm, one) => {
				const { text } = formatLength(mm, one, { denominator: 16 });
				const parsed = parseLength(text, one, { allowNegative: true });
				if ('problem' in parsed) throw new Error(`${text}: ${parsed.problem}`);
				expect(Math.abs(parsed.mm - mm)).toBeLessThanOrEqual(one === 'in' ? 25.4 / 32 + 1e-9 : 0.5 + 1e-9);
			}),
			{ numRuns: 1000 }
		);
	});

	it('writes what it reads: eighths come back as they were', () => {
		fc.assert(
			fc.property(fc.integer({ min: -900, max: 900 }), (eighths) => {
				const mm = (eighths * 25.4) / 8;
				const parsed = parseLength(formatLength(mm, 'in').text, 'in', { allowNegative: true });
				expect('mm' in parsed && Math.abs(parsed.mm - mm)).toBeLessThan(1e-9);
			})
		);
	});
});
