import { and, eq } from 'drizzle-orm';
import { observations, observationVerdicts } from '../database/schema/fittings.ts';
import { closed, kept, refused, stale, unknown } from './answers.ts';
import type { Change, NewObservation } from './changes.ts';
import { findFitting, fittingIsClosed, touchFitting } from './fittings.ts';
import { findObservation, garmentOfObservation, observationsOf } from './observations.ts';
import type { Journal } from './journal.ts';
import { postures, verdicts, type Verdict } from './records.ts';
import { checkOneOf, checkWords, problemsOf } from './soundness.ts';
import { stepped } from './steps.ts';
import type { Store } from './store.ts';

/** a, b, … z, aa, ab … */
function letterAt(index: number): string {
	const letter = String.fromCharCode(97 + (index % 26));
	return index < 26 ? letter : letterAt(Math.floor(index / 26) - 1) + letter;
}

type ObservationActs = Pick<Journal, 'observation' | 'addObservation' | 'reviseObservation' | 'giveVerdict'>;

export function observationActs(store: Store): ObservationActs {
	const { db, newId, now, writing } = store;
	return {
		observation: (id) => store.reading(() => findObservation(store, id)),

		addObservation: (fittingId, input) =>
			writing(() => {
				const fitting = findFitting(store, fittingId);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				const problems = observationProblems(input);
				if (problems.length > 0) return refused(problems);
				const id = newId();
				const { where = {}, what, howBad = 2, posture = 'standing', state = 'open', answeredBy, note } = input;
				// None is ever taken away but the last, when it is undone; so two never have one letter.
				const letter = letterAt(observationsOf(store, fittingId).length);
				const fields = { where, what, howBad, posture, state, answeredBy, note };
				stepped(store, fitting, 'observation-added', () => {
					db.insert(observations)
						.values({ id, fitting: fittingId, letter, ...fields, addedAt: now() })
						.run();
					return id;
				});
				return kept(findObservation(store, id)!);
			}),

		reviseObservation: (id, revision, change) =>
			writing(() => {
				const observation = findObservation(store, id);
				if (!observation) return unknown('observation');
				const fitting = findFitting(store, observation.fitting)!;
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				if (observation.revision !== revision) return stale(observation);
				const problems = observationProblems(change);
				if (problems.length > 0) return refused(problems);
				const { where, what, howBad, posture, state, answeredBy, note } = change;
				stepped(store, fitting, 'observation-changed', () => {
					db.update(observations)
						.set({ where, what, howBad, posture, state, answeredBy, note, revision: revision + 1 })
						.where(eq(observations.id, id))
						.run();
					return id;
				});
				return kept(findObservation(store, id)!);
			}),

		giveVerdict: (observationId, { fitting: fittingId, verdict, note }) =>
			writing(() => {
				const observation = findObservation(store, observationId);
				if (!observation) return unknown('observation');
				const fitting = findFitting(store, fittingId);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				const problems = problemsOf(
					checkOneOf('verdict', verdict, verdicts),
					checkWords('note', note),
					garmentOfObservation(store, observationId) !== fitting.garment
						? { field: 'fitting', sentence: 'This observation was made of another garment.' }
						: undefined,
					observation.fitting === fittingId
						? { field: 'fitting', sentence: 'What became of it is said at a later fitting.' }
						: undefined
				);
				if (problems.length > 0) return refused(problems);
				const id = newId();
				db.insert(observationVerdicts)
					.values({ id, observation: observationId, fitting: fittingId, verdict, note, at: now() })
					.run();
				touchFitting(store, fitting);
				return kept(verdictOf(store, id));
			})
	};
}

function verdictOf({ db }: Store, id: string): Verdict {
	const row = db
		.select()
		.from(observationVerdicts)
		.where(and(eq(observationVerdicts.id, id)))
		.get()!;
	return { verdict: row.verdict, fitting: row.fitting, note: row.note, at: row.at };
}

const observationProblems = ({ what, howBad, posture, state, answeredBy, note }: Change<NewObservation>) =>
	problemsOf(
		what !== undefined && what.trim() === ''
			? { field: 'what', sentence: 'Say what is seen, of the cloth: “drag lines from the under-arm to the waist”.' }
			: checkWords('what', what),
		checkOneOf('howBad', howBad, [1, 2, 3]),
		checkOneOf('posture', posture, postures),
		checkOneOf('state', state, ['open', 'answered', 'left-on-purpose']),
		checkWords('answeredBy', answeredBy),
		checkWords('note', note)
	);
