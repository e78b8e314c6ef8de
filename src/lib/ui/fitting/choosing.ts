import type { Target } from './targets.ts';
import type { Typed } from './typed.ts';

/** The fields with another thing in the hand: what was typed for the one before is let go. */
export function choosing(typed: Typed, target?: Target): Typed {
	const { act = '', side = '' } = typed;
	return { act, side, ...(target && { [target.of]: target.id }) };
}
