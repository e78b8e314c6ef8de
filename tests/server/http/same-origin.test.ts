import { expect, test } from 'vitest';
import { mayChange } from '../../../src/lib/server/http/same-origin.ts';

const here = new URL('http://127.0.0.1:1898/garments/g1');
const asked = (method: string, origin?: string): Request =>
	new Request(here, { method, headers: origin ? { origin } : {} });

test.each(['GET', 'HEAD'])('%s changes nothing and may come from anywhere', (method) => {
	expect(mayChange(asked(method, 'http://example.org'), here)).toBe(true);
});

test.each(['POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'])('%s is taken from this server only', (method) => {
	expect(mayChange(asked(method, 'http://127.0.0.1:1898'), here)).toBe(true);
	for (const stranger of [
		'http://example.org',
		'http://127.0.0.1:1899',
		'https://127.0.0.1:1898',
		'http://localhost:1898',
		'null',
		undefined
	])
		expect(mayChange(asked(method, stranger), here)).toBe(false);
});
