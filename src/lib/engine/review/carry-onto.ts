import type { AlterationBase, Unplaced } from '../alteration/types.ts';
import type { Draft } from '../draft/types.ts';
import { carry, type CarriedAndChecked, type CarryOptions } from './carry-and-check.ts';

/**
 * Carries the alterations of one garment onto another draft with the same names of seams, edges and levels. What finds no place
 * there is unplaced, and so is what was placed by bare coordinates, which mean nothing on another draft.
 */
export function carryOnto(
	draft: Draft,
	alterations: readonly AlterationBase[],
	options: CarryOptions = {}
): CarriedAndChecked {
	const bare = new Set(alterations.filter(hasBareCoordinates).map(({ id }) => id));
	const result = carry(
		draft,
		alterations.filter(({ id }) => !bare.has(id)),
		options
	);
	const waiting = new Map(result.unplaced.map((one) => [one.alteration, one]));
	const unplaced = alterations.flatMap(({ id }): Unplaced[] => {
		if (bare.has(id)) return [placedByCoordinates(id)];
		const one = waiting.get(id);
		return one ? [one] : [];
	});
	const queries = unplaced
		.filter(({ alteration }) => bare.has(alteration))
		.map(({ alteration, sentence, settle }) => ({
			code: 'unplaced',
			severity: 'warning' as const,
			where: alteration,
			sentence,
			settle
		}));
	return { ...result, unplaced, queries: options.queries === false ? [] : [...result.queries, ...queries] };
}

function placedByCoordinates(alteration: string): Unplaced {
	return {
		alteration,
		why: 'no-place',
		code: 'unplaced',
		sentence: 'This was placed by measuring on the other draft. Say where it goes on this one.',
		settle: []
	};
}

/** Whether a point is given as `[x, y]` anywhere in an alteration. */
function hasBareCoordinates(value: unknown): boolean {
	if (typeof value !== 'object' || value === null) return false;
	if (Array.isArray(value) && value.length === 2 && value.every((part) => typeof part === 'number')) return true;
	return Object.values(value).some(hasBareCoordinates);
}
