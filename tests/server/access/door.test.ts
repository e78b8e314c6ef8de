import { expect, test } from 'vitest';
import { isThisMachine, visitorOf } from '../../../src/lib/server/access/door.ts';
import { turnedAway } from '../../../src/lib/server/access/turned-away.ts';
import { ownJournal } from '../support/journal.ts';

const headers = (host: string, more: Record<string, string> = {}) => new Headers({ host, ...more });

test.each([
	['127.0.0.1', '127.0.0.1:1898'],
	['::ffff:127.0.0.1', 'localhost:1898'],
	['::1', '[::1]:1898'],
	['127.0.0.1', 'LOCALHOST']
])('over %s and by the name %s it is this machine', (address, host) => {
	expect(isThisMachine(address, headers(host))).toBe(true);
});

test.each([
	['from the network', '192.168.1.30', '192.168.1.20:1898', {}],
	['from the network, claiming a loopback name', '192.168.1.30', '127.0.0.1:1898', {}],
	['through a forwarder, by the name that was typed', '127.0.0.1', '192.168.1.20:1898', {}],
	['through a forwarder that says so', '127.0.0.1', '127.0.0.1:1898', { 'x-forwarded-for': '192.168.1.30' }],
	['through one that says so in the standard’s way', '127.0.0.1', '127.0.0.1', { forwarded: 'for=192.168.1.30' }],
	['from nowhere', '', '127.0.0.1:1898', {}],
	['by a name that only begins like one', '127.0.0.1', '127.0.0.1.example.org', {}],
	['without a name', '127.0.0.1', '', {}]
] as const)('%s it is not', (_, address, host, more) => {
	expect(isThisMachine(address, headers(host, more))).toBe(false);
});

test('a device is known by what it holds; one that was signed out is told from one that never was in', () => {
	const { access } = ownJournal().journal;
	const { token, signIn } = access.signIn('a phone', '192.168.1.30');
	const visitor = (held?: string) =>
		visitorOf({ address: '::ffff:192.168.1.30', headers: headers('192.168.1.20:1898'), token: held }, access);
	expect(visitor(token)).toMatchObject({ kind: 'device', signIn: { id: signIn.id, address: '192.168.1.30' } });
	expect(visitor()).toEqual({ kind: 'stranger', signedOut: false });
	expect(visitor('other')).toEqual({ kind: 'stranger', signedOut: false });
	access.signOut(signIn.id);
	expect(visitor(token)).toEqual({ kind: 'stranger', signedOut: true });
});

const asked = (address: string, accept: string, more: Record<string, string> = {}, isDataRequest = false) => {
	const url = new URL(address, 'http://192.168.1.20:1898');
	return { request: new Request(url, { headers: { accept, ...more } }), url, isDataRequest };
};

test.each([
	['a page', asked('/garments/g1?side=left', 'text/html,*/*'), '/garments/g1?side=left'],
	['a page’s data', asked('/garments/g1', '*/*', {}, true), '/garments/g1'],
	['a plain form', asked('/garments/g1?/keep&side=left', 'text/html'), '/garments/g1?side=left'],
	[
		'a form with scripting',
		asked('/wearers/w1?/note', 'application/json', { 'x-sveltekit-action': 'true' }),
		'/wearers/w1'
	]
])('%s leads to signing in, and back', (_, request, back) => {
	const away = turnedAway(request) as { page: string };
	expect(new URL(away.page, 'http://x').pathname).toBe('/sign-in');
	expect(new URL(away.page, 'http://x').searchParams.get('back')).toBe(back);
});

test('what is no page is answered with 401 and a sentence; the page to sign in at is let through', async () => {
	for (const request of [
		asked('/photos/00', 'image/avif,*/*'),
		asked('/garments/g/fittings/f/photos', 'application/json')
	]) {
		const away = turnedAway(request) as { response: Response };
		expect(away.response.status).toBe(401);
		expect(await away.response.json()).toEqual({ message: expect.stringContaining('not signed in') });
	}
	expect(turnedAway(asked('/sign-in?back=/x', 'text/html'))).toBeUndefined();
	expect(turnedAway(asked('/sign-in/other', 'text/html'))).toHaveProperty('page');
});
