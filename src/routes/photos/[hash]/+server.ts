import { error } from '@sveltejs/kit';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { RequestHandler } from './$types';

/**
 * A picture that some photo has, or with `?thumb=1` its thumbnail. It goes to this server's own pages and to whoever types
 * its address, is kept by no cache, and may run nothing.
 */
export const GET: RequestHandler = async ({ locals: { journal }, params, url, request }) => {
	const from = request.headers.get('sec-fetch-site') ?? 'none';
	const known = /^[0-9a-f]{64}$/.test(params.hash) && (from === 'same-origin' || from === 'none');
	const file = known
		? journal.pictureFile(params.hash, url.searchParams.get('thumb') === '1' ? 'small' : 'whole')
		: undefined;
	if (file === undefined || !existsSync(file)) error(404, 'There is no picture here by that name.');
	return new Response(await readFile(file), {
		headers: {
			'content-type': 'image/jpeg',
			'content-disposition': 'inline; filename="photo.jpg"',
			'cross-origin-resource-policy': 'same-origin',
			'cache-control': 'no-store',
			'content-security-policy': "default-src 'none'; sandbox"
		}
	});
};
