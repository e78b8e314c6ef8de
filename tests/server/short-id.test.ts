import { expect, test } from 'vitest';
import { shortId } from '../../src/lib/server/short-id.ts';

test('ten thousand ids are ten thousand, fit for an address and for the name of a dart', () => {
	const ids = new Set(Array.from({ length: 10_000 }, shortId));
	expect(ids.size).toBe(10_000);
	for (const id of ids) expect(id).toMatch(/^p[a-z0-9]{9}$/);
});
