import type { Draft, On } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';

/** What one alteration did at one place. */
export interface AlterationAmount {
	/** “Waist line”; empty where the whole thing has one amount. */
	readonly place: string;
	/** mm on one layer (side a), or across a dart; cloth added positive. */
	readonly mm: number;
	/** mm on the other layer, where it differs. */
	readonly other?: number;
	/** Cloth taken away, or added; neither where nothing was moved, or as much was added as taken. */
	readonly way?: 'in' | 'out';
	/** “in”, “out”, “lower”, “wider”, “towards the front”. */
	readonly word: string;
}

/** What a teller says of one alteration. */
export interface Told {
	/** “Side seam”, “New dart, front armhole”. */
	readonly subject: string;
	/** “took in 1/4″ at the waist”; undefined while it is not read. */
	readonly done?: string;
	/** “both sides”, “right side only”; undefined where sides mean nothing. */
	readonly sides?: string;
	readonly amounts: readonly AlterationAmount[];
}

/** Says one kind of alteration in words; `draft` is what it is carried to, before it. */
export type Teller<Intent> = (draft: Draft, intent: Intent, unit: Unit) => Told;

/** “both sides”, “right side only”; for sleeves “both sleeves”. */
export function sidesInWords(on: On | undefined, limb = false): string {
	if (on === undefined || on === 'both') return limb ? 'both sleeves' : 'both sides';
	return limb ? `${on} sleeve only` : `${on} side only`;
}
