import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from '@playwright/test';
import { freePort } from './free-port.ts';

interface OwnServer {
	/** Its address once it listens; the same however often it was started. */
	readonly address: () => string;
	/** The folder of its journal. */
	readonly journal: () => string;
	/** Ends it without warning, as a machine does whose battery is empty. */
	readonly kill: () => Promise<void>;
	/** Starts it again on the same port and journal. */
	readonly startAgain: () => Promise<void>;
}

/**
 * A server for one file of journeys alone, on a fresh journal: for those that write, so that nothing they keep comes into another's
 * way. `words` are those that `npm start --` takes.
 */
export function ownServer(...words: readonly string[]): OwnServer {
	let address = '';
	let port = '';
	let journal = '';
	let server: ChildProcess | undefined;

	async function start(): Promise<void> {
		const started = spawn(process.execPath, ['tests/support/serve-fresh.js', ...words], {
			env: { ...process.env, PORT: port, JOURNEYS_JOURNAL: journal },
			stdio: ['ignore', 'pipe', 'inherit']
		});
		server = started;
		address = await new Promise((resolve, reject) => {
			started.stdout.on('data', (chunk: Buffer) => {
				// By itself on a line: with `--lan` the addresses of the network stand before it.
				const said = /^http:\/\/127\.0\.0\.1:\d+$/m.exec(String(chunk));
				if (said) resolve(said[0]);
			});
			started.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
		});
	}

	async function end(signal: 'SIGTERM' | 'SIGKILL'): Promise<void> {
		if (!server || server.exitCode !== null || server.signalCode !== null) return;
		const ended = new Promise((resolve) => server!.once('exit', resolve));
		server.kill(signal);
		await ended;
	}

	test.beforeAll(async () => {
		port = String(await freePort());
		journal = mkdtempSync(join(tmpdir(), 'pin-to-paper-journal-'));
		await start();
	});
	test.afterAll(async () => {
		await end('SIGTERM');
		rmSync(journal, { recursive: true, force: true });
	});
	return { address: () => address, journal: () => journal, kill: () => end('SIGKILL'), startAgain: start };
}
