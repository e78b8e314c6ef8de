import { keepPhoto } from '$lib/server/photos/keep-photo.ts';
import { json } from '@sveltejs/kit';
import type { RequestHandler } from './$types';

/**
 * Takes one picture as the bare body of a request, for pages with scripting: it goes to the disk as it comes, and the page
 * can tell how far it is. `?mirrored=yes` turns it over. Answers the photo, or a message with what would be right.
 */
export const POST: RequestHandler = async ({ locals: { journal }, params, request, url }) => {
	const answer = await keepPhoto(journal, params.fitting, request.body, {
		mirrored: url.searchParams.get('mirrored') === 'yes'
	}).catch((broken: unknown) => {
		if (request.signal.aborted) return { status: 400 as const, sentence: 'The picture did not come to its end.' };
		throw broken;
	});
	if ('sentence' in answer) return json({ message: answer.sentence }, { status: answer.status });
	if (answer.ok) return json({ photo: { id: answer.value.id, number: answer.value.number } }, { status: 201 });
	if (answer.stale) throw new Error('Adding a photo asks for no revision.');
	const message = answer.problems.map(({ sentence }) => sentence).join(' ');
	return json({ message }, { status: { unknown: 404, closed: 409, refused: 403 }[answer.code] });
};
