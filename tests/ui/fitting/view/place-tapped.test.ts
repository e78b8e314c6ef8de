import { describe, expect, test } from 'vitest';
import { placeAlong, placeTapped } from '../../../../src/lib/ui/fitting/view/place-tapped.ts';
import { boxes, inch } from '../drafts.ts';

const side = { of: 'seam', id: 'side' } as const;

describe('a tap on a line', () => {
	// The front's side runs down from the armhole at x = 200; its waist line crosses 200 mm below, its notch at 100 mm.
	test('near a place that has a name is that place', () => {
		expect(placeTapped(boxes, side, 'front/side', [205, 198.6], 'in')).toBe('level:waist');
		expect(placeTapped(boxes, side, 'front/side', [200, 101], 'in')).toBe('notch:n1');
		expect(placeTapped(boxes, side, 'front/side', [200, 1], 'in')).toBe('end:start');
	});

	test('elsewhere is so many eighths from the nearest place that has a name', () => {
		expect(placeTapped(boxes, side, 'front/side', [200, 200 + 25.9], 'in')).toBe(`level:waist~${inch}`);
		expect(placeTapped(boxes, side, 'front/side', [200, 200 - 12.2], 'in')).toBe('level:waist~-12.7');
		expect(placeTapped(boxes, side, 'front/side', [200, 23], 'cm')).toBe('end:start~25');
	});

	test('near an end it is measured inwards from that end', () => {
		expect(placeTapped(boxes, side, 'front/side', [200, 400 - inch], 'in')).toBe(`end:finish~${inch}`);
	});

	test('on the other layer, which is walked the other way, means the same place of the seam', () => {
		// The back's side runs up at x = 0, and its waist line lies 200 mm below the armhole as well.
		expect(placeTapped(boxes, side, 'back/side', [0, 200 + inch], 'in')).toBe(`level:waist~${inch}`);
		expect(placeTapped(boxes, side, 'back/side', [0, 3], 'cm')).toBe('end:start~5');
	});

	test('on a line of two edges is found on the second', () => {
		// The armhole seam goes along the front's 200 mm and on along the back's: 240 mm is 160 mm from its end.
		const armhole = { of: 'seam', id: 'armhole' } as const;
		expect(placeTapped(boxes, armhole, 'back/armhole', [40, 0], 'cm')).toBe('end:finish~160');
		expect(placeAlong(boxes, armhole, 240, 'cm')).toBe('end:finish~160');
	});

	test('past the mouth of a dart counts what is sewn', () => {
		// 20 mm of the hem are in the dart: the place 150 mm along it is 130 mm along as it is sewn, 50 from its end.
		const hem = { of: 'edge', id: 'back/hem' } as const;
		expect(placeTapped(boxes, hem, 'back/hem', [50, 400], 'cm')).toBe('end:finish~50');
	});

	test('on a line that is not of the seam means nothing', () => {
		expect(placeTapped(boxes, side, 'front/hem', [100, 400], 'in')).toBeUndefined();
		expect(placeTapped(boxes, side, 'front/nothing', [100, 400], 'in')).toBeUndefined();
	});
});
