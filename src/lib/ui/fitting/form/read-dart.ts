import type { InnerPoint, On, Place } from '../../../engine/index.ts';
import type { Measured } from '../../../measure/fold.ts';
import type { Act } from '../acts.ts';
import { inSentence } from '../casing.ts';
import { edgeOf } from '../feature-names.ts';
import { readPlaceKey } from '../place/place-key.ts';
import { placeProblem } from '../place/places-offered.ts';
import type { Target } from '../targets.ts';
import type { FieldReader } from './form-parts.ts';
import type { ActRead, IntentRead } from './read-alteration.ts';
import { sidesKept } from './read-readings.ts';
import { readPinnedOn, readSides, type Sides } from './sides-read.ts';

/** How a dart's width was measured: the whole of it, or from its fold line to one leg. */
const dartMeasured = ['whole-fold', 'one-layer'] as const;

/** Reads a new dart: where on its edge, how wide, and its point. */
export function readDart(_act: Act, target: Target, fields: FieldReader): ActRead | undefined {
	const at = readDartPlace(target, fields);
	const measured = readDartMeasured(fields);
	const sides = readSides(fields);
	const later = fields.text('read') === 'later';
	const widths = later ? {} : readWidths(sides, measured, fields);
	const point = at && readPoint(target, at, fields, later);
	if (!at) return undefined;
	if (!later && widths.right === 0 && (widths.left ?? 0) === 0)
		fields.wrong('width', 'A dart 0 wide is none. Write how wide it was pinned.');
	const base = { kind: 'dart', edge: target.id, at, ...(point && { point }) };
	const intent = (on: On, intake: number | undefined): IntentRead => ({
		...base,
		on,
		...(intake !== undefined && { intake })
	});
	return {
		intents: intentsOnSides(sides, widths, intent),
		measured,
		readings: dartReadings(at, sides, measured, widths, fields)
	};
}

function readDartPlace(target: Target, fields: FieldReader): Place | undefined {
	const key = fields.text('at');
	if (key === '') return fields.wrong('at', 'Where does it open on this edge? Choose a place.');
	const place = readPlaceKey(key);
	if (!place) return fields.wrong('at', `“${key.slice(0, 40)}” is no place. Choose one of those offered.`);
	const from = fields.length('from', { signed: true });
	const offset =
		from === undefined || from === 0 ? {} : { offset: from * (fields.text('toward') === 'start' ? -1 : 1) };
	const whole: Place = { ...place, ...offset };
	const problem = placeProblem(fields.draft, { of: 'edge', id: target.id }, whole);
	return problem === undefined ? whole : fields.wrong('at', problem);
}

export function readDartMeasured(fields: FieldReader): Measured {
	return fields.choice('measured', dartMeasured, 'Say what was measured: the whole width, or one leg from the fold.');
}

export interface Widths {
	readonly right?: number;
	readonly left?: number;
}

/** Whole widths in mm, of the right (or both) and of the left. */
export function readWidths(sides: Sides, measured: Measured, fields: FieldReader): Widths {
	const whole = (name: string): number | undefined => {
		const mm = fields.length(name);
		if (mm !== undefined) return measured === 'one-layer' ? 2 * mm : mm;
		if (fields.text(name) === '')
			fields.wrong(name, 'How wide? Write the width, or keep it as pinned and not yet read.');
		return undefined;
	};
	return { right: whole('width'), ...(sides === 'each' && { left: whole('leftWidth') }) };
}

/** The alterations for the sides asked for, from the widths of each. */
export function intentsOnSides(
	sides: Sides,
	widths: Widths,
	intent: (on: On, width: number | undefined) => IntentRead
): ActRead['intents'] {
	if (sides !== 'each') return [intent(sides, widths.right)];
	if (widths.right === 0) return [intent('left', widths.left)];
	if (widths.left === 0) return [intent('right', widths.right)];
	return [intent('right', widths.right), intent('left', widths.left)];
}

/** The width as it was read, negative: a dart takes cloth away. */
export function dartReadings(
	at: Place,
	sides: Sides,
	measured: Measured,
	{ right, left }: Widths,
	fields: FieldReader
): ActRead['readings'] {
	const asRead = (mm: number) => -(measured === 'one-layer' ? mm / 2 : mm) || 0;
	const pinnedOn = readPinnedOn(fields);
	const first = sides !== 'each' && pinnedOn === 'left' ? 'leftA' : 'rightA';
	const reading = {
		...(right === undefined ? {} : { [first]: asRead(right) }),
		...(left === undefined ? {} : { leftA: asRead(left) })
	};
	const places = Object.keys(reading).length > 0 ? [{ at, ...reading }] : [];
	return { pinnedOn, sides: sidesKept(sides, false), places };
}

/** The point: so far in from the edge, or short of a mark of the piece, coming from the place. */
function readPoint(target: Target, at: Place, fields: FieldReader, later: boolean): InnerPoint | undefined {
	const by = fields.choice('pointBy', ['in', 'mark'], 'Say where its point is: so far in, or short of a mark.');
	const from = { edge: target.id, ...at };
	if (by === 'in') {
		const length = fields.length('length');
		if (length === undefined || length === 0) {
			if (!later && (length === 0 || fields.text('length') === ''))
				fields.wrong('length', 'How long? Write how far in from the edge its point is.');
			return undefined;
		}
		return { from, in: length };
	}
	const piece = edgeOf(fields.draft, target.id)!.piece;
	const mark = fields.text('mark') || 'bust-point';
	if (!piece.marks.some(({ id }) => id === mark))
		return fields.wrong(
			'pointBy',
			`The ${inSentence(piece.name)} has no ${mark.replaceAll('-', ' ')} marked. Write how far in the point is.`
		);
	return { mark, toward: from, short: fields.length('short') ?? 0 };
}
