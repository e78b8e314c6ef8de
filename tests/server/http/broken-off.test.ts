import { createServer } from 'node:http';
import { connect, type AddressInfo } from 'node:net';
import { expect, test } from 'vitest';
import { isBrokenOff } from '../../../src/lib/server/http/broken-off.ts';

/** What reading a request’s body fails with, where its sender goes after half of it. */
async function goneInTheMiddle(): Promise<unknown> {
	const server = createServer();
	const failed = new Promise<unknown>((resolve) =>
		server.once('request', (request) => {
			request.once('data', () => sender.destroy());
			request.once('error', resolve);
		})
	);
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
	const sender = connect((server.address() as AddressInfo).port, '127.0.0.1');
	sender.write('PUT / HTTP/1.1\r\nHost: x\r\nContent-Length: 500\r\n\r\n{"act":"to');
	const error = await failed;
	server.close();
	return error;
}

test('a request whose sender is gone in the middle is broken off', async () => {
	expect(isBrokenOff(await goneInTheMiddle())).toBe(true);
});

test.each([new Error('aborted'), new TypeError('x is not a function'), undefined, 'ECONNRESET'])(
	'our own mistake is not: %s',
	(error) => expect(isBrokenOff(error)).toBe(false)
);
