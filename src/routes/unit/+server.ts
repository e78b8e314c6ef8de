import { redirect } from '@sveltejs/kit';
import { pageToReturnTo } from '$lib/ui/back.ts';
import { cookieOptions, unitCookie } from '$lib/ui/cookies.ts';
import type { RequestHandler } from './$types';

/** Keeps the unit that lengths are shown and typed in, and goes back to the page. */
export const POST: RequestHandler = async ({ request, cookies }) => {
	const form = await request.formData();
	cookies.set(unitCookie, form.get('unit') === 'cm' ? 'cm' : 'in', cookieOptions);
	redirect(303, pageToReturnTo(form.get('back')));
};

/** Its own address is no page: whoever comes to it goes to the workroom. */
export const GET: RequestHandler = () => redirect(303, '/');
