import { levelsOf, pathLength } from '../../../engine/index.ts';
import type { Draft } from '../../../engine/index.ts';
import { parseShorthand, type ShorthandContext, type ShorthandIntent } from '../../../measure/shorthand.ts';
import type { Nameable, ShorthandPin, ShorthandProblem } from '../../../measure/shorthand.ts';
import type { Unit } from '../../../measure/units.ts';
import { lying } from '../../drawing/pins-of-alteration.ts';
import { edgeOf, levelName, seamOf } from '../feature-names.ts';
import { placeKey } from '../place/place-key.ts';
import { endNames, notchesAlong, runsDown, type Along } from '../place/place-words.ts';
import { dartTargets, edgeTargets, seamTargets } from '../targets.ts';
import { lengthTyped, type Typed } from '../typed.ts';
import { layerNames } from '../words/seam.ts';

/** One line of shorthand as the fields of the form, to be seen and changed before it is kept; or why it is not understood. */
export function readShorthandLine(
	draft: Draft,
	line: string,
	unit: Unit
): { readonly typed: Typed } | ShorthandProblem {
	const read = parseShorthand(line, shorthandContext(draft, unit));
	if ('problem' in read) return read;
	const sides: Typed = read.on === undefined ? {} : { sides: read.on };
	if (read.target.kind === 'dart') return { typed: { ...dartFields(read, unit), ...sides } };
	const typed = read.target.kind === 'seam' ? seamFields(draft, read, unit) : edgeFields(draft, read, unit);
	return { typed: { ...typed, ...sides } };
}

/** The names of a draft as a line may say them. */
export function shorthandContext(draft: Draft, unit: Unit): ShorthandContext {
	const nameable = (along: Along, name: string, also: readonly string[]): Nameable => {
		const { start, finish } = endNames(draft, along);
		return {
			id: along.id,
			name,
			also,
			ends: { start: [start], finish: [finish] },
			runs: runsDown(draft, along) ? 'down' : 'up'
		};
	};
	const edges = edgeTargets(draft, (kind) => kind !== 'fold');
	const plain = edges.map(({ id }) => edgeOf(draft, id)!.edge.name.toLowerCase());
	const seams = seamTargets(draft);
	return {
		unit,
		seams: seams.map(({ id, name }) => nameable({ of: 'seam', id }, name, [id.replaceAll('-', ' ')])),
		edges: edges
			.filter(({ id }) => edgeOf(draft, id)!.edge.kind === 'open')
			.map(({ id, name }) => {
				const { edge, piece } = edgeOf(draft, id)!;
				const alone = plain.filter((one) => one === edge.name.toLowerCase()).length === 1;
				return nameable({ of: 'edge', id }, name, [`${edge.name} ${piece.name}`, ...(alone ? [edge.name] : [])]);
			}),
		darts: dartTargets(draft).map(({ id, name }) => ({ id, name })),
		levels: levelsOf(draft).map((level) => ({ level, name: levelName(level) })),
		notches: [...new Set(seams.flatMap(({ id }) => notchesAlong(draft, { of: 'seam', id })))]
	};
}

function seamFields(draft: Draft, { target, act, measured, pins, allAlong }: ShorthandIntent, unit: Unit): Typed {
	const moved = act === 'forward' || act === 'backward';
	const kept = moved ? 'moved-seam' : takesAway(pins, act) ? 'took-in' : 'let-out';
	const forward = moved ? towardsFront(draft, target.id) : undefined;
	const way = forward && (act === 'forward' ? forward : forward === 'out' ? 'in' : 'out');
	const sign = kept === 'took-in' ? -1 : 1;
	return {
		act: kept,
		seam: target.id,
		measured: moved ? 'one-layer' : measured,
		...(way && { way }),
		// A seam moved forward or back is written as so much, whichever way that is.
		...amountFields(
			pins,
			allAlong,
			(mm) => (moved ? Math.abs(mm) : mm * sign) * (measured === 'whole-fold' ? 2 : 1),
			unit
		)
	};
}

function edgeFields(draft: Draft, { target, act, pins, allAlong }: ShorthandIntent, unit: Unit): Typed {
	const { edge } = edgeOf(draft, target.id)!;
	const open = lying(edge, pathLength(edge.path) / 2) === 'open-edge';
	const away = takesAway(pins, act);
	return {
		act: open ? 'open-edge' : 'chalked',
		edge: target.id,
		way: away ? 'in' : 'out',
		...amountFields(pins, allAlong, (mm) => (away ? -mm : mm), unit)
	};
}

function dartFields({ target, act, width }: ShorthandIntent, unit: Unit): Typed {
	return {
		act: 'changed-dart',
		dart: target.id,
		by: act === 'narrower' ? 'narrower' : 'wider',
		measured: 'whole-fold',
		...(width !== undefined && { width: lengthTyped(Math.abs(width), unit) })
	};
}

function amountFields(
	pins: readonly ShorthandPin[],
	allAlong: boolean,
	asTyped: (mm: number) => number,
	unit: Unit
): Typed {
	const key = (pin: ShorthandPin) => (allAlong ? 'all' : placeKey(pin.place));
	const amounts = pins
		.filter(({ mm }) => mm !== undefined)
		.map((pin) => [`amount.${key(pin)}`, lengthTyped(asTyped(pin.mm!) || 0, unit)]);
	return {
		...(allAlong ? { along: 'all' } : { places: pins.map((pin) => placeKey(pin.place)).join(' ') }),
		...Object.fromEntries(amounts)
	};
}

/** Whether most of what was pinned takes cloth away; of pins without amounts, what the act says. */
function takesAway(pins: readonly ShorthandPin[], act: ShorthandIntent['act']): boolean {
	const most = pins.reduce((greatest, { mm = 0 }) => (Math.abs(mm) > Math.abs(greatest) ? mm : greatest), 0);
	return most === 0 ? ['in', 'lower', 'shorter'].includes(act) : most < 0;
}

/**
 * Which way a seam's line goes when it is moved to the front of the wearer: `out` onto the piece of side b. By the names of the
 * two pieces; undefined where they do not say.
 */
function towardsFront(draft: Draft, id: string): 'in' | 'out' | undefined {
	if (seamOf(draft, id)?.b === 'mirror') return undefined;
	const [a, b] = layerNames(draft, id).map(farBack);
	if (a === b) return undefined;
	return a > b ? 'out' : 'in';
}

/** How far back on the body a piece of that name lies. */
function farBack(name: string): number {
	const words = name.toLowerCase().split(/[^a-z]+/);
	if (words.includes('front')) return 0;
	if (!words.includes('back')) return 1;
	return words.length > 1 ? 2 : 3;
}
