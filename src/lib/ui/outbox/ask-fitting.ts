import type { Heard } from './listen.ts';
import { ask, isJson, type Sent } from './send.ts';
import { nameThisDevice } from './this-device.ts';

const json = { accept: 'application/json' };

/** Answers of the journal that say that a fitting is not told to this device (any more), or is not there. */
const notTold = [401, 403, 404];

/** What a fitting is like now; undefined where it is not told to this device (any more). */
export async function askFitting(place: string): Promise<Sent<Heard | undefined>> {
	const sent = await ask(`${place}/now`, heard, { headers: json });
	return sent.away || sent.answer === 'not now' ? { away: true } : { away: false, answer: sent.answer };
}

async function heard(answer: Response): Promise<Heard | 'not now' | undefined> {
	if (answer.ok && isJson(answer)) return (await answer.json()) as Heard;
	return notTold.includes(answer.status) ? undefined : 'not now';
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
	const put = { method: 'PUT', body: JSON.stringify(typed), headers: { ...json, 'content-type': 'application/json' } };
	const letGo = { method: 'DELETE', headers: json };
	return ask(`${place}/now`, saved, { ...(typed === null ? letGo : put), keepalive: leaving });
}

function saved(answer: Response): HandSaved {
	if (!isJson(answer)) return 'not now';
	if (answer.ok) return 'saved';
	return [404, 409].includes(answer.status) ? 'never' : 'not now';
}
