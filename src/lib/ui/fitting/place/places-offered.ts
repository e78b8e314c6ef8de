import { findPlaceOnSeam, levelsOf, remembered } from '../../../engine/index.ts';
import type { Draft, Place } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { seamOf } from '../feature-names.ts';
import { placeKey, readPlaceKey } from './place-key.ts';
import { notchesAlong, placeName, positionOf, type Along } from './place-words.ts';

/** A place on a seam or an edge, as its row shows it. */
export interface PlaceOffered {
	readonly key: string;
	readonly place: Place;
	/** “Waist line”. */
	readonly name: string;
	/** mm along the stitched line from its start. */
	readonly at: number;
}

/** Two places nearer than this are one to the hand, mm. */
const near = 20;
/** Nearer than this they are one place, mm. */
const samePlace = 1;

/** Why a place is not on a seam (on either of its sides) or an edge; undefined where it is. */
export function placeProblem(draft: Draft, along: Along, place: Place): string | undefined {
	const found = positionOf(draft, along, place);
	if ('problem' in found) return found.problem;
	const seam = along.of === 'seam' ? seamOf(draft, along.id) : undefined;
	if (!seam || seam.b === 'mirror') return undefined;
	const other = findPlaceOnSeam(draft, seam.id, 'b', place);
	return 'problem' in other ? other.problem : undefined;
}

/** A place that is there, with its name and where it is; undefined where it is not. */
export function placeOffered(draft: Draft, along: Along, place: Place, unit: Unit): PlaceOffered | undefined {
	if (placeProblem(draft, along, place) !== undefined) return undefined;
	const found = positionOf(draft, along, place);
	if ('problem' in found) return undefined;
	return { key: placeKey(place), place, name: placeName(draft, along, place, unit), at: found.at };
}

/** The rows that a new alteration begins with: both ends, every balance line that crosses, and half way where nothing is near it. */
export function usualPlaces(draft: Draft, along: Along, unit: Unit): readonly PlaceOffered[] {
	const firm = offered(draft, along, [{ end: 'start' }, ...levelPlaces(draft, along), { end: 'finish' }], unit);
	const half = placeOffered(draft, along, { fraction: 0.5 }, unit);
	const apart = firm.length < 5 && half && firm.every(({ at }) => Math.abs(at - half.at) > near);
	return inOrder(apart ? [...firm, half] : firm);
}

/** Every other place that can be asked for by name: notches, half and quarters, balance lines. */
export function furtherPlaces(
	draft: Draft,
	along: Along,
	taken: readonly string[],
	unit: Unit
): readonly PlaceOffered[] {
	return everyPlace(draft, along, unit).filter(({ key }) => !taken.includes(key));
}

const known = remembered((_: Draft) => new Map<string, readonly PlaceOffered[]>());

/** Asked for at each step of a pin, and the same until something else is kept, or taken in the hand. */
function everyPlace(draft: Draft, along: Along, unit: Unit): readonly PlaceOffered[] {
	const line = [along.of, along.id, unit].join(' ');
	const found = known(draft).get(line) ?? findEveryPlace(draft, along, unit);
	known(draft).set(line, found);
	return found;
}

function findEveryPlace(draft: Draft, along: Along, unit: Unit): readonly PlaceOffered[] {
	const all: readonly Place[] = [
		{ end: 'start' },
		{ end: 'finish' },
		...levelPlaces(draft, along),
		...notchesAlong(draft, along).map((notch) => ({ notch })),
		...[0.25, 0.5, 0.75].map((fraction) => ({ fraction }))
	];
	const there = offered(draft, along, all, unit);
	// A notch on the waist line is the waist line: one place is offered once, by its first name.
	return inOrder(there.filter(({ at }, i) => !there.slice(0, i).some((one) => Math.abs(one.at - at) < samePlace)));
}

/** The places of these keys that are there, in order along the line. */
export function placesOf(draft: Draft, along: Along, keys: readonly string[], unit: Unit): readonly PlaceOffered[] {
	const places = keys.map(readPlaceKey).filter((place) => place !== undefined);
	return inOrder(offered(draft, along, places, unit));
}

function offered(draft: Draft, along: Along, places: readonly Place[], unit: Unit): readonly PlaceOffered[] {
	return places.map((place) => placeOffered(draft, along, place, unit)).filter((place) => place !== undefined);
}

const inOrder = (places: readonly PlaceOffered[]) => [...places].sort((one, other) => one.at - other.at);

/** Balance lines that cross; one that crosses more than once is counted from the start. */
function levelPlaces(draft: Draft, along: Along): readonly Place[] {
	return levelsOf(draft).flatMap((level): readonly Place[] => {
		if (placeProblem(draft, along, { level }) === undefined) return [{ level }];
		return [1, 2, 3].map((nth) => ({ level, nth })).filter((place) => placeProblem(draft, along, place) === undefined);
	});
}
