import { findPlace, findPlaceOnSeam, pointAt, seamRun, undividedName } from '../../../engine/index.ts';
import type { Draft, Edge, Piece, Place, Point } from '../../../engine/index.ts';
import { formatLength } from '../../../measure/format-length.ts';
import type { Unit } from '../../../measure/units.ts';
import { inSentence } from '../casing.ts';
import { edgeOf, levelInSentence, levelName, seamOf, wholeName } from '../feature-names.ts';

/** What pins stand along: a seam by its id, or one edge by its whole name. */
export interface Along {
	readonly of: 'seam' | 'edge';
	readonly id: string;
}

export interface EndNames {
	/** In a list: “Hem”, “Shoulder, front”. */
	readonly start: string;
	readonly finish: string;
	/** In a sentence: “the hem”, “the shoulder of the front”. */
	readonly said: { readonly start: string; readonly finish: string };
}

/** What the two ends of a seam or an edge are called: by the edges that they run into, and by their pieces if those are alike. */
export function endNames(draft: Draft, along: Along): EndNames {
	const ends = endsOf(draft, along);
	if (!ends) return named('Start', 'End', 'the start', 'the end');
	const [start, finish] = ends.map(({ neighbour }) => wholeName(neighbour));
	const said = (name: string) => `the ${inSentence(name)}`;
	if (start !== finish) return named(start, finish, said(start), said(finish));
	const [a, b] = ends.map(({ piece }) => wholeName(piece));
	return a === b
		? named(
				`${start}, at the start`,
				`${finish}, at the end`,
				`${said(start)} at its start`,
				`${said(finish)} at its end`
			)
		: named(
				`${start}, ${inSentence(a)}`,
				`${finish}, ${inSentence(b)}`,
				`${said(start)} of the ${inSentence(a)}`,
				`${said(finish)} of the ${inSentence(b)}`
			);
}

const named = (start: string, finish: string, saidStart: string, saidFinish: string): EndNames => ({
	start,
	finish,
	said: { start: saidStart, finish: saidFinish }
});

interface End {
	readonly piece: Piece;
	/** The edge that meets it there. */
	readonly neighbour: Edge;
}

function endsOf(draft: Draft, along: Along): readonly [End, End] | undefined {
	const walked = walkedEdges(draft, along);
	if (walked.length === 0) return undefined;
	const [first, last] = [walked[0], walked[walked.length - 1]];
	return [endOf(first.piece, first.edge, first.reversed), endOf(last.piece, last.edge, !last.reversed)];
}

function endOf(piece: Piece, edge: Edge, atEnd: boolean): End {
	const index = piece.edges.findIndex(({ id }) => id === edge.id);
	const count = piece.edges.length;
	return { piece, neighbour: piece.edges[(index + (atEnd ? 1 : count - 1)) % count] };
}

/** The edges of side a of a seam as it is walked, or the one edge. */
export function walkedEdges(
	draft: Draft,
	along: Along
): readonly { readonly piece: Piece; readonly edge: Edge; readonly reversed: boolean }[] {
	if (along.of === 'seam') {
		const seam = seamOf(draft, along.id);
		return seam ? seamRun(draft, seam, 'a') : [];
	}
	const found = edgeOf(draft, along.id);
	return found ? [{ ...found, reversed: false }] : [];
}

/** A place in a list: “Armhole”, “Half way”, “Waist line”, “First notch”, “1″ below the waist”. */
export function placeName(draft: Draft, along: Along, place: Place, unit: Unit): string {
	if (place.offset) return offsetName(draft, along, place, unit);
	if ('end' in place) return endNames(draft, along)[place.end];
	if ('level' in place) return levelName(place.level) + (place.nth && place.nth > 1 ? `, crossing ${place.nth}` : '');
	if ('notch' in place) return notchName(draft, along, place.notch);
	return fractionName(place.fraction);
}

/** A place in a sentence: “at the armhole”, “half way”, “1″ below the waist”. */
export function placeInSentence(draft: Draft, along: Along, place: Place, unit: Unit): string {
	if (place.offset) return inSentence(offsetName(draft, along, place, unit));
	if ('end' in place) return `at ${endNames(draft, along).said[place.end]}`;
	if ('level' in place) return `at ${levelInSentence(place.level)}`;
	if ('notch' in place) return `at ${theNamed(notchName(draft, along, place.notch))}`;
	return inSentence(fractionName(place.fraction));
}

/** A place as a bound: “from the bust to the waist”. */
export function placeAsBound(draft: Draft, along: Along, place: Place, unit: Unit): string {
	return placeInSentence(draft, along, place, unit).replace(/^at /, '');
}

const theNamed = (name: string) => (/^notch /i.test(name) ? inSentence(name) : `the ${inSentence(name)}`);

function offsetName(draft: Draft, along: Along, place: Place, unit: Unit): string {
	const offset = place.offset ?? 0;
	const length = formatLength(offset, unit, { denominator: 16, sign: 'never' }).text;
	const base: Place = bare(place);
	const named = placeAsBound(draft, along, base, unit);
	if ('end' in place) return `${length} from ${named}`;
	const down = runsDown(draft, along);
	return `${length} ${offset > 0 === down ? 'below' : 'above'} ${named}`;
}

function bare(place: Place): Place {
	const { offset: _, ...base } = place;
	return base;
}

/** Whether a seam or an edge is walked downwards as the piece lies; one that lies level counts as downwards. */
export function runsDown(draft: Draft, along: Along): boolean {
	const walked = walkedEdges(draft, along);
	if (walked.length === 0) return true;
	const [first, last] = [walked[0], walked[walked.length - 1]];
	const from = endPoint(first.edge, first.reversed);
	const to = endPoint(last.edge, !last.reversed);
	return to[1] >= from[1];
}

function endPoint(edge: Edge, atEnd: boolean): Point {
	return atEnd ? edge.path[edge.path.length - 1].to : edge.path[0].from;
}

const ordinals = ['First', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth'];

function notchName(draft: Draft, along: Along, id: string): string {
	const notches = notchesAlong(draft, along);
	const index = notches.indexOf(id);
	if (index < 0 || index >= ordinals.length) return `Notch ${id}`;
	return notches.length === 1 ? 'Notch' : `${ordinals[index]} notch`;
}

/** The notches on a seam's side a, or on an edge, in order from its start. */
export function notchesAlong(draft: Draft, along: Along): readonly string[] {
	return walkedEdges(draft, along).flatMap(({ piece, edge, reversed }) => {
		const on = piece.notches.filter((notch) => notch.edge === edge.id).sort((one, other) => one.at - other.at);
		return (reversed ? on.reverse() : on).map(({ id }) => id);
	});
}

function fractionName(fraction: number): string {
	if (fraction === 0.5) return 'Half way';
	if (fraction === 0.25) return 'A quarter of the way';
	if (fraction === 0.75) return 'Three quarters of the way';
	return `${Math.round(fraction * 100)} % of the way`;
}

/** Stitched position of a place from the start, mm, or the sentence that says why it is not there. */
export function positionOf(
	draft: Draft,
	along: Along,
	place: Place
): { readonly at: number; readonly point: Point } | { readonly problem: string } {
	if (along.of === 'seam') {
		const seam = seamOf(draft, along.id);
		if (!seam) return { problem: `There is no seam ${undividedName(along.id)} in this draft.` };
		const found = findPlaceOnSeam(draft, seam.id, 'a', place);
		if ('problem' in found) return found;
		return { at: found.stitchedOnSeam, point: pointAt(edgeOf(draft, found.edge)!.edge.path, found.s) };
	}
	const edge = edgeOf(draft, along.id);
	if (!edge) return { problem: `There is no edge ${undividedName(along.id)} in this draft.` };
	const found = findPlace(draft, `${edge.piece.id}/${edge.edge.id}`, place);
	return 'problem' in found ? found : { at: found.stitched, point: pointAt(edge.edge.path, found.s) };
}
