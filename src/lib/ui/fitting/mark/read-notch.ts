import { undividedName } from '../../../engine/index.ts';
import type { EdgePlace, Place } from '../../../engine/index.ts';
import { seamOf } from '../feature-names.ts';
import type { FieldReader } from '../form/form-parts.ts';
import { freeMarkId, onSideOfSeam, pieceOfEdge } from './mark-places.ts';
import { placeKey, readPlaceKey } from '../place/place-key.ts';
import { placeProblem } from '../place/places-offered.ts';
import type { IntentRead } from '../form/read-alteration.ts';
import { readMarkSides, type MarkRead } from './mark-sides.ts';
import type { Along } from '../place/place-words.ts';
import type { Target } from '../targets.ts';

/** Both pieces of the seam, or one of them. */
export const notchedPieces = ['both', 'a', 'b'] as const;

/** As the engine wants ids: what a kept form brings back is looked at again. */
const plainId = /^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/;
const plainName = /^[^/\s]{1,80}\/[^/\s]{1,80}$/;

/** Reads a notch on a seam: on both its pieces at one place, each knowing the other; or on one piece alone. */
export function readNotch(target: Target, fields: FieldReader): MarkRead | undefined {
	const { draft } = fields;
	const seam = seamOf(draft, target.id)!;
	const place = readNotchPlace({ of: 'seam', id: target.id }, fields);
	const asked = fields.choice('pieces', notchedPieces, 'On both pieces, or on one? Choose one.');
	const on = readMarkSides(fields);
	if (!place || Object.keys(fields.problems).length > 0) return undefined;
	const key = placeKey(place);
	const wanted = seam.b === 'mirror' ? (['a'] as const) : asked === 'both' ? (['a', 'b'] as const) : ([asked] as const);
	const places = wanted.map((side) => onSideOfSeam(draft, target.id, side, key));
	const wrong = places.find((one): one is { problem: string } => 'problem' in one);
	if (wrong) return fields.wrong('at', wrong.problem);
	const [first, second] = places as readonly EdgePlace[];
	const id =
		idTyped(fields) ??
		freeMarkId(
			[first, second].flatMap((at) => (at ? [pieceOfEdge(draft, at.edge)] : [])),
			'notch'
		);
	const mate = fields.text('mate');
	const one = notchIntent(on, id, first, plainName.test(mate) ? mate : undefined);
	if (!second) return { sides: on, intents: [one] };
	const met = `${first.edge.split('/')[0]}/${id}`;
	return { sides: on, intents: [one, notchIntent(on, id, second, met)] };
}

export function notchIntent(on: MarkRead['sides'], id: string, at: EdgePlace, mate?: string): IntentRead {
	return {
		kind: 'mark',
		on,
		piece: undividedName(at.edge.split('/')[0]),
		notch: { id, at, ...(mate !== undefined && { mate }) }
	};
}

export function idTyped(fields: FieldReader): string | undefined {
	const id = fields.text('id');
	return plainId.test(id) ? id : undefined;
}

/** The place chosen, so far from it towards the end (negative: the start) of its line. */
export function readNotchPlace(along: Along, fields: FieldReader, name = 'at', from = 'from'): Place | undefined {
	const place = readPlaceKey(fields.text(name));
	if (!place) return fields.wrong(name, 'At what place? Choose one of those offered.');
	const more = fields.length(from, { signed: true });
	const offset = (place.offset ?? 0) + (more ?? 0);
	const { offset: _, ...base } = place;
	const whole = (offset === 0 ? base : { ...base, offset }) as Place;
	const problem = placeProblem(fields.draft, along, whole);
	return problem === undefined ? whole : fields.wrong(more === undefined ? name : from, problem);
}
