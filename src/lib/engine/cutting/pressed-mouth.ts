/**
 * A dart's mouth shaped as it will be pressed, for cutting: what one gets by folding the dart, cutting along the edge, and unfolding it.
 * The line beyond the leg that the dart is pressed towards is mirrored in that leg, which gives the half of the
 * mouth next to it, and that in the fold line, which gives the other half (common practice, no source).
 */
import {
	cornersOf,
	endTangent,
	pathEnd,
	pathLength,
	pathStart,
	pointAt,
	portion,
	reversedPath,
	startTangent,
	tangentAt
} from '../geometry/path.ts';
import { angleBetween, cross, distance, midpoint, subtract, unit } from '../geometry/point.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { along } from '../geometry/meet.ts';
import { dartLegs } from '../draft/dart-legs.ts';
import { line } from '../geometry/segment.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { movePath, reflection } from '../geometry/motion.ts';
import type { Dart, Edge, Piece } from '../draft/types.ts';
import type { Path, Point } from '../geometry/types.ts';

/** The edge's line for cutting: mouths that are not trued yet are shaped, all else is as drawn. The same path if nothing is. */
export function pressedEdge(piece: Piece, edge: Edge): Path {
	const mouths = piece.darts
		.filter((dart) => dart.edge === edge.id && dart.to - dart.from > joined)
		.sort((a, b) => a.from - b.from);
	let path: Path = [];
	let done = 0;
	let shaped = false;
	mouths.forEach((dart, i) => {
		const before = i === 0 ? 0 : mouths[i - 1].to;
		const after = i + 1 === mouths.length ? pathLength(edge.path) : mouths[i + 1].from;
		const mouth = isTrued(piece, edge, dart) ? undefined : pressedMouth(piece, edge, dart, before, after);
		if (!mouth || dart.from < done) return;
		if (dart.from - done > measured) path = [...path, ...portion(edge.path, done, dart.from)];
		path = [...path, ...mouth];
		done = dart.to;
		shaped = true;
	});
	if (!shaped) return edge.path;
	const length = pathLength(edge.path);
	return length - done > measured ? [...path, ...portion(edge.path, done, length)] : path;
}

/** A peak this near to the fold line, mm and as a share of the intake, is that of a trued mouth. */
const peakNear = 1;
const peakShare = 0.1;

/** Whether the mouth as drawn already has the peak that folding and cutting gives it. */
function isTrued(piece: Piece, edge: Edge, dart: Dart): boolean {
	const { foldAt, intake } = dartLegs(piece, dart);
	const fold = unit(subtract(foldAt, dart.point));
	return cornersOf(edge.path).some((s) => {
		if (s <= dart.from + measured || s >= dart.to - measured) return false;
		const aside = Math.abs(cross(fold, subtract(pointAt(edge.path, s), dart.point)));
		const turn = angleBetween(tangentAt(edge.path, s, 'before'), tangentAt(edge.path, s, 'after'));
		return turn > 0 && aside <= Math.max(peakNear, peakShare * intake);
	});
}

/** `before` and `after` bound the edge's own line on either side of the mouth: an end of the edge, or another mouth. */
function pressedMouth(piece: Piece, edge: Edge, dart: Dart, before: number, after: number): Path | undefined {
	const legs = dartLegs(piece, dart);
	const towardsEnd = (dart.press ?? towardsGrain(piece, legs.mouthFrom, legs.mouthTo)) === 'to';
	const [from, to] = towardsEnd ? [dart.to, after] : [before, dart.from];
	if (to - from <= joined) return undefined;
	const own = portion(edge.path, from, to);
	const beyond = towardsEnd ? own : reversedPath(own);
	const leg = towardsEnd ? legs.to : legs.from;
	const mouth = pathStart(leg);
	const half = toFold(
		movePath(reflection(mouth, along(mouth, startTangent(leg), 1)), beyond),
		legs.foldAt,
		dart.point,
		legs.intake
	);
	if (!half) return undefined;
	const other = movePath(reflection(legs.foldAt, dart.point), half);
	const inOrder: Path = towardsEnd ? [...other, ...reversedPath(half)] : [...half, ...reversedPath(other)];
	return between(legs.mouthFrom, inOrder, legs.mouthTo);
}

/** The start of the line up to the fold line, run straight on if it is too short; undefined where it does not come there. */
function toFold(mirrored: Path, foldAt: Point, point: Point, intake: number): Path | undefined {
	const end = pathEnd(mirrored);
	const long = [...mirrored, line(end, along(end, endTangent(mirrored), 2 * intake))];
	const met = lineCrossings(long, foldAt, point, measured)
		.filter(({ s }) => s > joined)
		.sort((a, b) => a.s - b.s)[0];
	return met && distance(met.point, foldAt) <= 2 * intake ? portion(long, 0, met.s) : undefined;
}

/** The line with straight steps at its ends where unlike legs leave it beside the mouth, its ends exactly those of the mouth. */
function between(from: Point, path: Path, to: Point): Path {
	const [start, end] = [pathStart(path), pathEnd(path)];
	const lead = distance(from, start) > joined ? [line(from, start)] : [];
	const tail = distance(end, to) > joined ? [line(end, to)] : [];
	const first = lead.length > 0 ? path[0] : { ...path[0], from };
	const moved = [first, ...path.slice(1)];
	if (tail.length === 0) moved[moved.length - 1] = { ...moved[moved.length - 1], to };
	return [...lead, ...moved, ...tail];
}

/** The leg that lies nearer to the grain line's middle; without a grain line, the one that comes first. */
function towardsGrain(piece: Piece, mouthFrom: Point, mouthTo: Point): 'from' | 'to' {
	if (!piece.grain) return 'from';
	const grain = midpoint(piece.grain[0], piece.grain[1]);
	return distance(mouthTo, grain) < distance(mouthFrom, grain) ? 'to' : 'from';
}
