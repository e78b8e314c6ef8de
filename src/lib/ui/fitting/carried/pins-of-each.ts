import { findDart } from '../../../engine/index.ts';
import type { Alteration } from '../../../engine/index.ts';
import { pinsOfAlteration } from '../../drawing/pins-of-alteration.ts';
import { pinsOfCuts } from '../../drawing/pins-of-cuts.ts';
import { pinsOfMarks } from '../../drawing/pins-of-marks.ts';
import type { PinOnDrawing } from '../../drawing/scene.ts';
import { pinsOfCarried, type CarriedOne } from './carry-each.ts';

type Of<K extends Alteration['kind']> = Extract<Alteration, { kind: K }>;

/** Kinds whose pins do not stand where an edge or a dart moved. */
const pinners: Readonly<Record<string, ((one: CarriedOne, number: number) => readonly PinOnDrawing[]) | undefined>> = {
	spread: ({ alteration, before }, number) => {
		const { cuts, on } = alteration as Of<'spread'>;
		return pinsOfCuts(number, before, cuts, on);
	},
	'bust-spread': ({ alteration, before, after, step }, number) => {
		const { base, gap = 0, on } = alteration as Of<'bust-spread'>;
		const cut = { from: base, to: base, gapFrom: gap, gapTo: 0 };
		const below = pinsOfCuts(number, before, [cut], on).map((pin) => ({
			...pin,
			word: gap < 0 ? 'narrower' : 'wider'
		}));
		const darts = touchedBy(step).filter((name) => findDart(after, name));
		return [...below, ...pinsOfAlteration({ number, before, after, touched: darts })];
	},
	mark: ({ before, after, step }, number) => pinsOfMarks(number, before, after, touchedBy(step))
};

const touchedBy = (step: CarriedOne['step']) => step?.touched.map(({ feature }) => feature) ?? [];

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
