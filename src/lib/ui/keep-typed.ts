import { sendOnce } from './send-once.ts';

/**
 * Sends a form without leaving the page, for `use:enhance`: what was typed stays until it is kept, and then the form is as it was
 * drawn, folded up again if it was unfolded. If something was wrong, the keyboard is taken to the first field that was.
 */
export const keepTyped = sendOnce(async ({ result, update, formElement }) => {
	if (result.type === 'redirect') {
		formElement.reset();
		formElement.closest('details')?.removeAttribute('open');
	}
	await update({ reset: false });
	if (result.type === 'failure') firstWrong(formElement)?.focus();
});

function firstWrong(form: HTMLFormElement): HTMLElement | null {
	return form.querySelector<HTMLElement>('[aria-invalid="true"]');
}
