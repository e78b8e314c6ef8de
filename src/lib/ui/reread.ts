import { enhance } from '$app/forms';
import { invalidateAll } from '$app/navigation';
import { sendOnce } from './send-once.ts';

/**
 * Sends a form without leaving the page, as `enhance` does, and reads the page again where it was not kept: what was changed
 * elsewhere meanwhile is then shown beside what was typed, as it is with scripting off.
 */
export function reread(form: HTMLFormElement) {
	return enhance(form, answered);
}

const answered = sendOnce(async ({ result, update }) => {
	await update({ reset: false });
	if (result.type === 'failure') await invalidateAll();
});
