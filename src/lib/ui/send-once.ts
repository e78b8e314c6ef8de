import type { enhance } from '$app/forms';
import { onItsWay } from './on-its-way.ts';

type SubmitFunction = NonNullable<Parameters<typeof enhance>[1]>;
type Answered = Extract<Awaited<ReturnType<SubmitFunction>>, (...all: never) => unknown>;

/** For `use:enhance`: sends a form without leaving the page, and once where its button is pressed twice; `answered` says what then. */
export function sendOnce(answered: Answered = ({ update }) => update()): SubmitFunction {
	return ({ formElement, formData, action, cancel }) => {
		const arrived = onItsWay(formElement, { action: action.href, fields: Object.fromEntries(formData) });
		if (!arrived) return cancel();
		return async (answer) => {
			try {
				await answered(answer);
			} finally {
				arrived();
			}
		};
	};
}

/** The same; what was typed stays in it whatever is answered. */
export const staysTyped = sendOnce(({ update }) => update({ reset: false }));
