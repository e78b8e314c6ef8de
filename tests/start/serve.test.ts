import { request, type IncomingHttpHeaders } from 'node:http';
import { createServer, type AddressInfo } from 'node:net';
import { afterEach, expect, test } from 'vitest';
import { askedPort, serve, type Handler } from '../../src/start/serve.js';

const open: (() => Promise<unknown>)[] = [];
afterEach(async () => {
	for (const close of open.splice(0)) await close();
});

async function served(handler: Handler, asked = 0) {
	const { address, stop } = await serve({ asked, load: async () => handler });
	open.push(() => stop('SIGTERM'));
	return { address, stop };
}

/** Like a browser's request, but with any Host: `fetch` does not let that be chosen. */
function ask(
	address: string,
	headers: Record<string, string> = {}
): Promise<{ status: number; text: string; headers: IncomingHttpHeaders }> {
	return new Promise((resolve, reject) => {
		const asked = request(address, { headers, agent: false }, (response) => {
			let text = '';
			response.setEncoding('utf8').on('data', (part) => (text += part));
			response.on('end', () => resolve({ status: response.statusCode ?? 0, text, headers: response.headers }));
		});
		asked.on('error', reject).end();
	});
}

/** Takes a port as another program would. */
async function takenPort(): Promise<number> {
	const other = createServer();
	await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
	open.push(() => new Promise((resolve) => other.close(resolve)));
	return (other.address() as AddressInfo).port;
}

test('the pages are told that the protocol is http, whatever a request claims', async () => {
	const { address } = await served((asked, response) => response.end(asked.headers['x-pin-to-paper-protocol']));
	expect((await ask(address)).text).toBe('http');
	expect((await ask(address, { 'x-pin-to-paper-protocol': 'https' })).text).toBe('http');
});

test('a Host of a stranger is answered with 421 and a sentence, and never reaches the pages', async () => {
	let reached = 0;
	const { address } = await served((_, response) => response.end(String(++reached)));
	const answer = await ask(address, { host: 'example.org' });
	expect(answer.status).toBe(421);
	expect(answer.text).toContain('address that it printed');
	expect(reached).toBe(0);
});

test('a body over the limit is answered with 413 and a sentence', async () => {
	const { address } = await served((_, response) => response.end('read'));
	const answer = await fetch(address, { method: 'POST', body: new Uint8Array(32 * 1024 * 1024 + 1) });
	expect(answer.status).toBe(413);
	expect(await answer.text()).toContain('32 MB');
	const smaller = await fetch(address, { method: 'POST', body: new Uint8Array(1024) });
	expect(await smaller.text()).toBe('read');
});

test('it listens on the loopback address only', async () => {
	const { address } = await served((_, response) => response.end());
	expect(new URL(address).hostname).toBe('127.0.0.1');
});

test('a taken port that was asked for is refused with a sentence', async () => {
	const port = await takenPort();
	await expect(serve({ asked: port, load: async () => () => undefined })).rejects.toThrow(`Port ${port} is taken`);
});

test('a taken port that was not asked for is left, and the next free one is used', async () => {
	const port = await takenPort();
	const { address, stop } = await serve({ usual: port, load: async () => (_, response) => response.end() });
	open.push(() => stop('SIGTERM'));
	expect(Number(new URL(address).port)).toBeGreaterThan(port);
});

test('told to stop, it finishes the request that is open, and the pages hear of it after', async () => {
	const heard: string[] = [];
	const hear = () => heard.push('shutdown');
	process.once('sveltekit:shutdown' as never, hear as never);
	const { address, stop } = await serve({
		asked: 0,
		load: async () => (_, response) =>
			void setTimeout(() => {
				heard.push('answered');
				response.end('whole');
			}, 150)
	});
	const answer = ask(address);
	await new Promise((resolve) => setTimeout(resolve, 50));
	await stop('SIGTERM');
	expect((await answer).text).toBe('whole');
	expect(heard).toEqual(['answered', 'shutdown']);
	await expect(ask(address)).rejects.toThrow('ECONNREFUSED');
});

test('PORT is a whole number or is refused with a sentence', () => {
	expect(askedPort(undefined)).toBeUndefined();
	expect(askedPort('')).toBeUndefined();
	expect(askedPort('8080')).toBe(8080);
	for (const wrong of ['80a', '-1', '70000', '1.5']) expect(() => askedPort(wrong)).toThrow('which is no port');
});
