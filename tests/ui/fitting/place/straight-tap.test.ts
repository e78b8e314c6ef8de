import { expect, test } from 'vitest';
import { straightTap } from '../../../../src/lib/ui/fitting/place/straight-tap.ts';

const rows = [
	{ key: 'end:start', at: 0 },
	{ key: 'level:waist', at: 200 },
	{ key: 'end:finish', at: 300 }
];

test('a tap in a row means its place', () => {
	expect(straightTap(rows, 1.2)).toEqual({ key: 'level:waist' });
	expect(straightTap(rows, 0)).toEqual({ key: 'end:start' });
	expect(straightTap(rows, 2)).toEqual({ key: 'end:finish' });
});

test('a tap between two rows means as far between their places', () => {
	expect(straightTap(rows, 0.5)).toEqual({ at: 100 });
	expect(straightTap(rows, 1.6)).toEqual({ at: expect.closeTo(260, 9) });
});

test('a line that moves as a whole has no places between', () => {
	expect(straightTap([{ key: 'all' }], 0.4)).toEqual({ key: 'all' });
	expect(straightTap([], 0)).toBeUndefined();
});
