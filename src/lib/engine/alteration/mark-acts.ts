/** What can be done to the marks and notches of one part of a draft. */
import { distance, subtract, add } from '../geometry/point.ts';
import { pointAt } from '../geometry/path.ts';
import type { Point } from '../geometry/types.ts';
import { edgeOf, findNotch, findEdge, isTaken, nameOf, splitName } from '../draft/find.ts';
import { findInnerPoint, findPlace } from '../draft/place.ts';
import { sideOfName } from '../draft/undivided-name.ts';
import type { Draft, EdgePlace, InnerPoint, Mark, MarkKind, Notch, Piece } from '../draft/types.ts';
import { onSide, placeOnSide } from './inner-point-on-side.ts';
import { placeButtonholes, type Buttonholes } from './place-buttonholes.ts';
import { isRefused, noPlace, refused } from './refusal.ts';
import type { Outcome } from './types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

/** One part as it stands; `side` for one half of an opened fold piece, which has its ids twice, `id@right` and `id@left`. */
export interface Where {
	readonly draft: Draft;
	readonly piece: Piece;
	readonly side: 'left' | 'right' | undefined;
}

/** Adds a mark, or sets the one by that id anew. On an opened piece bare coordinates name one point, so one mark is set there. */
export function setMark(
	where: Where,
	{
		id,
		kind,
		at,
		to
	}: { readonly id: string; readonly kind: MarkKind; readonly at: InnerPoint; readonly to?: InnerPoint }
): Outcome {
	const { draft, piece, side } = where;
	const bare = Array.isArray(at) && side !== undefined;
	const own = ownId(where, id) ?? (side && !bare ? `${id}@${side}` : id);
	const before = piece.marks.find((one) => one.id === own);
	if (!before && isTaken(piece, own)) return idTaken(piece, id);
	const points: Point[] = [];
	for (const inner of to ? [at, to] : [at]) {
		const found = innerPoint(where, inner);
		if (isRefused(found)) return found;
		points.push(found.point);
	}
	const [start, end] = points;
	if (end && distance(start, end) < 1)
		return refused('mark-short', 'The two ends of this buttonhole are one place. Give it a length.');
	const set: Mark = { id: own, kind, at: start, ...(end && { to: end }) };
	const marks = before ? piece.marks.map((one) => (one === before ? set : one)) : [...piece.marks, set];
	return altered(draft, piece, { ...piece, marks }, own, before ? distance(before.at, start) : 0);
}

/** Adds a notch, or sets the one by that id anew; its mate then meets it too, if it met none. */
export function setNotch(
	where: Where,
	{ id, at, mate }: { readonly id: string; readonly at: EdgePlace; readonly mate?: string }
): Outcome {
	const { draft, piece, side } = where;
	const found = onEdge(where, at);
	if (isRefused(found)) return found;
	const own = ownId(where, id) ?? (side ? `${id}@${side}` : id);
	const before = piece.notches.find((one) => one.id === own);
	if (!before && isTaken(piece, own)) return idTaken(piece, id);
	const met = mate === undefined ? undefined : mateFor(where, mate);
	if (mate !== undefined && (!met || met === nameOf(piece, own)))
		return noPlace(`There is no notch ${mate} for this one to meet. Mark that one first.`);
	if (met && edgeOf(piece, found.edge)!.kind === 'fold')
		return refused('fold-mate', 'A notch on the fold meets no other: the fold is not sewn. Leave its mate out.');
	const set: Notch = { id: own, edge: found.edge, at: found.s, ...(met && { mate: met }) };
	const notches = before ? piece.notches.map((one) => (one === before ? set : one)) : [...piece.notches, set];
	const changed = altered(
		draft,
		piece,
		{ ...piece, notches },
		own,
		before ? distance(found.point, pointAt(edgeOf(piece, before.edge)!.path, before.at)) : 0
	);
	return met ? { ...changed, draft: meeting(changed.draft, met, nameOf(piece, own)) } : changed;
}

/** Moves a notch to a place on an edge, or a mark to a point; a buttonhole's second end goes with it. */
export function moveMark(where: Where, id: string, to: EdgePlace | undefined, inner: InnerPoint | undefined): Outcome {
	const { draft, piece } = where;
	const own = ownId(where, id);
	const notch = piece.notches.find((one) => one.id === own);
	if (notch) {
		if (!to)
			return refused(
				'notch-on-edge',
				`${id} is a notch of ${piece.name}: it moves along an edge. Name the edge and a place.`
			);
		const found = onEdge(where, to);
		if (isRefused(found)) return found;
		const moved: Notch = { ...notch, edge: found.edge, at: found.s };
		const far = distance(found.point, pointAt(edgeOf(piece, notch.edge)!.path, notch.at));
		const notches = piece.notches.map((one) => (one === notch ? moved : one));
		return altered(draft, piece, { ...piece, notches }, notch.id, far);
	}
	const mark = piece.marks.find((one) => one.id === own);
	if (!mark) return noMark(piece, id);
	if (!inner)
		return refused(
			'mark-inside',
			`${id} is a mark inside ${piece.name}. Name the point it goes to: square in from an edge, or short of another mark.`
		);
	const found = innerPoint(where, inner);
	if (isRefused(found)) return found;
	const moved: Mark = {
		...mark,
		at: found.point,
		...(mark.to && { to: add(mark.to, subtract(found.point, mark.at)) })
	};
	const marks = piece.marks.map((one) => (one === mark ? moved : one));
	return altered(draft, piece, { ...piece, marks }, mark.id, distance(mark.at, found.point));
}

/** Takes a mark or a notch off; what met the notch stands alone. */
export function removeMark(where: Where, id: string): Outcome {
	const { draft, piece } = where;
	const own = ownId(where, id);
	if (!own || ![...piece.marks, ...piece.notches].some((one) => one.id === own)) return noMark(piece, id);
	const kept = <T extends { readonly id: string }>(list: readonly T[]) => list.filter((one) => one.id !== own);
	const changed = altered(draft, piece, { ...piece, marks: kept(piece.marks), notches: kept(piece.notches) }, own, 0);
	return { ...changed, draft: withoutMate(changed.draft, nameOf(piece, own)) };
}

/** Sets the buttonholes of one closing, in place of those by the same name. */
export function setButtonholes(where: Where, asked: Buttonholes & { readonly id: string }): Outcome {
	const { draft, piece, side } = where;
	const edge = placeOnSide({ edge: asked.edge, end: 'start' }, sideOfName(piece.id), side).edge;
	if (splitName(edge).piece !== piece.id)
		return noPlace(`${asked.edge} is not an edge of ${piece.name}. Name the edge that closes with these buttons.`);
	const made = placeButtonholes(draft, { ...asked, edge });
	if (isRefused(made)) return made;
	const suffix = side ? `@${side}` : '';
	const earlier = new Set(
		piece.marks.filter(({ id, kind }) => kind === 'buttonhole' && isNumbered(id, asked.id, suffix)).map(({ id }) => id)
	);
	const placed = made.placed.map(({ at, to }, i): Mark => ({
		id: `${asked.id}-${i + 1}${suffix}`,
		kind: 'buttonhole',
		at,
		to
	}));
	const taken = placed.find(({ id }) => !earlier.has(id) && isTaken(piece, id));
	if (taken) return idTaken(piece, taken.id);
	const marks = [...piece.marks.filter(({ id }) => !earlier.has(id)), ...placed];
	const changed = { ...piece, marks };
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? changed : one)) },
		touched: placed.map((one) => {
			const before = piece.marks.find(({ id }) => id === one.id);
			return { feature: nameOf(piece, one.id), greatestMove: before ? distance(before.at, one.at) : 0 };
		}),
		remarks: made.remarks
	};
}

function isNumbered(id: string, stem: string, suffix: string): boolean {
	if (!id.startsWith(`${stem}-`) || !id.endsWith(suffix)) return false;
	return /^\d+$/.test(id.slice(stem.length + 1, id.length - suffix.length));
}

/** The id by which this half has a thing: its own, or one that lies on the middle of an opened piece. */
export function ownId({ piece, side }: Where, id: string): string | undefined {
	if (side && isTaken(piece, `${id}@${side}`)) return `${id}@${side}`;
	return isTaken(piece, id) ? id : undefined;
}

export function noMark(piece: Piece, id: string): Refused {
	const known = [...piece.marks, ...piece.notches].map((one) => one.id);
	return noPlace(`${piece.name} has no mark or notch ${id}.${known.length > 0 ? ` It has ${known.join(', ')}.` : ''}`);
}

function idTaken(piece: Piece, id: string): Refused {
	return refused('id-taken', `Something else on ${piece.name} is called ${id}. Give this mark a name of its own.`);
}

function innerPoint({ draft, piece, side }: Where, inner: InnerPoint): { readonly point: Point } | Refused {
	const found = findInnerPoint(draft, piece.id, onSide(inner, sideOfName(piece.id), side));
	return 'problem' in found ? noPlace(found.problem) : found;
}

function onEdge(
	{ draft, piece, side }: Where,
	at: EdgePlace
): { readonly edge: string; readonly s: number; readonly point: Point } | Refused {
	const own = placeOnSide(at, sideOfName(piece.id), side);
	const found = findPlace(draft, own.edge, own);
	if ('problem' in found) return noPlace(found.problem, at);
	const edge = findEdge(draft, own.edge)!;
	if (edge.piece !== piece)
		return noPlace(`${at.edge} is not an edge of ${piece.name}. Name one of its own edges.`, at);
	return { edge: edge.edge.id, s: found.s, point: pointAt(edge.edge.path, found.s) };
}

/** The notch meant by an undivided name, on this part's side of the wearer, else on the right. */
function mateFor({ draft, piece, side }: Where, mate: string): string | undefined {
	const own = sideOfName(piece.id) ?? side ?? 'right';
	const { piece: other, id } = splitName(mate);
	return [mate, `${other}@${own}/${id}`, `${other}/${id}@${own}`].find((name) => findNotch(draft, name));
}

function meeting(draft: Draft, notch: string, other: string): Draft {
	const found = findNotch(draft, notch)!;
	if (found.notch.mate && findNotch(draft, found.notch.mate)) return draft;
	const notches = found.piece.notches.map((one) => (one === found.notch ? { ...one, mate: other } : one));
	return { ...draft, pieces: draft.pieces.map((one) => (one === found.piece ? { ...one, notches } : one)) };
}

function withoutMate(draft: Draft, gone: string): Draft {
	const pieces = draft.pieces.map((piece) => {
		if (!piece.notches.some(({ mate }) => mate === gone)) return piece;
		const notches = piece.notches.map((notch): Notch => {
			const { mate, ...alone } = notch;
			return mate === gone ? alone : notch;
		});
		return { ...piece, notches };
	});
	return { ...draft, pieces };
}

function altered(
	draft: Draft,
	piece: Piece,
	by: Piece,
	id: string,
	greatestMove: number
): Exclude<Outcome, { refused: unknown }> {
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? by : one)) },
		touched: [{ feature: nameOf(piece, id), greatestMove }],
		remarks: []
	};
}
