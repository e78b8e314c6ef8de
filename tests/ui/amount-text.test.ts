import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountRuns, fractionRuns } from '../../src/lib/ui/amount-text.ts';

const kindsOf = (text: string) => fractionRuns(text).map(({ kind, text }) => `${kind}:${text}`);

describe('amounts in runs', () => {
	it('set only the fraction, and keep the space that is read but not seen', () => {
		expect(amountRuns(34.925, 'in')).toEqual([
			{ kind: 'text', text: '1' },
			{ kind: 'gap', text: ' ' },
			{ kind: 'fraction', text: '3/8' },
			{ kind: 'text', text: '″' }
		]);
	});

	it('have no whole number before a bare fraction, and no fraction after a whole number', () => {
		expect(amountRuns(6.35, 'in', { mark: false })).toEqual([{ kind: 'fraction', text: '1/4' }]);
		expect(amountRuns(25.4, 'in')).toEqual([{ kind: 'text', text: '1″' }]);
	});

	it('write centimetres without fractions', () => {
		expect(amountRuns(34.9, 'cm').every(({ kind }) => kind === 'text')).toBe(true);
	});

	it('join to the sentence that they were made of, whatever it says', () => {
		fc.assert(
			fc.property(fc.string({ unit: fc.constantFrom(...'0123456789/ ab.,″') }), (sentence) => {
				expect(
					fractionRuns(sentence)
						.map(({ text }) => text)
						.join('')
				).toBe(sentence);
			})
		);
	});

	it('find every fraction of a sentence', () => {
		expect(kindsOf('short by 1/4, 1 1/2 left')).toEqual([
			'text:short by ',
			'fraction:1/4',
			'text:, 1',
			'gap: ',
			'fraction:1/2',
			'text: left'
		]);
		expect(kindsOf('16 5/16″')).toEqual(['text:16', 'gap: ', 'fraction:5/16', 'text:″']);
	});

	it('leave dates and long ratios as they are', () => {
		for (const sentence of ['on 10/3/1898', '1898/99', 'scale 1/1000', '3/4/5']) {
			expect(kindsOf(sentence)).toEqual([`text:${sentence}`]);
		}
	});
});
