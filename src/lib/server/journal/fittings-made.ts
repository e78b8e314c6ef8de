import type { CheckOptions } from '../engine.ts';
import { alterationsOf } from './alterations.ts';
import { fittingName, fittingsOf } from './fittings.ts';
import type { Fitting } from './records.ts';
import type { Store } from './store.ts';
import { findFoundation } from './wearers.ts';

/** This fitting and those that were carried before it, with what still stands of them: so that a check can tell where they disagree. */
export function fittingsMade(store: Store, fitting: Fitting): Pick<CheckOptions, 'fitting' | 'earlier'> {
	const until = fitting.closedAt ?? '~';
	return {
		fitting: madeAs(store, fitting),
		earlier: fittingsOf(store, fitting.garment)
			.filter(({ id, carriedInto, closedAt }) => id !== fitting.id && carriedInto !== null && closedAt! < until)
			.map((one) => ({
				...madeAs(store, one),
				alterations: alterationsOf(store, one.id)
					.filter(({ state, withdrawal }) => state === 'standing' && withdrawal === null)
					.map(({ intent }) => intent)
			}))
	};
}

/** “fitting 1”, “over chemise and corset, pinned by M. Thorne” */
function madeAs(store: Store, fitting: Fitting) {
	const over = fitting.foundation === null ? undefined : findFoundation(store, fitting.foundation)?.name;
	const how = [over && `over ${over}`, fitting.pinnedBy && `pinned by ${fitting.pinnedBy}`];
	return { name: fittingName(fitting).toLowerCase(), how: how.filter(Boolean).join(', ') };
}
