import { dartLegs, findDart, undividedName } from '../../../engine/index.ts';
import type { Dart, EdgePlace, InnerPoint, On, Piece } from '../../../engine/index.ts';
import { formatLength } from '../../../measure/format-length.ts';
import type { Act } from '../acts.ts';
import { inSentence } from '../casing.ts';
import { dartOf } from '../feature-names.ts';
import type { Target } from '../targets.ts';
import { dartIntake } from '../words/dart.ts';
import type { FieldReader } from './form-parts.ts';
import type { ActRead, IntentRead } from './read-alteration.ts';
import { dartReadings, intentsOnSides, readDartMeasured, readWidths, type Widths } from './read-dart.ts';
import { readSides } from './sides-read.ts';

/** What is done to its width, and to its point. */
export const widthChanges = ['wider', 'narrower', 'to', 'out', 'keep'] as const;
export const pointChanges = ['stay', 'longer', 'shorter', 'mark'] as const;

/** Reads a changed dart: wider, narrower, to a width, or out; longer, shorter, or short of a mark. */
export function readDartSet(_act: Act, target: Target, fields: FieldReader): ActRead | undefined {
	const by = fields.choice('by', widthChanges, 'Say what was done to its width.');
	const measured = readDartMeasured(fields);
	const sides = readSides(fields);
	const later = fields.text('read') === 'later';
	const asks = !later && (by === 'wider' || by === 'narrower' || by === 'to');
	const typed: Widths = asks ? readWidths(sides, measured, fields) : {};
	const before = dartIntake(fields.draft, target.id)!;
	const widths: Widths = later
		? {}
		: {
				right: widthAfter(by, before, typed.right, fields, 'width'),
				...(sides === 'each' && { left: widthAfter(by, before, typed.left, fields, 'leftWidth') })
			};
	const point = later || by === 'out' ? undefined : readNewPoint(target, fields);
	const nothing = widths.right === undefined && widths.left === undefined && !point;
	if (!later && nothing && Object.keys(fields.problems).length === 0)
		fields.wrong('by', 'Neither its width nor its point changes. Say what was done to it.');
	const intent = (on: On, intake: number | undefined): IntentRead => ({
		kind: 'dart-set',
		dart: target.id,
		on,
		...(intake !== undefined && { intake }),
		...(point && { point })
	});
	const intents =
		by === 'out' || sides !== 'each'
			? ([intent(sides === 'each' ? 'both' : sides, widths.right)] as const)
			: intentsOnSides(sides, widths, intent);
	const readings = asks ? dartReadings({ fraction: 0.5 }, sides, measured, typed, fields) : noReadings(fields);
	return { intents, measured: asks ? measured : null, readings: { ...readings, places: asks ? readings.places : [] } };
}

const noReadings = (fields: FieldReader): ActRead['readings'] =>
	dartReadings({ fraction: 0.5 }, 'both', 'whole-fold', {}, fields);

/** The whole width that it is to have, mm; undefined where it is kept. */
function widthAfter(
	by: (typeof widthChanges)[number],
	before: number,
	typed: number | undefined,
	fields: FieldReader,
	name: string
): number | undefined {
	if (by === 'keep') return undefined;
	if (by === 'out') return 0;
	if (typed === undefined) return undefined;
	if (by === 'to') return typed;
	const after = by === 'wider' ? before + typed : before - typed;
	// A hair under nothing is a dart narrowed by the whole of its rounded width.
	if (after >= 0.05) return after;
	if (after > -0.8) return 0;
	const wide = formatLength(before, fields.unit, { denominator: 16 }).text;
	return fields.wrong(
		name,
		`This dart is ${wide} wide: it cannot be made narrower by more. Write less, or take it out.`
	);
}

function readNewPoint(target: Target, fields: FieldReader): InnerPoint | undefined {
	const by = fields.choice('pointBy', pointChanges, 'Say what was done to its point.');
	if (by === 'stay') return undefined;
	const { piece, whole } = dartOf(fields.draft, target.id)!;
	const found = findDart(fields.draft, whole);
	if (!found)
		return fields.wrong('pointBy', 'A fold inside a piece has two points: take it out and pin it anew to move them.');
	const { dart } = found;
	if (by === 'mark') {
		if (!piece.marks.some(({ id }) => id === 'bust-point'))
			return fields.wrong(
				'pointBy',
				`The ${inSentence(piece.name)} has no bust point marked. Make it longer or shorter by a length.`
			);
		return { mark: 'bust-point', toward: mouthOf(piece, dart), short: fields.length('short') ?? 0 };
	}
	const length = fields.length('length');
	if (length === undefined || length === 0) {
		if (length === 0 || fields.text('length') === '')
			fields.wrong('length', `How much ${by}? Write by how much its point moves.`);
		return undefined;
	}
	const { foldAt } = dartLegs(piece, dart);
	const [dx, dy] = [dart.point[0] - foldAt[0], dart.point[1] - foldAt[1]];
	const now = Math.hypot(dx, dy);
	if (by === 'shorter' && length >= now - 1)
		return fields.wrong(
			'length',
			`This dart is ${formatLength(now, fields.unit).text} long: it cannot be made shorter by that. Write less.`
		);
	const k = (now + (by === 'longer' ? length : -length)) / now;
	return [foldAt[0] + dx * k, foldAt[1] + dy * k];
}

/** Where a dart opens, as a place on its edge: stitched, so that mouths before it are stepped over. */
function mouthOf(piece: Piece, dart: Dart): EdgePlace {
	const before = piece.darts.filter(({ edge, to }) => edge === dart.edge && to <= dart.from);
	const stitched = before.reduce((at, { from, to }) => at - (to - from), dart.from);
	return { edge: undividedName(`${piece.id}/${dart.edge}`), end: 'start', offset: stitched };
}
