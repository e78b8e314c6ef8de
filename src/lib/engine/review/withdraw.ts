import { carryAlterations } from '../alteration/carry.ts';
import type { AlterationBase, Unplaced } from '../alteration/types.ts';
import type { Draft } from '../draft/types.ts';
import { carry, type CarriedAndChecked, type CarryOptions } from './carry-and-check.ts';

export interface Withdrawn extends CarriedAndChecked {
	/** Those of the unplaced that had found their place while the withdrawn ones stood. */
	readonly noLonger: readonly Unplaced[];
}

/**
 * Takes alterations back out: the carry without them, from the base, as if they had never been made. What leaned on one of them
 * and finds no place now is unplaced, not dropped. Thrown: an id that is not among the alterations.
 */
export function withdraw(
	base: Draft,
	alterations: readonly AlterationBase[],
	ids: readonly string[],
	options: CarryOptions = {}
): Withdrawn {
	for (const id of ids) {
		if (!alterations.some((alteration) => alteration.id === id)) throw new Error(`There is no alteration ${id}.`);
	}
	const waitingBefore = new Set(carryAlterations(base, alterations).unplaced.map(({ alteration }) => alteration));
	const kept = alterations.filter(({ id }) => !ids.includes(id));
	const result = carry(base, kept, options);
	return { ...result, noLonger: result.unplaced.filter(({ alteration }) => !waitingBefore.has(alteration)) };
}
