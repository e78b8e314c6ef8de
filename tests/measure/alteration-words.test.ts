import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eachEdge, roundChange, sayDart, sayEdge, saySum } from '../../src/lib/measure/alteration-words.ts';
import { actDone, directionOf } from '../../src/lib/measure/directions.ts';
import { eachLayer, sayFold } from '../../src/lib/measure/fold.ts';
import type { Unit } from '../../src/lib/measure/units.ts';

const unit: Unit = 'in';
const quarter = 6.35;

describe('the sum of an alteration', () => {
	// Plain arithmetic: ¼ in on each layer at both side seams is 1 in off the round.
	it('is said from layer to seam to round', () => {
		const sum = saySum({ a: -quarter, b: -quarter, seam: 'pair', on: 'both', around: 'the waist', unit });
		expect(sum.text).toBe('1/4″ on each layer = 1/2″ at this seam = 1″ round the waist');
		expect(roundChange({ a: -quarter, seam: 'pair', on: 'both' })).toBe(-25.4);
	});

	it('gives its amounts as parts of their own', () => {
		const { parts } = saySum({ a: -quarter, seam: 'pair', on: 'both', around: 'the waist', unit });
		expect(parts.filter(({ kind }) => kind === 'amount').map(({ text }) => text)).toEqual(['1/4″', '1/2″', '1″']);
	});

	it('counts once on one side', () => {
		const sum = saySum({ a: quarter, seam: 'pair', on: 'right', around: 'the waist', unit });
		expect(sum.text).toBe('1/4″ on each layer = 1/2″ at this seam = 1/2″ round the waist, right side only');
	});

	it('counts a centre seam once round the body', () => {
		const sum = saySum({ a: -quarter, seam: 'centre', on: 'both', around: 'the waist', unit });
		expect(sum.text).toBe('1/4″ on each layer = 1/2″ at this seam and round the waist');
		const one = saySum({ a: -quarter, seam: 'centre', on: 'left', around: 'the waist', unit });
		expect(one.text).toBe('1/4″ on the left layer only = 1/4″ at this seam and round the waist');
	});

	it('speaks of the sleeve on a sleeve', () => {
		const sum = saySum({ a: quarter, seam: 'limb', on: 'left', around: 'the upper arm', unit });
		expect(sum.text).toBe('1/4″ on each layer = 1/2″ at this seam and round the upper arm, left sleeve only');
	});

	it('names the layers where they differ, and says when the round stays', () => {
		const layers = ['the front', 'the under-arm'] as const;
		const moved = saySum({ a: quarter, b: -quarter, seam: 'pair', on: 'both', around: 'the waist', layers, unit });
		expect(moved.text).toBe('1/4″ onto the front, 1/4″ off the under-arm = nothing round the waist');
		const unlike = saySum({ a: -quarter, b: -3.175, seam: 'pair', on: 'both', around: 'the waist', layers, unit });
		expect(unlike.text).toBe('1/4″ off the front, 1/8″ off the under-arm = 3/8″ at this seam = 3/4″ round the waist');
	});

	it('says about where a sixteenth is not the amount', () => {
		expect(saySum({ a: 2, seam: 'pair', on: 'both', unit }).text).toBe(
			'about 1/16″ on each layer = about 3/16″ at this seam'
		);
	});

	it('is said in centimetres', () => {
		const sum = saySum({ a: 6, seam: 'pair', on: 'both', around: 'the waist', unit: 'cm' });
		expect(sum.text).toBe('6 mm on each layer = 1.2 cm at this seam = 2.4 cm round the waist');
	});

	// Costume textbook, Central Washington University, ch. 17: the total is divided over the seams available.
	it.each([
		[4, 25.4 / 4],
		[6, 25.4 / 6],
		[8, 25.4 / 8]
	])('one inch over %d edges', (edges, each) => {
		expect(eachEdge(25.4, edges)).toBeCloseTo(each, 12);
	});

	it('shares a change over pairs of seams so that the seams make it up again', () => {
		fc.assert(
			fc.property(fc.double({ min: -80, max: 80, noNaN: true }), fc.integer({ min: 1, max: 6 }), (total, pairs) => {
				const a = eachEdge(total, 4 * pairs);
				expect(pairs * roundChange({ a, seam: 'pair', on: 'both' })).toBeCloseTo(total, 9);
			})
		);
	});

	it('refuses to share over no seam', () => {
		expect(() => eachEdge(25.4, 0)).toThrow('at least one edge');
	});
});

describe('the words of an alteration', () => {
	it('name a dart by its whole width', () => {
		expect(sayDart({ intake: 9.525, on: 'both', around: 'the waist', unit }).text).toBe(
			'3/8″ wide (3/16 each leg) = 3/4″ round the waist'
		);
		expect(sayDart({ intake: 10, on: 'right', around: 'the waist', unit: 'cm' }).text).toBe(
			'1 cm wide (5 mm each leg) = 1 cm round the waist, right side only'
		);
	});

	it('say a direction for every amount', () => {
		expect(directionOf('seam', -6)).toBe('in');
		expect(directionOf('seam', 6)).toBe('out');
		expect(directionOf('neck', -9)).toBe('lower');
		expect(directionOf('hem', 9)).toBe('longer');
		expect(directionOf('seam', 0)).toBe('not moved');
		expect(actDone('seam', -6)).toBe('took in');
		expect(actDone('neck', -9)).toBe('chalked lower');
		expect(sayEdge(-9.525, directionOf('neck', -9.525), unit).text).toBe('3/8″ lower');
	});

	it('halve a whole fold, and only a fold', () => {
		expect(eachLayer('whole-fold', 12.7)).toEqual({ a: 6.35, b: 6.35 });
		expect(eachLayer('one-layer', 6.35)).toEqual({ a: 6.35, b: 6.35 });
		expect(eachLayer('each-layer', 6.35, 3.175)).toEqual({ a: 6.35, b: 3.175 });
		expect(sayFold(12.7, unit).text).toBe('1/2″ across the fold = 1/4″ on each layer');
	});
});
