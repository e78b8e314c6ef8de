import { undividedName } from '../../../engine/index.ts';
import type { Alteration, Draft, EdgePlace } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { placeKey } from '../place/place-key.ts';
import { lengthTyped, type Typed } from '../typed.ts';
import { bareKey, bustLinesOffered } from './bust-slash.ts';

type BustSpread = Extract<Alteration, { kind: 'bust-spread' }>;

/** The fields of a slash for the bust; undefined where it runs along lines that the form does not offer. */
export function bustSlashFields(draft: Draft, intent: BustSpread, unit: Unit): Typed | undefined {
	const piece = undividedName(intent.piece);
	const offered = bustLinesOffered(draft, piece, unit);
	if (!offered || !('mark' in intent.point) || intent.point.mark !== 'bust-point') return undefined;
	const same = (one: EdgePlace | undefined, other: EdgePlace | undefined) =>
		one?.edge === other?.edge && (!one || !other || rounded(one) === rounded(other));
	if (!same(intent.base, offered.base) || (intent.centre && !same(intent.centre, offered.centre))) return undefined;
	if (intent.hinge.edge !== offered.hinge.edge || intent.dart.edge !== offered.side.edge) return undefined;
	return {
		act: 'slashed',
		piece,
		sides: intent.on,
		bust: (intent.gap ?? 0) < 0 ? 'smaller' : 'fuller',
		drawn: 'yes',
		hinge: bareKey(intent.hinge),
		opens: bareKey(intent.dart),
		...(intent.centre && { centre: 'yes' }),
		...(intent.gap !== undefined && { first: lengthTyped(Math.abs(intent.gap), unit) })
	};
}

/** To a hundredth of a millimetre. */
function rounded({ edge: _, ...place }: EdgePlace): string {
	return placeKey(place.offset === undefined ? place : { ...place, offset: Math.round(place.offset * 100) / 100 });
}
