import { eq } from 'drizzle-orm';
import { alterations, observationVerdicts } from '../database/schema/fittings.ts';
import { photoPins, photos } from '../database/schema/photos.ts';
import { findAlteration } from './alterations.ts';
import type { Problem } from './answer.ts';
import { findObservation } from './observations.ts';
import type { StepRecord, StepRow } from './step-records.ts';
import type { Store } from './store.ts';

type Kind = StepRecord['kind'];

/** What refers to a record that is to be taken out again, but for what is taken out with it: a sentence for each. */
export function needsOf(store: Store, kind: Kind, row: StepRow, turned: readonly string[]): readonly Problem[] {
	const { db } = store;
	const { id } = row;
	const pins = db
		.select({ number: photoPins.number, photo: photos.number })
		.from(photoPins)
		.innerJoin(photos, eq(photos.id, photoPins.photo))
		.where(eq(kind === 'alteration' ? photoPins.alteration : photoPins.observation, id))
		.all()
		.map(({ number, photo }) => `pin ${number} on photo ${photo} marks it. Take that pin off the photo first.`);
	const others = db
		.select({ id: alterations.id, number: alterations.number })
		.from(alterations)
		.where(eq(kind === 'alteration' ? alterations.pairedWith : alterations.answers, id))
		.all()
		.filter((other) => !turned.includes(other.id))
		.map(({ number }) => `alteration ${number} ${kind === 'alteration' ? 'is its other side' : 'answers it'}.`);
	const verdicts = db
		.select({ id: observationVerdicts.id })
		.from(observationVerdicts)
		.where(eq(observationVerdicts.observation, id))
		.all();
	const said = verdicts.length > 0 ? ['a later fitting says what became of it.'] : [];
	return [...pins, ...others, ...said].map((by) => ({ sentence: `${nameOf(kind, row)} stays: ${by}` }));
}

/** What a row that is to come back refers to, and is not there any more. */
export function goneFor(store: Store, kind: Kind, row: StepRow, turned: readonly string[]): readonly Problem[] {
	const isGone = (id: unknown, find: (store: Store, id: string) => unknown) =>
		typeof id === 'string' && !turned.includes(id) && find(store, id) === undefined;
	const gone =
		isGone(row.answers, findObservation) ||
		isGone(row.pairedWith, findAlteration) ||
		isGone(row.replaces, findAlteration);
	return gone ? [{ sentence: `${nameOf(kind, row)} refers to something that was taken out since.` }] : [];
}

const nameOf = (kind: Kind, { number, letter }: StepRow): string =>
	kind === 'alteration' ? `Alteration ${number as number}` : `Observation ${letter as string}`;
