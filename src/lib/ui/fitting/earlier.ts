import type { Draft } from '../../engine/index.ts';
import type { Unit } from '../../measure/units.ts';
import { alterationWords, type AlterationAmount, type Intent } from './alteration-words.ts';
import { sameTarget } from './effect.ts';

/** An alteration of an earlier fitting, with the draft that it was carried to. */
export interface EarlierAlteration {
	readonly fitting: string;
	readonly number: number;
	readonly intent: Intent;
	readonly draft: Draft;
	/** “over chemise and corset, pinned by M. Thorne”; may be empty. */
	readonly how: string;
}

export interface EarlierWork {
	readonly key: string;
	/** “Fitting 1, alteration 2”. */
	readonly who: string;
	/** “took in 1/8″ at the waist, both sides”. */
	readonly words: string;
	/** Where this one goes the other way: what was worn and who pinned then. */
	readonly opposite?: { readonly places: readonly string[]; readonly how: string };
}

/** What earlier fittings did to the same seam, edge or dart, the latest first; and where this alteration undoes it. */
export function earlierWork(
	draft: Draft,
	intent: Intent,
	earlier: readonly EarlierAlteration[],
	unit: Unit
): readonly EarlierWork[] {
	const now = alterationWords(draft, intent, unit).amounts;
	return earlier
		.filter((one) => sameTarget(one.intent, intent))
		.map((one): EarlierWork => {
			const { done, sides, amounts } = alterationWords(one.draft, one.intent, unit);
			const places = oppositePlaces(now, amounts);
			return {
				key: `${one.fitting} ${one.number}`,
				who: `${one.fitting}, alteration ${one.number}`,
				words: [done, sides].filter(Boolean).join(', '),
				...(places.length > 0 && { opposite: { places, how: one.how } })
			};
		})
		.reverse();
}

/** Places where one goes in and the other out. */
function oppositePlaces(now: readonly AlterationAmount[], then: readonly AlterationAmount[]): readonly string[] {
	return now
		.filter(
			({ place, way }) =>
				way !== undefined && then.some((one) => one.place === place && one.way !== undefined && one.way !== way)
		)
		.map(({ place }) => place);
}
