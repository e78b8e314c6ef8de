import { readForm } from '$lib/server/http/form.ts';
import type { Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Steps } from '$lib/server/journal/records.ts';
import { stepWords } from '$lib/ui/fitting/words/step.ts';
import { z } from 'zod';
import { asked, backTo, doneOnce, refusedBy, wrong } from './asked.ts';
import { foundFitting } from './found-fitting.ts';
import type { RequestEvent } from './$types';

/** The step that can be undone and the one that can be done again, in words. */
export function stepsTold(steps: Steps, draft: Draft, unit: Unit) {
	const told = (step: Steps['last']) => step && { step: step.step, words: stepWords(draft, step, unit) };
	return { last: told(steps.last), next: told(steps.next) };
}

export const undoStep = (event: RequestEvent) => turned(event, 'undo');
export const redoStep = (event: RequestEvent) => turned(event, 'redo');

const schema = z.object({ step: z.coerce.number('The form has lost its place. Load the page again.').int() });

/** Undoes or does again the step that the page showed; where another came after it, both are told. */
async function turned(event: RequestEvent, which: 'undo' | 'redo') {
	const { journal } = event.locals;
	const { page, contents } = foundFitting(journal, event.params);
	const { typed, unit, came } = await asked(event);
	const back = () => backTo(event, { side: typed.side ?? '' }, '#pinned');
	if (came !== undefined) return back();
	const read = readForm(schema, typed);
	if ('fault' in read) return wrong('steps', typed, read.fault.problems);
	const answer = doneOnce(journal, typed, () => {
		const done = journal[which](contents.fitting.id, read.value.step);
		return done.ok ? { ok: true, value: { id: done.value.record } } : done;
	});
	if (answer.ok) return back();
	if (!answer.stale) return refusedBy('steps', answer, typed);
	return wrong('steps', typed, { '': moved(journal, page, answer.current, which, unit) }, 409);
}

function moved(journal: Journal, page: GarmentPage, steps: Steps, which: 'undo' | 'redo', unit: Unit): string {
	const { draft } = journal.version(page.garment.id, page.versions[page.versions.length - 1]!.number)!;
	const { last } = stepsTold(steps, draft, unit);
	const nothing = which === 'undo' ? 'Nothing was undone' : 'Nothing was done again';
	return last
		? `${nothing}: meanwhile something else was done. The last step is now: ${last.words}.`
		: `${nothing}: meanwhile every step of this fitting was undone.`;
}
