import { createServer } from 'node:http';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildFolder, journalFolder, projectFolder } from './folders.js';
import { isNearby, isOwnHost } from './hosts.js';
import { Problem } from './problem.js';

/** @typedef {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => void} Handler */

/** The header in which the built server looks for the protocol. It is ours to fill: whatever a request says there is overwritten. */
const protocolHeader = 'x-pin-to-paper-protocol';

/** Largest body that is read at all, in bytes; a draft file has a smaller limit of its own, with a sentence of its own. */
const bodyLimit = 32 * 1024 * 1024;

/** What the built server would otherwise be told by the environment about addresses, which nothing here may change. */
const notAsked = ['ORIGIN', 'ADDRESS_HEADER', 'XFF_DEPTH', 'HOST_HEADER', 'PORT_HEADER'];

/** How long open requests may take to finish after the server was told to stop, in milliseconds. */
const patience = 5_000;

/**
 * Loads the built server. Loading it opens the journal, which brings an old one up to date and fills an empty one
 * with the demo; a journal that cannot be opened says so in a sentence.
 * @returns {Promise<Handler>}
 */
export async function builtHandler() {
	process.chdir(projectFolder);
	process.env.PIN_TO_PAPER_JOURNAL = journalFolder();
	// Without these the built server takes every address for https and refuses every form that is sent over http,
	// and refuses bodies over 512 kB. They are read once, while it is loaded.
	process.env.PROTOCOL_HEADER = protocolHeader;
	process.env.BODY_SIZE_LIMIT = String(bodyLimit);
	for (const name of notAsked) delete process.env[name];
	try {
		const { handler } = await import(pathToFileURL(join(buildFolder, 'handler.js')).href);
		return handler;
	} catch (error) {
		if (error instanceof Error && error.name === 'JournalRefused') throw new Problem(error.message);
		throw error;
	}
}

/**
 * @param {import('node:http').ServerResponse} response
 * @param {number} status
 * @param {string} sentence
 */
function refuse(response, status, sentence) {
	response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' });
	response.end(`${sentence}\n`);
}

/**
 * What answers a request: this machine's names only, asked from nearby, bodies up to the limit, the protocol always http.
 * @param {Handler} handler
 * @param {string} [machine]
 * @returns {Handler}
 */
export function guarded(handler, machine = hostname()) {
	return (request, response) => {
		if (!isOwnHost(request.headers.host, machine))
			return refuse(
				response,
				421,
				'Pin to Paper answers only under the address that it printed when it started. Open that one.'
			);
		if (!isNearby(request.socket.remoteAddress ?? ''))
			return refuse(response, 403, 'Pin to Paper answers only on the local network that this machine is on.');
		if (Number(request.headers['content-length']) > bodyLimit)
			return refuse(
				response,
				413,
				`That is larger than ${bodyLimit / 1024 / 1024} MB, which is more than Pin to Paper takes at once. Nothing was saved.`
			);
		request.headers[protocolHeader] = 'http';
		handler(request, response);
	};
}

/**
 * @param {import('node:http').Server} server
 * @param {number} port
 * @param {string} host address that is listened on
 * @returns {Promise<boolean>} false when another program has the port
 */
function listens(server, port, host) {
	return new Promise((resolve, reject) => {
		/** @param {NodeJS.ErrnoException} error */
		const failed = (error) => {
			if (error.code === 'EADDRINUSE') return resolve(false);
			if (error.code === 'EACCES')
				return reject(new Problem(`Port ${port} is not open to you. Choose one above 1023, for example PORT=1898.`));
			reject(error);
		};
		server.once('error', failed);
		server.listen(port, host, () => {
			server.off('error', failed);
			resolve(true);
		});
	});
}

/**
 * The port asked for in words. Nothing, or an empty text, asks for none.
 * @param {string | undefined} text
 * @returns {number | undefined}
 */
export function askedPort(text) {
	if (!text) return undefined;
	const port = Number(text);
	if (!/^\d+$/.test(text) || port > 65535)
		throw new Problem(
			`PORT is "${text}", which is no port. Give a whole number from 1024 to 65535, for example PORT=1898.`
		);
	return port;
}

/**
 * What the words after `npm start --` ask for: `--lan` opens it to the local network. Anything else is refused.
 * @param {string[]} words
 * @returns {{ lan: boolean }}
 */
export function askedOf(words) {
	const unknown = words.find((word) => word !== '--lan');
	if (unknown !== undefined)
		throw new Problem(
			`npm start takes no "${unknown}". To choose a port: PORT=8080 npm start. To open it to the local network: npm start -- --lan.`
		);
	return { lan: words.includes('--lan') };
}

/**
 * Serves the built pages to this machine alone, or with `lan` to the local network as well, and stops cleanly on SIGINT and
 * SIGTERM: open requests finish, then the journal is closed.
 * @param {{ asked?: number, usual?: number, lan?: boolean, load?: () => Promise<Handler> }} [options] `asked`: this port or
 * none (0: any free one); `usual`: the port to try first when none is asked for, then the nineteen after it
 * @returns {Promise<{ address: string, stop: (signal: string) => Promise<void> }>}
 */
export async function serve({ asked, usual = 1898, lan = false, load = builtHandler } = {}) {
	/** @type {Handler | undefined} */
	let handler;
	const server = createServer((request, response) =>
		handler ? handler(request, response) : refuse(response, 503, 'Pin to Paper is still starting. Load the page again.')
	);
	// Longer than browsers keep a connection: a form sent on one that closes at that moment would be lost, and is not sent again.
	server.keepAliveTimeout = 310_000;
	const ports = asked === undefined ? Array.from({ length: 20 }, (_, index) => usual + index) : [asked];
	let open = false;
	for (const port of ports) if ((open = await listens(server, port, lan ? '0.0.0.0' : '127.0.0.1'))) break;
	if (!open)
		throw new Problem(
			asked === undefined
				? `Ports ${usual} to ${usual + 19} are all taken. Choose a free one: PORT=8080 npm start.`
				: `Port ${asked} is taken by another program, perhaps by Pin to Paper itself in another window. Stop that one, or choose another port: PORT=${asked === 65535 ? usual : asked + 1} npm start.`
		);

	const address = /** @type {import('node:net').AddressInfo} */ (server.address());
	// The pages ask for the passphrase, and print the addresses, where this is set.
	if (lan) process.env.PIN_TO_PAPER_LAN_PORT = String(address.port);
	else delete process.env.PIN_TO_PAPER_LAN_PORT;
	handler = guarded(await load());

	/** @param {string} signal */
	const stop = async (signal) => {
		const closed = new Promise((resolve) => server.close(resolve));
		// A connection that is kept alive falls idle only after its answer, so idle ones are looked for again and again.
		const sweep = setInterval(() => server.closeIdleConnections(), 50);
		const limit = setTimeout(() => server.closeAllConnections(), patience);
		await closed;
		clearInterval(sweep);
		clearTimeout(limit);
		// The pages' side closes the journal when it hears this (src/hooks.server.ts).
		// @ts-expect-error adapter-node's event, which Node's types do not list
		process.emit('sveltekit:shutdown', signal);
	};
	return { address: `http://127.0.0.1:${address.port}`, stop };
}

/**
 * Stops the server and ends the process at the first SIGINT or SIGTERM; a second one ends it at once.
 * @param {{ stop: (signal: string) => Promise<void> }} served
 */
export function stopOnSignals({ stop }) {
	for (const signal of ['SIGINT', 'SIGTERM'])
		process.once(signal, async () => {
			await stop(signal);
			process.exit(0);
		});
}
