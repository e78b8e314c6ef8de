import type { On, Place } from '../../../engine/index.ts';
import type { Measured } from '../../../measure/fold.ts';
import type { Act } from '../acts.ts';
import { seamOf } from '../feature-names.ts';
import type { FieldReader } from './form-parts.ts';
import { placeKey, readPlaceKey } from '../place/place-key.ts';
import { placeProblem } from '../place/places-offered.ts';
import type { Along } from '../place/place-words.ts';
import type { ActRead, IntentRead } from './read-alteration.ts';
import { hasReadings, readingsTyped, sidesKept, signedReadings, type ReadingsAt } from './read-readings.ts';
import { readPinnedOn, readSides, type Sides } from './sides-read.ts';
import type { Target } from '../targets.ts';
import { layerNames } from '../words/seam.ts';

/** The fields of the amounts of one side: of the first layer and of the second. */
const amountFields = { right: ['amount', 'other'], left: ['left', 'leftOther'] } as const;

/** mm as typed: of the first layer, and of the second where each layer has its own. */
interface Amount {
	readonly first: number;
	readonly second?: number;
}

interface PlaceRead {
	readonly key: string;
	readonly place: Place;
	readonly right?: Amount;
	readonly left?: Amount;
	readonly readings: ReadingsAt;
}

/** Reads what was taken in, let out, moved or chalked along a seam or an edge: amounts at places, one layer or the fold. */
export function readPins(act: Act, target: Target, fields: FieldReader): ActRead | undefined {
	const along: Along = { of: target.of === 'seam' ? 'seam' : 'edge', id: target.id };
	const mirror = along.of === 'seam' && seamOf(fields.draft, along.id)!.b === 'mirror';
	if (mirror && act.key === 'moved-seam')
		return fields.wrong('act', 'A centre seam is sewn to its own mirror image: it is taken in or let out, not moved.');
	const measured = readMeasured(act, along, mirror, fields);
	const sides = readSides(fields);
	const sign = signOf(act, fields);
	const allAlong = fields.text('along') === 'all';
	const later = fields.text('read') === 'later';
	const keys = allAlong ? ['all'] : placeKeysTyped(along, fields);
	const layers = along.of === 'seam' && measured === 'each-layer';
	const places = keys.map((key) => readPlace(key, along, layers, sides === 'each', later, fields));
	const readings = {
		pinnedOn: readPinnedOn(fields),
		sides: sidesKept(sides, fields.text('averaged') === 'yes'),
		places: later ? [] : places.map((place) => keptReadings(place, sign, fields, sides === 'each'))
	};
	const kept = { ...readings, places: readings.places.filter(hasReadings) };
	const how: How = { measured, sign, mirror, allAlong, later };
	if (!later) complain(places, sides === 'each', allAlong, fields);
	return { intents: intentsOf(act, target, places, sides, how), measured, readings: kept };
}

/** One alteration; two where each side has its own amounts, unless one of them moves nothing. */
function intentsOf(act: Act, target: Target, places: readonly PlaceRead[], sides: Sides, how: How): ActRead['intents'] {
	const intent = (on: On) =>
		intentOf(act, target, on, places, on === 'left' && sides === 'each' ? 'left' : 'right', how);
	if (sides !== 'each') return [intent(sides)];
	if (how.later || (moves(places, 'right') && moves(places, 'left'))) return [intent('right'), intent('left')];
	return [intent(moves(places, 'left') ? 'left' : 'right')];
}

const moves = (places: readonly PlaceRead[], side: 'right' | 'left') =>
	places.some(({ [side]: amount }) => amount !== undefined && (amount.first !== 0 || (amount.second ?? 0) !== 0));

function readMeasured(act: Act, along: Along, mirror: boolean, fields: FieldReader): Measured {
	const sentence = 'Say what was measured: one layer, the whole fold, or each layer.';
	if (along.of === 'edge' || act.key === 'moved-seam') return 'one-layer';
	const measured = fields.choice('measured', ['one-layer', 'whole-fold', 'each-layer'], sentence);
	// The two layers of a centre seam are the wearer's right and left: they differ by giving each side its own.
	return mirror && measured === 'each-layer' ? 'one-layer' : measured;
}

/** 1 where what is typed without a sign is cloth added. */
function signOf(act: Act, fields: FieldReader): 1 | -1 {
	if (act.way !== 'said') return act.way === 'out' ? 1 : -1;
	return fields.choice('way', ['in', 'out'], 'Say which way it went.') === 'out' ? 1 : -1;
}

function placeKeysTyped(along: Along, fields: FieldReader): readonly string[] {
	const keys = [...new Set(fields.text('places').split(/\s+/).filter(Boolean))].slice(0, 40);
	for (const key of keys) {
		const place = readPlaceKey(key);
		const problem = place ? placeProblem(fields.draft, along, place) : `“${key.slice(0, 40)}” is no place.`;
		if (problem !== undefined) fields.wrong('places', `${problem} Take that place out, or choose another.`);
	}
	return keys.filter((key) => readPlaceKey(key) !== undefined);
}

function readPlace(
	key: string,
	along: Along,
	layers: boolean,
	each: boolean,
	later: boolean,
	fields: FieldReader
): PlaceRead {
	const place = key === 'all' ? { fraction: 0.5 } : readPlaceKey(key)!;
	if (later) return { key, place, readings: { at: place } };
	const right = readAmount(key, 'right', along, layers, fields);
	const left = each ? readAmount(key, 'left', along, layers, fields) : undefined;
	return {
		key,
		place,
		...(right && { right }),
		...(left && { left }),
		readings: { at: place, ...readingsTyped(fields, key) }
	};
}

function readAmount(
	key: string,
	side: 'right' | 'left',
	along: Along,
	layers: boolean,
	fields: FieldReader
): Amount | undefined {
	const [a, b] = amountFields[side].map((name) => `${name}.${key}`);
	const first = fields.length(a, { signed: true });
	if (!layers) return first === undefined ? undefined : { first };
	const second = fields.length(b, { signed: true });
	if (first === undefined && second === undefined) return undefined;
	if (first !== undefined && second !== undefined) return { first, second };
	const [missing, layer] = first === undefined ? [a, 0] : [b, 1];
	// What was typed wrongly has its own sentence already.
	if (fields.text(missing) === '')
		fields.wrong(
			missing,
			`How much on the ${layerNames(fields.draft, along.id)[layer].toLowerCase()}? Write 0 if nothing.`
		);
	return undefined;
}

/** The readings of a place, or, if none were noted, the amount itself as a reading of the side that was pinned. */
function keptReadings(
	{ place, right, left, readings }: PlaceRead,
	sign: 1 | -1,
	fields: FieldReader,
	each: boolean
): ReadingsAt {
	if (hasReadings(readings)) return { at: place, ...signedReadings(readings, sign) };
	const pinnedOn = readPinnedOn(fields);
	const first: 'right' | 'left' = !each && pinnedOn === 'left' ? 'left' : 'right';
	const asRead = (side: 'right' | 'left', amount: Amount | undefined) =>
		amount
			? { [`${side}A`]: amount.first, ...(amount.second === undefined ? {} : { [`${side}B`]: amount.second }) }
			: {};
	return { at: place, ...signedReadings({ ...asRead(first, right), ...(each ? asRead('left', left) : {}) }, sign) };
}

interface How {
	readonly measured: Measured;
	readonly sign: 1 | -1;
	readonly mirror: boolean;
	readonly allAlong: boolean;
	readonly later: boolean;
}

function intentOf(
	act: Act,
	target: Target,
	on: On,
	places: readonly PlaceRead[],
	side: 'right' | 'left',
	how: How
): IntentRead {
	const seam = target.of === 'seam';
	const base = { kind: seam ? 'seam' : 'edge', on, [seam ? 'seam' : 'edge']: target.id };
	if (how.later) return { ...base, pins: placesOf(places).map((at) => ({ at })) };
	const pins = places
		.filter((place) => place[side] !== undefined)
		.map((place) => ({ at: place.place, ...movesOf(place[side]!, act, seam, how) }));
	return { ...base, pins: how.allAlong ? pins : withEnds(pins, seam, how.mirror) };
}

/** A not yet read seam keeps the places that were shown; it has at least one. */
const placesOf = (places: readonly PlaceRead[]): readonly Place[] =>
	places.length > 0 ? places.map(({ place }) => place) : [{ fraction: 0.5 }];

/** mm per layer, cloth added positive; never −0. */
function movesOf({ first, second = first }: Amount, act: Act, seam: boolean, { measured, sign, mirror }: How) {
	const share = measured === 'whole-fold' ? 0.5 : 1;
	const [a, b] = [first * share * sign || 0, second * share * sign || 0];
	if (!seam) return { move: a };
	if (mirror) return { a };
	return act.key === 'moved-seam' ? { a, b: -a || 0 } : { a, b };
}

/** Both ends are always said: 0 unless something was pinned there. */
function withEnds(pins: readonly { readonly at: Place }[], seam: boolean, mirror: boolean) {
	const still = (end: 'start' | 'finish') =>
		pins.some(({ at }) => placeKey(at) === `end:${end}`)
			? []
			: [{ at: { end }, ...(seam ? (mirror ? { a: 0 } : { a: 0, b: 0 }) : { move: 0 }) }];
	return [...still('start'), ...pins, ...still('finish')];
}

/** What is missing as a whole: an amount somewhere, on each of the sides; readings that were not made an amount. */
function complain(places: readonly PlaceRead[], each: boolean, allAlong: boolean, fields: FieldReader): void {
	if (Object.keys(fields.problems).length > 0) return;
	const unread = places.find(({ right, left, readings }) => !right && !left && hasReadings(readings));
	if (unread) {
		fields.wrong(`amount.${unread.key}`, 'The readings are there, the amount is not: take their average, or write it.');
		return;
	}
	if (moves(places, 'right') || (each && moves(places, 'left'))) return;
	const some = places.some(({ right, left }) => right ?? left);
	fields.wrong(
		'places',
		some && !onlyEnds(places)
			? 'All amounts are 0: nothing would change. Write how much at one place at least.'
			: allAlong
				? 'How much, all along? Write an amount, or keep it as pinned and not yet read.'
				: 'How much, and where? Write an amount at one place at least, or keep it as pinned and not yet read.'
	);
}

const onlyEnds = (places: readonly PlaceRead[]) =>
	places.every(({ place, right, left }) => 'end' in place || (!right && !left));
