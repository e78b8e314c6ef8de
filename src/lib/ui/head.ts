import type { Unit } from '../measure/units.ts';

export interface Crumb {
	readonly name: string;
	/** Left out for the page itself, which comes last. */
	readonly href?: string;
}

export interface HeadLink {
	readonly name: string;
	readonly href: string;
}

/** What a page's `load` says about itself for the head, the title and the way back. */
export interface HeadData {
	readonly crumbs: readonly Crumb[];
	readonly links?: readonly HeadLink[];
	/** “Kept as you go, 2.32 pm”: a tick and these words. */
	readonly kept?: string;
	/** A pair of links that takes the place of the unit in the head of narrow screens: the wearer's right and left. */
	readonly sides?: readonly (HeadLink & { readonly here?: boolean; readonly side: string; readonly only?: string })[];
	/** Offers “Dim the page”. */
	readonly dim?: boolean;
}

/** What the shell itself needs from every page. */
export interface ShellData {
	readonly unit: Unit;
	readonly dim: boolean;
	readonly head?: HeadData;
}

/** A head of a page that has turned to the other side since it was sent. */
export function turnedTo(head: HeadData, side: string): HeadData {
	return head.sides ? { ...head, sides: head.sides.map((one) => ({ ...one, here: one.side === side })) } : head;
}
