import type { enhance } from '$app/forms';
import { onItsWay } from './on-its-way.ts';

type SubmitFunction = NonNullable<Parameters<typeof enhance>[1]>;
type Answered = Extract<Awaited<ReturnType<SubmitFunction>>, (...all: never) => unknown>;

/** How long an answer is waited for, in ms, before a second press asks again: `enhance` itself waits for ever. */
const patience = 15_000;

/** For `use:enhance`: sends a form without leaving the page, and once where its button is pressed twice; `answered` says what then. */
export function sendOnce(answered: Answered = ({ update }) => update()): SubmitFunction {
	return ({ formElement, formData, action, cancel }) => {
		const arrived = onItsWay(formElement, [action.href, ...[...formData].map(said)]);
		if (!arrived) return cancel();
		const late = setTimeout(arrived, patience);
		return async (answer) => {
			try {
				await answered(answer);
			} finally {
				clearTimeout(late);
				arrived();
			}
		};
	};
}

const said = ([name, value]: [string, FormDataEntryValue]) =>
	typeof value === 'string' ? [name, value] : [name, value.name, value.size];

/** The same; what was typed stays in it whatever is answered. */
export const staysTyped = sendOnce(({ update }) => update({ reset: false }));
