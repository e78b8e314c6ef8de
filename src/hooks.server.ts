import { errorSentence } from '$lib/server/http/error-sentence.ts';
import { setHeaders } from '$lib/server/http/headers.ts';
import { mayChange } from '$lib/server/http/same-origin.ts';
import type { Handle, HandleServerError } from '@sveltejs/kit';
import { randomUUID } from 'node:crypto';

export const handle: Handle = async ({ event, resolve }) => {
	if (!mayChange(event.request, event.url))
		return new Response('Only the pages of Pin to Paper may send this. Open it there and send it again.\n', {
			status: 403,
			headers: { 'content-type': 'text/plain; charset=utf-8' }
		});
	const response = await resolve(event);
	setHeaders(response.headers, event.url.pathname);
	return response;
};

/** A sentence for the page; for our own mistakes also a line in the log under the same id. */
export const handleError: HandleServerError = ({ error, event, status }) => {
	const id = randomUUID().slice(0, 8);
	if (status < 500) return { message: errorSentence(status, id) };
	console.error(`[${id}] ${event.request.method} ${event.url.pathname}`, error);
	return { message: errorSentence(status, id), id };
};
