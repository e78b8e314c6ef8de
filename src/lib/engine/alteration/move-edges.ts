/** Moves edges of one piece and lets everything that lies on them ride along: dart mouths, notches, pleats. */
import { crossings, lineCrossings } from '../geometry/crossings.ts';
import { moveOutline, type EdgeMove, type MovedOutline } from '../geometry/move-outline.ts';
import { fitted, measured } from '../geometry/accuracy.ts';
import { pathLength, pathStart, startTangent } from '../geometry/path.ts';
import { along } from '../geometry/meet.ts';
import { dartLegs } from '../draft/dart-legs.ts';
import { inchesBelow } from '../draft/say.ts';
import type { Dart, Edge, Piece } from '../draft/types.ts';
import type { Path } from '../geometry/types.ts';
import { refused, type Refusal } from './refusal.ts';
import type { Remark } from './types.ts';

/** The share of `fitted` that one move may use up, so that many moves one after another do not creep. */
const accuracy = fitted / 10;

export interface MovedPiece {
	readonly piece: Piece;
	readonly remarks: readonly Remark[];
}

/** Why a piece's edges cannot be moved as asked, with what a kind needs to offer something that works. */
export interface MoveProblem {
	readonly refused: Refusal;
	/** For `too-tight`: the factor by which all amounts could be scaled. */
	readonly factor?: number;
	/** For `no-join`: the edge and which of its ends. */
	readonly edge?: Edge;
	readonly end?: 'start' | 'finish';
}

/**
 * The piece with its edges moved (one move or none for each, in order). A dart keeps its leg lines: they are cut at, or run
 * on to, the moved edge. Refused if a line would turn back on itself, if neighbours do not meet, or if a leg misses its edge.
 */
export function moveEdges(piece: Piece, moves: readonly (EdgeMove | undefined)[]): MovedPiece | MoveProblem {
	for (let i = 0; i < moves.length; i++) {
		const edge = piece.edges[i];
		if (edge.kind === 'fold' && moves[i] && typeof moves[i]!.amount !== 'number')
			return refused(
				'fold-uneven',
				`${edge.name} of the ${lower(piece.name)} is cut on the fold: it moves evenly or not at all.`
			);
	}
	const moved = moveOutline(
		piece.edges.map((edge) => edge.path),
		moves,
		'refuse',
		accuracy
	);
	if ('refused' in moved) return problemOf(piece, moves, moved);
	const edges = piece.edges.map((edge, i) =>
		moved.edges[i].path === edge.path ? edge : { ...edge, path: moved.edges[i].path }
	);
	const darts: Dart[] = [];
	for (const dart of piece.darts) {
		const ridden = rideDart(piece, dart, moved, edges, moves);
		if (!ridden)
			return refused(
				'dart-lost',
				`The legs of ${dart.name} would miss the new line of ${nameOf(piece, dart.edge)}. Move the dart first, or move the line less.`
			);
		darts.push(ridden);
	}
	const remarks: Remark[] = [];
	const notches = piece.notches.flatMap((notch) => {
		const i = indexOf(piece, notch.edge);
		if (edges[i] === piece.edges[i]) return [notch];
		const at = moved.edges[i].carried(notch.at);
		if (at !== undefined) return [{ ...notch, at }];
		remarks.push({
			code: 'notch-lost',
			where: `${piece.id}/${notch.id}`,
			sentence: `A notch on ${nameOf(piece, notch.edge)} was trimmed off with its corner. Mark it again where the pieces meet.`
		});
		return [];
	});
	const pleats = piece.pleats.flatMap((pleat) => {
		const i = indexOf(piece, pleat.edge);
		if (edges[i] === piece.edges[i]) return [pleat];
		const length = pathLength(edges[i].path);
		const from = moved.edges[i].carried(pleat.from) ?? 0;
		const to = moved.edges[i].carried(pleat.to) ?? length;
		return [{ ...pleat, from, to }];
	});
	return { piece: { ...piece, edges, darts, notches, pleats }, remarks };
}

function problemOf(
	piece: Piece,
	moves: readonly (EdgeMove | undefined)[],
	moved: Exclude<ReturnType<typeof moveOutline>, MovedOutline>
): MoveProblem {
	const edge = piece.edges[moved.edge];
	const named = nameOf(piece, edge.id);
	if (moved.refused === 'too-tight') {
		const greatest = moves[moved.edge]!.greatest * moved.factor;
		return {
			...refused(
				'too-tight',
				`${sentenceCase(named)} bends too sharply for this: the new line would turn back on itself. At most ${inchesBelow(greatest)} works there.`
			),
			factor: moved.factor,
			edge
		};
	}
	const neighbour =
		piece.edges[(moved.edge + (moved.end === 'finish' ? 1 : piece.edges.length - 1)) % piece.edges.length];
	return {
		...refused(
			'no-join',
			`The new line of ${named} does not meet ${nameOf(piece, neighbour.id)} again at its ${moved.end}. Keep 0 at that end, or move ${nameOf(piece, neighbour.id)} alike.`
		),
		edge,
		end: moved.end
	};
}

/** The dart with its mouth on the moved edge, or undefined if a leg misses it. */
function rideDart(
	piece: Piece,
	dart: Dart,
	moved: MovedOutline,
	edges: readonly Edge[],
	moves: readonly (EdgeMove | undefined)[]
): Dart | undefined {
	const i = indexOf(piece, dart.edge);
	if (edges[i] === piece.edges[i]) return dart;
	if (!moves[i]) {
		const from = moved.edges[i].carried(dart.from);
		const to = moved.edges[i].carried(dart.to);
		return from === undefined || to === undefined ? undefined : { ...dart, from, to };
	}
	const legs = dartLegs(piece, dart);
	const from = legOnEdge(legs.from, edges[i].path, moved.edges[i].carried(dart.from) ?? dart.from);
	const to = legOnEdge(legs.to, edges[i].path, moved.edges[i].carried(dart.to) ?? dart.to);
	if (from === undefined || to === undefined || to - from < measured) return undefined;
	const ridden = { ...dart, from, to };
	if (dart.widths.length === 0) return ridden;
	const before = Math.hypot(legs.foldAt[0] - dart.point[0], legs.foldAt[1] - dart.point[1]);
	const fold = dartLegs({ ...piece, edges: [...edges] }, { ...ridden, widths: [] }).foldAt;
	const after = Math.hypot(fold[0] - dart.point[0], fold[1] - dart.point[1]);
	const widths = dart.widths
		.map((width) => ({ ...width, at: 1 - ((1 - width.at) * before) / after }))
		.filter((width) => width.at > 0 && width.at < 1);
	return { ...ridden, widths };
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

function nameOf(piece: Piece, edgeId: string): string {
	const edge = piece.edges.find((one) => one.id === edgeId);
	return `the ${lower(piece.name)}’s ${lower(edge?.name ?? edgeId)}`;
}

function lower(name: string): string {
	return name.charAt(0).toLowerCase() + name.slice(1);
}

function sentenceCase(text: string): string {
	return text.charAt(0).toUpperCase() + text.slice(1);
}
