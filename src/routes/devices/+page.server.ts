import { warning } from '$lib/server/access/announce.ts';
import { lanPort } from '$lib/server/access/lan-port.ts';
import { addressesNow } from '$lib/server/access/network.ts';
import { hashPassphrase, passphraseProblem } from '$lib/server/access/passphrase.ts';
import { qrSquares } from '$lib/server/access/qr-code.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { error, fail, redirect } from '@sveltejs/kit';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = ({ locals: { journal, visitor } }) => {
	const port = lanPort();
	const addresses = port === undefined ? [] : addressesNow(port);
	const own = visitor.kind === 'device' ? visitor.signIn.id : undefined;
	const head: HeadData = { crumbs: [{ name: 'Workroom', href: '/' }, { name: 'Other devices' }] };
	return {
		head,
		warning,
		open: port !== undefined,
		here: visitor.kind === 'this-machine',
		isSet: journal.access.passphrase() !== undefined,
		addresses: addresses.map((address) => ({ address, qr: qrSquares(address) })),
		own,
		signedIn: journal.access.signIns().map(({ id, device, address, beganAt, seenAt }) => ({
			...{ id, device, address, own: id === own },
			since: `${dayWords(localDay(new Date(beganAt)))}, ${timeOf(beganAt)}`,
			seen: timeOf(seenAt)
		}))
	};
};

/** Time of day of an instant, where this machine is. */
const timeOf = (instant: string): string =>
	new Date(instant).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });

export const actions: Actions = { passphrase, signOut, signOutAll };

/** Sets the passphrase, on this machine only: whoever is in already must not be able to lock the others out. */
async function passphrase({ locals: { journal, visitor }, request, url }: RequestEvent) {
	if (visitor.kind !== 'this-machine') error(403, 'The passphrase is set on the machine that Pin to Paper runs on.');
	const given = (await request.formData()).get('passphrase');
	const text = typeof given === 'string' ? given : '';
	const problem = passphraseProblem(text);
	// What was typed does not go back: a passphrase belongs into no page.
	if (problem) return fail(400, { sentence: problem });
	journal.access.setPassphrase(await hashPassphrase(text));
	redirect(303, url.pathname);
}

/** A device that signs itself out keeps what it holds until it signs in again: by that the sign-in page knows to wipe it. */
async function signOut({ locals: { journal, visitor }, request, url }: RequestEvent) {
	const id = (await request.formData()).get('device');
	if (typeof id === 'string') journal.access.signOut(id);
	redirect(303, visitor.kind === 'device' && visitor.signIn.id === id ? '/sign-in' : url.pathname);
}

/** Every device, and this one as well where it is one. */
async function signOutAll({ locals: { journal, visitor }, url }: RequestEvent) {
	journal.access.signOutAll();
	redirect(303, visitor.kind === 'device' ? '/sign-in' : url.pathname);
}
