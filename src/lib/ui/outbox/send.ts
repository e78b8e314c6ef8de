import { deserialize } from '$app/forms';
import type { FormResult } from './answered.ts';

/** What became of a request: not received, as far as anybody can tell; or an answer. */
export type Sent<T> = { readonly away: true } | { readonly away: false; readonly answer: T };

/** How long an answer is waited for, in ms: on a network that is lost a request may hang for minutes. */
const patience = 15_000;

/** Of a gateway, or of a server that is starting or stopping: nothing has looked at the request. */
const notThere = [502, 503, 504];

/**
 * Asks the server and reads what it answers; a network or a server that is not there, or goes away in the middle of its answer, is no
 * fault, but an answer of its own.
 */
export async function ask<T>(
	url: string,
	read: (answer: Response) => Promise<T> | T,
	init: RequestInit = {}
): Promise<Sent<T>> {
	try {
		const answer = await fetch(url, { signal: AbortSignal.timeout(patience), ...init });
		return notThere.includes(answer.status) ? { away: true } : { away: false, answer: await read(answer) };
	} catch (fault) {
		// A TypeError is how `fetch` says that nothing was reached, and the reading of an answer that it broke off.
		if (fault instanceof TypeError) return { away: true };
		if (fault instanceof DOMException && ['TimeoutError', 'AbortError'].includes(fault.name)) return { away: true };
		throw fault;
	}
}

/** Whether it is the server's own: a network that asks for its own sign-in first answers with a page. */
export const isJson = ({ headers }: Response): boolean => headers.get('content-type')?.includes('json') ?? false;

/** Sends the fields of a form as the page itself would, and reads what came of it. */
export async function sendFields(action: string, fields: Readonly<Record<string, string>>): Promise<Sent<FormResult>> {
	const sent = await ask(action, formResult, {
		method: 'POST',
		headers: { accept: 'application/json', 'x-sveltekit-action': 'true' },
		body: new URLSearchParams(fields)
	});
	if (sent.away || sent.answer === undefined) return { away: true };
	return { away: false, answer: sent.answer };
}

/** Undefined: somebody else has answered. */
async function formResult(answer: Response): Promise<FormResult | undefined> {
	const { status } = answer;
	const text = await answer.text();
	if (!isJson(answer)) return answer.ok ? undefined : { type: 'error', status, error: { message: text.slice(0, 300) } };
	const result = deserialize(text);
	return result.type === 'error' ? { ...result, status } : result;
}
