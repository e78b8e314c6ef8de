import type { Place } from '../draft/types.ts';
import type { AlterationBase, Outcome, Unplaced } from './types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

/** A place that could not be found. */
export function noPlace(sentence: string, place?: Place): Refused {
	return { refused: { why: 'no-place', code: 'unplaced', sentence, place, settle: [] } };
}

/** Something that cannot be done as it was asked, with what would work. */
export function refused(code: string, sentence: string, settle: readonly AlterationBase[] = []): Refused {
	return { refused: { why: 'refused', code, sentence, settle } };
}

export function isRefused<T extends object>(outcome: T): outcome is Extract<T, { refused: unknown }> {
	return 'refused' in outcome;
}

export type Refusal = Omit<Unplaced, 'alteration'>;
