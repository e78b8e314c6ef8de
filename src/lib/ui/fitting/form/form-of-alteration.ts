import type { Alteration, Draft, InnerPoint } from '../../../engine/index.ts';
import type { Measured } from '../../../measure/fold.ts';
import type { Unit } from '../../../measure/units.ts';
import type { Intent } from '../words/alteration.ts';
import { findAct } from '../acts.ts';
import { seamOf } from '../feature-names.ts';
import { spreadFields } from '../across/form-of-across.ts';
import { bustSlashFields } from '../across/form-of-bust-slash.ts';
import { markFields } from '../mark/form-of-mark.ts';
import { placeKey } from '../place/place-key.ts';
import { readingFields, type ReadingsRead } from './read-readings.ts';
import { lengthTyped, type Typed } from '../typed.ts';
import { dartIntake, dartLonger } from '../words/dart.ts';

/** What a form needs of an alteration that is kept, or offered. */
export interface Recorded {
	readonly intent: Intent;
	readonly act?: string;
	readonly measured?: Measured | null;
	readonly readings?: { readonly places: readonly unknown[] };
	readonly note?: string;
	readonly answers?: string | null;
}

type Of<K extends Alteration['kind']> = Extract<Alteration, { kind: K }>;

/** How the fields of each kind are written; others have no form. */
const writers: Readonly<
	Record<string, ((draft: Draft, intent: never, recorded: Recorded, unit: Unit) => Typed | undefined) | undefined>
> = {
	seam: seamFields,
	edge: edgeFields,
	dart: dartFields,
	'dart-set': dartSetFields,
	spread: spreadFields,
	'bust-spread': (draft, intent: Of<'bust-spread'>, _recorded, unit) => bustSlashFields(draft, intent, unit),
	mark: (draft, intent: Of<'mark'>, _recorded, unit) => markFields(draft, intent, unit)
};

/**
 * An alteration as the fields of its form; read again they give the same alteration. `draft` is what it is carried to, before
 * it. Undefined where the form cannot say all of it: then it can be left out and recorded anew, never changed by half.
 */
export function formOfAlteration(draft: Draft, recorded: Recorded, unit: Unit): Typed | undefined {
	const write = writers[recorded.intent.kind];
	const fields = write?.(draft, recorded.intent as never, recorded, unit);
	return fields && { ...fields, note: recorded.note ?? '', answers: recorded.answers ?? '' };
}

/** The act that an intent is, where the record does not say it or says another sort of act. */
function actOf(recorded: Recorded, fitting: readonly string[], otherwise: string): string {
	const kept = findAct(recorded.act)?.key;
	return kept !== undefined && fitting.includes(kept) ? kept : otherwise;
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
const greatest = (numbers: readonly number[]) =>
	numbers.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);

function seamFields(
	draft: Draft,
	{ seam, on, pins, shape }: Of<'seam'>,
	recorded: Recorded,
	unit: Unit
): Typed | undefined {
	if (shape === 'straight') return undefined;
	const mirror = seamOf(draft, seam)?.b === 'mirror';
	const layers = pins.map(({ a = 0, b = 0 }) => [a, mirror ? a : b] as const);
	const moved = layers.every(([a, b]) => Math.abs(a + b) < 1e-9) && layers.some(([a]) => a !== 0);
	const unlike = layers.some(([a, b]) => Math.abs(a - b) > 1e-9);
	const total = greatest(layers.map(sum));
	const act = moved
		? 'moved-seam'
		: actOf(recorded, ['took-in', 'let-out'], total > 0 ? 'let-out' : total < 0 ? 'took-in' : 'took-in');
	const way = greatest(layers.map(([a]) => a)) > 0 ? 'out' : 'in';
	const sign = (act === 'moved-seam' ? way === 'out' : act === 'let-out') ? 1 : -1;
	const measured: Measured = moved ? 'one-layer' : unlike ? 'each-layer' : usualMeasured(recorded.measured);
	const times = sign * (measured === 'whole-fold' ? 2 : 1);
	const read = pins.some(({ a, b }) => a !== undefined || b !== undefined);
	const allAlong = read && pins.length === 1;
	const amounts = pins.flatMap(({ at, a, b }) => {
		const key = allAlong ? 'all' : placeKey(at);
		if (!read) return [];
		const second = measured === 'each-layer' ? [[`other.${key}`, lengthTyped((b ?? 0) * times, unit)]] : [];
		return [[`amount.${key}`, lengthTyped((a ?? 0) * times, unit)], ...second];
	});
	return {
		act,
		seam,
		sides: on,
		measured,
		...(act === 'moved-seam' && { way }),
		...(allAlong ? { along: 'all' } : { places: pins.map(({ at }) => placeKey(at)).join(' ') }),
		...Object.fromEntries(amounts),
		...readingsFields(recorded, Object.fromEntries(amounts), sign, unit)
	};
}

/** A seam whose layers are alike was not measured layer by layer, whatever the record says. */
const usualMeasured = (measured: Measured | null | undefined): Measured =>
	measured === 'whole-fold' ? 'whole-fold' : 'one-layer';

function edgeFields(
	draft: Draft,
	{ edge, on, pins, shape }: Of<'edge'>,
	recorded: Recorded,
	unit: Unit
): Typed | undefined {
	if (shape === 'straight') return undefined;
	const moves = pins.map(({ move = 0 }) => move);
	const way = greatest(moves) > 0 ? 'out' : 'in';
	const sign = way === 'out' ? 1 : -1;
	const read = pins.some(({ move }) => move !== undefined);
	const allAlong = read && pins.length === 1;
	const amounts = Object.fromEntries(
		read
			? pins.map(({ at, move = 0 }) => [`amount.${allAlong ? 'all' : placeKey(at)}`, lengthTyped(move * sign, unit)])
			: []
	);
	return {
		act: actOf(recorded, ['chalked', 'open-edge'], 'chalked'),
		edge,
		sides: on,
		way,
		...(allAlong ? { along: 'all' } : { places: pins.map(({ at }) => placeKey(at)).join(' ') }),
		...amounts,
		...readingsFields(recorded, amounts, sign, unit)
	};
}

/** Readings that say more than the amounts themselves. */
function readingsFields(recorded: Recorded, amounts: Typed, sign: 1 | -1, unit: Unit): Typed {
	const places = (recorded.readings as ReadingsRead | undefined)?.places ?? [];
	const fields = places.flatMap((reading) => {
		const key = placeKey(reading.at);
		const typed = readingFields
			.filter((name) => reading[name] !== undefined)
			.map((name) => [`${name}.${key}`, lengthTyped(reading[name]! * sign || 0, unit)] as const);
		const [[, first] = ['', undefined]] = typed;
		const onlyAmount = typed.length === 1 && first === amounts[`amount.${key}`];
		const bothLayers =
			typed.length === 2 && first === amounts[`amount.${key}`] && typed[1][1] === amounts[`other.${key}`];
		return onlyAmount || bothLayers ? [] : typed;
	});
	return Object.fromEntries(fields);
}

function dartFields(
	_draft: Draft,
	{ edge, on, at, intake, point }: Of<'dart'>,
	recorded: Recorded,
	unit: Unit
): Typed | undefined {
	const measured = recorded.measured === 'one-layer' ? 'one-layer' : 'whole-fold';
	const pointed = point && pointFields(edge, point, unit);
	if (point && !pointed) return undefined;
	return {
		act: 'new-dart',
		edge,
		sides: on,
		at: placeKey(at),
		measured,
		...(intake !== undefined && { width: lengthTyped(measured === 'one-layer' ? intake / 2 : intake, unit) }),
		...pointed
	};
}

function pointFields(edge: string, point: InnerPoint, unit: Unit): Typed | undefined {
	if ('mark' in point)
		return { pointBy: 'mark', mark: point.mark, ...(point.short && { short: lengthTyped(point.short, unit) }) };
	if ('from' in point)
		return point.from.edge === edge ? { pointBy: 'in', length: lengthTyped(point.in, unit) } : undefined;
	return undefined;
}

function dartSetFields(
	draft: Draft,
	{ dart, on, intake, point }: Of<'dart-set'>,
	recorded: Recorded,
	unit: Unit
): Typed | undefined {
	const pointed = point ? newPointFields(draft, dart, point, unit) : {};
	if (!pointed) return undefined;
	const measured = recorded.measured === 'one-layer' ? 'one-layer' : 'whole-fold';
	const width =
		intake === undefined
			? { by: point ? 'keep' : 'wider' }
			: widthFields(intake, dartIntake(draft, dart), measured, unit);
	return { act: 'changed-dart', dart, sides: on, measured, ...width, ...pointed };
}

/** To a width that can be written plainly, or else wider or narrower than it was. */
function widthFields(intake: number, before: number | undefined, measured: Measured, unit: Unit): Typed {
	if (intake === 0) return { by: 'out' };
	const typed = (mm: number) => lengthTyped(measured === 'one-layer' ? mm / 2 : mm, unit);
	const change = intake - (before ?? intake);
	const isPlain = !/\.\d/.test(typed(intake));
	if (isPlain || change === 0) return { by: 'to', width: typed(intake) };
	return { by: change > 0 ? 'wider' : 'narrower', width: typed(Math.abs(change)) };
}

function newPointFields(draft: Draft, name: string, point: InnerPoint, unit: Unit): Typed | undefined {
	if ('mark' in point) return { pointBy: 'mark', ...(point.short && { short: lengthTyped(point.short, unit) }) };
	const longer = dartLonger(draft, name, point);
	if (longer === undefined) return undefined;
	return { pointBy: longer > 0 ? 'longer' : 'shorter', length: lengthTyped(Math.abs(longer), unit) };
}
