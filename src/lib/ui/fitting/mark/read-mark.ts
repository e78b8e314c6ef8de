import type { InnerPoint, Piece, Point } from '../../../engine/index.ts';
import type { Act } from '../acts.ts';
import { inSentence } from '../casing.ts';
import { pieceOf, wholeName } from '../feature-names.ts';
import type { FieldReader } from '../form/form-parts.ts';
import { innerPlace } from './inner-place.ts';
import { bustPointOf, marksOn, pointFrom, readEdgePlace, sidewaysOf } from './mark-places.ts';
import { readMarkSides, type MarkRead } from './mark-sides.ts';
import type { ActRead, IntentRead } from '../form/read-alteration.ts';
import { readAlongMark } from './read-along-mark.ts';
import { readNotch } from './read-notch.ts';
import { sidesKept } from '../form/read-readings.ts';
import { readPinnedOn } from '../form/sides-read.ts';
import type { Target } from '../targets.ts';

/** What can be done to a piece: its bust point set from an edge or moved from where it was, a mark taken off. */
export const pointActs = ['from-edge', 'moved', 'remove'] as const;

/** Reads a point that was marked: on a piece, along an open edge, or on both sides of a seam. */
export function readMark(_act: Act, target: Target, fields: FieldReader): ActRead | undefined {
	const read =
		target.of === 'seam'
			? readNotch(target, fields)
			: target.of === 'edge'
				? readAlongMark(target, fields)
				: readOnPiece(target, fields);
	if (!read) return undefined;
	const { sides, intents } = read;
	return {
		intents,
		measured: null,
		readings: { pinnedOn: readPinnedOn(fields), sides: sidesKept(sides, false), places: [] }
	};
}

function readOnPiece(target: Target, fields: FieldReader): MarkRead | undefined {
	const piece = pieceOf(fields.draft, target.id)!;
	const done = fields.choice('done', pointActs, 'Say what was done: marked from an edge, moved, or taken off.');
	const sides = readMarkSides(fields);
	const base = { kind: 'mark', on: sides, piece: target.id };
	const intent = done === 'remove' ? readRemoved(piece, base, fields) : readBustPoint(piece, done, base, fields);
	return intent && { sides, intents: [intent] };
}

function readRemoved(piece: Piece, base: IntentRead, fields: FieldReader): IntentRead | undefined {
	const id = fields.text('mark');
	const there = marksOn(piece);
	if (there.some(({ value }) => value === id)) return { ...base, remove: id };
	const names = there.map(({ label }) => inSentence(label)).join(', ');
	return fields.wrong(
		'mark',
		there.length === 0
			? `The ${inSentence(wholeName(piece))} has no marks and no notches to take off.`
			: `Which one? It has: ${names}.`
	);
}

function readBustPoint(
	piece: Piece,
	done: 'from-edge' | 'moved',
	base: IntentRead,
	fields: FieldReader
): IntentRead | undefined {
	const before = bustPointOf(piece);
	const at = done === 'moved' ? readMoved(piece, before?.at, fields) : readFromEdge(piece, fields);
	if (!at) return undefined;
	return before
		? { ...base, move: { id: 'bust-point', to: at } }
		: { ...base, set: { id: 'bust-point', kind: 'bust-point', at } };
}

function readFromEdge(piece: Piece, fields: FieldReader): InnerPoint | undefined {
	const from = readEdgePlace(piece, fields.text('place'));
	if (!from) return fields.wrong('place', 'From which edge, at what place? Choose one of those offered.');
	const offset = fields.length('from', { signed: true }) ?? 0;
	const whole = offset === 0 ? from : { ...from, offset: (from.offset ?? 0) + offset };
	const inward = fields.length('in');
	if (inward === undefined) {
		if (fields.text('in') === '') fields.wrong('in', 'How far in from the edge is it? Write the length.');
		return undefined;
	}
	const point = pointFrom(fields.draft, piece, whole, inward);
	return 'problem' in point ? fields.wrong('from', point.problem) : { from: whole, in: inward };
}

/** Up or down as the piece lies, and towards its centre or its side. */
function readMoved(piece: Piece, before: Point | undefined, fields: FieldReader): InnerPoint | undefined {
	if (!before)
		return fields.wrong(
			'done',
			`The ${inSentence(wholeName(piece))} has no bust point marked yet. Mark it from an edge first.`
		);
	const ways = sidewaysOf(fields.draft, piece);
	const up = fields.length('up') ?? 0;
	const aside = fields.length('aside') ?? 0;
	const upWay = fields.choice('upWay', ['up', 'down'], 'Up or down? Choose one.');
	const asideWay = fields.choice('asideWay', ['in', 'out'], 'Towards the centre or towards the side? Choose one.');
	if (Object.keys(fields.problems).length > 0) return undefined;
	if (up === 0 && aside === 0) return fields.wrong('up', 'By how much was it moved? Write how far up, down or aside.');
	const way = ways?.way ?? 1;
	const [x, y] = before;
	const point: Point = [x + aside * (asideWay === 'in' ? way : -way), y - up * (upWay === 'up' ? 1 : -1)];
	return innerPlace(piece, point, way);
}
