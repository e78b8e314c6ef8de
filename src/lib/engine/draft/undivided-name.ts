import { remembered } from '../geometry/memo.ts';
import type { Seam } from './types.ts';

/** A name without its sides: `front@left/side` is `front/side`, `back/side@right` is `back/side`. Works on plain ids too. */
export function undividedName(name: string): string {
	return name.includes('@') ? name.replace(/@(left|right)(?=\/|$)/g, '') : name;
}

/** The side of the wearer that a name says, in its piece or in its own id; undefined for an undivided one. */
export function sideOfName(name: string): 'left' | 'right' | undefined {
	const match = /@(left|right)(?=\/|$)/.exec(name);
	return match ? (match[1] as 'left' | 'right') : undefined;
}

/** The same of a seam, which is asked for at every alteration. */
export const undividedSeam: (seam: Seam) => string = remembered((seam: Seam) => undividedName(seam.id));
