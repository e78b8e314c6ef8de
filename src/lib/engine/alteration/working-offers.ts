import { floorToTape } from '../draft/say.ts';
import type { Draft } from '../draft/types.ts';
import type { Refusal } from './refusal.ts';
import { isRefused } from './refusal.ts';
import { kindOf } from './registry.ts';
import type { AlterationBase, Outcome } from './types.ts';

/** How often the share of an amount is halved in search of the greatest that works: it is found to 1/32 of what was asked. */
const halvings = 5;

/**
 * The offers of a refusal that can really be carried. If there are none, the alteration with the greatest share of its amounts
 * that works, as far as the tape has a mark for it: found by halving, as if less always worked where more does.
 */
export function workingOffers(
	draft: Draft,
	alteration: AlterationBase,
	{ why, settle }: Refusal,
	carryOne: (draft: Draft, alteration: AlterationBase) => Outcome
): readonly AlterationBase[] {
	const works = (one: AlterationBase) => !isRefused(carryOne(draft, one));
	const offers = settle.filter(works);
	const { scaled } = kindOf(alteration);
	if (offers.length > 0 || why !== 'refused' || !scaled) return offers;
	const asked = greatestOf(scaled(alteration, 0), alteration);
	let found = 0;
	for (let step = 1 / 2; step >= 1 / 2 ** halvings; step /= 2)
		if (works(scaled(alteration, found + step))) found += step;
	if (found === 0) return [];
	const shown = floorToTape(asked * found);
	if (shown > 0) {
		const onTape = scaled(alteration, shown / asked);
		if (works(onTape)) return [onTape];
	}
	return [scaled(alteration, found)];
}

/** The greatest number, without sign, that is one thing in the one and another in the other. */
function greatestOf(one: unknown, other: unknown): number {
	if (typeof one === 'number' && typeof other === 'number') return one === other ? 0 : Math.abs(other);
	if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return 0;
	return Math.max(
		0,
		...Object.entries(other).map(([field, value]) => greatestOf((one as Record<string, unknown>)[field], value))
	);
}
