/**
 * The one-line shorthand of the fitting room, typed or dictated: `side R in 1/4 waist, 1/8 hip, 0 hem`.
 *
 *     line    = { seam | edge | dart | side | act | measured | "all along" | item | "," | "and" }
 *     item    = amount [place] | place [amount]
 *     place   = level | end | notch | "half way" | amount ("above" | "below") place
 *     side    = R | right | L | left | both
 *     act     = in | out | lower | higher | longer | shorter | forward | backward | wider | narrower, and their usual forms
 *     measured = fold | whole fold | one layer | each layer
 *
 * Seam first or act first, in small letters or capitals, hyphens or spaces. An act holds until the next one. An amount is a
 * length in the user's unit, or with its own mark; `in` straight after an amount is the inch once an act is known. A whole
 * fold is halved. Ends that are not named stay where they are (0): the whole seam moves only on `all along`. Amounts may be
 * left out altogether: pinned, not yet read.
 */
import type { Measured } from './fold.ts';
import type { ShorthandContext, ShorthandProblem } from './shorthand-context.ts';
import { problem } from './shorthand-context.ts';
import { readItems } from './shorthand-items.ts';
import type { ReadItems } from './shorthand-items.ts';
import { placeEntries, readMeanings } from './shorthand-meanings.ts';
import { scanShorthand } from './shorthand-scan.ts';
import { findTarget } from './shorthand-target.ts';
import type { Target } from './shorthand-target.ts';
import { fixedEntries, signOf } from './shorthand-words.ts';
import type { Act, ShorthandPlace } from './shorthand-words.ts';

export type { Nameable, ShorthandContext, ShorthandProblem } from './shorthand-context.ts';
export type { Act, ShorthandPlace } from './shorthand-words.ts';

export interface ShorthandPin {
	readonly place: ShorthandPlace;
	/** On each layer, mm, cloth added positive; absent when it was not read yet. */
	readonly mm?: number;
	readonly act: Act;
	/** An end that was not named: it stays where it is. */
	readonly added: boolean;
}

export interface ShorthandIntent {
	readonly target: { readonly kind: 'seam' | 'edge' | 'dart'; readonly id: string };
	/** Absent when no side was said. */
	readonly on?: 'right' | 'left' | 'both';
	readonly act: Act;
	readonly measured: Measured;
	readonly pins: readonly ShorthandPin[];
	readonly allAlong: boolean;
	/** A dart has no places: the change of its whole width, mm, wider positive. */
	readonly width?: number;
	readonly notRead: boolean;
}

/** Reads one shorthand line against the names of a draft. Refuses, with the place in the line, what it cannot read for certain. */
export function parseShorthand(line: string, context: ShorthandContext): ShorthandIntent | ShorthandProblem {
	const tokens = scanShorthand(line);
	if (tokens.length === 0) return problem('Write what was pinned, such as “side R in 1/4 waist, 0 hem”.', 0);
	const target = findTarget(tokens, context);
	if ('problem' in target) return target;
	const spoken = readMeanings(tokens, [...placeEntries(target.named, context), ...fixedEntries], target);
	if ('problem' in spoken) return spoken;
	const read = readItems(spoken, context.unit, target.named.runs ?? 'down', target.of === 'dart');
	return 'problem' in read ? read : finish(read, target, line);
}

function finish(read: ReadItems, target: Target, line: string): ShorthandIntent | ShorthandProblem {
	const { pinned, on, act, measured, allAlong } = read;
	const end = line.trimEnd().length;
	const base = { target: { kind: target.of, id: target.named.id }, on, measured, allAlong };
	if (act === undefined)
		return problem(
			target.of === 'dart' ? 'Wider or narrower? Write which.' : 'In or out, lower or higher? Write what was done.',
			end
		);
	if (target.of === 'dart') {
		const [first, second] = pinned;
		if (second ?? first?.place) return problem('A dart takes one amount and no place.', (second ?? first).at);
		if (act !== 'wider' && act !== 'narrower') return problem('A dart is made wider or narrower. Write which.', end);
		const width = first?.amount === undefined ? undefined : signed(first.amount, act);
		return { ...base, act, measured: 'one-layer', pins: [], width, notRead: width === undefined };
	}
	if (act === 'wider' || act === 'narrower') return problem(`Only a dart is made ${act}. Write in or out.`, end);
	const share = measured === 'whole-fold' ? 0.5 : 1;
	if (allAlong) {
		const [first, second] = pinned;
		if (second ?? first?.place) return problem('“All along” takes one amount and no place.', (second ?? first).at);
		const mm = first?.amount === undefined ? undefined : signed(first.amount * share, act);
		return { ...base, act, pins: [{ place: { fraction: 0.5 }, mm, act, added: false }], notRead: mm === undefined };
	}
	const homeless = pinned.find(({ place }) => place === undefined);
	if (homeless) return problem('Where? Write a place with this amount, or “all along”.', homeless.at);
	const someRead = pinned.some(({ amount }) => amount !== undefined);
	const unread = pinned.find(({ amount }) => amount === undefined);
	if (someRead && unread) return problem('How much there? Write an amount with this place.', unread.at);
	const twice = pinned.find((pin, at) => pinned.findIndex(({ place }) => alike(place, pin.place)) !== at);
	if (twice) return problem('This place comes twice. Write one amount for it.', twice.at);
	const pins = pinned.map((pin): ShorthandPin => {
		const own = pin.act ?? act;
		const mm = pin.amount === undefined ? undefined : signed(pin.amount * share, own);
		return { place: pin.place ?? { fraction: 0.5 }, mm, act: own, added: false };
	});
	return { ...base, act, pins: someRead ? withEnds(pins, act) : pins, notRead: !someRead };
}

function withEnds(pins: readonly ShorthandPin[], act: Act): readonly ShorthandPin[] {
	const still = (end: 'start' | 'finish'): readonly ShorthandPin[] =>
		pins.some(({ place }) => alike(place, { end })) ? [] : [{ place: { end }, mm: 0, act, added: true }];
	return [...still('start'), ...pins, ...still('finish')];
}

function alike(one: ShorthandPlace | undefined, other: ShorthandPlace | undefined): boolean {
	const text = (place: ShorthandPlace | undefined) => JSON.stringify(Object.entries(place ?? {}).sort());
	return text(one) === text(other);
}

/** Never −0, which would compare unlike 0. */
function signed(amount: number, act: Act): number {
	return amount === 0 ? 0 : amount * signOf(act);
}
