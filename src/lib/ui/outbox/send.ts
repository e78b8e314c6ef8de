import { deserialize } from '$app/forms';
import type { FormResult } from './answered.ts';

/** What became of a request: not received, as far as anybody can tell; or an answer. */
export type Sent<T> = { readonly away: true } | { readonly away: false; readonly answer: T };

/** How long an answer is waited for, in ms: on a network that is lost a request may hang for minutes. */
const patience = 15_000;

/** Of a gateway, or of a server that is starting or stopping: nothing has looked at the request. */
const notThere = [502, 503, 504];

/** Asks the server; a network or a server that is not there is no fault, but an answer of its own. */
export async function ask(url: string, init: RequestInit = {}): Promise<Sent<Response>> {
	try {
		const answer = await fetch(url, { signal: AbortSignal.timeout(patience), ...init });
		return notThere.includes(answer.status) ? { away: true } : { away: false, answer };
	} catch (fault) {
		// A TypeError is how `fetch` says that nothing was reached.
		if (fault instanceof TypeError) return { away: true };
		if (fault instanceof DOMException && ['TimeoutError', 'AbortError'].includes(fault.name)) return { away: true };
		throw fault;
	}
}

/** Sends the fields of a form as the page itself would, and reads what came of it. */
export async function sendFields(action: string, fields: Readonly<Record<string, string>>): Promise<Sent<FormResult>> {
	const sent = await ask(action, {
		method: 'POST',
		headers: { accept: 'application/json', 'x-sveltekit-action': 'true' },
		body: new URLSearchParams(fields)
	});
	if (sent.away) return sent;
	const text = await sent.answer.text();
	const { status } = sent.answer;
	if (!sent.answer.headers.get('content-type')?.includes('json'))
		return { away: false, answer: { type: 'error', status, error: { message: text.slice(0, 300) } } };
	const result = deserialize(text);
	return { away: false, answer: result.type === 'error' ? { ...result, status } : result };
}
