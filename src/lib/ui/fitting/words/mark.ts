import { findInnerPoint, undividedName } from '../../../engine/index.ts';
import type { Alteration, Draft, EdgePlace, InnerPoint, Place } from '../../../engine/index.ts';
import { phrase, sayAmount, words, type Phrase } from '../../../measure/phrase.ts';
import type { Unit } from '../../../measure/units.ts';
import { atStart, inSentence } from '../casing.ts';
import { edgeName, edgeOf, pieceName, pieceOf, wholeName } from '../feature-names.ts';
import { bustPointOf, markName, sidewaysOf } from '../mark/mark-places.ts';
import { placeInSentence } from '../place/place-words.ts';
import { sayLength } from './along.ts';
import { sidesInWords, type Teller } from './told.ts';

type MarkIntent = Extract<Alteration, { kind: 'mark' }>;

/** Marked a point: a bust point, a notch, a button, buttonholes. */
export const markWords: Teller<MarkIntent> = (draft, intent, unit) => {
	const done = doneOf(draft, intent, unit);
	const piece = pieceOf(draft, intent.piece);
	return {
		subject: pieceName(draft, intent.piece),
		...(done !== undefined && { done }),
		...(piece?.cut !== 'single' && { sides: sidesInWords(intent.on, piece?.limb) }),
		amounts: []
	};
};

function doneOf(draft: Draft, intent: MarkIntent, unit: Unit): string | undefined {
	const { set, notch, move, remove, buttonholes } = intent;
	if (set?.kind === 'button') return ['marked a button', pointWords(draft, set.at, unit)].filter(Boolean).join(', ');
	if (set) {
		const name = plain(set.kind === 'point' ? set.id : set.kind);
		return [`marked the ${name}`, pointWords(draft, set.at, unit)].filter(Boolean).join(', ');
	}
	if (notch) return `snipped a notch on the ${edgeAndPlace(draft, notch.at, unit)}`;
	if (move) {
		const where = movedWords(draft, intent, unit) ?? ('edge' in move.to ? undefined : pointWords(draft, move.to, unit));
		return [`moved the ${plain(move.id)}`, where].filter(Boolean).join(' ');
	}
	if (remove !== undefined) return removedWords(draft, intent.piece, remove);
	if (!buttonholes || !buttonholes.button || (buttonholes.count ?? buttonholes.spacing) === undefined) return undefined;
	const how =
		buttonholes.count === undefined
			? `buttonholes ${sayLength(buttonholes.spacing!, unit)} apart`
			: `${buttonholes.count} buttonholes`;
	return `marked ${how} on the ${inSentence(shortEdge(draft, buttonholes.edge))}, for a button ${sayLength(buttonholes.button.diameter, unit)} wide`;
}

/** “took the bust point off”, “took a notch off the side” */
function removedWords(draft: Draft, name: string, id: string): string {
	const piece = pieceOf(draft, name);
	const notch = piece?.notches.find((one) => undividedName(one.id) === undividedName(id));
	return piece && notch
		? `took a notch off the ${inSentence(shortEdge(draft, `${piece.id}/${notch.edge}`))}`
		: `took the ${plain(id)} off`;
}

function shortEdge(draft: Draft, name: string): string {
	const found = edgeOf(draft, name);
	return found ? wholeName(found.edge) : edgeName(draft, name);
}

/** “side, at the waist” */
function edgeAndPlace(draft: Draft, { edge, ...place }: EdgePlace, unit: Unit): string {
	const where = placeInSentence(draft, { of: 'edge', id: edge }, place as Place, unit);
	return `${inSentence(shortEdge(draft, edge))}${where.startsWith('at ') ? ' ' : ', '}${where}`;
}

/** “4 1/2″ in from the front edge at the bust”; nothing for bare coordinates. */
function pointWords(draft: Draft, point: InnerPoint, unit: Unit): string | undefined {
	if (!('from' in point)) return undefined;
	return `${sayLength(point.in, unit)} in from the ${edgeAndPlace(draft, point.from, unit)}`;
}

/** Where the bust point goes from where it is: “1/2″ down, 1/4″ towards the front edge”; nothing where it is not told. */
function movedWords(draft: Draft, intent: MarkIntent, unit: Unit): string | undefined {
	return movedBy(draft, intent)
		?.map(({ mm, way }) => `${sayLength(mm, unit)} ${way}`)
		.join(', ');
}

/** Less than this is no move, mm. */
const least = 0.4;

function movedBy(
	draft: Draft,
	{ piece: name, move }: MarkIntent
): readonly { readonly mm: number; readonly way: string }[] | undefined {
	const piece = pieceOf(draft, name);
	const before = piece && move && undividedName(move.id) === 'bust-point' ? bustPointOf(piece) : undefined;
	if (!piece || !before || !move || 'edge' in move.to) return undefined;
	const to = findInnerPoint(draft, piece.id, onPiece(draft, move.to));
	if ('problem' in to) return undefined;
	const [dx, dy] = [to.point[0] - before.at[0], to.point[1] - before.at[1]];
	const ways = sidewaysOf(draft, piece);
	const moves = [
		{ mm: Math.abs(dy), way: dy < 0 ? 'up' : 'down' },
		{
			mm: Math.abs(dx),
			way: `towards the ${ways ? (dx * ways.way > 0 ? ways.centre : ways.side) : dx > 0 ? 'right' : 'left'}`
		}
	].filter(({ mm }) => mm >= least);
	return moves.length > 0 ? moves : undefined;
}

/** With its edge as a divided draft has it. */
function onPiece(draft: Draft, point: InnerPoint): InnerPoint {
	if (!('from' in point)) return point;
	const own = edgeOf(draft, point.from.edge);
	return own ? { ...point, from: { ...point.from, edge: `${own.piece.id}/${own.edge.id}` } } : point;
}

const plain = (id: string) => inSentence(markName(id));

/** “6 buttonholes, 2 3/8″ apart, each 3/4″ long”; of a bust point that goes elsewhere, how far. `after`: the draft with them. */
export function markSum(
	draft: Draft,
	intent: MarkIntent,
	{ unit }: { readonly unit: Unit },
	after: Draft
): { readonly sum?: Phrase } {
	const moved = movedBy(draft, intent);
	if (moved)
		return {
			sum: phrase(
				...moved.flatMap(({ mm, way }, i) => [...(i > 0 ? [words(',')] : []), sayAmount(mm, unit), words(way)])
			)
		};
	const { buttonholes } = intent;
	const holes = buttonholes ? holesOn(after, intent.piece, buttonholes.id) : [];
	if (holes.length < 2) {
		const done = doneOf(draft, intent, unit);
		return done === undefined ? {} : { sum: phrase(words(atStart(done))) };
	}
	const apart = holes.slice(1).map(({ at }, i) => Math.hypot(at[0] - holes[i].at[0], at[1] - holes[i].at[1]));
	const [least, most] = [Math.min(...apart), Math.max(...apart)];
	const { at, to } = holes[0];
	const gaps =
		most - least < 0.8
			? [sayAmount(most, unit), words('apart')]
			: [sayAmount(least, unit), words('to'), sayAmount(most, unit), words('apart')];
	return {
		sum: phrase(
			words(`${holes.length} buttonholes,`),
			...gaps,
			...(to ? [words(', each'), sayAmount(Math.hypot(to[0] - at[0], to[1] - at[1]), unit), words('long')] : [])
		)
	};
}

function holesOn(draft: Draft, name: string, id: string) {
	const holes = pieceOf(draft, name)?.marks.filter(
		(mark) => mark.kind === 'buttonhole' && undividedName(mark.id).startsWith(`${id}-`) && !mark.id.endsWith('@left')
	);
	return holes ?? [];
}
