import type { Answer } from '$lib/server/journal/answer.ts';
import type { Change, NewAlteration } from '$lib/server/journal/changes.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { Alteration } from '$lib/server/journal/records.ts';
import { readAlteration, type AlterationRead } from '$lib/ui/fitting/form/read-alteration.ts';
import { field, type Typed } from '$lib/ui/fitting/typed.ts';
import { draftBefore } from '$lib/ui/fitting/view/in-hand.ts';
import { keptView } from '$lib/ui/fitting/view/kept-view.ts';
import { nameOfHand } from '$lib/ui/outbox/same-hand.ts';
import { asked, backTo, doneOnce, refusedBy, wrong } from './asked.ts';
import { foundFitting } from './found-fitting.ts';
import { groundOf } from './ground-of.ts';
import { handsAt } from './hands.ts';
import { gone, standsNow } from './stands-now.ts';
import type { RequestEvent } from './$types';

/** Keeps the alteration in the hand: a new one, or a kept one changed; two where right and left have their own amounts. */
export async function keepAlteration(event: RequestEvent) {
	const { journal } = event.locals;
	const { page, contents } = foundFitting(journal, event.params);
	const { typed, unit, came } = await asked(event);
	const back = (kept: string) => {
		letGoOfKept(event, contents.fitting.id, typed);
		return backTo(event, { side: typed.side ?? '', kept }, '#in-hand');
	};
	if (came !== undefined) return back(came);
	const { alterations } = contents;
	const ground = groundOf(journal, page, contents, journal.previewFitting(contents.fitting.id)!, unit);
	const kept = keptView(ground);
	const id = field(typed, 'alteration');
	const editing = alterations.find((one) => one.id === id);
	if (id !== '' && !editing) return wrong('keep', typed, gone, 404);
	const read = readAlteration(draftBefore(kept, editing?.id), typed, unit);
	if ('problems' in read) return wrong('keep', typed, read.problems);
	const answer = doneOnce(journal, typed, () =>
		editing
			? revised(journal, contents.fitting.id, editing, Number(field(typed, 'revision')), read.read)
			: added(journal, contents.fitting.id, read.read)
	);
	if (answer.ok) return back(answer.value.id);
	return refusedBy('keep', answer, typed, answer.stale ? standsNow(journal, page, answer.current, unit) : undefined);
}

/** What is kept is in the hand no more; what was taken in it since, while the form waited in a browser, stays there. */
function letGoOfKept({ locals: { journal }, cookies }: RequestEvent, fitting: string, typed: Typed): void {
	const { own } = handsAt(journal, fitting, cookies);
	const waited = field(typed, 'once') !== '' && field(typed, 'inHand') === '';
	if (own && (!waited || nameOfHand(own.typed) === nameOfHand(typed))) journal.letGoOfHand(fitting, own.device);
}

/** The fields of one alteration; of the two sides' alterations each has its own intent. */
function fieldsOf({ act, intents, measured, readings, note, answers }: AlterationRead, index: 0 | 1) {
	return { act, intent: intents[index]!, measured, readings, note, answers } satisfies NewAlteration;
}

function added(journal: Journal, fitting: string, read: AlterationRead): Answer<Alteration> {
	return journal.together(() => {
		const first = journal.addAlteration(fitting, fieldsOf(read, 0));
		if (!first.ok || read.intents.length === 1) return first;
		const second = journal.addAlteration(fitting, { ...fieldsOf(read, 1), pairedWith: first.value.id });
		return second.ok ? first : second;
	});
}

function revised(
	journal: Journal,
	fitting: string,
	{ id }: Alteration,
	revision: number,
	read: AlterationRead
): Answer<Alteration> {
	return journal.together(() => {
		const change: Change<NewAlteration> = fieldsOf(read, 0);
		const first = journal.reviseAlteration(id, revision, change);
		if (!first.ok || read.intents.length === 1) return first;
		const second = journal.addAlteration(fitting, { ...fieldsOf(read, 1), pairedWith: id });
		return second.ok ? first : second;
	});
}
