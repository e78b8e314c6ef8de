import type { On } from '../../../engine/index.ts';
import type { FieldReader } from '../form/form-parts.ts';
import type { ActRead } from '../form/read-alteration.ts';

/** What one sort of mark comes to, on the sides that it is carried to. */
export interface MarkRead {
	readonly sides: On;
	readonly intents: ActRead['intents'];
}

/** A mark has no amounts that could differ from side to side. */
export function readMarkSides(fields: FieldReader): On {
	return fields.choice('sides', ['both', 'right', 'left'], 'Carry it to both sides, or to one. Choose one.');
}
