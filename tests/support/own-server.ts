import { spawn, type ChildProcess } from 'node:child_process';
import { test } from '@playwright/test';
import { freePort } from './free-port.ts';

/**
 * A server for one file of journeys alone, on a fresh journal: for those that write, so that nothing they keep comes into another's
 * way. Answers its address once it listens. `words` are those that `npm start --` takes.
 */
export function ownServer(...words: readonly string[]): { address: () => string } {
	let address = '';
	let server: ChildProcess | undefined;
	test.beforeAll(async () => {
		const port = String(await freePort());
		server = spawn(process.execPath, ['tests/support/serve-fresh.js', ...words], {
			env: { ...process.env, PORT: port },
			stdio: ['ignore', 'pipe', 'inherit']
		});
		address = await new Promise((resolve, reject) => {
			server!.stdout!.on('data', (chunk: Buffer) => {
				// By itself on a line: with `--lan` the addresses of the network stand before it.
				const said = /^http:\/\/127\.0\.0\.1:\d+$/m.exec(String(chunk));
				if (said) resolve(said[0]);
			});
			server!.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
		});
	});
	test.afterAll(async () => {
		if (!server || server.exitCode !== null) return;
		const ended = new Promise((resolve) => server!.once('exit', resolve));
		server.kill('SIGTERM');
		await ended;
	});
	return { address: () => address };
}
