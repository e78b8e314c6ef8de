import type { Alteration } from '../../engine/index.ts';
import { pinsOfCuts } from '../drawing/pins-of-cuts.ts';
import type { PinOnDrawing } from '../drawing/scene.ts';
import { pinsOfCarried, type CarriedOne } from './carry-each.ts';

type Of<K extends Alteration['kind']> = Extract<Alteration, { kind: K }>;

/** Kinds whose pins do not stand where an edge or a dart moved. */
const pinners: Readonly<Record<string, ((one: CarriedOne, number: number) => readonly PinOnDrawing[]) | undefined>> = {
	spread: ({ alteration, before }, number) => {
		const { cuts, on } = alteration as Of<'spread'>;
		return pinsOfCuts(number, before, cuts, on);
	}
};

/** The pins of alterations that were carried, each with its number, for the drawing; in the order of carrying. */
export function pinsOfEach(
	carried: readonly CarriedOne[],
	numberOf: (alteration: string) => number
): readonly PinOnDrawing[] {
	return carried.flatMap((one) => {
		const pinner = pinners[one.alteration.kind];
		if (!pinner) return pinsOfCarried([one], numberOf);
		return one.step ? pinner(one, numberOf(one.alteration.id)) : [];
	});
}
