import { building } from '$app/environment';
import { announcement } from '$lib/server/access/announce.ts';
import { deviceCookie, visitorOf } from '$lib/server/access/door.ts';
import { lanPort } from '$lib/server/access/lan-port.ts';
import { addressesNow } from '$lib/server/access/network.ts';
import { keepGivenPassphrase } from '$lib/server/access/given-passphrase.ts';
import { turnedAway } from '$lib/server/access/turned-away.ts';
import demoDraft from '$lib/intake/demo-draft.json';
import { fillDemo } from '$lib/server/demo.ts';
import { isBrokenOff } from '$lib/server/http/broken-off.ts';
import { errorSentence } from '$lib/server/http/error-sentence.ts';
import { setHeaders } from '$lib/server/http/headers.ts';
import { mayChange } from '$lib/server/http/same-origin.ts';
import { journalFile } from '$lib/server/journal-file.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import { openJournal } from '$lib/server/open-journal.ts';
import { shortId } from '$lib/server/short-id.ts';
import { redirect } from '@sveltejs/kit';
import type { Handle, HandleServerError, ServerInit } from '@sveltejs/kit';
import { mkdirSync } from 'node:fs';

/** What an open fitting asks again and again: whether anything was changed on another device. */
const asksByItself = '/garments/[id]/fittings/[fitting]/now';

let journal: Journal | undefined;

/**
 * Opens the journal once, before the first request, and gives an empty one the demo. Where it is opened to the local network
 * as well, the terminal says under which addresses.
 */
export const init: ServerInit = async () => {
	if (building) return;
	const folder = process.env.PIN_TO_PAPER_JOURNAL ?? 'journal';
	mkdirSync(folder, { recursive: true, mode: 0o700 });
	const opened = openJournal({ file: journalFile(folder), now: () => new Date(), newId: shortId });
	fillDemo(opened, demoDraft);
	journal = opened;
	// Sent by src/start/serve.js when the last request is answered.
	process.once('sveltekit:shutdown', () => opened.close());
	const port = lanPort();
	if (port === undefined) return;
	await keepGivenPassphrase(opened.access, process.env.PIN_TO_PAPER_PASSPHRASE);
	const isSet = opened.access.passphrase() !== undefined;
	console.log(await announcement(port, addressesNow(port), isSet));
};

export const handle: Handle = async ({ event, resolve }) => {
	if (!mayChange(event.request, event.url))
		return new Response('Only the pages of Pin to Paper may send this. Open it there and send it again.\n', {
			status: 403,
			headers: { 'content-type': 'text/plain; charset=utf-8' }
		});
	if (!journal) throw new Error('A request came before the journal was open.');
	event.locals.journal = journal;
	event.locals.visitor =
		lanPort() === undefined
			? { kind: 'this-machine' }
			: visitorOf(
					{
						address: event.getClientAddress(),
						headers: event.request.headers,
						token: event.cookies.get(deviceCookie),
						byItself: event.request.method === 'GET' && event.route.id === asksByItself
					},
					journal.access
				);
	const away = event.locals.visitor.kind === 'stranger' ? turnedAway(event) : undefined;
	if (away && 'page' in away) redirect(303, away.page);
	const response = away?.response ?? (await resolve(event));
	setHeaders(response.headers, event.url.pathname);
	// What a device was shown is not to be found on it after it has signed out.
	if (event.locals.visitor.kind !== 'this-machine') response.headers.set('cache-control', 'no-store');
	return response;
};

/** A sentence for the page; for our own mistakes also a line in the log under the same id. */
export const handleError: HandleServerError = ({ error, event, status }) => {
	const id = shortId();
	if (status < 500 || isBrokenOff(error)) return { message: errorSentence(status, id) };
	console.error(`[${id}] ${event.request.method} ${event.url.pathname}`, error);
	return { message: errorSentence(status, id), id };
};
