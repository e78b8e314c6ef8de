/**
 * Trues one dart as on the table: the dart is folded as it will be pressed, the edge redrawn across it in one line, cut, and
 * unfolded (common practice, no source).
 *
 * Folded, one side of the edge is turned until the two legs lie on one line; the new edge crosses that line where both legs
 * end. Straight legs turn about the dart's point. Shaped legs are laid along each other at the mouth, and the turned side is
 * slid along them until both are sewn of one length.
 */
import { cornerAngle, fitted, joined, measured } from '../geometry/accuracy.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { along } from '../geometry/meet.ts';
import { compose, movePath, movePoint, rotation, translation } from '../geometry/motion.ts';
import { cornersOf } from '../geometry/joints.ts';
import {
	joinedPaths,
	pathEnd,
	pathLength,
	pathStart,
	pointAt,
	portion,
	reversedPath,
	startTangent,
	straight,
	tangentAt
} from '../geometry/path.ts';
import { add, angleBetween, distance, rotate, scale, subtract } from '../geometry/point.ts';
import { smoothCurve } from '../geometry/smooth-curve.ts';
import type { Motion, Path, Point } from '../geometry/types.ts';
import { dartLegs, legsBetween, type DartLegs } from '../draft/dart-legs.ts';
import { withEnds } from '../draft/meet-ends.ts';
import { pressedMouth, pressedTowards } from '../draft/pressed-mouth.ts';
import { inches } from '../draft/say.ts';
import type { Dart, DartWidth, Edge, Piece } from '../draft/types.ts';
import { isRefused, refused, type Refusal } from './refusal.ts';
import { edgeInWords, widthsWhereTheyWere } from './ride-edges.ts';

export interface TruedMouth {
	readonly path: Path;
	readonly dart: Dart;
	/** Arc length on the new edge of what was at arc length s on the old one; runs evenly where the line was redrawn. */
	carried(s: number): number;
	/** How far the leg ends moved, mm. */
	readonly greatestMove: number;
}

/** The edge on either side of the mouth, from where it is redrawn to the leg end and from there on. */
interface Sides {
	readonly before: Path;
	readonly after: Path;
	readonly legs: DartLegs;
	readonly widths: readonly DartWidth[];
}

/**
 * The edge with one dart on it trued, or undefined where it is true already. The edge is redrawn over `reach` mm on either
 * side of the mouth, less where an end of the edge or the mouth of another dart is nearer. Refused: nothing of the edge to draw
 * from on one side, or a line that does not cross the legs.
 */
export function trueMouth(
	piece: Piece,
	edge: Edge,
	dart: Dart,
	reach: number
): TruedMouth | undefined | { readonly refused: Refusal } {
	const legs = dartLegs(piece, dart);
	const length = pathLength(edge.path);
	const room = roomBeside(piece, edge, dart, length);
	const from = Math.max(room.from, dart.from - reach);
	const to = Math.min(room.to, dart.to + reach);
	if (dart.from - from <= joined || to - dart.to <= joined)
		return refused(
			'no-room',
			`${dart.name} opens right beside ${room.from > 0 || room.to < length ? 'another mouth' : 'a corner'}: there is no line of ${edgeInWords(piece, edge.id)} on that side to draw on from. Move the dart, or true it by hand.`
		);
	const isTrue = isTrueLine(edge, dart, legs, from, to);
	const sides = isTrue ? asDrawn(edge, dart, legs, from, to) : redrawn(piece, edge, dart, legs, from, to);
	if (isRefused(sides)) return sides;
	const lead = from > joined ? portion(edge.path, 0, from) : undefined;
	const rest = to < length - joined ? portion(edge.path, to, length) : undefined;
	const towards = pressedTowards(piece, dart, sides.legs);
	const beyond =
		towards === 'to'
			? [...sides.after, ...upTo(rest, room.to - to)]
			: reversedPath([...downTo(lead, from - room.from), ...sides.before]);
	const mouth = pressedMouth(sides.legs, towards, beyond) ?? straight(sides.legs.mouthFrom, sides.legs.mouthTo);
	if (isTrue && isAsDrawn(edge, dart, mouth)) return undefined;
	const path = withEnds(
		joinedPaths(...(lead ? [lead] : []), sides.before, mouth, sides.after, ...(rest ? [rest] : [])),
		pathStart(edge.path),
		pathEnd(edge.path)
	);
	const start = (lead ? from : 0) + pathLength(sides.before);
	const finish = start + pathLength(mouth);
	const knots = [
		[0, 0],
		[from, lead ? from : 0],
		[dart.from, start],
		[dart.to, finish],
		[to, finish + pathLength(sides.after)],
		[length, pathLength(path)]
	] as const;
	return {
		path,
		dart: { ...dart, from: start, to: finish, widths: sides.widths },
		carried: (s) => runEvenly(knots, s),
		greatestMove: Math.max(distance(sides.legs.mouthFrom, legs.mouthFrom), distance(sides.legs.mouthTo, legs.mouthTo))
	};
}

/** The stretch of the edge that is free of other mouths and of pleats. */
function roomBeside(piece: Piece, edge: Edge, dart: Dart, length: number): { from: number; to: number } {
	let from = 0;
	let to = length;
	for (const other of [...piece.darts, ...piece.pleats]) {
		if (other.edge !== edge.id || other.id === dart.id) continue;
		if (other.to <= dart.from + joined) from = Math.max(from, other.to);
		if (other.from >= dart.to - joined) to = Math.min(to, other.from);
	}
	return { from, to };
}

/** Whether the legs are alike and, folded, the edge runs on across them without a corner. */
function isTrueLine({ path }: Edge, dart: Dart, legs: DartLegs, from: number, to: number): boolean {
	if (Math.abs(pathLength(legs.from) - pathLength(legs.to)) > measured) return false;
	if (cornersOf(path).some((s) => (s > from && s < dart.from - joined) || (s > dart.to + joined && s < to)))
		return false;
	const turn = angleBetween(startTangent(legs.from), startTangent(legs.to));
	const arriving = rotate(tangentAt(path, dart.from, 'before'), turn, [0, 0]);
	return Math.abs(angleBetween(arriving, tangentAt(path, dart.to, 'after'))) < cornerAngle;
}

function asDrawn({ path }: Edge, dart: Dart, legs: DartLegs, from: number, to: number): Sides {
	return { before: portion(path, from, dart.from), after: portion(path, dart.to, to), legs, widths: dart.widths };
}

function isAsDrawn({ path }: Edge, dart: Dart, mouth: Path): boolean {
	const length = pathLength(mouth);
	if (Math.abs(dart.to - dart.from - length) > fitted) return false;
	return [0.2, 0.4, 0.5, 0.6, 0.8].every(
		(share) => distance(pointAt(mouth, share * length), pointAt(path, dart.from + share * length)) <= fitted
	);
}

const slides = 12;
const alike = 1e-3 * measured;

function redrawn(
	piece: Piece,
	{ path, id }: Edge,
	dart: Dart,
	legs: DartLegs,
	from: number,
	to: number
): Sides | { readonly refused: Refusal } {
	const start = pointAt(path, from);
	const leaving = tangentAt(path, from, from > joined && !isMouthEnd(piece, id, from) ? 'before' : 'after');
	const finish = pointAt(path, to);
	const arriving = tangentAt(
		path,
		to,
		to < pathLength(path) - joined && !isMouthEnd(piece, id, to) ? 'after' : 'before'
	);
	const shorter = Math.min(pathLength(legs.from), pathLength(legs.to));
	const foldLength = distance(legs.foldAt, dart.point);
	const longer = pathLength(legs.from) - pathLength(legs.to);
	let out = scale(startTangent(legs.to), -1);
	let turn = angleBetween(startTangent(legs.from), startTangent(legs.to));
	let slide = longer;
	for (let round = 0; ; round++) {
		const fold = folding(legs.mouthFrom, along(legs.mouthTo, out, slide), turn);
		const curve = [smoothCurve(movePoint(fold, start), rotate(leaving, turn, [0, 0]), finish, arriving)];
		const [at] = lineCrossings(curve, legs.mouthTo, add(legs.mouthTo, out), measured).sort(
			(a, b) => Math.abs(a.u) - Math.abs(b.u)
		);
		if (!at || at.s < joined || at.s > pathLength(curve) - joined || at.u < 1 - shorter)
			return refused(
				'no-line',
				`Folded, ${edgeInWords(piece, id)} cannot be drawn on across ${dart.name} over ${inches(Math.max(dart.from - from, to - dart.to))}. Give another reach.`
			);
		const unfold = folding(along(legs.mouthTo, out, slide), legs.mouthFrom, -turn);
		const before = movePath(unfold, portion(curve, 0, at.s));
		const after = portion(curve, at.s, pathLength(curve));
		const [mouthFrom, mouthTo] = [pathEnd(before), pathStart(after)];
		const foldAt = legsBetween(mouthFrom, mouthTo, dart.point).foldAt;
		const widths =
			dart.widths.length === 0 ? [] : widthsWhereTheyWere(dart.widths, foldLength, distance(foldAt, dart.point));
		const sewn = legsBetween(mouthFrom, mouthTo, dart.point, widths);
		const unlike = pathLength(sewn.from) - pathLength(sewn.to);
		if (Math.abs(unlike) <= alike) return { before: withEnds(before, start, undefined), after, legs: sewn, widths };
		if (round === slides)
			return refused(
				'legs-unlike',
				`The shaped legs of ${dart.name} cannot be brought to one length on this edge. Set its widths nearer alike first.`
			);
		slide += unlike;
		out = scale(startTangent(sewn.to), -1);
		turn = angleBetween(startTangent(sewn.from), startTangent(sewn.to));
	}
}

/** The turn by an angle that carries one point to another. */
function folding(point: Point, onto: Point, angle: number): Motion {
	const shift = subtract(onto, point);
	return compose(rotation(angle, point), translation(shift[0], shift[1]));
}

function isMouthEnd(piece: Piece, edgeId: string, s: number): boolean {
	return piece.darts.some(
		(dart) => dart.edge === edgeId && (Math.abs(dart.from - s) <= joined || Math.abs(dart.to - s) <= joined)
	);
}

function upTo(path: Path | undefined, length: number): Path {
	return path && length > joined ? portion(path, 0, length) : [];
}

function downTo(path: Path | undefined, length: number): Path {
	if (!path || length <= joined) return [];
	const whole = pathLength(path);
	return portion(path, whole - length, whole);
}

function runEvenly(knots: readonly (readonly [number, number])[], s: number): number {
	let i = 0;
	while (i < knots.length - 2 && s > knots[i + 1][0]) i++;
	const [[s0, t0], [s1, t1]] = [knots[i], knots[i + 1]];
	if (s1 - s0 <= 0) return t1;
	return t0 + ((s - s0) * (t1 - t0)) / (s1 - s0);
}
