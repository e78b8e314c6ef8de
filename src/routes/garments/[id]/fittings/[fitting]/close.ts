import { readForm, revision } from '$lib/server/http/form.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { z } from 'zod';
import { asked, backTo, doneOnce, refusedBy, wrong } from './asked.ts';
import { foundFitting } from './found-fitting.ts';
import type { RequestEvent } from './$types';

const count = z
	.string()
	.default('')
	.transform((value) => value.trim())
	.pipe(z.string().regex(/^\d{0,4}$/, 'Count the pins in whole numbers, such as 26.'))
	.transform((value) => (value === '' ? null : Number(value)));

const pins = z.object({ revision, pinsIn: count, pinsOut: count });

/** Pins counted in, and out again. */
export async function countPins(event: RequestEvent) {
	const { journal } = event.locals;
	const { contents } = foundFitting(journal, event.params);
	const { typed, came } = await asked(event);
	if (came !== undefined) return backTo(event, { side: typed.shown ?? '' }, '#pins');
	const read = readForm(pins, typed);
	if ('fault' in read) return wrong('pins', typed, read.fault.problems);
	const { revision: drawn, pinsIn, pinsOut } = read.value;
	const counted = { pinsIn, pinsOut };
	const answer = doneOnce(journal, typed, () => journal.reviseFitting(contents.fitting.id, drawn, counted));
	if (!answer.ok) return refusedBy('pins', answer, typed, answer.stale ? countedNow(answer.current) : undefined);
	return backTo(event, { side: typed.shown ?? '' }, '#pins');
}

function countedNow({ pinsIn, pinsOut }: Fitting): string {
	return `counted in ${pinsIn ?? 'not yet'}, counted out ${pinsOut ?? 'not yet'}`;
}

/** Closes a fitting that changes nothing on paper. */
export async function closeFitting(event: RequestEvent) {
	const { journal } = event.locals;
	const { contents } = foundFitting(journal, event.params);
	const { typed, came } = await asked(event);
	if (came !== undefined) return backTo(event, {});
	const read = readForm(z.object({ wholeRevision: revision }), typed);
	if ('fault' in read) return wrong('close', typed, read.fault.problems);
	const drawn = read.value.wholeRevision;
	const answer = doneOnce(journal, typed, () => journal.closeFitting(contents.fitting.id, drawn));
	if (!answer.ok) return refusedBy('close', answer, typed);
	return backTo(event, {});
}
