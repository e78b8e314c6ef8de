/** Which parts of a draft an alteration reaches: its names are of the undivided draft, `on` says which half of the wearer. */
import { divide } from '../draft/divide.ts';
import { sideOfName, undividedName, undividedSeam } from '../draft/undivided-name.ts';
import { splitName } from '../draft/find.ts';
import type { Draft, Piece, RunEdge, Seam } from '../draft/types.ts';
import { noPlace, refused } from './refusal.ts';
import type { On, Outcome } from './types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

/** A side that a name carries itself (`front@left/side`, `side@right`), else the one asked for. */
export function sideAsked(name: string, on: On): On {
	const own = sideOfName(name);
	return own ?? on;
}

/**
 * The features (edges, darts, marks, named whole) that `name` means on the side asked for, in a draft divided where that
 * was needed. Refused if there is none, or if one side is asked of a piece that exists only once.
 */
export function reachedFeatures(
	draft: Draft,
	name: string,
	on: On,
	idsOf: (piece: Piece) => readonly string[]
): { draft: Draft; names: string[] } | Refused {
	const asked = sideAsked(name, on);
	const base = undividedName(name);
	const found = everyFeature(draft, base, idsOf);
	if (found.length === 0) return noPlace(`There is no ${base} in this draft.`);
	if (asked === 'both') return { draft, names: found.map((one) => one.name) };
	const own = found.filter((one) => one.side === asked);
	if (own.length > 0) return { draft, names: own.map((one) => one.name) };
	const whole = found[0].piece;
	if (whole.cut === 'single')
		return refused(
			'one-piece',
			`${whole.name} is cut once, not as a pair: it has no ${asked} half of its own. Carry it to both.`
		);
	const divided = divide(draft, [whole.id]);
	return {
		draft: divided,
		names: everyFeature(divided, base, idsOf)
			.filter((one) => one.side === asked)
			.map((one) => one.name)
	};
}

/** The same for whole pieces. */
export function reachedPieces(draft: Draft, pieceId: string, on: On): { draft: Draft; pieces: string[] } | Refused {
	const asked = sideAsked(pieceId, on);
	const base = undividedName(pieceId);
	const parts = draft.pieces.filter((piece) => undividedName(piece.id) === base);
	if (parts.length === 0) return noPlace(`There is no piece ${base} in this draft.`);
	if (asked === 'both') return { draft, pieces: parts.map((piece) => piece.id) };
	const own = parts.filter((piece) => sideOfName(piece.id) === asked || (piece.side === asked && parts.length === 1));
	if (own.length > 0) return { draft, pieces: own.map((piece) => piece.id) };
	if (isOpened(parts[0])) return { draft, pieces: [parts[0].id] };
	if (parts[0].cut === 'single')
		return refused(
			'one-piece',
			`${parts[0].name} is cut once, not as a pair: it has no ${asked} half of its own. Carry it to both.`
		);
	const divided = divide(draft, [parts[0].id]);
	return reachedPieces(divided, pieceId, on);
}

/** One seam to work on, and which amount each of its sides takes. */
export interface ReachedSeam {
	readonly seam: Seam;
	/** The pin's amount that moves side a and side b; undefined where that side is left alone. */
	readonly a?: 'a' | 'b';
	readonly b?: 'a' | 'b';
}

/**
 * The seams that `name` means on the side asked for. A centre seam has one amount, `a`, for both of its sides; asked for one
 * side only, it is divided and that side alone moves.
 */
export function reachedSeams(draft: Draft, name: string, on: On): { draft: Draft; seams: ReachedSeam[] } | Refused {
	const asked = sideAsked(name, on);
	const base = undividedName(name);
	const found = draft.seams.filter((seam) => undividedSeam(seam) === base);
	if (found.length === 0) return noPlace(`There is no seam ${base} in this draft.`);
	if (asked === 'both') return { draft, seams: found.map(wholeSeam) };
	const own = found.filter((seam) => sideOfName(seam.id) === asked);
	if (own.length > 0) return { draft, seams: own.map(wholeSeam) };
	const seam = found[0];
	if (isDividedCentreSeam(seam)) return { draft, seams: [asked === 'right' ? { seam, a: 'a' } : { seam, b: 'a' }] };
	const runs = seam.b === 'mirror' ? seam.a : [...seam.a, ...seam.b];
	const pieces = [...new Set(runs.map((run) => splitName(run.edge).piece))];
	const whole = pieces.filter((id) => draft.pieces.some((piece) => piece.id === id && piece.cut !== 'single'));
	if (whole.length === 0)
		return refused(
			'one-piece',
			`${seam.name} is sewn once, not on both sides: it has no ${asked} half. Carry it to both.`
		);
	return reachedSeams(divide(draft, whole), name, on);
}

function wholeSeam(seam: Seam): ReachedSeam {
	if (seam.b === 'mirror') return { seam, a: 'a' };
	if (isDividedCentreSeam(seam)) return { seam, a: 'a', b: 'a' };
	return { seam, a: 'a', b: 'b' };
}

/** A centre seam whose piece has been made in two: right half to left half of the same edges. */
export function isDividedCentreSeam(seam: Seam): boolean {
	if (seam.b === 'mirror' || seam.a.length !== seam.b.length) return false;
	const { a, b } = seam as { a: readonly RunEdge[]; b: readonly RunEdge[] };
	return a.every(
		(run, i) =>
			sideOfName(run.edge) === 'right' &&
			sideOfName(b[i].edge) === 'left' &&
			undividedName(run.edge) === undividedName(b[i].edge)
	);
}

function everyFeature(draft: Draft, base: string, idsOf: (piece: Piece) => readonly string[]) {
	const wanted = splitName(base);
	const found: { name: string; side: 'left' | 'right' | undefined; piece: Piece }[] = [];
	for (const piece of draft.pieces) {
		if (undividedName(piece.id) !== wanted.piece) continue;
		for (const id of idsOf(piece)) {
			if (undividedName(id) !== wanted.id) continue;
			const side = sideOfName(piece.id) ?? sideOfName(id) ?? (piece.side === 'both' ? undefined : piece.side);
			found.push({ name: `${piece.id}/${id}`, side, piece });
		}
	}
	return found;
}

export const edgeIds = (piece: Piece) => piece.edges.map((edge) => edge.id);
export const dartIds = (piece: Piece) => [...piece.darts, ...piece.foldDarts].map((dart) => dart.id);
export const markIds = (piece: Piece) => [...piece.marks, ...piece.notches].map((mark) => mark.id);

/**
 * The sides of one part that an alteration reaches: an opened fold piece carries both halves and has every name twice; any
 * other part is one.
 */
export function partSides(piece: Piece, on: On): readonly ('left' | 'right' | undefined)[] {
	if (!isOpened(piece)) return [undefined];
	return on === 'both' ? ['right', 'left'] : [on];
}

/** A fold piece that was opened is one part with both halves on it. */
function isOpened(piece: Piece): boolean {
	return !sideOfName(piece.id) && piece.edges.some((edge) => sideOfName(edge.id));
}
