import type { Point } from '../geometry/types.ts';
import type { Draft, Edge, InnerPoint, Notch, Piece, Place } from './types.ts';
import { joined } from '../geometry/accuracy.ts';
import { pathLength, pointAt, tangentAt } from '../geometry/path.ts';
import { add, distance, outward, scale, subtract, unit } from '../geometry/point.ts';
import { findEdge, findMark, findNotch, findPiece, findSeam, nameOf, notchOf, splitName } from './find.ts';
import { edgeStitchedLength, fromStitched, toStitched } from './length.ts';
import { levelOnEdge, levelParts } from './level.ts';
import { sideOfName, undividedName } from './undivided-name.ts';
import { mateOnSeam, seamRun, type SeamEdge, type SeamSide } from './seam.ts';

/*
 * Places as a dressmaker names them, found on the draft as it now is. Offsets are mm along the stitched line, so that dart
 * mouths are stepped over: inwards from an end, toward the finish from a level, a notch or a fraction. A place that is not
 * there is a value with a sentence that says why and what would be right; never the nearest one instead.
 */

export interface Problem {
	readonly problem: string;
}

export interface FoundPlace {
	/** Arc length on the edge in mm; never inside a dart mouth, but at the end of it that is met first. */
	readonly s: number;
	/** Stitched length from the edge's start. */
	readonly stitched: number;
}

export interface FoundPlaceOnSeam {
	/** The edge of the run that it is on, named whole. */
	readonly edge: string;
	/** Arc length on that edge. */
	readonly s: number;
	/** Stitched length from the seam's start, as this side is walked. */
	readonly stitchedOnSeam: number;
}

/** A place on one edge, named `piece/edge`. */
export function findPlace(draft: Draft, name: string, place: Place): FoundPlace | Problem {
	const found = findEdge(draft, name);
	if (found === undefined) return noSuchEdge(draft, name);
	const { piece, edge } = found;
	const length = edgeStitchedLength(piece, edge);
	const base = placeOnEdge(piece, edge, name, length, place);
	if ('problem' in base) return base;
	const stitched = withOffset(base.stitched, place, length, name);
	if (typeof stitched !== 'number') return stitched;
	// Without an offset a level or a notch stays exactly where it is, unless a mouth has swallowed it.
	const exact = base.s !== undefined && stitched === base.stitched && !isInMouth(piece, edge, base.s);
	return { s: exact ? base.s! : fromStitched(piece, edge, stitched, countedFrom(place)), stitched };
}

/**
 * A place on one side of a seam, found on each side by itself. `start` and `finish` are the seam's; on side b a notch means
 * the mate of side a's notch.
 */
export function findPlaceOnSeam(
	draft: Draft,
	seamId: string,
	side: SeamSide,
	place: Place
): FoundPlaceOnSeam | Problem {
	const seam = findSeam(draft, seamId);
	if (seam === undefined) {
		return { problem: `There is no seam ${seamId}. The draft has ${listed(draft.seams.map(({ id }) => id))}.` };
	}
	const run = seamRun(draft, seam, side);
	const last = run[run.length - 1];
	const length = last.startsAt + last.length;
	const seamName = `side ${side} of the seam ${seamId}`;
	let base: { readonly stitched: number; readonly at?: { readonly walked: SeamEdge; readonly s: number } } | Problem;
	if ('level' in place) base = levelOnRun(run, place, seamName);
	else if ('notch' in place) base = notchOnRun(draft, seamId, side, place.notch);
	else base = placeAlong(length, place);
	if ('problem' in base) return base;
	const stitched = withOffset(base.stitched, place, length, seamName);
	if (typeof stitched !== 'number') return stitched;
	if (base.at && stitched === base.stitched && !isInMouth(base.at.walked.piece, base.at.walked.edge, base.at.s)) {
		return { edge: base.at.walked.name, s: base.at.s, stitchedOnSeam: stitched };
	}
	const walked = run.find((entry) => stitched <= entry.startsAt + entry.length) ?? last;
	const onEdge = walked.reversed ? walked.startsAt + walked.length - stitched : stitched - walked.startsAt;
	const counted = countedFrom(place) === (walked.reversed ? 'finish' : 'start') ? 'start' : 'finish';
	return { edge: walked.name, s: fromStitched(walked.piece, walked.edge, onEdge, counted), stitchedOnSeam: stitched };
}

/** The end that a place is counted from: its own, or the nearer one. */
function countedFrom(place: Place): 'start' | 'finish' {
	if ('end' in place) return place.end;
	return 'fraction' in place && place.fraction > 0.5 ? 'finish' : 'start';
}

/** A point inside a piece. */
export function findInnerPoint(draft: Draft, pieceId: string, inner: InnerPoint): { readonly point: Point } | Problem {
	if (findPiece(draft, pieceId) === undefined) {
		return { problem: `There is no piece ${pieceId}. The draft has ${listed(draft.pieces.map(({ id }) => id))}.` };
	}
	if ('mark' in inner) {
		// What lies on the middle of an opened piece has no side of its own.
		const own = findMark(draft, nameOf(pieceId, inner.mark));
		const mark = (own ?? findMark(draft, nameOf(pieceId, undividedName(inner.mark))))?.mark;
		if (mark === undefined) return { problem: `${pieceId} has no mark ${inner.mark}.` };
		const toward = pointOnEdge(draft, pieceId, inner.toward);
		if ('problem' in toward) return toward;
		const short = inner.short ?? 0;
		const way = distance(mark.at, toward.point);
		if (!(short <= way)) {
			return { problem: `The mark ${inner.mark} is only ${mm(way)} from that place: ${mm(short)} short is too much.` };
		}
		return { point: add(mark.at, scale(unit(subtract(toward.point, mark.at)), short)) };
	}
	if ('from' in inner) {
		const from = pointOnEdge(draft, pieceId, inner.from);
		if ('problem' in from) return from;
		if (!Number.isFinite(inner.in)) return { problem: 'Say how far in from the edge as a length.' };
		return { point: add(from.point, scale(outward(from.tangent), -inner.in)) };
	}
	if (!inner.every(Number.isFinite)) return { problem: 'A point needs two lengths, across and down.' };
	return { point: inner };
}

function pointOnEdge(
	draft: Draft,
	pieceId: string,
	edgePlace: { readonly edge: string } & Place
): { readonly point: Point; readonly tangent: Point } | Problem {
	const found = findEdge(draft, edgePlace.edge);
	if (found === undefined) return noSuchEdge(draft, edgePlace.edge);
	if (found.piece.id !== pieceId) {
		return { problem: `The edge ${edgePlace.edge} is not on ${pieceId}: name one of its own edges.` };
	}
	const place = findPlace(draft, edgePlace.edge, edgePlace);
	if ('problem' in place) return place;
	const { path } = found.edge;
	// At an edge's finish the line that arrives is its own; everywhere else the one that goes on.
	const atFinish = place.s >= pathLength(path) - joined;
	return { point: pointAt(path, place.s), tangent: tangentAt(path, place.s, atFinish ? 'before' : 'after') };
}

interface OnEdge {
	readonly stitched: number;
	readonly s?: number;
}

function placeOnEdge(piece: Piece, edge: Edge, name: string, length: number, place: Place): OnEdge | Problem {
	if ('level' in place) {
		const crossings = levelOnEdge(piece, edge, place.level);
		const s = nthOf(crossings, place, name, () => noLevel([piece], [edge], place.level, name));
		return typeof s === 'number' ? { stitched: toStitched(piece, edge, s), s } : s;
	}
	if ('notch' in place) {
		const notch = notchOn(piece, edge, place.notch);
		if (notch === undefined) return { problem: noNotch(piece, place.notch) };
		if (notch.edge !== edge.id) {
			return { problem: `The notch ${place.notch} is on ${nameOf(piece, notch.edge)}, not on ${name}.` };
		}
		return { stitched: toStitched(piece, edge, notch.at), s: notch.at };
	}
	return placeAlong(length, place);
}

function placeAlong(length: number, place: Extract<Place, { end: unknown } | { fraction: unknown }>): OnEdge | Problem {
	if ('end' in place) return { stitched: place.end === 'start' ? 0 : length };
	if (!(place.fraction >= 0 && place.fraction <= 1)) {
		return { problem: `A fraction of an edge lies between 0 and 1; ${place.fraction} does not.` };
	}
	return { stitched: place.fraction * length };
}

function levelOnRun(
	run: readonly SeamEdge[],
	place: Extract<Place, { level: string }>,
	seamName: string
): { readonly stitched: number; readonly at: { readonly walked: SeamEdge; readonly s: number } } | Problem {
	const crossings: { stitched: number; at: { walked: SeamEdge; s: number } }[] = [];
	for (const walked of run) {
		for (const s of levelOnEdge(walked.piece, walked.edge, place.level)) {
			const onEdge = toStitched(walked.piece, walked.edge, s);
			const stitched = walked.startsAt + (walked.reversed ? walked.length - onEdge : onEdge);
			crossings.push({ stitched, at: { walked, s } });
		}
	}
	crossings.sort((one, other) => one.stitched - other.stitched);
	// A crossing at the corner where two edges of the run meet is on both.
	const distinct = crossings.filter((c, i) => i === 0 || c.stitched - crossings[i - 1].stitched > joined);
	const pieces = run.map(({ piece }) => piece);
	const edges = run.map(({ edge }) => edge);
	return nthOf(distinct, place, seamName, () => noLevel(pieces, edges, place.level, seamName));
}

function notchOnRun(
	draft: Draft,
	seamId: string,
	side: SeamSide,
	id: string
): { readonly stitched: number; readonly at: { readonly walked: SeamEdge; readonly s: number } } | Problem {
	const seam = findSeam(draft, seamId)!;
	const sideA = seamRun(draft, seam, 'a');
	const found = sideA.filter(({ piece, edge }) => notchOn(piece, edge, id)?.edge === edge.id);
	if (found.length === 0) return { problem: `Side a of the seam ${seamId} has no notch ${id}.` };
	if (found.length > 1) {
		const names = found.map(({ piece, edge }) => nameOf(piece, notchOn(piece, edge, id)!.id));
		return {
			problem: `The seam ${seamId} has more than one notch ${id}: ${listed(names)}. Give them names of their own.`
		};
	}
	const onA = nameOf(found[0].piece, notchOn(found[0].piece, found[0].edge, id)!.id);
	const name = side === 'a' ? onA : mateOnSeam(draft, seam, 'a', onA);
	if (name === undefined) return { problem: `The notch ${onA} has no mate on side b of the seam ${seamId}.` };
	const { piece, notch } = findNotch(draft, name)!;
	const walked = seamRun(draft, seam, side).find((entry) => entry.piece === piece && entry.edge.id === notch.edge)!;
	const onEdge = toStitched(piece, walked.edge, notch.at);
	return {
		stitched: walked.startsAt + (walked.reversed ? walked.length - onEdge : onEdge),
		at: { walked, s: notch.at }
	};
}

/** A notch by its plain id; on the half of an opened piece also by the id that both halves' notches had. */
function notchOn(piece: Piece, edge: Edge, id: string): Notch | undefined {
	const side = sideOfName(edge.id);
	return notchOf(piece, id) ?? (side && notchOf(piece, `${id}@${side}`));
}

/** The one crossing, or the nth from the start where the place says which. */
function nthOf<T>(
	crossings: readonly T[],
	place: { readonly level: string; readonly nth?: number },
	where: string,
	none: () => string
): T | Problem {
	if (crossings.length === 0) return { problem: none() };
	if (place.nth === undefined) {
		if (crossings.length === 1) return crossings[0];
		return {
			problem: `The ${place.level} line crosses ${where} ${crossings.length} times: say which, counted from the start ("nth": 1).`
		};
	}
	if (Number.isInteger(place.nth) && place.nth >= 1 && place.nth <= crossings.length) return crossings[place.nth - 1];
	const times = crossings.length === 1 ? 'once' : `${crossings.length} times`;
	return { problem: `The ${place.level} line crosses ${where} ${times}: there is no crossing ${place.nth}.` };
}

function withOffset(base: number, place: Place, length: number, where: string): number | Problem {
	const offset = place.offset ?? 0;
	if (!Number.isFinite(offset)) return { problem: 'An offset is a length in mm.' };
	const stitched = 'end' in place && place.end === 'finish' ? base - offset : base + offset;
	if (stitched < -joined) return { problem: `That place lies ${mm(-stitched)} beyond the start of ${where}.` };
	if (stitched > length + joined) {
		return {
			problem: `That place lies ${mm(stitched - length)} beyond the finish of ${where}, which is ${mm(length)} long.`
		};
	}
	return Math.min(Math.max(stitched, 0), length);
}

function isInMouth(piece: Piece, edge: Edge, s: number): boolean {
	return piece.darts.some((dart) => dart.edge === edge.id && s > dart.from && s < dart.to);
}

function noSuchEdge(draft: Draft, name: string): Problem {
	const { piece: pieceId } = splitName(name);
	const piece = findPiece(draft, pieceId);
	if (piece === undefined) {
		return {
			problem: `There is no edge ${name}. The draft has the pieces ${listed(draft.pieces.map(({ id }) => id))}.`
		};
	}
	return { problem: `There is no edge ${name}. ${pieceId} has ${listed(piece.edges.map(({ id }) => id))}.` };
}

function noLevel(pieces: readonly Piece[], edges: readonly Edge[], level: string, where: string): string {
	const parts = pieces.flatMap((piece) => levelParts(piece, level));
	if (parts.length === 0) {
		const known = [...new Set(pieces.flatMap((piece) => piece.levels.map((part) => part.level)))];
		return `There is no ${level} line on this piece${known.length > 0 ? `. It has ${listed(known)}` : ''}.`;
	}
	if (parts.some((part) => 'edge' in part && edges.some(({ id }) => id === part.edge))) {
		return `The ${level} line lies along ${where}, so it is no place on it: name an end, a notch or a fraction.`;
	}
	return `The ${level} line does not cross ${where}.`;
}

function noNotch(piece: Piece, id: string): string {
	const known = piece.notches.map((notch) => notch.id);
	return `${piece.id} has no notch ${id}${known.length > 0 ? `. It has ${listed(known)}` : ''}.`;
}

function listed(names: readonly string[]): string {
	return names.length === 0 ? 'none' : names.join(', ');
}

function mm(length: number): string {
	return `${Number(length.toFixed(1))} mm`;
}
