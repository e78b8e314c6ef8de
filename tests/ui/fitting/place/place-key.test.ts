import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Place } from '../../../../src/lib/engine/index.ts';
import { placeKey, readPlaceKey, readPlaceKeys } from '../../../../src/lib/ui/fitting/place/place-key.ts';

const name = fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9._-]{0,20}$/);
const offset = fc.oneof(
	fc.constant({}),
	fc
		.integer({ min: -4000, max: 4000 })
		.filter(Boolean)
		.map((n) => ({ offset: n / 8 }))
);
const place: fc.Arbitrary<Place> = fc.oneof(
	fc.tuple(fc.constantFrom('start' as const, 'finish' as const), offset).map(([end, o]) => ({ end, ...o })),
	fc.tuple(name, fc.option(fc.integer({ min: 1, max: 99 }), { nil: undefined }), offset).map(([level, nth, o]) => ({
		level,
		...(nth === undefined ? {} : { nth }),
		...o
	})),
	fc.tuple(name, offset).map(([notch, o]) => ({ notch, ...o })),
	fc.tuple(fc.constantFrom(0, 0.25, 0.5, 1), offset).map(([fraction, o]) => ({ fraction, ...o }))
);

test('a place written as a key is read back as the same place, for a thousand places', () => {
	fc.assert(
		fc.property(place, (one) => {
			expect(readPlaceKey(placeKey(one))).toEqual(one);
			expect(placeKey(one)).not.toMatch(/\s/);
		}),
		{ numRuns: 1000, seed: 4 }
	);
});

test.each([
	'',
	'level',
	'level:',
	'end:middle',
	'fraction:1.5',
	'fraction:-1',
	'fraction:x',
	'notch:n1*2',
	'level:waist*0',
	'level:waist~',
	'level:wa ist',
	'level:waist~1e9',
	'__proto__:x',
	'piece:front'
])('%j is no place', (key) => {
	expect(readPlaceKey(key)).toBeUndefined();
});

test('a list of keys keeps its order, without doubles and without what is no place', () => {
	expect(readPlaceKeys(' end:start  nonsense level:waist end:start ')).toEqual(['end:start', 'level:waist']);
	expect(readPlaceKeys(undefined)).toEqual([]);
});
