import { describe, expect, it } from 'vitest';
import { buttonExtension, buttonholeLength, eighth, leastExtension } from '../../../src/lib/engine/draft/buttonhole.ts';

const button = { diameter: 25.4, thickness: 6.35 };

describe('a buttonhole', () => {
	// A button of 1 in that is 1/4 in thick. Diameter + thickness: a sewing reference article of 3 June 1999 (worked example, 1 1/4 in in
	// all). Diameter + thickness + 1/8 in for worked holes, without it for bound ones: notes of a costume maker (frkbustad, September
	// 2010). Diameter + 1/8 in for flat buttons: a button seller's guide. The three do not agree, so one is chosen.
	it.each([
		['diameter-and-thickness', 31.75],
		['worked', 34.925],
		['flat', 28.575]
	] as const)('for a button 1 in across and 1/4 in thick is, by the rule "%s", %d mm long', (rule, length) => {
		expect(buttonholeLength(button, rule, 'inch')).toBeCloseTo(length, 9);
	});

	// Instruction manual of the sewing machine Singer 1288, page 67: 1/8 in (3 mm).
	it('begins an eighth of an inch, or 3 mm, beyond the centre line', () => {
		expect(eighth('inch')).toBe(3.175);
		expect(eighth('metric')).toBe(3);
	});
});

describe('the cloth beyond the centre line', () => {
	// Three quarters of the diameter at least (Singer 1288, page 67), the diameter (a button seller's guide), or half of it and 1/4 in
	// (Association of Sewing and Design Professionals, standard 24).
	it.each([
		['three-quarters', 19.05],
		['diameter', 25.4],
		['half-and-a-quarter', 19.05]
	] as const)('for a button 1 in across is, by the rule "%s", %d mm wide', (rule, width) => {
		expect(buttonExtension(button, rule)).toBeCloseTo(width, 9);
	});

	it('is at least what the most sparing rule asks', () => {
		expect(leastExtension({ diameter: 25.4 })).toBeCloseTo(19.05, 9);
		expect(leastExtension({ diameter: 12.7 })).toBeCloseTo(9.525, 9);
		expect(leastExtension({ diameter: 50.8 })).toBeCloseTo(31.75, 9);
	});
});
