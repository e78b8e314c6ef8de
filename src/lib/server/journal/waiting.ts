import { alterationsOf, waitingForPlace } from './alterations.ts';
import { fittingsOf } from './fittings.ts';
import { handsOf } from './hands.ts';
import { currentLining } from './lining.ts';
import { observationsOf } from './observations.ts';
import type { Waiting } from './pages.ts';
import type { Fitting, Garment, Toile, VersionSummary } from './records.ts';
import type { Store } from './store.ts';
import { toilesOf } from './toiles.ts';
import { latestVersion } from './versions.ts';

/** What a garment waits for, most pressing first: open fittings, then what is unsettled, then the next step of its life. */
export function waitingOn(store: Store, garment: Garment): readonly Waiting[] {
	const latest = latestVersion(store, garment.id);
	const fittings = fittingsOf(store, garment.id);
	const open = fittings.filter(({ closedAt }) => closedAt === null);
	const unplaced = waitingForPlace(store, garment.id);
	const count = latest.unsettled.filter(({ severity }) => severity !== 'note').length;
	return [
		...open.map((fitting) => openFitting(store, garment, fitting)),
		...(unplaced.length > 0 ? [{ garment, what: 'unplaced', alterations: unplaced } as const] : []),
		...(count > 0 ? [{ garment, what: 'queries', version: latest, count } as const] : []),
		...(open.length > 0 ? [] : nextStep(store, garment, latest, fittings))
	];
}

const pressing: readonly Waiting['what'][] = [
	'fitting-open',
	'unplaced',
	'queries',
	'toile-to-fit',
	'toile-to-cut',
	'lining-to-choose'
];

/** What waits on several garments, most pressing first; of one kind, in the order of the garments. */
export function mostPressingFirst(waiting: readonly Waiting[]): readonly Waiting[] {
	return pressing.flatMap((what) => waiting.filter((one) => one.what === what));
}

function openFitting(store: Store, garment: Garment, fitting: Fitting): Waiting {
	const states = alterationsOf(store, fitting.id).map(({ state }) => state);
	return {
		garment,
		what: 'fitting-open',
		fitting,
		standing: states.filter((state) => state === 'standing').length,
		notRead: states.filter((state) => state === 'not-read').length,
		openObservations: observationsOf(store, fitting.id).filter(({ stillOpen }) => stillOpen).length,
		inHand: [...new Set(handsOf(store, fitting.id).map(({ number }) => number))]
	};
}

/** A toile to fit, else one to cut or restitch from the latest version, else the lining to choose; nothing once it is chosen. */
function nextStep(
	store: Store,
	garment: Garment,
	latest: VersionSummary,
	fittings: readonly Fitting[]
): readonly Waiting[] {
	const toiles = toilesOf(store, garment.id);
	const toFit = toiles.filter((toile) => canBeFitted(toile) && !wasFitted(toile, fittings));
	if (toFit.length > 0) return toFit.map((toile) => ({ garment, what: 'toile-to-fit', toile }));
	if (currentLining(store, garment.id)?.version === latest.number) return [];
	if (toiles.some(({ stitchedTo }) => stitchedTo === latest.number) || latest.number > 0)
		return [{ garment, what: 'lining-to-choose', version: latest }];
	return [{ garment, what: 'toile-to-cut', version: latest }];
}

const canBeFitted = ({ state }: Toile) => ['cut', 'put-together', 'restitched'].includes(state);

const wasFitted = ({ id, stitchedTo }: Toile, fittings: readonly Fitting[]) =>
	fittings.some(({ toile, on, closedAt }) => toile === id && on === stitchedTo && closedAt !== null);
