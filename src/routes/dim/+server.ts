import { redirect } from '@sveltejs/kit';
import { pageToReturnTo } from '$lib/ui/back.ts';
import { cookieOptions, dimCookie } from '$lib/ui/cookies.ts';
import type { RequestHandler } from './$types';

/** Dims or lights the pages on this device, and goes back to the page. */
export const POST: RequestHandler = async ({ request, cookies }) => {
	const form = await request.formData();
	cookies.set(dimCookie, form.get('dim') === 'yes' ? 'yes' : 'no', cookieOptions);
	redirect(303, pageToReturnTo(form.get('back')));
};

/** Its own address is no page: whoever comes to it goes to the workroom. */
export const GET: RequestHandler = () => redirect(303, '/');
