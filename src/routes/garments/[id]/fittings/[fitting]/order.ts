import { revision, readForm, text } from '$lib/server/http/form.ts';
import { z } from 'zod';
import { asked, backTo, refusedBy, wrong } from './asked.ts';
import { foundFitting } from './found-fitting.ts';
import type { RequestEvent } from './$types';

const one = z.object({ alteration: text({ needed: 'Say which alteration is meant.' }), revision });
const moved = one.extend({ position: z.coerce.number('Say which place in the order it goes to.').int() });

/** Leaves an alteration out: it keeps its number and is not carried. Undo is this, for the last one. */
export async function leaveOut(event: RequestEvent) {
	return ordered(event, one, ({ alteration, revision: drawn }) => event.locals.journal.leaveOut(alteration, drawn));
}

export async function takeUp(event: RequestEvent) {
	return ordered(event, one, ({ alteration, revision: drawn }) => event.locals.journal.takeUpAgain(alteration, drawn));
}

/** Moves an alteration to another place in the order of carrying. */
export async function move(event: RequestEvent) {
	return ordered(event, moved, ({ alteration, revision: drawn, position }) =>
		event.locals.journal.reorderAlteration(alteration, drawn, position)
	);
}

async function ordered<T extends { alteration: string }>(
	event: RequestEvent,
	schema: z.ZodType<T>,
	act: (value: T) => ReturnType<typeof event.locals.journal.leaveOut>
) {
	const { contents } = foundFitting(event.locals.journal, event.params);
	const { typed } = await asked(event);
	const read = readForm(schema, typed);
	if ('fault' in read) return wrong('order', typed, read.fault.problems);
	if (!contents.alterations.some(({ id }) => id === read.value.alteration))
		return wrong('order', typed, { '': 'There is no alteration by that name in this fitting.' }, 404);
	const answer = act(read.value);
	if (!answer.ok) return refusedBy('order', answer, typed);
	return backTo(event, { side: typed.side ?? '' }, '#pinned');
}
