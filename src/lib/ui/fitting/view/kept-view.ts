import { carry } from '../../../engine/index.ts';
import type { Draft, Query } from '../../../engine/index.ts';
import { carryEach, type CarriedOne } from '../carried/carry-each.ts';
import type { FittingGround, GroundAlteration } from '../ground.ts';

/** Everything that is kept, carried once: it stays while the alteration in the hand changes. */
export interface KeptView {
	readonly ground: FittingGround;
	/** In the order of carrying, those left out included; those not yet received last. */
	readonly alterations: readonly GroundAlteration[];
	/** Those that are carried. */
	readonly standing: readonly GroundAlteration[];
	/** Each of them as it was carried. */
	readonly each: readonly CarriedOne[];
	/** The draft that comes of them. */
	readonly after: Draft;
	/** Asked of that draft, when it is first wanted. */
	readonly queries: () => readonly Query[];
}

/** `waiting`: kept on this device and not yet received; they are carried after those that are. */
export function keptView(ground: FittingGround, waiting: readonly GroundAlteration[] = []): KeptView {
	const alterations = waiting.length > 0 ? [...ground.alterations, ...waiting] : ground.alterations;
	const standing = alterations.filter(({ state }) => state !== 'withdrawn');
	const intents = standing.map(({ intent }) => intent);
	const each = carryEach(ground.base, intents);
	let queries = ground.frozen?.queries;
	return {
		ground,
		alterations,
		standing,
		each,
		after: ground.frozen?.after ?? each[each.length - 1]?.after ?? ground.base,
		queries: () => (queries ??= carry(ground.base, intents, ground.checks).queries)
	};
}
