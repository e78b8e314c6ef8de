import type { Place } from '../../../engine/index.ts';
import type { Readings } from '../../../measure/readings.ts';
import type { FieldReader } from './form-parts.ts';
import type { Sides } from './sides-read.ts';

/** What was read at one place, mm as it was read, positive outward. */
export type ReadingsAt = Readings & { readonly at: Place };

export interface ReadingsRead {
	readonly pinnedOn?: 'right' | 'left' | 'both';
	readonly sides?: 'both' | 'one' | 'average' | 'each';
	readonly places: readonly ReadingsAt[];
}

export const readingFields = ['rightA', 'rightB', 'leftA', 'leftB'] as const;

/** The four readings of a place as they stand in their fields, mm, without the act's sign. */
export function readingsTyped(fields: FieldReader, key: string): Readings {
	const read: { -readonly [K in keyof Readings]: number } = {};
	for (const name of readingFields) {
		const mm = fields.length(`${name}.${key}`, { signed: true });
		if (mm !== undefined) read[name] = mm;
	}
	return read;
}

/** With the sign of the act: positive is cloth added. */
export function signedReadings(read: Readings, sign: 1 | -1): Readings {
	const signed: { -readonly [K in keyof Readings]: number } = {};
	for (const name of readingFields) if (read[name] !== undefined) signed[name] = read[name] * sign || 0;
	return signed;
}

export function hasReadings(read: Readings): boolean {
	return readingFields.some((name) => read[name] !== undefined);
}

/** How the sides were carried, as the journal keeps it. */
export function sidesKept(sides: Sides, averaged: boolean): ReadingsRead['sides'] {
	if (sides === 'each') return 'each';
	if (averaged) return 'average';
	return sides === 'both' ? 'both' : 'one';
}
