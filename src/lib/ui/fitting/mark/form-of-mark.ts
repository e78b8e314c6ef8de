import { findPlace, seamRun, seamsOf, undividedName } from '../../../engine/index.ts';
import type { Alteration, Draft, EdgePlace, Place } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { edgeOf, pieceOf } from '../feature-names.ts';
import { edgePlacesOffered, edgePlaceValue } from './mark-places.ts';
import { placeKey } from '../place/place-key.ts';
import { furtherPlaces } from '../place/places-offered.ts';
import { lengthTyped, type Typed } from '../typed.ts';
import type { Along } from '../place/place-words.ts';

type Mark = Extract<Alteration, { kind: 'mark' }>;

/** The fields of a marked point; undefined where the form cannot say it: bare coordinates, a mark of another kind. */
export function markFields(draft: Draft, intent: Mark, unit: Unit): Typed | undefined {
	const { piece: name, on, set, move, notch, remove, buttonholes } = intent;
	const piece = undividedName(name);
	const base = { act: 'marked', sides: on };
	if (remove !== undefined) return { ...base, piece, done: 'remove', mark: undividedName(remove) };
	if (notch) return { ...base, ...notchFields(draft, notch, unit) };
	if (buttonholes) return { ...base, ...buttonholeFields(draft, buttonholes, unit) };
	if (set?.kind === 'button') return buttonFields(draft, base, set, unit);
	const isBustPoint = set ? set.id === 'bust-point' && set.kind === 'bust-point' : move?.id === 'bust-point';
	const at = set ? set.at : move?.to;
	if (!isBustPoint || !at || !('from' in at)) return undefined;
	// A bust point that is there is moved, one that is not is set: the draft says which.
	const there = pieceOf(draft, piece)?.marks.some(({ id }) => undividedName(id) === 'bust-point');
	if (there !== (move !== undefined)) return undefined;
	const offered = edgePlacesOffered(draft, pieceOf(draft, piece)!, unit).map(({ value }) => value);
	const { edge, ...place } = at.from;
	const split = beside(place as Place, (key) => offered.includes(`${edge.split('/')[1]}|${key}`), unit);
	return {
		...base,
		piece,
		done: 'from-edge',
		place: edgePlaceValue({ edge, ...split.place } as EdgePlace),
		...(split.from !== undefined && { from: split.from }),
		in: lengthTyped(at.in, unit)
	};
}

/** A place that is offered by name with how far from it the one meant lies; as it is where none is. */
function beside(
	place: Place,
	isOffered: (key: string) => boolean,
	unit: Unit
): { readonly place: Place; readonly from?: string } {
	const { offset, ...base } = place;
	if (offset === undefined || isOffered(placeKey(place)) || !isOffered(placeKey(base as Place))) return { place };
	return { place: base as Place, from: lengthTyped(offset, unit) };
}

function besideOn(draft: Draft, along: Along, place: Place, unit: Unit) {
	const keys = furtherPlaces(draft, along, [], unit).map(({ key }) => key);
	return beside(place, (key) => keys.includes(key), unit);
}

function placeFields(draft: Draft, along: Along, place: Place, unit: Unit, at = 'at', from = 'from'): Typed {
	const split = besideOn(draft, along, place, unit);
	return { [at]: placeKey(split.place), ...(split.from !== undefined && { [from]: split.from }) };
}

/** A notch on a seam by that seam and the piece that it is on; one on an open edge by the edge. */
function notchFields(draft: Draft, { id, at, mate }: NonNullable<Mark['notch']>, unit: Unit): Typed {
	const { edge, ...place } = at;
	const kept = { id, ...(mate !== undefined && { mate }) };
	const found = edgeOf(draft, edge);
	const name = found && `${found.piece.id}/${found.edge.id}`;
	const [sewn] = name === undefined ? [] : seamsOf(draft, name);
	const position = name === undefined ? undefined : findPlace(draft, name, place as Place);
	if (!sewn || !position || 'problem' in position)
		return { edge, what: 'notch', ...placeFields(draft, { of: 'edge', id: edge }, place as Place, unit), ...kept };
	const walked = seamRun(draft, sewn.seam, sewn.side).find((one) => one.name === name)!;
	const along = walked.startsAt + (walked.reversed ? walked.length - position.stitched : position.stitched);
	const onSeam: Place =
		'level' in place && place.nth === undefined
			? { level: place.level, ...(place.offset && { offset: walked.reversed ? -place.offset : place.offset }) }
			: { end: 'start', offset: Number(along.toFixed(6)) };
	const seam = undividedName(sewn.seam.id);
	const of = { of: 'seam', id: seam } as const;
	return { seam, pieces: sewn.side, ...placeFields(draft, of, onSeam, unit), ...kept };
}

function buttonFields(draft: Draft, base: Typed, { id, at }: NonNullable<Mark['set']>, unit: Unit): Typed | undefined {
	if (!('from' in at)) return undefined;
	const { edge, ...place } = at.from;
	const lap = edgeOf(draft, edge)?.edge.lap;
	return {
		...base,
		edge,
		what: 'button',
		...placeFields(draft, { of: 'edge', id: edge }, place as Place, unit),
		id,
		...(at.in !== lap && { in: lengthTyped(at.in, unit) })
	};
}

function buttonholeFields(draft: Draft, holes: NonNullable<Mark['buttonholes']>, unit: Unit): Typed {
	const along = { of: 'edge', id: holes.edge } as const;
	const { count, spacing, button, fullest } = holes;
	return {
		edge: holes.edge,
		what: 'buttonholes',
		id: holes.id,
		...placeFields(draft, along, holes.first, unit, 'firstAt', 'firstFrom'),
		...placeFields(draft, along, holes.last, unit, 'lastAt', 'lastFrom'),
		fullest: fullest ? placeKey(fullest) : 'none',
		...(count !== undefined && { share: 'count', count: String(count) }),
		...(spacing !== undefined && { share: 'spacing', spacing: lengthTyped(spacing, unit) }),
		...(button && { diameter: lengthTyped(button.diameter, unit), thickness: lengthTyped(button.thickness, unit) }),
		direction: holes.direction,
		rule: holes.rule
	};
}
