/**
 * A dart's mouth shaped as it will be pressed: what one gets by folding the dart, cutting along the edge, and unfolding it.
 * The line beyond the leg that the dart is pressed towards is mirrored in that leg, which gives the half of the mouth next to
 * it, and that in the fold line, which gives the other half (common practice, no source).
 */
import type { Path, Point } from '../geometry/types.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { along } from '../geometry/meet.ts';
import { movePath, reflection } from '../geometry/motion.ts';
import { endTangent, pathEnd, pathStart, portion, reversedPath, startTangent } from '../geometry/path.ts';
import { add, cross, distance, midpoint, scale, subtract, unit } from '../geometry/point.ts';
import { line } from '../geometry/segment.ts';
import type { DartLegs } from './dart-legs.ts';
import { withEnds } from './meet-ends.ts';
import type { Dart, Piece } from './types.ts';

/** The line that a dart's mouth is folded on. */
export interface MouthFold {
	readonly through: Point;
	/** Unit direction into the piece. */
	readonly into: Point;
}

/** Legs that close in by less than this lie alongside each other, radians. */
const alongside = 1e-6;

/**
 * Halfway between the two legs as they come to the edge: of straight legs the line to the point, of shaped ones, which may both lean the
 * same way there, the one on which they are folded together at the mouth.
 */
export function foldAtMouth({ from, to, mouthFrom, mouthTo }: DartLegs): MouthFold {
	const [one, other] = [startTangent(from), startTangent(to)];
	const into = unit(add(one, other));
	const turn = cross(one, other);
	if (Math.abs(turn) < alongside) return { through: midpoint(mouthFrom, mouthTo), into };
	return { through: along(mouthFrom, one, cross(subtract(mouthTo, mouthFrom), other) / turn), into };
}

/**
 * The mouth from the dart's `from` to its `to`, peaked on the fold line; undefined where the mirrored line does not come there.
 *
 * @param towards the leg that the dart is pressed towards
 * @param beyond the edge's own line beyond that leg, from the mouth away
 */
export function pressedMouth(legs: DartLegs, towards: 'from' | 'to', beyond: Path): Path | undefined {
	const leg = towards === 'to' ? legs.to : legs.from;
	const mouth = pathStart(leg);
	const fold = foldAtMouth(legs);
	const half = toFold(movePath(reflection(mouth, along(mouth, startTangent(leg), 1)), beyond), fold, legs);
	if (!half) return undefined;
	const inFold = reflection(fold.through, along(fold.through, fold.into, 1));
	const other = withEnds(movePath(inFold, half), undefined, pathEnd(half));
	const inOrder: Path = towards === 'to' ? [...other, ...reversedPath(half)] : [...half, ...reversedPath(other)];
	return between(legs.mouthFrom, inOrder, legs.mouthTo);
}

/** The leg that a dart is pressed towards: as it says, else the one nearer to the grain line, else nearer to the piece's middle. */
export function pressedTowards(piece: Piece, dart: Dart, legs: DartLegs): 'from' | 'to' {
	if (dart.press) return dart.press;
	const middle = piece.grain ? midpoint(piece.grain[0], piece.grain[1]) : middleOfCorners(piece);
	return distance(legs.mouthTo, middle) < distance(legs.mouthFrom, middle) ? 'to' : 'from';
}

function middleOfCorners(piece: Piece): Point {
	let x = 0;
	let y = 0;
	for (const edge of piece.edges) {
		const [cornerX, cornerY] = pathStart(edge.path);
		x += cornerX;
		y += cornerY;
	}
	return scale([x, y], 1 / piece.edges.length);
}

/** The start of the line up to the fold line, run straight on if it is too short; undefined where it does not come there. */
function toFold(mirrored: Path, fold: MouthFold, { foldAt, intake }: DartLegs): Path | undefined {
	const end = pathEnd(mirrored);
	const long = [...mirrored, line(end, along(end, endTangent(mirrored), 2 * intake))];
	const met = lineCrossings(long, fold.through, along(fold.through, fold.into, 1), measured)
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
