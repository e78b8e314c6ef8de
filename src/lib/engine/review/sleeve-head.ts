import { seamRun, type SeamSide } from '../draft/seam.ts';
import type { Draft, Seam } from '../draft/types.ts';

/** The side of a seam that is of a limb where the other is of the body: a sleeve head set into its armhole. */
export function sleeveSide(draft: Draft, seam: Seam): SeamSide | undefined {
	if (seam.b === 'mirror') return undefined;
	const limb = (side: SeamSide) => seamRun(draft, seam, side).every(({ piece }) => piece.limb);
	if (limb('a') === limb('b')) return undefined;
	return limb('b') ? 'b' : 'a';
}

export function isSleeveHead(draft: Draft, seam: Seam): boolean {
	return sleeveSide(draft, seam) !== undefined;
}
