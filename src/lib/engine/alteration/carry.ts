/** Carries alterations to a draft, one after another: what each did, and what is still waiting. */
import type { Draft } from '../draft/types.ts';
import { withoutLostMates } from './lost-mates.ts';
import { isRefused } from './refusal.ts';
import { kindOf } from './registry.ts';
import { unsound } from './sound.ts';
import { stepOf } from './step-of.ts';
import { workingOffers } from './working-offers.ts';
import type { AlterationBase, Outcome, Remark, Step, Unplaced } from './types.ts';

export interface Carried {
	readonly draft: Draft;
	readonly applied: readonly Step[];
	readonly unplaced: readonly Unplaced[];
	readonly remarks: readonly (Remark & { readonly alteration: string })[];
}

/**
 * The draft with the alterations carried in order. Every alteration is in exactly one of `applied` and `unplaced`; an
 * unplaced one leaves the draft as it was. The draft given is never changed.
 */
export function carryAlterations(draft: Draft, alterations: readonly AlterationBase[]): Carried {
	let current = draft;
	const applied: Step[] = [];
	const unplaced: Unplaced[] = [];
	const remarks: (Remark & { alteration: string })[] = [];
	for (const alteration of alterations) {
		if (!kindOf(alteration).isRead(alteration)) {
			unplaced.push({
				alteration: alteration.id,
				why: 'not-read',
				code: 'not-read',
				sentence: 'Not read yet: read its pins, or leave it out.',
				settle: []
			});
			continue;
		}
		const outcome = carryOne(current, alteration);
		if (isRefused(outcome)) {
			const settle = workingOffers(current, alteration, outcome.refused, carryOne);
			unplaced.push({ alteration: alteration.id, ...outcome.refused, settle });
			continue;
		}
		const result = outcome.draft === current ? current : withoutLostMates(current, outcome.draft);
		applied.push(stepOf(current, result, outcome.touched, alteration));
		remarks.push(...outcome.remarks.map((remark) => ({ ...remark, alteration: alteration.id })));
		current = result;
	}
	return { draft: current, applied, unplaced, remarks };
}

/** One alteration carried, or refused: by its kind, or because a piece would not be sound afterwards. */
function carryOne(draft: Draft, alteration: AlterationBase): Outcome {
	const outcome = kindOf(alteration).carry(draft, alteration);
	if (isRefused(outcome) || outcome.draft === draft) return outcome;
	return unsound(draft, outcome.draft) ?? outcome;
}
