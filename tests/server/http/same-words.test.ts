import { expect, test } from 'vitest';
import { sameWords } from '../../../src/lib/server/http/same-words.ts';

const said = { act: 'took-in', seam: 'side', 'amount.level:waist': '1/4', note: '' };

test('the same words are known whatever their order, and no others', () => {
	const { act, ...rest } = said;
	expect(sameWords({ ...rest, act })).toBe(sameWords(said));
	const others = [{ ...said, note: ' ' }, { ...said, 'amount.level:waist': '3/8' }, rest, { ...said, drawn: 'a' }];
	expect(new Set([said, ...others].map(sameWords)).size).toBe(5);
	// NIST FIPS 180-4: a digest of SHA-256 has 256 bits, 64 figures to the base of sixteen.
	expect(sameWords(said)).toMatch(/^[0-9a-f]{64}$/);
});
