import type { Draft } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { alterationWords, type AlterationAmount, type Intent } from '../words/alteration.ts';
import { targetOfIntent } from './effect.ts';

/** An alteration of an earlier fitting, with the draft that it was carried to. */
export interface EarlierAlteration {
	readonly fitting: string;
	readonly number: number;
	readonly intent: Intent;
	readonly draft: Draft;
	/** “over chemise and corset, pinned by M. Thorne”; may be empty. */
	readonly how: string;
}

/** An earlier alteration as it was told on the draft that it was carried to: plain data. */
export interface EarlierTold {
	/** The seam, edge or dart that it was made to, undivided. */
	readonly target: string;
	readonly key: string;
	readonly who: string;
	readonly words: string;
	readonly amounts: readonly AlterationAmount[];
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

/** Earlier alterations in words; those made to whole pieces are left out, for nothing is held against them. */
export function tellEarlier(earlier: readonly EarlierAlteration[], unit: Unit): readonly EarlierTold[] {
	return earlier.flatMap(({ fitting, number, intent, draft, how }) => {
		const target = targetOfIntent(intent);
		if (target === undefined) return [];
		const { done, sides, amounts } = alterationWords(draft, intent, unit);
		return [
			{
				target,
				key: `${fitting} ${number}`,
				who: `${fitting}, alteration ${number}`,
				words: [done, sides].filter(Boolean).join(', '),
				amounts,
				how
			}
		];
	});
}

/** What earlier fittings did to the same seam, edge or dart, the latest first; and where this alteration undoes it. */
export function earlierWork(
	draft: Draft,
	intent: Intent,
	earlier: readonly EarlierTold[],
	unit: Unit
): readonly EarlierWork[] {
	const now = alterationWords(draft, intent, unit).amounts;
	const target = targetOfIntent(intent);
	return earlier
		.filter((one) => one.target === target)
		.map(({ key, who, words, amounts, how }): EarlierWork => {
			const places = oppositePlaces(now, amounts);
			return { key, who, words, ...(places.length > 0 && { opposite: { places, how } }) };
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
