import type { Draft, Place } from '../../../engine/index.ts';
import { formatLength } from '../../../measure/format-length.ts';
import type { Unit } from '../../../measure/units.ts';
import { inSentence } from '../casing.ts';
import { placeAsBound, placeInSentence, placeName, positionOf, type Along } from '../place/place-words.ts';
import type { AlterationAmount } from './told.ts';

/** One pin with its act in words: the verb, then how much, then the way onto what. */
export interface SaidPin {
	readonly at: Place;
	/** mm, the greatest of its layers without sign. */
	readonly size: number;
	/** “took in”, “moved”, “chalked lower”; empty where nothing was moved. */
	readonly verb: string;
	/** After the amount: “towards the front”. */
	readonly after: string;
	readonly amount: Omit<AlterationAmount, 'place'>;
}

/** An amount as sentences say it, without a sign. */
export const sayLength = (mm: number, unit: Unit) => formatLength(mm, unit, { denominator: 16, sign: 'never' }).text;

/**
 * The pins of a seam or an edge in one run of words: for each act its greatest amount and where that is, “took in 1/4″ at the
 * waist”, “took in 1/8″ from the bust to the waist”, “let out 1/8″ all along”. Pins that move nothing are not told.
 */
export function sayPins(draft: Draft, along: Along, pins: readonly SaidPin[], unit: Unit): string {
	const ordered = inOrder(draft, along, pins);
	const verbs = [...new Set(ordered.filter(({ size }) => size > 0).map(({ verb, after }) => `${verb}|${after}`))];
	if (verbs.length === 0) return 'left as it is';
	return verbs
		.map((key) => {
			const one = ordered.filter(({ verb, after, size }) => `${verb}|${after}` === key && size > 0);
			const most = Math.max(...one.map(({ size }) => size));
			const { verb, after } = one[0];
			const amount = [verb, sayLength(most, unit), after].filter(Boolean).join(' ');
			const where = whereMost(draft, along, ordered, key, most, unit);
			// A place that begins with a length would run into the amount.
			return /^\d/.test(where) ? `${amount}, ${where}` : `${amount} ${where}`;
		})
		.join(', ');
}

function whereMost(
	draft: Draft,
	along: Along,
	ordered: readonly SaidPin[],
	key: string,
	most: number,
	unit: Unit
): string {
	const isMost = ({ verb, after, size }: SaidPin) => `${verb}|${after}` === key && Math.abs(size - most) < 1e-6;
	if (ordered.every(isMost)) return 'all along';
	const first = ordered.findIndex(isMost);
	const run = ordered.slice(first).findIndex((pin) => !isMost(pin));
	const last = run < 0 ? ordered.length - 1 : first + run - 1;
	const say = (index: number) => placeInSentence(draft, along, ordered[index].at, unit);
	if (last === first) return say(first);
	const bound = (index: number) => placeAsBound(draft, along, ordered[index].at, unit);
	return `from ${bound(first)} to ${bound(last)}`;
}

function inOrder(draft: Draft, along: Along, pins: readonly SaidPin[]): readonly SaidPin[] {
	const found = pins.map((pin) => {
		const position = positionOf(draft, along, pin.at);
		return { pin, at: 'problem' in position ? Infinity : position.at };
	});
	return found.sort((one, other) => one.at - other.at).map(({ pin }) => pin);
}

/** The pins as a list of amounts, in order along the line. */
export function listPins(
	draft: Draft,
	along: Along,
	pins: readonly SaidPin[],
	unit: Unit
): readonly AlterationAmount[] {
	return inOrder(draft, along, pins).map(({ at, amount }) => ({ place: placeName(draft, along, at, unit), ...amount }));
}

/** “off the front”, “onto the back”. */
export function layerWords(mm: number, piece: string): string {
	return `${mm < 0 ? 'off' : 'onto'} the ${inSentence(piece)}`;
}
