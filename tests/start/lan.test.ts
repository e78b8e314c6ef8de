import { request, type IncomingHttpHeaders } from 'node:http';
import { afterEach, describe, expect, test } from 'vitest';
import { visitorOf } from '../../src/lib/server/access/door.ts';
import { turnedAway } from '../../src/lib/server/access/turned-away.ts';
import { isNearby } from '../../src/start/hosts.js';
import { askedOf, serve, type Handler } from '../../src/start/serve.js';
import { ownJournal } from '../server/support/journal.ts';

const open: (() => Promise<unknown>)[] = [];
afterEach(async () => {
	for (const close of open.splice(0)) await close();
});

async function served(lan: boolean, handler: Handler = (_, response) => response.end('the pages')) {
	const { address, stop } = await serve({ asked: 0, lan, load: async () => handler });
	open.push(() => stop('SIGTERM'));
	return new URL(address);
}

interface Answer {
	readonly status: number;
	readonly text: string;
	readonly headers: IncomingHttpHeaders;
}

/** Like a browser's request, but with any Host, and over any address of the loopback. */
function ask(port: string, { over = '127.0.0.1', path = '/', ...headers }: Record<string, string>): Promise<Answer> {
	return new Promise((resolve, reject) => {
		const asked = request({ host: over, port, path, headers, agent: false }, (response) => {
			let text = '';
			response.setEncoding('utf8').on('data', (part) => (text += part));
			response.on('end', () => resolve({ status: response.statusCode ?? 0, text, headers: response.headers }));
		});
		asked.on('error', reject).end();
	});
}

// Linux answers on the whole of 127.0.0.0/8, so that listening on one address is told from listening on all of them.
describe.skipIf(process.platform !== 'linux')('listening', () => {
	test('without --lan no other address of the machine answers', async () => {
		const { port } = await served(false);
		await expect(ask(port, { over: '127.0.0.2' })).rejects.toThrow('ECONNREFUSED');
	});

	test('with --lan every one does', async () => {
		const { port } = await served(true);
		expect((await ask(port, { over: '127.0.0.2' })).text).toBe('the pages');
	});
});

test('a Host of a stranger is turned away with --lan as without', async () => {
	for (const lan of [true, false]) {
		const { port } = await served(lan);
		expect((await ask(port, { host: 'example.org' })).status).toBe(421);
		expect((await ask(port, { host: `192.168.1.20:${port}` })).status).toBe(200);
	}
});

test('the pages are told the port of the local network with --lan, and nothing of it without', async () => {
	process.env.PIN_TO_PAPER_LAN_PORT = '1';
	await served(false);
	expect(process.env.PIN_TO_PAPER_LAN_PORT).toBeUndefined();
	const { port } = await served(true);
	expect(process.env.PIN_TO_PAPER_LAN_PORT).toBe(port);
	delete process.env.PIN_TO_PAPER_LAN_PORT;
});

test('asked by the address of the network it wants a sign-in, though it comes over the loopback; by a loopback name it does not', async () => {
	const { access } = ownJournal().journal;
	const { port } = await served(true, (asked, response) => {
		const headers = new Headers(asked.headers as Record<string, string>);
		const token = /device=([^;]+)/.exec(asked.headers.cookie ?? '')?.[1];
		const visitor = visitorOf({ address: asked.socket.remoteAddress ?? '', headers, token }, access);
		const url = new URL(asked.url ?? '/', `http://${asked.headers.host}`);
		const away =
			visitor.kind === 'stranger'
				? turnedAway({ request: new Request(url, { headers }), url, isDataRequest: false })
				: undefined;
		if (away && 'page' in away) response.writeHead(303, { location: away.page }).end();
		else response.end(visitor.kind);
	});
	const host = `192.168.1.20:${port}`;
	const accept = 'text/html';
	expect((await ask(port, { accept })).text).toBe('this-machine');
	const away = await ask(port, { host, accept, path: '/garments/g1' });
	expect([away.status, away.headers.location]).toEqual([303, '/sign-in?back=%2Fgarments%2Fg1']);
	const { token } = access.signIn('a phone', '127.0.0.1');
	expect((await ask(port, { host, accept, cookie: `device=${token}` })).text).toBe('device');
	access.signOutAll();
	expect((await ask(port, { host, accept, cookie: `device=${token}` })).status).toBe(303);
});

test.each([
	'127.0.0.1',
	'127.9.9.9',
	'::1',
	'10.0.0.9',
	'172.16.0.1',
	'172.31.255.254',
	'192.168.1.30',
	'::ffff:192.168.1.30',
	'169.254.3.4',
	'fe80::1%eth0',
	'fd00::7'
])('%s is nearby', (address) => expect(isNearby(address)).toBe(true));

test.each([
	'8.8.8.8',
	'172.15.0.1',
	'172.32.0.1',
	'192.169.0.1',
	'11.0.0.1',
	'::ffff:8.8.8.8',
	'2001:db8::1',
	'',
	'localhost'
])('%s is not nearby', (address) => expect(isNearby(address)).toBe(false));

test('npm start takes --lan, and nothing that it does not know', () => {
	expect(askedOf([])).toEqual({ lan: false });
	expect(askedOf(['--lan'])).toEqual({ lan: true });
	for (const words of [['--LAN'], ['--lan', '8080'], ['lan']])
		expect(() => askedOf(words)).toThrow(/takes no ".*npm start -- --lan/s);
});
