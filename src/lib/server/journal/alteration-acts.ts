import { eq, max } from 'drizzle-orm';
import { alterations } from '../database/schema/fittings.ts';
import type { EngineAlteration } from '../engine.ts';
import { alterationsOf, findAlteration, waitingForPlace } from './alterations.ts';
import type { Answer, Problem } from './answer.ts';
import { closed, kept, refused, stale, unknown } from './answers.ts';
import type { Change, NewAlteration } from './changes.ts';
import { findFitting, fittingIsClosed } from './fittings.ts';
import type { Journal } from './journal.ts';
import { garmentOfObservation } from './observations.ts';
import { parsed } from './parsed.ts';
import { measuredAs, type Alteration, type Fitting, type Readings } from './records.ts';
import { checkLength, checkOneOf, checkWords, problemsOf } from './soundness.ts';
import type { StepRecord } from './step-records.ts';
import { stepped } from './steps.ts';
import type { Store } from './store.ts';
import { draftOf, latestVersion } from './versions.ts';

type AlterationActs = Pick<
	Journal,
	'alteration' | 'addAlteration' | 'reviseAlteration' | 'leaveOut' | 'takeUpAgain' | 'reorderAlteration'
>;

/** What is to be written of an alteration, and the positions that others get by it. */
interface Changed {
	readonly fields: Partial<typeof alterations.$inferInsert>;
	readonly positions?: readonly (readonly [id: string, position: number])[];
}

export function alterationActs(store: Store): AlterationActs {
	const { db, engine, newId, now, writing } = store;

	/** Writes a change of one alteration of an open fitting, if it is drawn from its present state. */
	const change = (
		what: StepRecord['what'],
		id: string,
		revision: number,
		values: (alteration: Alteration, fitting: Fitting) => Changed | readonly Problem[]
	): Answer<Alteration> =>
		writing(() => {
			const alteration = findAlteration(store, id);
			if (!alteration) return unknown('alteration');
			const fitting = findFitting(store, alteration.fitting)!;
			if (fitting.closedAt) return closed(fittingIsClosed(fitting));
			if (alteration.revision !== revision) return stale(alteration);
			const changed = values(alteration, fitting);
			if (isProblems(changed)) return refused(changed);
			stepped(store, fitting, what, () => {
				for (const [other, position] of changed.positions ?? [])
					db.update(alterations).set({ position }).where(eq(alterations.id, other)).run();
				db.update(alterations)
					.set({ ...changed.fields, revision: revision + 1 })
					.where(eq(alterations.id, id))
					.run();
				return id;
			});
			return kept(findAlteration(store, id)!);
		});

	return {
		alteration: (id) => store.reading(() => findAlteration(store, id)),

		addAlteration: (fittingId, input) =>
			writing(() => {
				const fitting = findFitting(store, fittingId);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				const id = newId();
				const intent = parsed('intent', () => engine.parseAlteration({ ...input.intent, id }));
				const problems = problemsOf(
					'problems' in intent ? intent.problems : undefined,
					alterationProblems(store, fitting, undefined, input)
				);
				if (problems.length > 0 || 'problems' in intent) return refused(problems);
				const last = db
					.select({ number: max(alterations.number), position: max(alterations.position) })
					.from(alterations)
					.where(eq(alterations.fitting, fittingId))
					.get();
				stepped(store, fitting, 'alteration-added', () => {
					db.insert(alterations)
						.values({
							...fieldsOf(input),
							...{ id, fitting: fittingId, intent: intent.value, readings: input.readings ?? { places: [] } },
							...{ number: (last?.number ?? 0) + 1, position: (last?.position ?? 0) + 1 },
							...{ state: stateOf(store, fitting, intent.value), addedAt: now() }
						})
						.run();
					return id;
				});
				return kept(findAlteration(store, id)!);
			}),

		reviseAlteration: (id, revision, input) =>
			change('alteration-changed', id, revision, (alteration, fitting) => {
				const intent = parsed('intent', () => engine.parseAlteration({ ...(input.intent ?? alteration.intent), id }));
				const problems = problemsOf(
					'problems' in intent ? intent.problems : undefined,
					alterationProblems(store, fitting, id, input)
				);
				if (problems.length > 0 || 'problems' in intent) return problems;
				const state = alteration.state === 'withdrawn' ? 'withdrawn' : stateOf(store, fitting, intent.value);
				return { fields: { ...fieldsOf(input), readings: input.readings, intent: intent.value, state } };
			}),

		leaveOut: (id, revision) => change('alteration-left-out', id, revision, () => ({ fields: { state: 'withdrawn' } })),

		takeUpAgain: (id, revision) =>
			change('alteration-taken-up', id, revision, ({ intent }, fitting) => ({
				fields: { state: stateOf(store, fitting, intent) }
			})),

		reorderAlteration: (id, revision, position) =>
			change('alteration-moved', id, revision, (alteration) => {
				const others = alterationsOf(store, alteration.fitting).filter((other) => other.id !== id);
				if (!Number.isInteger(position) || position < 1 || position > others.length + 1)
					return [{ field: 'position', sentence: `Choose a place in the order from 1 to ${others.length + 1}.` }];
				// The others close up round it. Their own revisions stay: nobody's form shows where another stands.
				const order = [...others.slice(0, position - 1), alteration, ...others.slice(position - 1)];
				return { fields: { position }, positions: order.map((one, index) => [one.id, index + 1] as const) };
			})
	};
}

const isProblems = (value: Changed | readonly Problem[]): value is readonly Problem[] => Array.isArray(value);

/** Whether its pins have been read is the engine's to say, whatever the kind. */
function stateOf(store: Store, fitting: Fitting, intent: EngineAlteration): 'standing' | 'not-read' {
	const draft = draftOf(store, latestVersion(store, fitting.garment).id);
	const { unplaced } = store.engine.carry(draft, [intent]);
	return unplaced.some(({ why }) => why === 'not-read') ? 'not-read' : 'standing';
}

const fieldsOf = ({ act, measured, note, answers, settles, pairedWith, replaces }: Change<NewAlteration>) => ({
	act,
	measured,
	note,
	answers,
	settles,
	pairedWith,
	replaces
});

function alterationProblems(store: Store, fitting: Fitting, id: string | undefined, input: Change<NewAlteration>) {
	const { act, measured, note, answers, pairedWith, replaces, readings } = input;
	return problemsOf(
		checkWords('act', act),
		checkOneOf('measured', measured, measuredAs),
		checkWords('note', note),
		answers && garmentOfObservation(store, answers) !== fitting.garment
			? { field: 'answers', sentence: 'Choose an observation of this garment, or none.' }
			: undefined,
		pairedWith && (pairedWith === id || findAlteration(store, pairedWith)?.fitting !== fitting.id)
			? { field: 'pairedWith', sentence: 'The other side of an alteration is one of the same fitting.' }
			: undefined,
		replaces && !waitingForPlace(store, fitting.garment).some((waiting) => waiting.id === replaces)
			? { field: 'replaces', sentence: 'Choose an alteration of an earlier fitting that waits for its place.' }
			: undefined,
		readingsProblems(readings)
	);
}

/** Longest reading that is kept, in mm. */
const longestReading = 1000;

function readingsProblems(readings: Readings | undefined): Problem[] {
	return problemsOf(
		checkOneOf('readings.pinnedOn', readings?.pinnedOn, ['right', 'left', 'both']),
		checkOneOf('readings.sides', readings?.sides, ['both', 'one', 'average', 'each']),
		...(readings?.places ?? []).flatMap((place, index) =>
			(['rightA', 'rightB', 'leftA', 'leftB'] as const).map((which) =>
				checkLength(`readings.places[${index}].${which}`, place[which], -longestReading, longestReading)
			)
		)
	);
}
