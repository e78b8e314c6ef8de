import type { FieldReader } from './form-parts.ts';

/** How the two sides are carried. */
export const sidesOffered = ['both', 'right', 'left', 'each'] as const;
export type Sides = (typeof sidesOffered)[number];

export function readSides(fields: FieldReader): Sides {
	return fields.choice('sides', sidesOffered, 'Carry it to both sides, to one, or give each its own amounts.');
}

/** The side that it was pinned on: what the readings are of. */
export function readPinnedOn(fields: FieldReader): 'right' | 'left' | 'both' {
	return fields.choice('pinnedOn', ['right', 'left', 'both'], 'Say which side was pinned: right, left, or both.');
}
