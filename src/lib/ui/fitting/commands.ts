import type { Unit } from '../../measure/units.ts';
import { inch } from '../../measure/units.ts';
import { parseLength } from '../../measure/parse-length.ts';
import { readReadings } from '../../measure/readings.ts';
import { placeKey, readPlaceKey, readPlaceKeys } from './place/place-key.ts';
import { readingFields } from './form/read-readings.ts';
import { field, lengthTyped, type Typed } from './typed.ts';

/** One press of − or +: a sixteenth between the ticks of the rule, or a millimetre. */
export const stepOf = (unit: Unit): number => (unit === 'in' ? inch / 16 : 1);

/** What the buttons of a form ask for, as `do` says it: the word, then what it is about. */
const commands: Readonly<Record<string, (typed: Typed, about: string, unit: Unit) => Typed>> = {
	/** `up:amount.level:waist` */
	up: (typed, name, unit) => stepped(typed, name, stepOf(unit), unit),
	down: (typed, name, unit) => stepped(typed, name, -stepOf(unit), unit),
	/** `set:3.175:amount.level:waist` */
	set: (typed, about, unit) => {
		const [, mm, name] = /^(\d{1,4}(?:\.\d{1,9})?):(.+)$/.exec(about) ?? [];
		return name === undefined ? typed : { ...typed, [name]: lengthTyped(Number(mm), unit), here: keyOf(name) };
	},
	here: (typed, key) => ({ ...typed, here: key }),
	drop: (typed, key) => withoutPlace(typed, key),
	add: (typed, _about, unit) => withPlace(typed, unit),
	average: (typed, _about, unit) => withAverages(typed, unit),
	halve: (typed, _about, unit) => halved(typed, unit)
};

/**
 * The fields as they are after a button of the form that only changes the form: a step, a place added or taken out, averages
 * taken. An unknown command changes nothing. `do` and the fields of adding a place are gone afterwards.
 */
export function afterCommand(typed: Typed, unit: Unit): Typed {
	const [, word, about = ''] = /^([a-z]+)(?::(.*))?$/.exec(field(typed, 'do')) ?? [];
	const act = word !== undefined && Object.hasOwn(commands, word) ? commands[word] : undefined;
	const { do: _, ...rest } = act ? act(typed, about, unit) : typed;
	return rest;
}

/** `amount.level:waist` is about `level:waist`. */
const keyOf = (name: string) => name.slice(name.indexOf('.') + 1);

function stepped(typed: Typed, name: string, step: number, unit: Unit): Typed {
	const here = { here: keyOf(name) };
	const text = field(typed, name);
	const now = text === '' ? 0 : lengthOf(text, unit);
	// What is not read as a length stays as it was typed: its own sentence says what would be right.
	if (now === undefined) return { ...typed, ...here };
	const next = now >= 0 ? Math.max(0, now + step) : now + step;
	return { ...typed, ...here, [name]: lengthTyped(Math.abs(next) < 1e-6 ? 0 : next, unit) };
}

function lengthOf(text: string, unit: Unit): number | undefined {
	const read = parseLength(text, unit, { allowNegative: true });
	return 'mm' in read ? read.mm : undefined;
}

function withoutPlace(typed: Typed, key: string): Typed {
	const places = readPlaceKeys(typed.places).filter((one) => one !== key);
	const kept = Object.entries(typed).filter(([name]) => !name.includes('.') || keyOf(name) !== key);
	return { ...Object.fromEntries(kept), places: places.join(' ') };
}

/** Adds the place chosen beside “Add a place”: `new`, so far (`newOffset`) towards its start or finish. */
function withPlace(typed: Typed, unit: Unit): Typed {
	const place = readPlaceKey(field(typed, 'new'));
	if (!place) return typed;
	const text = field(typed, 'newOffset');
	const offset = text === '' ? 0 : lengthOf(text, unit);
	if (offset === undefined) return { ...typed, here: '' };
	// From an end an offset is always inwards.
	const sign = 'end' in place || field(typed, 'newToward') !== 'start' ? 1 : -1;
	const key = placeKey(offset === 0 ? place : { ...place, offset: Number((offset * sign).toFixed(6)) });
	const { new: _, newOffset: __, newToward: ___, ...rest } = typed;
	return { ...rest, places: [...new Set([...readPlaceKeys(typed.places), key])].join(' '), here: key };
}

/** The amount of every place that has readings becomes their average: of each layer, and of each side, where those are asked for. */
function withAverages(typed: Typed, unit: Unit): Typed {
	const each = field(typed, 'sides') === 'each';
	const layers = field(typed, 'measured') === 'each-layer';
	const changed: Record<string, string> = {};
	for (const key of [...readPlaceKeys(typed.places), 'all']) {
		const read = Object.fromEntries(
			readingFields.map((name) => [name, lengthOf(field(typed, `${name}.${key}`), unit)] as const)
		);
		const put = (name: string, mm: number | undefined) => {
			if (mm !== undefined) changed[`${name}.${key}`] = lengthTyped(mm, unit);
		};
		const { average, right, left, a, b } = readReadings(read, unit);
		if (each && layers) {
			put('amount', read.rightA);
			put('other', read.rightB);
			put('left', read.leftA);
			put('leftOther', read.leftB);
		} else if (each) {
			put('amount', right);
			put('left', left);
		} else if (layers) {
			put('amount', a);
			put('other', b);
		} else put('amount', average);
	}
	return { ...typed, ...changed, averaged: 'yes' };
}

function halved(typed: Typed, unit: Unit): Typed {
	const half = Object.entries(typed).flatMap(([name, text]) => {
		if (!/^(amount|other|left|leftOther)\./.test(name)) return [];
		const mm = lengthOf(text, unit);
		return mm === undefined ? [] : [[name, lengthTyped(mm / 2, unit)]];
	});
	return { ...typed, ...Object.fromEntries(half) };
}
