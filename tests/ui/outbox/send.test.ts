import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test } from 'vitest';
import { sendHand } from '../../../src/lib/ui/outbox/ask-fitting.ts';
import { ask, isJson, sendFields } from '../../../src/lib/ui/outbox/send.ts';

/** Asks a server that answers as is said; its address is gone when that is done. */
async function asking<T>(answers: RequestListener, work: (address: string) => Promise<T>): Promise<T> {
	const server = createServer(answers);
	await new Promise<void>((resolve) => void server.listen(0, '127.0.0.1', resolve));
	try {
		return await work(`http://127.0.0.1:${(server.address() as AddressInfo).port}`);
	} finally {
		server.closeAllConnections();
		server.close();
	}
}

const json = { 'content-type': 'application/json' };

test('an answer is read; a server that is starting, is not there, or goes away in the middle of its answer, is away', async () => {
	const text = (answer: Response) => answer.text();
	expect(
		await asking(
			(_, to) => void to.end('here'),
			(at) => ask(at, text)
		)
	).toEqual({ away: false, answer: 'here' });
	expect(
		await asking(
			(_, to) => void to.writeHead(503).end(),
			(at) => ask(at, text)
		)
	).toEqual({ away: true });
	expect(
		await ask(
			await asking(
				(_, to) => void to.end(),
				async (at) => at
			),
			text
		)
	).toEqual({ away: true });
	const broken: RequestListener = (_, to) => {
		to.writeHead(200, { ...json, 'content-length': '1000' });
		to.write('{"half":', () => void setTimeout(() => to.destroy(), 20));
	};
	expect(await asking(broken, (at) => ask(at, text))).toEqual({ away: true });
	expect(await asking(broken, (at) => sendFields(at, { what: 'first' }))).toEqual({ away: true });
});

test('a fault in what reads an answer is no network that is away', async () => {
	const read = () => {
		throw new RangeError('a mistake');
	};
	await expect(
		asking(
			(_, to) => void to.end('here'),
			(at) => ask(at, read)
		)
	).rejects.toThrow('a mistake');
});

test('the page of a network that asks for its own sign-in is no answer of ours', async () => {
	const portal: RequestListener = (_, to) =>
		void to.writeHead(200, { 'content-type': 'text/html' }).end('<p>Sign in</p>');
	expect(await asking(portal, (at) => ask(at, isJson))).toEqual({ away: false, answer: false });
	expect(await asking(portal, (at) => sendFields(at, {}))).toEqual({ away: true });
	const refused: RequestListener = (_, to) =>
		void to.writeHead(413, { 'content-type': 'text/plain' }).end('Too large.');
	expect(await asking(refused, (at) => sendFields(at, {}))).toEqual({
		away: false,
		answer: { type: 'error', status: 413, error: { message: 'Too large.' } }
	});
});

test.each([
	[200, json, 'saved'],
	[404, json, 'never'],
	[409, json, 'never'],
	[401, json, 'not now'],
	[500, json, 'not now'],
	[200, { 'content-type': 'text/html' }, 'not now']
] as const)('a hand that is answered %i is %s: %s', async (status, headers, answer) => {
	const page = { cookie: 'hand=0' };
	Object.assign(globalThis, { document: page });
	const sent = await asking(
		(_, to) => void to.writeHead(status, headers).end('{}'),
		(at) => sendHand(at, {}, false)
	);
	Reflect.deleteProperty(globalThis, 'document');
	expect(sent).toEqual({ away: false, answer });
});
