import type { Alteration, Draft } from '../../../engine/index.ts';
import { equals, phrase, sayAmount, words, type Phrase, type PhrasePart } from '../../../measure/phrase.ts';
import type { Unit } from '../../../measure/units.ts';
import { heightInWords, lineOfCuts, type LineOfCuts, type SpreadCut } from '../across/line-of-cuts.ts';
import { endInSentence } from '../across/lines-across.ts';
import { atStart, inSentence } from '../casing.ts';
import { dartName, listed, pieceName, pieceOf } from '../feature-names.ts';
import { sayLength } from './along.ts';
import { sidesInWords, type AlterationAmount, type Teller } from './told.ts';

type SpreadIntent = Extract<Alteration, { kind: 'spread' }>;

/** Slashed and opened, or pinned a fold across. */
export const spreadWords: Teller<SpreadIntent> = (draft, { on, cuts }, unit) => {
	const read = cuts.some(({ gapFrom, gapTo }) => gapFrom !== undefined || gapTo !== undefined);
	const line = lineOfCuts(draft, cuts);
	const where = line && heightInWords(line, unit);
	return {
		subject: atStart(piecesOf(draft, cuts)),
		...(read && { done: [doneOf(endsOf(draft, cuts, line), unit, !line), where].filter(Boolean).join(', ') }),
		sides: sidesInWords(on, pieceOf(draft, cuts[0].piece)?.limb),
		amounts: read ? amountsOf(endsOf(draft, cuts, line)) : []
	};
};

/** “back, side back, under-arm and front” */
const piecesOf = (draft: Draft, cuts: readonly SpreadCut[]) =>
	listed([...new Set(cuts.map(({ piece }) => inSentence(pieceName(draft, piece))))]);

interface End {
	/** mm, opened positive. */
	readonly gap: number;
	/** “the centre-back seam”. */
	readonly name: string;
}

/** The first end and the last of a run of cuts; round two pieces, the two seams between them. */
function endsOf(draft: Draft, cuts: readonly SpreadCut[], line: LineOfCuts | undefined): Ends {
	const around = line?.line.run.ring === true && cuts.length === 2;
	const [first, last] = [cuts[0], cuts[around ? 0 : cuts.length - 1]];
	const name = (end: SpreadCut['from']) =>
		'dart' in end ? `the ${inSentence(dartName(draft, end.dart))}` : endInSentence(draft, end.edge);
	return [
		{ gap: first.gapFrom ?? 0, name: name(first.from) },
		{ gap: last.gapTo ?? 0, name: name(last.to) }
	];
}

type Ends = readonly [End, End];

const even = ([first, last]: Ends) => Math.abs(first.gap - last.gap) < 1e-9;

function doneOf(ends: Ends, unit: Unit, named: boolean): string {
	const [first, last] = ends;
	const sum = first.gap + last.gap;
	if (sum === 0 && first.gap === 0) return 'left as it is';
	const act = sum < 0 ? 'folded across' : 'slashed and opened';
	if (even(ends)) return `${act} ${sayLength(first.gap, unit)}${named ? `, from ${first.name} to ${last.name}` : ''}`;
	return `${act} ${wedge(ends, (mm) => sayLength(mm, unit))}`;
}

/** “1/2″ at the centre-back seam, to nothing at the side seam”; the deeper end first. */
function wedge([first, last]: Ends, say: (mm: number) => string): string {
	const [deep, thin] = Math.abs(first.gap) >= Math.abs(last.gap) ? [first, last] : [last, first];
	const to = thin.gap === 0 ? 'to nothing' : `${say(thin.gap)}`;
	return `${say(deep.gap)} at ${deep.name}, ${to} at ${thin.name}`;
}

function amountsOf(ends: Ends): readonly AlterationAmount[] {
	const amount = (mm: number, place: string): AlterationAmount => ({
		place,
		mm,
		...(mm !== 0 && { way: mm < 0 ? 'in' : 'out' }),
		word: mm === 0 ? 'nothing' : mm < 0 ? 'shorter' : 'longer'
	});
	if (even(ends)) return ends[0].gap === 0 ? [] : [amount(ends[0].gap, '')];
	return ends.map(({ gap, name }) => amount(gap, atStart(name.replace(/^the /, ''))));
}

/** What a fold or a slash comes to, in amounts and words. */
export interface AcrossSum {
	readonly sum?: Phrase;
	readonly fold?: Phrase;
	readonly at?: string;
}

/**
 * “1/2″ shorter, on back, side back, under-arm and front”; measured as a tuck stands: “1/4″ deep, laid double = 1/2″ taken out”. A
 * tuck is half as deep as what it takes out (Central Washington University, costume construction, ch. 17).
 */
export function spreadSum(
	draft: Draft,
	{ cuts }: SpreadIntent,
	{ unit, measured }: { readonly unit: Unit; readonly measured?: string | null }
): AcrossSum {
	const line = lineOfCuts(draft, cuts);
	const ends = endsOf(draft, cuts, line);
	const [first, last] = ends;
	const [deep, thin] = Math.abs(first.gap) >= Math.abs(last.gap) ? [first, last] : [last, first];
	if (deep.gap === 0) return {};
	const way = deep.gap < 0 ? 'shorter' : 'longer';
	const thinly: readonly PhrasePart[] =
		thin.gap === 0
			? [words(`, to nothing at ${thin.name}`)]
			: [words(','), sayAmount(thin.gap, unit), words(`at ${thin.name}`)];
	const sum = even(ends)
		? phrase(sayAmount(deep.gap, unit), words(way))
		: phrase(sayAmount(deep.gap, unit), words(`${way} at ${deep.name}`), ...thinly);
	const where = line && heightInWords(line, unit);
	return {
		sum,
		at: atStart([where, `on the ${piecesOf(draft, cuts)}`].filter(Boolean).join(', ')),
		...(measured === 'one-layer' && {
			fold: phrase(
				sayAmount(deep.gap / 2, unit),
				words('deep, laid double'),
				equals,
				sayAmount(deep.gap, unit),
				words('taken out')
			)
		})
	};
}

type BustSpreadIntent = Extract<Alteration, { kind: 'bust-spread' }>;

/** Slashed for a fuller bust, or lapped for a smaller one. */
export const bustSpreadWords: Teller<BustSpreadIntent> = (draft, { on, piece, gap }, unit) => ({
	subject: pieceName(draft, piece),
	...(gap !== undefined && {
		done: `${gap < 0 ? 'lapped for a smaller bust' : 'slashed for a fuller bust'}, ${sayLength(gap, unit)}`
	}),
	sides: sidesInWords(on),
	amounts: gap ? [{ place: '', mm: gap, way: gap < 0 ? 'in' : 'out', word: gap < 0 ? 'in' : 'out' }] : []
});

/** “1/2″ wider at the bust point, on each half = 1″ round the bust” */
export function bustSpreadSum(
	draft: Draft,
	{ on, piece, gap }: BustSpreadIntent,
	{ unit }: { readonly unit: Unit }
): AcrossSum {
	if (!gap) return {};
	const way = gap < 0 ? 'narrower' : 'wider';
	const pair = pieceOf(draft, piece)?.cut !== 'single' && on === 'both';
	return {
		sum: phrase(
			sayAmount(gap, unit),
			words(`${way} at the bust point${pair ? ', on each half' : ''}`),
			...(pair ? [equals, sayAmount(2 * gap, unit), words(`${way} in all`)] : [])
		)
	};
}
