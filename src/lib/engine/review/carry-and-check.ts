import { carryAlterations } from '../alteration/carry.ts';
import type { AlterationBase, Step, Unplaced } from '../alteration/types.ts';
import type { Draft } from '../draft/types.ts';
import { check } from './check.ts';
import type { CheckOptions } from './inquiry.ts';
import type { Query } from './types.ts';

/** Options of the check that follows; `queries: false` leaves it out, for a preview that only draws the lines. */
export interface CarryOptions extends Omit<CheckOptions, 'unplaced' | 'remarks' | 'alterations'> {
	readonly queries?: boolean;
}

export interface CarriedAndChecked {
	readonly draft: Draft;
	readonly applied: readonly Step[];
	readonly unplaced: readonly Unplaced[];
	readonly queries: readonly Query[];
}

/**
 * Carries alterations to a draft in order and checks what came of it. Each alteration is in exactly one of `applied` and
 * `unplaced`; the draft given is never changed. Unless told otherwise, the draft given is the base, so that what it already
 * has is meant, and the version before.
 */
export function carry(
	draft: Draft,
	alterations: readonly AlterationBase[],
	options: CarryOptions = {}
): CarriedAndChecked {
	const { draft: result, applied, unplaced, remarks } = carryAlterations(draft, alterations);
	if (options.queries === false) return { draft: result, applied, unplaced, queries: [] };
	const { base = draft, before = draft, ...rest } = options;
	const queries = check(result, { ...rest, base, before, unplaced, remarks, alterations });
	return { draft: result, applied, unplaced, queries };
}
