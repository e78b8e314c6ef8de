import { findPiece, levelOnEdge, nearestOn, pathLength, undividedName } from '../../engine/index.ts';
import type { compare, Draft, Piece, Point, reuse } from '../../engine/index.ts';
import { directionOf } from '../../measure/directions.ts';
import { formatLength } from '../../measure/format-length.ts';
import type { Unit } from '../../measure/units.ts';
import { lying } from '../drawing/pins-of-alteration.ts';
import { inSentence } from '../fitting/casing.ts';
import { edgeOf, listed, seamName } from '../fitting/feature-names.ts';
import { endNames } from '../fitting/place/place-words.ts';
import { seamOfEdge } from '../compare/seam-moves.ts';
import { letterOf } from '../version/query-rows.ts';
import { clothLeft, clothOf, shortEdge, type Cloth } from './short-edge.ts';
import type { AllowancesByEdge } from '../allowances/usual-allowances.ts';

type Reuse = ReturnType<typeof reuse>[number];

export interface VerdictRow {
	readonly piece: string;
	readonly name: string;
	readonly verdict: Reuse['verdict'];
	/** Where and how: “side-back seam, at the hem: 1/2″ left of the 3/4″ wanted”. */
	readonly words: string;
	/** mm; absent where nothing is short, or where there is no such cloth at all. */
	readonly shortBy?: number;
	/** Under which the place is looked at closely. */
	readonly letter?: string;
	/** The edge where it is shortest. */
	readonly where?: string;
	/** The balance line nearest to the place, for a close look. */
	readonly near?: string;
}

interface Asked {
	/** The version that is cut. */
	readonly draft: Draft;
	/** What the toile was cut on. */
	readonly cloth: Cloth;
	/** From what the toile is stitched to now. */
	readonly changes: ReturnType<typeof compare>;
	readonly verdicts: readonly Reuse[];
	readonly wanted: AllowancesByEdge;
	readonly unit: Unit;
}

/** What differs by less is written alike, mm. */
const almost = 0.8;

/** As many places are looked at closely: the worst. */
const closeLooks = 3;

/** Whether each piece can be restitched, those that fall short first, each with the place where it does. */
export function verdictRows({ draft, cloth, changes, verdicts, wanted, unit }: Asked): readonly VerdictRow[] {
	const gravity = { recut: 0, narrow: 1, restitch: 2 } as const;
	const say = (mm: number) => formatLength(mm, unit, { denominator: 16, sign: 'never' }).text;
	const allowanceOf = (edge: string) => wanted.edges[edge] ?? wanted.edges[undividedName(edge)] ?? wanted.default;
	const leftWords = ({ piece, left, at, verdict }: Reuse, edge: string) => {
		if (left < 0) return 'the new stitching line leaves the cloth';
		const own = clothOf(cloth, piece);
		const there = own && at ? clothLeft(draft, edge, at, own.outline, allowanceOf(edge)) : undefined;
		if (there === undefined || there > allowanceOf(edge) - almost) return 'the corner alone falls short';
		const narrower = verdict === 'recut' && left < there - almost ? `, ${say(left)} at the narrowest` : '';
		return `${say(there)} left of the ${say(allowanceOf(edge))} wanted${narrower}`;
	};
	const rows = [...verdicts]
		.sort((a, b) => gravity[a.verdict] - gravity[b.verdict] || b.shortBy - a.shortBy)
		.map((one): Omit<VerdictRow, 'letter'> => {
			const { name, verdict, shortBy, at } = one;
			const row = { piece: one.piece, name, verdict };
			if (!Number.isFinite(shortBy)) return { ...row, words: 'the toile has no such piece' };
			if (shortBy === 0) return { ...row, words: restitched(draft, one.piece, changes, unit) };
			const edge = shortEdge(draft, one, allowanceOf, cloth);
			const piece = edgeOf(draft, edge)?.piece;
			const place = piece && at ? placeNear(draft, piece, edge, at) : undefined;
			return {
				...row,
				words: `${lineName(draft, edge)}${place ? `, ${place.words}` : ''}: ${leftWords(one, edge)}`,
				shortBy,
				where: edge,
				...(place?.level !== undefined && { near: place.level })
			};
		});
	let letters = 0;
	return rows.map((row) =>
		row.where === undefined || letters >= closeLooks ? row : { ...row, letter: letterOf(letters++) }
	);
}

/** What a seam, or an edge that is in none, is called in a sentence. */
function lineName(draft: Draft, edge: string): string {
	const seam = seamOfEdge(draft, edge);
	return inSentence(seam ? seamName(draft, seam.id) : (edgeOf(draft, edge)?.edge.name ?? edge));
}

/** The end or balance line of an edge that is nearest to a point. */
function placeNear(
	draft: Draft,
	piece: Piece,
	name: string,
	at: Point
): { readonly words: string; readonly level?: string } | undefined {
	const edge = edgeOf(draft, name)?.edge;
	if (!edge) return undefined;
	const { s } = nearestOn(edge.path, at, 1e-3);
	const ends = endNames(draft, { of: 'edge', id: name });
	const places = [
		{ s: 0, words: `at the ${inSentence(ends.start)}` },
		{ s: pathLength(edge.path), words: `at the ${inSentence(ends.finish)}` },
		...[...new Set(piece.levels.map(({ level }) => level))].flatMap((level) =>
			levelOnEdge(piece, edge, level).map((on) => ({ s: on, words: `at the ${level.replaceAll('-', ' ')}`, level }))
		)
	];
	const [nearest] = places.sort((a, b) => Math.abs(a.s - s) - Math.abs(b.s - s));
	const level = places.find((place) => 'level' in place);
	return {
		words: nearest.words,
		...(level && 'level' in level && level.level !== undefined && { level: level.level })
	};
}

/** Less than this is no new line, mm. */
const least = 0.05;

/** What of a piece is sewn on new lines: “side out, armhole dart sewn”; “as it is” where nothing changed. */
function restitched(draft: Draft, id: string, { edges, darts }: ReturnType<typeof compare>, unit: Unit): string {
	const piece = findPiece(draft, id);
	const own = (name: string) => name.startsWith(`${id}/`);
	const moved = edges
		.filter(({ edge, greatest }) => own(edge) && Math.abs(greatest.move) >= least)
		.map(({ edge, greatest: { move, s } }) => {
			const found = edgeOf(draft, edge);
			const word = directionOf(found ? lying(found.edge, s) : 'seam', move);
			const amount = formatLength(move, unit, { denominator: 16, sign: 'never' }).text;
			return `${inSentence(found?.edge.name ?? edge)} ${amount} ${word}`;
		});
	const sewn = darts
		.filter(({ dart }) => own(dart))
		.map(({ dart, before, after }) => {
			const name = inSentence(piece?.darts.find((one) => `${id}/${one.id}` === dart)?.name ?? 'dart');
			return before ? (after ? `${name} changed` : `${name} taken out`) : `${name} sewn`;
		});
	const all = [...moved, ...sewn];
	return all.length === 0 ? 'as it is' : all.join(', ');
}

/** The answer in one sentence: the firm beginning, and the rest. */
export function answerWords(rows: readonly VerdictRow[]): { readonly firm: string; readonly rest: string } {
	const of = (verdict: VerdictRow['verdict']) => rows.filter((row) => row.verdict === verdict).map(({ name }) => name);
	const [recut, narrow, restitch] = [of('recut'), of('narrow'), of('restitch')];
	const sewn = restitch.length + narrow.length;
	const narrowWords =
		narrow.length === 0
			? ''
			: ` ${inList(narrow)} ${narrow.length === 1 ? 'has' : 'have'} less to turn than is wanted.`;
	if (recut.length === 0)
		return {
			firm: narrow.length === 0 ? 'Yes, all of it.' : 'Yes, with less allowance in places.',
			rest: `${countWords(sewn)} restitched on the new lines.${narrowWords}`
		};
	if (sewn === 0) return { firm: 'No.', rest: 'Every piece has to be cut again.' };
	return {
		firm: `Yes, but for ${small(recut.length)} ${recut.length === 1 ? 'piece' : 'pieces'}.`,
		rest: `${countWords(sewn)} restitched on the new lines. ${inList(recut)} ${recut.length === 1 ? 'is' : 'are'} cut again.${narrowWords}`
	};
}

const inList = (names: readonly string[]) => listed(names.map((name, i) => (i === 0 ? name : inSentence(name))));

const numbers = [
	'no',
	'one',
	'two',
	'three',
	'four',
	'five',
	'six',
	'seven',
	'eight',
	'nine',
	'ten',
	'eleven',
	'twelve'
];
const small = (count: number) => numbers[count] ?? String(count);

function countWords(count: number): string {
	const word = small(count);
	return `${word.charAt(0).toUpperCase()}${word.slice(1)} ${count === 1 ? 'piece is' : 'pieces are'}`;
}
