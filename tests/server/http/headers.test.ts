import { expect, test } from 'vitest';
import { setHeaders } from '../../../src/lib/server/http/headers.ts';

function headersFor(path: string, given: Record<string, string> = {}): Headers {
	const headers = new Headers(given);
	setHeaders(headers, path);
	return headers;
}

test.each([
	'/wearers/w1',
	'/garments/g1/fittings/f1',
	'/garments/g1/versions/2/draft.json',
	'/photos/0123',
	'/wearers'
])('%s is kept by no cache', (path) => {
	expect(headersFor(path, { 'cache-control': 'public, max-age=60' }).get('cache-control')).toBe('no-store');
});

test.each(['/', '/garments-of-old', '/wearersome'])('%s holds no body and keeps what the page said', (path) => {
	expect(headersFor(path).has('cache-control')).toBe(false);
});

test('the referrer is not turned off: a form sent without one names the origin "null" (Fetch standard, "append a request Origin header")', () => {
	expect(headersFor('/').get('referrer-policy')).toBe('same-origin');
});

test('a drawing that is opened by itself may run nothing; a page keeps the policy it came with', () => {
	expect(headersFor('/x', { 'content-type': 'image/svg+xml' }).get('content-security-policy')).toContain(
		"default-src 'none'"
	);
	const page = headersFor('/', { 'content-type': 'text/html', 'content-security-policy': "default-src 'self'" });
	expect(page.get('content-security-policy')).toBe("default-src 'self'");
});
