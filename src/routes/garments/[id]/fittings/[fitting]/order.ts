import { revision, readForm, text } from '$lib/server/http/form.ts';
import type { Answer } from '$lib/server/journal/answer.ts';
import type { Alteration } from '$lib/server/journal/records.ts';
import { z } from 'zod';
import { asked, backTo, doneOnce, refusedBy, wrong } from './asked.ts';
import { foundFitting } from './found-fitting.ts';
import { gone, standsNow } from './stands-now.ts';
import type { RequestEvent } from './$types';

const one = z.object({ alteration: text({ needed: 'Say which alteration is meant.' }), revision });
const moved = one.extend({ position: z.coerce.number('Say which place in the order it goes to.').int() });

/** Leaves an alteration out: it keeps its number and is not carried. */
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
	act: (value: T) => Answer<Alteration>
) {
	const { journal } = event.locals;
	const { page, contents } = foundFitting(journal, event.params);
	const { typed, unit, came } = await asked(event);
	const back = () => backTo(event, { side: typed.side ?? '' }, '#pinned');
	if (came !== undefined) return back();
	const read = readForm(schema, typed);
	if ('fault' in read) return wrong('order', typed, read.fault.problems);
	if (!contents.alterations.some(({ id }) => id === read.value.alteration)) return wrong('order', typed, gone, 404);
	const answer = doneOnce(journal, typed, () => act(read.value));
	if (answer.ok) return back();
	const stands = answer.stale ? standsNow(journal, page, answer.current, unit) : undefined;
	return refusedBy('order', answer, typed, stands);
}
