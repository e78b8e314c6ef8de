import type { Heard } from './listen.ts';
import { ask, type Sent } from './send.ts';
import { nameThisDevice } from './this-device.ts';

/** What a fitting is like now; undefined where it is not told to this device (any more). */
export async function askFitting(place: string): Promise<Sent<Heard | undefined>> {
	const sent = await ask(`${place}/now`);
	if (sent.away) return sent;
	return { away: false, answer: sent.answer.ok ? ((await sent.answer.json()) as Heard) : undefined };
}

/** Keeps what is in the hand of this device with the fitting; null: nothing is. */
export function sendHand(
	place: string,
	typed: Readonly<Record<string, string>> | null,
	leaving: boolean
): Promise<Sent<Response>> {
	nameThisDevice();
	const put = { method: 'PUT', body: JSON.stringify(typed), headers: { 'content-type': 'application/json' } };
	return ask(`${place}/now`, { ...(typed === null ? { method: 'DELETE' } : put), keepalive: leaving });
}
