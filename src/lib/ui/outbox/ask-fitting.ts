import type { Heard } from './listen.ts';
import { ask, isJson, type Sent } from './send.ts';
import { nameThisDevice } from './this-device.ts';

/** What a fitting is like now; undefined where it is not told to this device (any more). */
export function askFitting(place: string): Promise<Sent<Heard | undefined>> {
	return ask(`${place}/now`, async (answer) =>
		answer.ok && isJson(answer) ? ((await answer.json()) as Heard) : undefined
	);
}

/** Whether a hand is saved: it is; never will be, for the fitting is closed or gone; or not now, for it could not be written. */
export type HandSaved = 'saved' | 'never' | 'not now';

/** Keeps what is in the hand of this device with the fitting; null: nothing is. */
export function sendHand(
	place: string,
	typed: Readonly<Record<string, string>> | null,
	leaving: boolean
): Promise<Sent<HandSaved>> {
	nameThisDevice();
	const put = { method: 'PUT', body: JSON.stringify(typed), headers: { 'content-type': 'application/json' } };
	return ask(`${place}/now`, saved, { ...(typed === null ? { method: 'DELETE' } : put), keepalive: leaving });
}

function saved(answer: Response): HandSaved {
	if (answer.ok && isJson(answer)) return 'saved';
	return [404, 409].includes(answer.status) ? 'never' : 'not now';
}
