import { carry } from '../../../engine/index.ts';
import type { AlterationBase, Draft, Step, Unplaced } from '../../../engine/index.ts';
import { pinsOfAlteration } from '../../drawing/pins-of-alteration.ts';
import type { PinOnDrawing } from '../../drawing/scene.ts';

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

/** The last that was carried to each draft. */
const last = new WeakMap<Draft, { readonly text: string; readonly carried: readonly CarriedOne[] }>();

/** The same of what is in the hand, which is asked for more than once while it is read, drawn and told. */
export function carryInHand(draft: Draft, alterations: readonly AlterationBase[]): readonly CarriedOne[] {
	const text = JSON.stringify(alterations);
	const known = last.get(draft);
	if (known?.text === text) return known.carried;
	const carried = carryEach(draft, alterations);
	last.set(draft, { text, carried });
	return carried;
}

/** The pins of alterations that were carried, each with its number, for the drawing. */
export function pinsOfCarried(
	carried: readonly CarriedOne[],
	numberOf: (alteration: string) => number
): readonly PinOnDrawing[] {
	return carried.flatMap((one) => {
		const number = numberOf(one.alteration.id);
		const known = pinned.get(one);
		if (known?.number === number) return known.pins;
		const pins = pinsOf(one, number);
		pinned.set(one, { number, pins });
		return pins;
	});
}

/** What was carried does not change: its pins are looked for once, not at every step of another. */
const pinned = new WeakMap<CarriedOne, { readonly number: number; readonly pins: readonly PinOnDrawing[] }>();

function pinsOf({ before, after, step }: CarriedOne, number: number): readonly PinOnDrawing[] {
	if (!step) return [];
	return pinsOfAlteration({ number, before, after, touched: step.touched.map(({ feature }) => feature) });
}
