import { carry } from '../../engine/index.ts';
import type { AlterationBase, Draft, Step, Unplaced } from '../../engine/index.ts';
import { pinsOfAlteration } from '../drawing/pins-of-alteration.ts';
import type { PinOnDrawing } from '../drawing/scene.ts';

/** One alteration as it was carried: the draft before it, after it, and what it did or why it was not carried. */
export interface CarriedOne {
	readonly alteration: AlterationBase;
	readonly before: Draft;
	readonly after: Draft;
	readonly step?: Step;
	readonly unplaced?: Unplaced;
}

/** Carries alterations one by one, in order, so that each can be told by itself. The same lines as carrying them together. */
export function carryEach(draft: Draft, alterations: readonly AlterationBase[]): readonly CarriedOne[] {
	let before = draft;
	return alterations.map((alteration) => {
		const { draft: after, applied, unplaced } = carry(before, [alteration], { queries: false });
		const one = {
			alteration,
			before,
			after,
			...(applied[0] && { step: applied[0] }),
			...(unplaced[0] && { unplaced: unplaced[0] })
		};
		before = after;
		return one;
	});
}

/** The pins of alterations that were carried, each with its number, for the drawing. */
export function pinsOfCarried(
	carried: readonly CarriedOne[],
	numberOf: (alteration: string) => number
): readonly PinOnDrawing[] {
	return carried.flatMap(({ alteration, before, after, step }) =>
		step
			? pinsOfAlteration({
					number: numberOf(alteration.id),
					before,
					after,
					touched: step.touched.map(({ feature }) => feature)
				})
			: []
	);
}
