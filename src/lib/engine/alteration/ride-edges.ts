/** Lets everything that lies on a piece's edges ride along when they are drawn anew: dart mouths, notches, pleats. */
import { crossings, lineCrossings } from '../geometry/crossings.ts';
import type { MovedEdge } from '../geometry/move-outline.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { along } from '../geometry/meet.ts';
import { pathLength, pathStart, startTangent } from '../geometry/path.ts';
import { distance } from '../geometry/point.ts';
import { dartLegs } from '../draft/dart-legs.ts';
import type { Dart, DartWidth, Edge, Notch, Piece } from '../draft/types.ts';
import type { Path } from '../geometry/types.ts';
import { refused, type Refusal } from './refusal.ts';
import type { Remark } from './types.ts';

export interface RiddenPiece {
	readonly piece: Piece;
	readonly remarks: readonly Remark[];
}

/**
 * The piece with its edges as drawn anew, one line for each in order. On an edge that was `redrawn` away from where it was, a
 * dart keeps its leg lines: they are cut at, or run on to, the new line; on one that was only trimmed or run on, mouths stay
 * where they are. Refused if a leg misses its edge, or a mouth was trimmed off; a notch that was is a remark.
 */
export function rideEdges(
	piece: Piece,
	lines: readonly MovedEdge[],
	redrawn: readonly boolean[]
): RiddenPiece | { readonly refused: Refusal } {
	const edges = piece.edges.map((edge, i) => (lines[i].path === edge.path ? edge : { ...edge, path: lines[i].path }));
	const darts: Dart[] = [];
	for (const dart of piece.darts) {
		const ridden = rideDart(piece, dart, lines, edges, redrawn);
		if (!ridden)
			return refused(
				'dart-lost',
				`The legs of ${dart.name} would miss the new line of ${edgeInWords(piece, dart.edge)}. Move the dart first, or move the line less.`
			);
		darts.push(ridden);
	}
	const remarks: Remark[] = [];
	const notches: Notch[] = [];
	for (const notch of piece.notches) {
		const i = indexOf(piece, notch.edge);
		const at = edges[i] === piece.edges[i] ? notch.at : lines[i].carried(notch.at);
		if (at !== undefined) notches.push(at === notch.at ? notch : { ...notch, at });
		else
			remarks.push({
				code: 'notch-lost',
				where: `${piece.id}/${notch.id}`,
				sentence: `A notch on ${edgeInWords(piece, notch.edge)} was trimmed off with its corner. Mark it again where the pieces meet.`
			});
	}
	const pleats = piece.pleats.flatMap((pleat) => {
		const i = indexOf(piece, pleat.edge);
		if (edges[i] === piece.edges[i]) return [pleat];
		const length = pathLength(edges[i].path);
		const from = lines[i].carried(pleat.from) ?? 0;
		const to = lines[i].carried(pleat.to) ?? length;
		return [{ ...pleat, from, to }];
	});
	return { piece: { ...piece, edges, darts, notches, pleats }, remarks };
}

/** The dart with its mouth on the moved edge, or undefined if a leg misses it. */
function rideDart(
	piece: Piece,
	dart: Dart,
	lines: readonly MovedEdge[],
	edges: readonly Edge[],
	redrawn: readonly boolean[]
): Dart | undefined {
	const i = indexOf(piece, dart.edge);
	if (edges[i] === piece.edges[i]) return dart;
	if (!redrawn[i]) {
		const from = lines[i].carried(dart.from);
		const to = lines[i].carried(dart.to);
		return from === undefined || to === undefined ? undefined : { ...dart, from, to };
	}
	const legs = dartLegs(piece, dart);
	const from = legOnEdge(legs.from, edges[i].path, lines[i].carried(dart.from) ?? dart.from);
	const to = legOnEdge(legs.to, edges[i].path, lines[i].carried(dart.to) ?? dart.to);
	if (from === undefined || to === undefined || to - from <= joined) return undefined;
	const ridden = { ...dart, from, to };
	if (dart.widths.length === 0) return ridden;
	const fold = dartLegs({ ...piece, edges: [...edges] }, { ...ridden, widths: [] }).foldAt;
	return {
		...ridden,
		widths: widthsWhereTheyWere(dart.widths, distance(legs.foldAt, dart.point), distance(fold, dart.point))
	};
}

/** The widths of a dart whose fold line was `before` mm long and is now `after`, at the same distances from its point. */
export function widthsWhereTheyWere(widths: readonly DartWidth[], before: number, after: number): DartWidth[] {
	return widths
		.map((width) => ({ ...width, at: 1 - ((1 - width.at) * before) / after }))
		.filter((width) => width.at > 0 && width.at < 1);
}

/** Where a leg (from its mouth end to the point), or its run-on beyond the mouth, meets the edge nearest to `expected`. */
function legOnEdge(leg: Path, edge: Path, expected: number): number | undefined {
	const found = crossings(edge, leg, measured).map((crossing) => crossing.sa);
	const mouth = pathStart(leg);
	for (const { s, u } of lineCrossings(edge, mouth, along(mouth, startTangent(leg), -1), measured))
		if (u >= 0) found.push(s);
	let nearest: number | undefined;
	for (const s of found)
		if (nearest === undefined || Math.abs(s - expected) < Math.abs(nearest - expected)) nearest = s;
	return nearest;
}

function indexOf(piece: Piece, edgeId: string): number {
	return piece.edges.findIndex((edge) => edge.id === edgeId);
}

/** `the front’s armhole` */
export function edgeInWords(piece: Piece, edgeId: string): string {
	const edge = piece.edges.find((one) => one.id === edgeId);
	return `the ${lower(piece.name)}’s ${lower(edge?.name ?? edgeId)}`;
}

export function lower(name: string): string {
	return name.charAt(0).toLowerCase() + name.slice(1);
}

export function sentenceCase(text: string): string {
	return text.charAt(0).toUpperCase() + text.slice(1);
}
