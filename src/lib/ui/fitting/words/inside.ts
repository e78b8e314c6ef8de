import type { Alteration } from '../../../engine/index.ts';
import { inSentence } from '../casing.ts';
import { dartName, edgeName, pieceName, pieceOf, seamName } from '../feature-names.ts';
import { endNames, placeInSentence } from '../place/place-words.ts';
import { sayLength } from './along.ts';
import { layerNames } from './seam.ts';
import { sidesInWords, type Teller } from './told.ts';

type FoldDartIntent = Extract<Alteration, { kind: 'fold-dart' }>;

/** Pinned a fold inside a piece. */
export const foldDartWords: Teller<FoldDartIntent> = (draft, { piece, on, widest }, unit) => ({
	subject: pieceName(draft, piece),
	...(widest.intake !== undefined && {
		done: `pinned a fold inside it, ${sayLength(widest.intake, unit)} at its widest`
	}),
	sides: sidesInWords(on, pieceOf(draft, piece)?.limb),
	amounts: widest.intake === undefined ? [] : [{ place: '', mm: -widest.intake, way: 'in', word: 'in' }]
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
