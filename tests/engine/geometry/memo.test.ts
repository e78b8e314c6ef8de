import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { remembered, rememberedByName, rememberedOfPart } from '../../../src/lib/engine/geometry/memo.ts';

describe('what is remembered', () => {
	test('is computed once for each value, whatever comes of it', () => {
		let asked = 0;
		const lengthOf = remembered((list: readonly number[]) => {
			asked++;
			return list.length === 0 ? undefined : list.length;
		});
		const [empty, three] = [[], [1, 2, 3]];
		expect([lengthOf(empty), lengthOf(three), lengthOf(empty), lengthOf(three)]).toEqual([undefined, 3, undefined, 3]);
		expect(asked).toBe(2);
	});

	test('is each function’s own, by name and by part', () => {
		const one = remembered((key: object) => ['one', key]);
		const other = remembered((key: object) => ['other', key]);
		const key = {};
		expect(one(key)).not.toEqual(other(key));
		const named = rememberedByName((_: object, name: string) => ({ name }));
		expect(named(key, 'waist')).toBe(named(key, 'waist'));
		expect(named(key, 'waist')).not.toBe(named(key, 'hip'));
		const part = {};
		const ofPart = rememberedOfPart((whole: object, of: object) => ({ whole, of }));
		expect(ofPart(key, part)).toBe(ofPart(key, part));
		expect(ofPart(key, {}).of).not.toBe(part);
	});

	test('cannot be seen on the value, nor copied with it, nor does it hinder one that is frozen', () => {
		const noted = remembered((value: { readonly name: string }) => value.name.length);
		const value = { name: 'front' };
		noted(value);
		expect(Reflect.ownKeys(value)).toEqual(['name']);
		expect(JSON.stringify(value)).toBe('{"name":"front"}');
		expect(isDeepStrictEqual(value, { name: 'front' })).toBe(true);
		expect(noted({ ...value, name: 'side' })).toBe(4);
		expect(noted(Object.assign(structuredClone(value), { name: 'hip' }))).toBe(3);
		const frozen = Object.freeze({ name: 'back' });
		expect([noted(frozen), noted(frozen)]).toEqual([4, 4]);
	});
});
