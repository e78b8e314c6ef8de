import { levelsOf } from '../../../engine/index.ts';
import type { Draft } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { bareKey, bustLinesOffered } from '../across/bust-slash.ts';
import { depthHere, type DepthHere } from '../across/depth-here.ts';
import { inSentence } from '../casing.ts';
import { edgeOf, pieceOf, seamOf } from '../feature-names.ts';
import { furtherPlaces, type PlaceOffered } from '../place/places-offered.ts';
import type { Target } from '../targets.ts';
import { lengthTyped, type Typed } from '../typed.ts';
import { layerNames } from '../words/seam.ts';
import {
	bustPointOf,
	edgePlacesOffered,
	levelsAlong,
	marksOn,
	sidewaysOf,
	type Named,
	type Sideways
} from './mark-places.ts';

/** A point that is marked on a piece, as its form shows it. */
export interface PointInHand {
	readonly of: 'piece';
	/** Whether there is a bust point to be moved. */
	readonly bustPoint: boolean;
	/** Places of all its edges, and the one to begin with. */
	readonly places: readonly Named[];
	readonly usual?: string;
	readonly sideways?: Sideways;
	readonly marks: readonly Named[];
}

/** A notch on a seam. */
export interface NotchInHand {
	readonly of: 'seam';
	readonly places: readonly Named[];
	/** “Under-arm”, “Front”; one where the seam is sewn to its own mirror image. */
	readonly layers: readonly string[];
}

/** Buttons, buttonholes or a notch along an open edge. */
export interface AlongMarkInHand {
	readonly of: 'edge';
	readonly places: readonly Named[];
	/** Where it is fullest, if the edge is met by a bust line. */
	readonly fullest: readonly Named[];
	readonly usualFullest?: string;
	/** The cloth beyond the centre line, typed; a button is set that far in. */
	readonly lap?: string;
}

export type MarkInHand = PointInHand | NotchInHand | AlongMarkInHand;

export function markInHand(draft: Draft, target: Target, unit: Unit): MarkInHand {
	if (target.of === 'seam') {
		const places = named(furtherPlaces(draft, { of: 'seam', id: target.id }, [], unit));
		const mirror = seamOf(draft, target.id)!.b === 'mirror';
		return { of: 'seam', places, layers: mirror ? [] : layerNames(draft, target.id) };
	}
	if (target.of === 'edge') {
		const fullest = levelsAlong(draft, target.id, unit);
		const bust = fullest.find(({ value }) => value === 'level:bust')?.value;
		const { lap } = edgeOf(draft, target.id)!.edge;
		return {
			of: 'edge',
			places: named(furtherPlaces(draft, { of: 'edge', id: target.id }, [], unit)),
			fullest,
			...(bust !== undefined && { usualFullest: bust }),
			...(lap > 0 && { lap: lengthTyped(lap, unit) })
		};
	}
	const piece = pieceOf(draft, target.id)!;
	const places = edgePlacesOffered(draft, piece, unit);
	const sideways = sidewaysOf(draft, piece);
	const level = levelsOf(draft).find((one) => places.some(({ value }) => value.endsWith(`|level:${one}`)));
	const usual = places.find(
		({ value, label }) =>
			value.endsWith(`|level:${level}`) && (!sideways || inSentence(label).startsWith(sideways.centre))
	);
	return {
		of: 'piece',
		bustPoint: bustPointOf(piece) !== undefined,
		places,
		...(usual && { usual: usual.value }),
		...(sideways && { sideways }),
		marks: marksOn(piece)
	};
}

const named = (places: readonly PlaceOffered[]): readonly Named[] =>
	places.map(({ key, name }) => ({ value: key, label: name }));

/** A slash for the bust, as its form shows it. */
export interface BustInHand {
	readonly hinges: readonly Named[];
	readonly hinge: string;
	readonly sides: readonly Named[];
	readonly side: string;
	readonly canLengthenCentre: boolean;
	readonly depth: DepthHere;
	/** “Front armhole”, “Front side”. */
	readonly names: { readonly hinge: string; readonly side: string };
}

export function bustInHand(draft: Draft, id: string, typed: Typed, unit: Unit): BustInHand | undefined {
	const offered = bustLinesOffered(draft, id, unit);
	if (!offered) return undefined;
	const [hinge, side] = [bareKey(offered.hinge), bareKey(offered.side)];
	const withUsual = (places: readonly PlaceOffered[], key: string, label: string) =>
		places.some((one) => one.key === key) ? named(places) : [{ value: key, label }, ...named(places)];
	return {
		hinges: withUsual(offered.hinges, hinge, offered.hingeName),
		hinge,
		sides: withUsual(offered.sides, side, offered.sideName),
		side,
		canLengthenCentre: offered.centre !== undefined,
		depth: depthHere(typed, unit),
		names: offered.names
	};
}
