import { signedArea } from '../geometry/area.ts';
import { distance } from '../geometry/point.ts';
import { dartLegs } from '../draft/dart-legs.ts';
import { edgeStitchedLength } from '../draft/length.ts';
import { levelNames } from '../draft/round.ts';
import { levelOnEdge } from '../draft/level.ts';
import { nameOf } from '../draft/find.ts';
import { outlineOf } from '../draft/outline.ts';
import { measured } from '../geometry/accuracy.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { pathLength, pointAt } from '../geometry/path.ts';
import { straightMouths } from '../draft/straight-mouths.ts';
import { undividedName } from '../draft/undivided-name.ts';
import { edgePairs, piecePairs, type EdgePair, type LaidEdge, type PiecePair } from './same-feature.ts';
import { greatestMove, lineMove, moveAt } from './edge-moves.ts';
import type { Draft, Piece } from '../draft/types.ts';
import type { Point } from '../geometry/types.ts';

/** mm square across the line before, positive outward; `at` names a place on it: `start`, a level, a notch, `finish`. */
export interface NamedMove {
	readonly at: string;
	readonly move: number;
}

export interface EdgeChange {
	/** `front/side`. */
	readonly edge: string;
	/** Stitched lengths, mm. */
	readonly before: number;
	readonly after: number;
	/** The greatest move anywhere along it, without regard to its sign: `s` mm along the line before, `at` the nearest named place. */
	readonly greatest: NamedMove & { readonly s: number };
	/** In order from its start. */
	readonly moves: readonly NamedMove[];
}

export interface PieceChange {
	readonly piece: string;
	/** mm² inside the stitching line, dart mouths included; absent where the piece is new, or gone. */
	readonly areaBefore?: number;
	readonly areaAfter?: number;
}

/** A dart as it is marked: mm and radians. Of a fold dart: the intake at its widest, the first end, and no one angle. */
export interface DartSize {
	readonly intake: number;
	/** Along the fold line. */
	readonly length: number;
	readonly point: Point;
	readonly angle?: number;
}

export interface DartChange {
	/** `front/waist-dart`. */
	readonly dart: string;
	/** Absent: the dart is new. */
	readonly before?: DartSize;
	/** Absent: the dart is gone. */
	readonly after?: DartSize;
}

export interface Comparison {
	/** Every piece of either draft. */
	readonly pieces: readonly PieceChange[];
	/** Every edge that both drafts have, moved or not. */
	readonly edges: readonly EdgeChange[];
	/** Only the darts that are new, changed or gone. */
	readonly darts: readonly DartChange[];
}

/**
 * What changed from one draft to another, edge by edge, laid in the same place. Pieces divided into right and left in one
 * of the two are held against the undivided piece of the other. Lengths and areas are exact to 1e-6; a move is the distance
 * square across the line before to the line after, which is taken to run straight on where its corner was trimmed.
 *
 * @param only edges and darts by whole name, where the others are not asked about
 */
export function compare(before: Draft, after: Draft, only?: ReadonlySet<string>): Comparison {
	const pairs = piecePairs(before, after);
	const asked = (name: string) => only === undefined || only.has(name);
	return {
		pieces: pairs.map(pieceChange),
		edges: pairs
			.flatMap(edgePairs)
			.filter(({ name }) => asked(name))
			.map(edgeChange),
		darts: pairs.flatMap(dartChanges).filter(({ dart }) => asked(dart))
	};
}

function pieceChange({ name, before, after }: PiecePair): PieceChange {
	const halved = before && after && (before.cut === 'fold') !== (after.cut === 'fold');
	const area = (piece: Piece) => signedArea(outlineOf(piece)) * (halved && piece.cut === 'fold' ? 2 : 1);
	return {
		piece: name,
		...(before && { areaBefore: area(before) }),
		...(after && { areaAfter: area(after) })
	};
}

/** One edge before and after. */
export function edgeChange({ name, before, after }: EdgePair): EdgeChange {
	const lines = lineMove(before.line, after.line);
	const places = namedPlaces(before);
	const greatest = greatestMove(
		lines,
		places.map((place) => place.s),
		'either'
	);
	return {
		edge: name,
		before: edgeStitchedLength(before.piece, before.edge),
		after: edgeStitchedLength(after.piece, after.edge),
		greatest: { move: greatest.move, at: nearestPlace(places, greatest.s), s: greatest.s },
		moves: places.map(({ at, s }) => ({ at, move: moveAt(lines, s) }))
	};
}

interface NamedPlace {
	readonly at: string;
	/** mm along the edge's line as it is laid for comparing. */
	readonly s: number;
}

/** Ends, levels and notches of an edge, in order along its line as it is laid. */
export function namedPlaces({ piece, edge, line, turned }: LaidEdge): NamedPlace[] {
	const inner: NamedPlace[] = [];
	for (const level of levelNames(piece)) {
		levelOnEdge(piece, edge, level).forEach((s, i) => inner.push({ at: i === 0 ? level : `${level} ${i + 1}`, s }));
	}
	for (const notch of piece.notches) if (notch.edge === edge.id) inner.push({ at: notch.id, s: notch.at });
	const length = pathLength(line);
	const shorter = pathLength(edge.path) - length;
	// Where a mouth was straightened, a place behind it has come nearer to the start by as much.
	const onLine = (s: number) =>
		shorter > measured ? nearestOn(straightMouths(piece, edge), pointAt(edge.path, s), measured).s : s;
	const laid = inner.map(({ at, s }) => ({ at, s: turned ? length - onLine(s) : onLine(s) })).sort((a, b) => a.s - b.s);
	return [{ at: 'start', s: 0 }, ...laid, { at: 'finish', s: length }];
}

function nearestPlace(places: readonly NamedPlace[], s: number): string {
	let nearest = places[0];
	for (const place of places) if (Math.abs(place.s - s) < Math.abs(nearest.s - s)) nearest = place;
	return nearest.at;
}

/** The darts of one piece that are new, changed or gone. */
export function dartChanges({ name, before, after }: PiecePair): DartChange[] {
	const then = before ? dartSizes(before) : new Map<string, DartSize>();
	const now = after ? dartSizes(after) : new Map<string, DartSize>();
	const ids = new Set([...now.keys(), ...then.keys()]);
	const changes: DartChange[] = [];
	const answering = (sizes: ReadonlyMap<string, DartSize>, id: string) => sizes.get(id) ?? sizes.get(undividedName(id));
	for (const id of ids) {
		const undivided = [...ids].some((other) => other !== id && undividedName(other) === id);
		if (undivided) continue;
		const was = answering(then, id);
		const is = answering(now, id);
		if (was && is && sameSize(was, is)) continue;
		changes.push({ dart: nameOf(name, id), ...(was && { before: was }), ...(is && { after: is }) });
	}
	return changes;
}

function dartSizes(piece: Piece): Map<string, DartSize> {
	const sizes = new Map<string, DartSize>();
	for (const dart of piece.darts) {
		const { intake, angle, foldAt } = dartLegs(piece, dart);
		sizes.set(dart.id, { intake, angle, length: distance(foldAt, dart.point), point: dart.point });
	}
	for (const { id, ends, widest } of piece.foldDarts) {
		sizes.set(id, { intake: widest.intake, length: distance(ends[0], ends[1]), point: ends[0] });
	}
	return sizes;
}

const sameWithin = 1e-6;

function sameSize(a: DartSize, b: DartSize): boolean {
	return (
		Math.abs(a.intake - b.intake) <= sameWithin &&
		Math.abs(a.length - b.length) <= sameWithin &&
		Math.abs((a.angle ?? 0) - (b.angle ?? 0)) <= sameWithin &&
		distance(a.point, b.point) <= sameWithin
	);
}
