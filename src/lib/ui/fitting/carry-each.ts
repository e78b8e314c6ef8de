import { carry } from '../../engine/index.ts';
import type { Alteration, AlterationBase, Draft, Step, Unplaced } from '../../engine/index.ts';
import { pinsOfAlteration } from '../drawing/pins-of-alteration.ts';
import { pinsOfCuts } from '../drawing/pins-of-cuts.ts';
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
	return carried.flatMap((one) =>
		one.step ? (pinners[one.alteration.kind] ?? throughWhatMoved)(one, numberOf(one.alteration.id)) : []
	);
}

type Pinner = (one: CarriedOne, number: number) => readonly PinOnDrawing[];

const throughWhatMoved: Pinner = ({ before, after, step }, number) =>
	pinsOfAlteration({ number, before, after, touched: step?.touched.map(({ feature }) => feature) ?? [] });

/** Kinds whose pins do not stand where an edge or a dart moved. */
const pinners: Readonly<Record<string, Pinner | undefined>> = {
	spread: ({ alteration, before }, number) => {
		const { cuts, on } = alteration as Extract<Alteration, { kind: 'spread' }>;
		return pinsOfCuts(number, before, cuts, on);
	}
};
