import { deviceCookie, deviceCookieOptions, plainAddress } from '$lib/server/access/door.ts';
import { deviceWords } from '$lib/server/access/device-words.ts';
import { slowDown } from '$lib/server/access/slow-down.ts';
import { noneIsSet, tryPassphrase } from '$lib/server/access/try-passphrase.ts';
import { pageToReturnTo } from '$lib/ui/back.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { fail, redirect } from '@sveltejs/kit';
import type { Actions, PageServerLoad } from './$types';

/** One for the whole server, for as long as it runs. */
const slow = slowDown(() => performance.now());

export const load: PageServerLoad = ({ locals: { journal, visitor }, url }) => {
	const back = pageToReturnTo(url.searchParams.get('back'));
	if (visitor.kind !== 'stranger') redirect(303, back);
	const head: HeadData = { crumbs: [{ name: 'Sign in' }] };
	const isSet = journal.access.passphrase() !== undefined;
	return { head, back, out: visitor.signedOut, none: isSet ? undefined : noneIsSet };
};

export const actions: Actions = {
	default: async ({ locals: { journal }, request, cookies, getClientAddress, setHeaders }) => {
		const form = await request.formData();
		const given = form.get('passphrase');
		const tried = await tryPassphrase(journal.access, slow, typeof given === 'string' ? given : '', {
			address: plainAddress(getClientAddress()),
			device: deviceWords(request.headers.get('user-agent'))
		});
		// What was typed does not go back: a passphrase belongs into no page.
		if (!('token' in tried)) {
			if (tried.wait !== undefined) setHeaders({ 'retry-after': String(tried.wait) });
			return fail(tried.status, { sentence: tried.sentence });
		}
		cookies.set(deviceCookie, tried.token, deviceCookieOptions);
		redirect(303, pageToReturnTo(form.get('back')));
	}
};
