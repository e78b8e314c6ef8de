import { choice, readForm, revision, text } from '$lib/server/http/form.ts';
import type { NewObservation } from '$lib/server/journal/changes.ts';
import { postures, verdicts, type SeenAt } from '$lib/server/journal/records.ts';
import { findObservation } from '$lib/measure/observations.ts';
import { z } from 'zod';
import { asked, backTo, doneOnce, refusedBy, wrong } from './asked.ts';
import { foundFitting } from './found-fitting.ts';
import { seenNow } from './stands-now.ts';
import type { RequestEvent } from './$types';

const states = ['open', 'answered', 'left-on-purpose'] as const;

const schema = z.object({
	observation: text(),
	revision: revision.optional(),
	listed: text(),
	what: text({ max: 2000 }),
	feature: text({ max: 400 }),
	side: z.enum(['', 'right', 'left', 'both'], 'Say which side, or neither.').default(''),
	words: text({ max: 1000 }),
	howBad: z.enum(['1', '2', '3'], 'Say how bad it is: slight, plain, or it spoils it.').default('2'),
	posture: z.enum(postures, 'Say how the wearer stood.').default('standing'),
	state: choice(states, 'Say whether it is open, answered, or left on purpose.').default('open'),
	answeredBy: text({ max: 2000 }),
	note: text()
});

/** Keeps something that was seen: from the list of what is seen at fittings, or in one's own words; of the cloth. */
export async function keepObservation(event: RequestEvent) {
	const { journal } = event.locals;
	const { contents } = foundFitting(journal, event.params);
	const { typed, came } = await asked(event);
	if (came !== undefined) return backTo(event, stateOf(typed), '#seen');
	const read = readForm(schema, typed);
	if ('fault' in read) return wrong('observe', typed, read.fault.problems);
	const { observation, revision: drawn, listed, what, howBad, posture, state, answeredBy, note } = read.value;
	const fromList = listed === '' ? undefined : findObservation(listed);
	if (listed !== '' && !fromList)
		return wrong('observe', typed, { listed: 'Choose one of the list, or write what is seen.' });
	if (what === '' && !fromList)
		return wrong('observe', typed, {
			what: 'Say what is seen, of the cloth: “drag lines from the under-arm to the waist”.'
		});
	const seen: NewObservation = {
		what: what === '' ? fromList!.what : what,
		where: whereOf(read.value),
		howBad: Number(howBad) as 1 | 2 | 3,
		posture,
		state,
		answeredBy,
		note
	};
	const known = contents.observations.some(({ id }) => id === observation);
	if (observation !== '' && !known)
		return wrong(
			'observe',
			typed,
			{ '': 'There is no such observation in this fitting any more: it was undone.' },
			404
		);
	const answer = doneOnce(journal, typed, () =>
		known
			? journal.reviseObservation(observation, drawn ?? -1, seen)
			: journal.addObservation(contents.fitting.id, seen)
	);
	if (!answer.ok) return refusedBy('observe', answer, typed, answer.stale ? seenNow(answer.current) : undefined);
	return backTo(event, stateOf(typed), '#seen');
}

function whereOf({ feature, side, words }: z.infer<typeof schema>): SeenAt {
	const named = feature === '' ? {} : feature.startsWith('piece:') ? { piece: feature.slice(6) } : { feature };
	return { ...named, ...(side !== '' && { side }), ...(words !== '' && { words }) };
}

const verdictSchema = z.object({
	observation: text({ needed: 'Say which observation is meant.' }),
	verdict: choice(verdicts, 'Say what became of it: better, solved, too much, not enough, or left.'),
	note: text({ max: 2000 })
});

/** Says what became of something that an earlier fitting saw. */
export async function giveVerdict(event: RequestEvent) {
	const { journal } = event.locals;
	const { contents } = foundFitting(journal, event.params);
	const { typed, came } = await asked(event);
	if (came !== undefined) return backTo(event, stateOf(typed), '#last-time');
	const read = readForm(verdictSchema, typed);
	if ('fault' in read) return wrong('verdict', typed, read.fault.problems);
	const { observation, verdict, note } = read.value;
	const said = { fitting: contents.fitting.id, verdict, note };
	const answer = doneOnce(journal, typed, () => {
		const given = journal.giveVerdict(observation, said);
		return given.ok ? { ok: true, value: { id: observation } } : given;
	});
	if (!answer.ok) return refusedBy('verdict', answer, typed);
	return backTo(event, stateOf(typed), '#last-time');
}

/** The side that was shown stays shown. */
const stateOf = (typed: Readonly<Record<string, string>>) => ({ side: typed.shown ?? '' });
