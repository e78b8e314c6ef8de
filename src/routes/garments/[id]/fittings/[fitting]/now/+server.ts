import type { Answer } from '$lib/server/journal/answer.ts';
import type { Fitting, HeldHand } from '$lib/server/journal/records.ts';
import { cookieOptions, handCookie } from '$lib/ui/cookies.ts';
import { error, json } from '@sveltejs/kit';
import { z } from 'zod';
import { handsAt } from '../hands.ts';
import type { RequestEvent, RequestHandler } from './$types';

/** What a fitting is like now, in a few letters: whether anything was changed, and who has something in the hand. */
export const GET: RequestHandler = ({ locals: { journal }, params, cookies }) => {
	const fitting = journal.fitting(params.fitting);
	if (!fitting || fitting.garment !== params.id) error(404, 'There is no fitting here by that name.');
	return json({ whole: fitting.wholeRevision, hands: handsAt(journal, fitting.id, cookies).heard });
};

/** The fields of a form as long as any that this page has. */
const typed = z
	.record(z.string().min(1).max(100), z.string().max(4000))
	.refine((fields) => Object.keys(fields).length <= 200 && JSON.stringify(fields).length <= 20_000);
const deviceName = z.string().regex(/^[0-9a-f]{32}$/);

/** Keeps what is in the hand of a device, as typed so far. */
export const PUT: RequestHandler = async (event) => {
	const device = deviceOf(event);
	// Some browsers keep a cookie that a page has set for a week only: the server sets it again, and pages go on reading it.
	event.cookies.set(handCookie, device, { ...cookieOptions, httpOnly: false });
	const read = typed.safeParse(await event.request.json());
	if (!read.success) error(400, 'What is in the hand is more than a form of this page has.');
	return answered(event.locals.journal.holdHand(event.params.fitting ?? '', device, read.data));
};

/** The hand is empty. */
export const DELETE: RequestHandler = (event) =>
	answered(event.locals.journal.letGoOfHand(event.params.fitting ?? '', deviceOf(event)));

function deviceOf({ cookies }: RequestEvent): string {
	const read = deviceName.safeParse(cookies.get(handCookie));
	if (!read.success) error(400, 'This device has no name yet. Load the page again.');
	return read.data;
}

function answered(answer: Answer<HeldHand | Fitting>): Response {
	if (answer.ok) return json({ saved: 'savedAt' in answer.value ? answer.value.savedAt : null });
	if (answer.stale) error(409, 'This was changed elsewhere meanwhile.');
	const status = { unknown: 404, closed: 409, refused: 400 }[answer.code];
	return error(status, answer.problems.map(({ sentence }) => sentence).join(' '));
}
