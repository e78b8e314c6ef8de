import { dartLegs, findDart, findFoldDart, pathLength } from '../../engine/index.ts';
import type { Draft } from '../../engine/index.ts';
import { directionOf, type Moved } from '../../measure/directions.ts';
import { parseLength } from '../../measure/parse-length.ts';
import { readReadings } from '../../measure/readings.ts';
import type { Unit } from '../../measure/units.ts';
import { lying } from '../drawing/pins-of-alteration.ts';
import { acrossInHand, type AcrossInHand } from './across/across-in-hand.ts';
import { acts, findAct, type Act } from './acts.ts';
import { armholeEdges } from './armhole-edges.ts';
import { atStart, inSentence } from './casing.ts';
import { dartOf, edgeOf, seamOf } from './feature-names.ts';
import { bustInHand, markInHand, type BustInHand, type MarkInHand } from './mark/mark-in-hand.ts';
import { placesOf, furtherPlaces, usualPlaces, type PlaceOffered } from './place/places-offered.ts';
import { readPlaceKeys } from './place/place-key.ts';
import type { Along } from './place/place-words.ts';
import { hasReadings, readingFields } from './form/read-readings.ts';
import { fieldsOf, isThere, targetFields, targetsFor, type NamedTarget, type Target } from './targets.ts';
import { field, type Typed } from './typed.ts';
import { dartIntake } from './words/dart.ts';
import { layerNames } from './words/seam.ts';

export interface PlaceRow {
	readonly key: string;
	/** “Waist line”. */
	readonly name: string;
	/** mm from the start; absent for “all along”. */
	readonly at?: number;
	readonly here: boolean;
	/** mm on the two layers with the act's sign, as far as they can be read: for the little picture. */
	readonly a: number;
	readonly b: number;
	/** What its readings come to. */
	readonly readings?: { readonly sentence?: string; readonly average: number };
}

/** What the hand holds: the act, what it is done to, and its places, as the form shows them. */
export interface Hand {
	readonly act?: Act;
	readonly target?: NamedTarget;
	/** Acts that can be done to the target, where it was chosen first. */
	readonly acts: readonly Act[];
	/** What the act can be done to, where it was chosen first. */
	readonly targets: readonly NamedTarget[];
	readonly pins?: PinsInHand;
	readonly dart?: DartInHand;
	readonly across?: AcrossInHand;
	readonly bust?: BustInHand;
	readonly mark?: MarkInHand;
}

export interface PinsInHand {
	readonly rows: readonly PlaceRow[];
	readonly allAlong: boolean;
	readonly further: readonly PlaceOffered[];
	readonly layers: readonly [string, string];
	/** One layer alone is asked for: an edge, a centre seam, a seam that is only moved. */
	readonly oneLayer: boolean;
	/** A seam, whose fold can be measured whole. */
	readonly fold: boolean;
	/** Which way the amounts go, where the act does not say. */
	readonly ways?: readonly [
		{ readonly value: 'in'; readonly label: string },
		{ readonly value: 'out'; readonly label: string }
	];
}

export interface DartInHand {
	readonly places: readonly PlaceOffered[];
	/** The whole width before, mm, and the length, of a dart that is changed. */
	readonly width?: number;
	readonly length?: number;
	readonly bustPoint: boolean;
	/** A fold inside the piece: it has two points. */
	readonly twoPoints: boolean;
}

/** The target that an address or a form names; undefined where none is named. */
export function targetTyped(typed: Typed): Target | undefined {
	const of = targetFields.find((one) => field(typed, one) !== '');
	return of && { of, id: field(typed, of) };
}

/**
 * The fields with the places of their line: those named, else those that a new alteration begins with; with those that an
 * address adds (`add=level:waist`), or names an amount for.
 */
export function withPlaces(draft: Draft, typed: Typed, unit: Unit): Typed {
	const act = findAct(field(typed, 'act'));
	const target = targetTyped(typed);
	const along = act && target && (act.to === 'seam' || act.to === 'edge') ? alongOf(target) : undefined;
	if (!along || !isThere(draft, target!) || field(typed, 'along') === 'all') return typed;
	const named = readPlaceKeys(typed.places);
	const usual = named.length > 0 ? named : usualPlaces(draft, along, unit).map(({ key }) => key);
	const amounts = Object.keys(typed).flatMap((name) => /^(?:amount|left)\.(.+)$/.exec(name)?.[1] ?? []);
	const added = readPlaceKeys([...amounts, typed.add ?? ''].join(' '));
	const { add: _, ...rest } = typed;
	return { ...rest, places: [...new Set([...usual, ...added])].join(' ') };
}

const alongOf = (target: Target): Along => ({ of: target.of === 'seam' ? 'seam' : 'edge', id: target.id });

/** What the hand holds, from the fields. `draft` is the one that the alteration is carried to. Its target is one of the draft's. */
export function handOf(draft: Draft, typed: Typed, unit: Unit): Hand {
	const act = findAct(field(typed, 'act'));
	const asked = targetTyped(typed);
	const fits = (one: Act) => asked !== undefined && canBeDone(draft, one, asked);
	const target = asked && isThere(draft, asked) && (!act || fits(act)) ? named(draft, asked, act) : undefined;
	return {
		...(act && { act }),
		...(target && { target }),
		acts: asked && target ? acts.filter(fits) : acts,
		targets: act && !target ? targetsFor(draft, act.to) : [],
		...(act &&
			target &&
			(act.to === 'seam' || act.to === 'edge') && { pins: pinsInHand(draft, act, target, typed, unit) }),
		...(act &&
			target &&
			(act.to === 'new-dart' || act.to === 'dart') && { dart: dartInHand(draft, act, target, typed, unit) }),
		...(act && target?.of === 'across' && { across: acrossInHand(draft, act, target.id, typed, unit) }),
		...(act?.to === 'slash' && target?.of === 'piece' && { bust: bustInHand(draft, target.id, typed, unit) }),
		...(act?.to === 'point' && target && { mark: markInHand(draft, target, unit) })
	};
}

function canBeDone(draft: Draft, act: Act, target: Target): boolean {
	if (!fieldsOf[act.to].includes(target.of)) return false;
	return targetsFor(draft, act.to).some(({ id }) => id === target.id);
}

/** As the act in the hand names it. */
function named(draft: Draft, target: Target, act: Act | undefined): NamedTarget | undefined {
	return [...(act ? [act.to] : []), ...(['seam', 'new-dart', 'dart', 'point'] as const)]
		.flatMap((to) => targetsFor(draft, to))
		.find(({ of, id }) => of === target.of && id === target.id);
}

function pinsInHand(draft: Draft, act: Act, target: Target, typed: Typed, unit: Unit): PinsInHand {
	const along = alongOf(target);
	const allAlong = field(typed, 'along') === 'all';
	const keys = readPlaceKeys(typed.places);
	const places = keys.length > 0 ? placesOf(draft, along, keys, unit) : usualPlaces(draft, along, unit);
	const mirror = along.of === 'seam' && seamOf(draft, along.id)!.b === 'mirror';
	const layers: [string, string] = along.of === 'seam' ? [...layerNames(draft, along.id)] : ['', ''];
	const chosen = field(typed, 'here');
	const most = places.some(({ key }) => key === chosen) ? chosen : firstToRead(places, typed);
	const rows = allAlong
		? [row(typed, 'all', 'All along', undefined, true, act, mirror, unit)]
		: places.map(({ key, name, at }) => row(typed, key, name, at, key === most, act, mirror, unit));
	const ways = waysOf(draft, act, target, layers);
	return {
		rows,
		allAlong,
		further: furtherPlaces(
			draft,
			along,
			places.map(({ key }) => key),
			unit
		),
		layers,
		oneLayer: along.of === 'edge' || mirror || act.key === 'moved-seam',
		fold: along.of === 'seam' && act.key !== 'moved-seam',
		...(ways && { ways })
	};
}

/** Where something is pinned already; else the waist if it is there, or the first place that is no end. */
function firstToRead(places: readonly PlaceOffered[], typed: Typed): string | undefined {
	const pinned = places.find(({ key }) => /[1-9]/.test(field(typed, `amount.${key}`)));
	if (pinned) return pinned.key;
	const waist = places.find(({ place }) => 'level' in place && place.level === 'waist');
	return (waist ?? places.find(({ place }) => !('end' in place)) ?? places[0])?.key;
}

function row(
	typed: Typed,
	key: string,
	name: string,
	at: number | undefined,
	here: boolean,
	act: Act,
	mirror: boolean,
	unit: Unit
): PlaceRow {
	const length = (one: string): number | undefined => {
		const text = field(typed, `${one}.${key}`);
		const read = text === '' ? undefined : parseLength(text, unit, { allowNegative: true });
		return read && 'mm' in read ? read.mm : undefined;
	};
	const out = act.way === 'said' ? field(typed, 'way') === 'out' : act.way === 'out';
	const measured = field(typed, 'measured');
	const share = (out ? 1 : -1) * (measured === 'whole-fold' ? 0.5 : 1);
	const first = (length('amount') ?? 0) * share || 0;
	const second = measured === 'each-layer' && !mirror ? (length('other') ?? 0) * share || 0 : first;
	const [a, b] = act.to === 'edge' ? [first, 0] : act.key === 'moved-seam' ? [first, -first || 0] : [first, second];
	const read = Object.fromEntries(readingFields.map((one) => [one, length(one)]));
	const { average, sentence } = readReadings(read, unit);
	return {
		key,
		name,
		...(at !== undefined && { at }),
		here,
		a,
		b,
		...(hasReadings(read) &&
			average !== undefined && { readings: { average, ...(sentence !== undefined && { sentence }) } })
	};
}

/** “Lower · Higher”, “Took off · Added”, “Towards the front · Towards the back”. */
function waysOf(draft: Draft, act: Act, target: Target, [a, b]: readonly [string, string]): PinsInHand['ways'] {
	if (act.way !== 'said') return undefined;
	if (target.of === 'seam')
		return [
			{ value: 'in', label: `Towards the ${inSentence(a)}` },
			{ value: 'out', label: `Towards the ${inSentence(b)}` }
		];
	const moved = act.key === 'open-edge' ? 'open-edge' : lyingMostly(draft, target.id);
	const word = (move: number) => atStart(directionOf(moved, move));
	return [
		{ value: 'in', label: word(-1) },
		{ value: 'out', label: word(1) }
	];
}

/** How an edge is chalked: as a neck or a hem if it lies across anywhere, else as an edge that stands. */
function lyingMostly(draft: Draft, name: string): Moved {
	const { piece, edge } = edgeOf(draft, name)!;
	if (armholeEdges(draft).has(`${piece.id}/${edge.id}`)) return 'armhole';
	const length = pathLength(edge.path);
	const seen = [0.5, 0.1, 0.3, 0.7, 0.9].map((part) => lying(edge, part * length));
	return seen.find((one) => one === 'neck' || one === 'hem') ?? seen[0];
}

function dartInHand(draft: Draft, act: Act, target: Target, typed: Typed, unit: Unit): DartInHand {
	if (act.to === 'new-dart') {
		const along: Along = { of: 'edge', id: target.id };
		const { piece } = edgeOf(draft, target.id)!;
		const offered = furtherPlaces(draft, along, [], unit);
		const own = placesOf(draft, along, readPlaceKeys(typed.at), unit).filter(
			({ key }) => !offered.some((one) => one.key === key)
		);
		return { places: [...own, ...offered], bustPoint: hasBustPoint(piece), twoPoints: false };
	}
	const { piece, whole } = dartOf(draft, target.id)!;
	const dart = findDart(draft, whole)?.dart;
	const fold = findFoldDart(draft, whole)?.foldDart;
	const length = dart && lengthOf(dartLegs(piece, dart).foldAt, dart.point);
	return {
		places: [],
		width: dartIntake(draft, target.id)!,
		...(length !== undefined && { length }),
		bustPoint: hasBustPoint(piece),
		twoPoints: fold !== undefined
	};
}

const hasBustPoint = (piece: { readonly marks: readonly { readonly id: string }[] }) =>
	piece.marks.some(({ id }) => id === 'bust-point');

const lengthOf = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]) =>
	Math.hypot(bx - ax, by - ay);
