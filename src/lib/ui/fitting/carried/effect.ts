import { undividedName } from '../../../engine/index.ts';
import type { Alteration, Draft, EdgePin, Place, SeamPin } from '../../../engine/index.ts';
import { sayDart, saySum, sayEdge, type SeamPlace } from '../../../measure/alteration-words.ts';
import { sayFold, type Measured } from '../../../measure/fold.ts';
import type { Phrase } from '../../../measure/phrase.ts';
import { inUnit } from '../../../measure/in-unit.ts';
import type { Unit } from '../../../measure/units.ts';
import type { Intent } from '../words/alteration.ts';
import { alterationAmounts } from '../words/alteration.ts';
import type { CarriedOne } from './carry-each.ts';
import { inSentence } from '../casing.ts';
import { isLimbSeam, levelInSentence, seamOf } from '../feature-names.ts';
import { mateSentences } from './mate-words.ts';
import { neighbourSentences } from './neighbour-words.ts';
import { placeKey } from '../place/place-key.ts';
import { placeName } from '../place/place-words.ts';
import { bustSpreadSum, spreadSum } from '../words/across.ts';
import { dartIntake } from '../words/dart.ts';
import { markSum } from '../words/mark.ts';
import { layerNames } from '../words/seam.ts';

/** What one alteration does, in words and figures. */
export interface Effect {
	/** “1/4″ on each layer = 1/2″ at this seam = 1″ round the waist”. */
	readonly sum?: Phrase;
	/** “1/2″ across the fold = 1/4″ on each layer”. */
	readonly fold?: Phrase;
	/** The place that the sum is of. */
	readonly at?: string;
	/** The balance lines whose round it changes, in the order of the draft. */
	readonly levels: readonly string[];
	/** About the piece that it is sewn to. */
	readonly mates: readonly string[];
	/** About the seams beside it. */
	readonly neighbours: readonly string[];
	/** Why it cannot be carried as it is. */
	readonly refused?: string;
}

/**
 * What an alteration (two, where right and left have their own amounts) does: the sum at the chosen place, or else where it is
 * greatest; what it does to the piece it is sewn to and to the seams beside it. `version` is the draft that the fitting is
 * carried onto, against which fullness is told.
 */
export function effectOf(
	carried: readonly CarriedOne[],
	version: Draft,
	options: { readonly unit: Unit; readonly measured?: Measured | null; readonly here?: string }
): Effect {
	const [first] = carried;
	const refused = carried.map(({ unplaced }) => unplaced?.sentence).find((sentence) => sentence !== undefined);
	const last = carried[carried.length - 1];
	const { unit } = options;
	const said = sumOf(first, options);
	const changed = new Set(carried.flatMap(({ step }) => step?.round.map(({ level }) => level) ?? []));
	return {
		...said,
		levels: [...changed],
		mates: [
			...new Set(carried.flatMap((one) => (one.step ? mateSentences(one.before, one.after, one.alteration, unit) : [])))
		],
		neighbours: last.step ? neighbourSentences(first.before, last.after, carried, version, unit) : [],
		...(refused !== undefined && { refused: inUnit(refused, unit) })
	};
}

export type Said = Pick<Effect, 'sum' | 'fold' | 'at'>;

/** How each kind's amount is summed up; the others have their title and the rounds. */
const sums: Readonly<
	Record<string, ((draft: Draft, intent: never, options: Options, after: Draft) => Said) | undefined>
> = {
	seam: seamSum,
	edge: edgeSum,
	dart: dartSum,
	'dart-set': dartSetSum,
	spread: spreadSum,
	'bust-spread': bustSpreadSum,
	mark: markSum
};

type Options = Parameters<typeof effectOf>[2];

/** The sum alone: what is said of an amount before anything is asked of the rest. */
export function sumOf({ before, after, alteration }: CarriedOne, options: Options): Said {
	return sums[alteration.kind]?.(before, alteration as never, options, after) ?? {};
}

type Of<K extends Alteration['kind']> = Extract<Alteration, { kind: K }>;

/** The pin of the chosen place if something was pinned there, else the one that moves the most. */
function chosenPin<P extends { readonly at: Place }>(
	pins: readonly P[],
	size: (pin: P) => number,
	here: string | undefined
): P | undefined {
	const chosen = pins.find((pin) => placeKey(pin.at) === here && size(pin) > 0);
	return (
		chosen ?? pins.reduce<P | undefined>((most, pin) => (size(pin) > (most ? size(most) : 0) ? pin : most), undefined)
	);
}

function seamSum(draft: Draft, { seam: id, on, pins }: Of<'seam'>, { unit, here, measured }: Options): Said {
	const pin = chosenPin(pins, ({ a = 0, b = 0 }: SeamPin) => Math.max(Math.abs(a), Math.abs(b)), here);
	const found = seamOf(draft, id);
	if (!pin || !found) return {};
	const { a = 0, b = 0, at } = pin;
	const seam: SeamPlace = found.b === 'mirror' ? 'centre' : isLimbSeam(draft, found) ? 'limb' : 'pair';
	const around = 'level' in at && !at.offset ? levelInSentence(at.level) : undefined;
	const names = layerNames(draft, id).map((name) => `the ${inSentence(name)}`);
	const sum = saySum({
		a,
		...(seam === 'centre' ? {} : { b }),
		seam,
		on,
		...(around !== undefined && { around }),
		layers: [names[0], names[1]],
		unit
	});
	return {
		sum,
		at: pins.length === 1 ? 'All along' : placeName(draft, { of: 'seam', id }, at, unit),
		...(measured === 'whole-fold' && { fold: sayFold(2 * a, unit) })
	};
}

function edgeSum(draft: Draft, intent: Of<'edge'>, { unit, here }: Options): Said {
	const pin = chosenPin(intent.pins, ({ move = 0 }: EdgePin) => Math.abs(move), here);
	if (!pin) return {};
	const along = { of: 'edge', id: intent.edge } as const;
	const name = placeName(draft, along, pin.at, unit);
	const { word } = alterationAmounts(draft, intent, unit).find(({ place }) => place === name) ?? { word: '' };
	return { sum: sayEdge(pin.move ?? 0, word, unit), at: intent.pins.length === 1 ? 'All along' : name };
}

function dartSum(_draft: Draft, { intake, on }: Of<'dart'>, { unit }: Options): Said {
	return intake ? { sum: sayDart({ intake, on, unit }) } : {};
}

function dartSetSum(draft: Draft, { dart, intake, on }: Of<'dart-set'>, { unit }: Options): Said {
	if (intake === undefined) return {};
	const change = intake - (dartIntake(draft, dart) ?? intake);
	return Math.abs(change) < 0.05 || intake === 0 ? {} : { sum: sayDart({ intake, on, unit }) };
}

/** `side`, `front/neck`: what an intent is made to, undivided; undefined for kinds that are made to whole pieces. */
export function targetOfIntent(intent: Intent): string | undefined {
	const { seam, edge, dart } = intent as { seam?: unknown; edge?: unknown; dart?: unknown };
	const name = [dart, seam, edge].find((one) => typeof one === 'string');
	return typeof name === 'string' ? undividedName(name) : undefined;
}
