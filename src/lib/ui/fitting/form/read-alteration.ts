import type { AlterationBase, Draft, On } from '../../../engine/index.ts';
import type { Measured } from '../../../measure/fold.ts';
import type { Unit } from '../../../measure/units.ts';
import { findAct, type Act } from '../acts.ts';
import { carryInHand } from '../carried/carry-each.ts';
import { fieldReader, type FieldReader, type Problems } from './form-parts.ts';
import { readDart } from './read-dart.ts';
import { readDartSet } from './read-dart-set.ts';
import { readPins } from './read-pins.ts';
import { readAcross } from '../across/read-across.ts';
import { readBustSlash } from '../across/read-bust-slash.ts';
import { readMark } from '../mark/read-mark.ts';
import type { ReadingsRead } from './read-readings.ts';
import { fieldsOf, isThere, notThere, type Target } from '../targets.ts';
import type { Typed } from '../typed.ts';

/** The engine's alteration without an id. Amounts per layer, mm; left out altogether while not read. */
export type IntentRead = { readonly kind: string; readonly on: On } & Readonly<Record<string, unknown>>;

/** What a form of the fitting says, as it is kept. */
export interface AlterationRead {
	readonly act: string;
	readonly target: Target;
	/** One; or two, the wearer's right and left, where each side has its own amounts. */
	readonly intents: readonly [IntentRead] | readonly [IntentRead, IntentRead];
	readonly measured: Measured | null;
	readonly readings: ReadingsRead;
	readonly note: string;
	/** Id of the observation that it answers. */
	readonly answers: string | null;
}

/** What one act's own fields say. */
export interface ActRead {
	readonly intents: AlterationRead['intents'];
	readonly measured: Measured | null;
	readonly readings: ReadingsRead;
}

export type FormRead = { readonly read: AlterationRead } | { readonly problems: Problems };

/** How the fields of each sort of act are read. */
const readers: Readonly<Record<Act['to'], (act: Act, target: Target, fields: FieldReader) => ActRead | undefined>> = {
	seam: readPins,
	edge: readPins,
	'new-dart': readDart,
	dart: readDartSet,
	across: readAcross,
	slash: (act, target, fields) => (target.of === 'piece' ? readBustSlash : readAcross)(act, target, fields),
	point: readMark
};

const whichOne: Readonly<Record<Target['of'], string>> = {
	seam: 'Which seam? Choose one.',
	edge: 'Which edge? Choose one.',
	dart: 'Which dart? Choose one.',
	across: 'Beside which line? Choose one.',
	piece: 'On which piece, seam or edge? Choose one.'
};

/**
 * Reads the form of an alteration against the draft that it is carried to. Every wrong field gets a sentence that says what
 * would be right. What cannot be carried although it is rightly said (too tight a curve, a dart that crosses another) is no
 * problem of the form: it is kept as it was pinned, and reported.
 */
export function readAlteration(draft: Draft, typed: Typed, unit: Unit): FormRead {
	const fields = fieldReader(draft, unit, typed);
	const act = findAct(fields.text('act'));
	if (!act) return { problems: { act: 'Say first what was done: took in a seam, let one out, chalked a line …' } };
	const of = fieldsOf[act.to].find((one) => fields.text(one) !== '');
	if (!of) return { problems: { [fieldsOf[act.to][0]]: whichOne[fieldsOf[act.to][0]] } };
	const target: Target = { of, id: fields.text(of) };
	if (!isThere(draft, target)) return { problems: { [of]: notThere(draft, target) } };
	const done = readers[act.to](act, target, fields);
	if (fields.text('note').length > 4000) fields.wrong('note', 'That is longer than 4000 letters. Shorten it.');
	if (!done || Object.keys(fields.problems).length > 0)
		return { problems: Object.keys(fields.problems).length > 0 ? fields.problems : { '': 'Something is left out.' } };
	const refused = placeRefused(draft, done.intents);
	if (refused) return { problems: { places: refused } };
	const answers = fields.text('answers') || null;
	return { read: { act: act.key, target, ...done, note: fields.text('note'), answers } };
}

/** The sentence of a place that the draft does not have, or of two pins at one place. */
function placeRefused(draft: Draft, intents: readonly IntentRead[]): string | undefined {
	const unplaced = carryInHand(draft, asAlterations(intents)).map((one) => one.unplaced);
	return unplaced.find((one) => one?.why === 'no-place' || one?.code === 'same-place')?.sentence;
}

/**
 * Intents as the engine carries them, under ids of their own: for looking, not for keeping. What is kept is parsed by the journal;
 * here they are what the readers wrote, and the browser is spared what checks files.
 */
export function asAlterations(intents: readonly IntentRead[]): readonly AlterationBase[] {
	return intents.map((intent, i) => ({ ...intent, id: `in-hand-${i + 1}` }));
}
