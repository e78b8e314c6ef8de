import type { Alteration, Draft } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { inSentence } from '../casing.ts';
import { dartName, edgeName, edgeOf, listed, pieceName, pieceOf, seamName } from '../feature-names.ts';
import { endNames, placeInSentence } from '../place-words.ts';
import { sayLength } from './along.ts';
import { layerNames } from './seam.ts';
import { sidesInWords, type AlterationAmount, type Teller } from './told.ts';

type FoldDartIntent = Extract<Alteration, { kind: 'fold-dart' }>;
type SpreadIntent = Extract<Alteration, { kind: 'spread' }>;

/** Pinned a fold inside a piece. */
export const foldDartWords: Teller<FoldDartIntent> = (draft, { piece, on, widest }, unit) => ({
	subject: pieceName(draft, piece),
	...(widest.intake !== undefined && {
		done: `pinned a fold inside it, ${sayLength(widest.intake, unit)} at its widest`
	}),
	sides: sidesInWords(on, pieceOf(draft, piece)?.limb),
	amounts: widest.intake === undefined ? [] : [{ place: '', mm: -widest.intake, way: 'in', word: 'in' }]
});

/** Slashed and opened, or pinned a fold across. */
export const spreadWords: Teller<SpreadIntent> = (draft, { on, cuts }, unit) => {
	const names = [...new Set(cuts.map(({ piece }) => pieceName(draft, piece)))];
	const read = cuts.some(({ gapFrom, gapTo }) => gapFrom !== undefined || gapTo !== undefined);
	const [{ gapFrom = 0, gapTo = 0, from, to }] = cuts;
	const sum = gapFrom + gapTo;
	const end = (one: SpreadIntent['cuts'][number]['from']) =>
		'dart' in one ? inSentence(dartName(draft, one.dart)) : `the ${inSentence(shortEdge(draft, one.edge))}`;
	const act = sum < 0 ? 'folded across' : 'slashed and opened';
	const most = Math.abs(gapFrom) >= Math.abs(gapTo) ? gapFrom : gapTo;
	const [wide, narrow] = most === gapFrom ? [from, to] : [to, from];
	const least = most === gapFrom ? gapTo : gapFrom;
	const done =
		Math.abs(gapFrom - gapTo) < 1e-9
			? `${act} ${sayLength(most, unit)}, from ${end(from)} to ${end(to)}`
			: `${act} ${sayLength(most, unit)} at ${end(wide)}, ${least === 0 ? 'to nothing' : sayLength(least, unit)} at ${end(narrow)}`;
	const amount: AlterationAmount = {
		place: '',
		mm: most,
		way: sum < 0 ? 'in' : 'out',
		word: sum < 0 ? 'shorter' : 'longer'
	};
	return {
		subject: names.length === 1 ? names[0] : listed(names.map((name, i) => (i === 0 ? name : inSentence(name)))),
		...(read && { done: sum === 0 && most === 0 ? 'left as it is' : done }),
		sides: sidesInWords(on, pieceOf(draft, cuts[0].piece)?.limb),
		amounts: read && most !== 0 ? [amount] : []
	};
};

function shortEdge(draft: Draft, name: string): string {
	return edgeOf(draft, name)?.edge.name ?? edgeName(draft, name);
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

type TrueSeamIntent = Extract<Alteration, { kind: 'true-seam' }>;

/** Walked and corrected a seam. */
export const trueSeamWords: Teller<TrueSeamIntent> = (draft, { on, seam, end, at, take }, unit) => ({
	subject: seamName(draft, seam),
	done: [
		'trued',
		end && `at ${endNames(draft, { of: 'seam', id: seam }).said[end]}`,
		at && placeInSentence(draft, { of: 'seam', id: seam }, at, unit),
		take === 'half' ? 'on both pieces' : `on the ${inSentence(layerNames(draft, seam)[take === 'a' ? 0 : 1])}`
	]
		.filter(Boolean)
		.join(' '),
	sides: sidesInWords(on),
	amounts: []
});

type TrueDartIntent = Extract<Alteration, { kind: 'true-dart' }>;

/** Folded a dart and drew its edge again. */
export const trueDartWords: Teller<TrueDartIntent> = (draft, { on, dart }) => ({
	subject: dartName(draft, dart),
	done: 'trued: its legs made equal and the edge drawn across it',
	sides: sidesInWords(on),
	amounts: []
});

type SmoothIntent = Extract<Alteration, { kind: 'smooth' }>;

/** Took a corner off. */
export const smoothWords: Teller<SmoothIntent> = (draft, { on, edge, end, at, reach }, unit) => ({
	subject: edgeName(draft, edge),
	done: [
		'smoothed',
		end && `at ${endNames(draft, { of: 'edge', id: edge }).said[end]}`,
		at && placeInSentence(draft, { of: 'edge', id: edge }, at, unit),
		`over ${sayLength(reach, unit)}`
	]
		.filter(Boolean)
		.join(' '),
	sides: sidesInWords(on),
	amounts: []
});

type MarkIntent = Extract<Alteration, { kind: 'mark' }>;

/** Marked a point: a bust point, a notch, a button, buttonholes. */
export const markWords: Teller<MarkIntent> = (draft, intent, unit) => ({
	subject: pieceName(draft, intent.piece),
	...(done(draft, intent, unit) && { done: done(draft, intent, unit)! }),
	sides: sidesInWords(intent.on, pieceOf(draft, intent.piece)?.limb),
	amounts: []
});

function done(draft: Draft, { set, notch, move, remove, buttonholes }: MarkIntent, unit: Unit): string | undefined {
	if (set) return `marked the ${plain(set.kind === 'point' ? set.id : set.kind)}`;
	if (notch)
		return `snipped a notch on the ${inSentence(shortEdge(draft, notch.at.edge))} ${placeInSentence(draft, { of: 'edge', id: notch.at.edge }, notch.at, unit)}`;
	if (move) return `moved the ${plain(move.id)}`;
	if (remove !== undefined) return `took the ${plain(remove)} off`;
	if (!buttonholes || (buttonholes.count ?? buttonholes.spacing) === undefined) return undefined;
	const how =
		buttonholes.count === undefined ? `${sayLength(buttonholes.spacing!, unit)} apart` : `${buttonholes.count} of them`;
	return `marked buttonholes, ${how}, on the ${inSentence(shortEdge(draft, buttonholes.edge))}`;
}

const plain = (id: string) => id.replaceAll('-', ' ');
