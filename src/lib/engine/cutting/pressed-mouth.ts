/**
 * The cutting line over a dart's mouth that is not trued yet: as one gets it by folding the dart as it will be pressed, cutting
 * along the edge's cutting line, and unfolding. The legs run straight on into the allowance; between them lies the mirror image of
 * the cutting line beside them (common practice, no source).
 */
import { angleBetween, cross, distance, dot, midpoint, subtract } from '../geometry/point.ts';
import { along } from '../geometry/meet.ts';
import { cornersOf } from '../geometry/joints.ts';
import { pathLength, pathStart, pointAt, portion, reversedPath, startTangent, tangentAt } from '../geometry/path.ts';
import { dartLegs, type DartLegs } from '../draft/dart-legs.ts';
import { foldAtMouth, pressedMouth, pressedTowards } from '../draft/pressed-mouth.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { line } from '../geometry/segment.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import type { Dart, Edge, Piece } from '../draft/types.ts';
import type { Path, Point } from '../geometry/types.ts';
import type { Beside } from './corner.ts';
import type { TurnedCorner } from './turned-edge.ts';

/** A mouth to be shaped, between two arc lengths of its edge. */
export interface Mouth {
	readonly from: number;
	readonly to: number;
	readonly legs: DartLegs;
	/** The leg that the dart is pressed towards. */
	readonly towards: 'from' | 'to';
}

/** The mouths on an edge that are not trued yet, in order; one that reaches to an end of the edge, or into another, is left as drawn. */
export function mouthsToShape(piece: Piece, edge: Edge): Mouth[] {
	const length = pathLength(edge.path);
	let done = joined;
	return piece.darts
		.filter((dart) => dart.edge === edge.id && dart.to - dart.from > joined)
		.sort((a, b) => a.from - b.from)
		.flatMap((dart) => {
			const legs = dartLegs(piece, dart);
			if (dart.from < done || dart.to > length - joined || isTrued(edge, dart, legs)) return [];
			done = dart.to + joined;
			return [{ from: dart.from, to: dart.to, legs, towards: pressedTowards(piece, dart, legs) }];
		});
}

/** A peak this near to the fold line, mm and as a share of the intake, is that of a trued mouth. */
const peakNear = 1;
const peakShare = 0.1;

/** Whether the mouth as drawn already has the peak that folding and cutting gives it. */
function isTrued(edge: Edge, dart: Dart, legs: DartLegs): boolean {
	const fold = foldAtMouth(legs);
	return cornersOf(edge.path).some((s) => {
		if (s <= dart.from + measured || s >= dart.to - measured) return false;
		const aside = Math.abs(cross(fold.into, subtract(pointAt(edge.path, s), fold.through)));
		const turn = angleBetween(tangentAt(edge.path, s, 'before'), tangentAt(edge.path, s, 'after'));
		return turn > 0 && aside <= Math.max(peakNear, peakShare * legs.intake);
	});
}

/**
 * From the cutting line before a mouth to the one after it; undefined where the legs, run on, close before they come to the
 * cutting line, or do not come to it.
 */
export function acrossMouth(before: Beside, after: Beside, { legs, towards }: Mouth): TurnedCorner | undefined {
	const left = legMet(reversedPath(before.path), legs.mouthFrom, startTangent(legs.from), before.allowance);
	const right = legMet(after.path, legs.mouthTo, startTangent(legs.to), after.allowance);
	if (!left || !right || dot(subtract(right.point, left.point), subtract(legs.mouthTo, legs.mouthFrom)) <= 0) {
		return undefined;
	}
	const cutLegs: DartLegs = {
		...legs,
		from: [line(left.point, along(left.point, startTangent(legs.from), 1))],
		to: [line(right.point, along(right.point, startTangent(legs.to), 1))],
		mouthFrom: left.point,
		mouthTo: right.point,
		foldAt: midpoint(left.point, right.point),
		intake: distance(left.point, right.point)
	};
	const mouth = pressedMouth(cutLegs, towards, towards === 'to' ? right.beyond : left.beyond);
	if (!mouth) return undefined;
	return { before: left.trimmed, after: right.trimmed, by: [...left.runOn, ...mouth, ...reversedPath(right.runOn)] };
}

interface LegMet {
	readonly point: Point;
	/** Off the start of the line, mm. */
	readonly trimmed: number;
	/** From the start of the line to the leg, where it had to run on. */
	readonly runOn: Path;
	/** The line from the leg on. */
	readonly beyond: Path;
}

/** Where a line that starts beside a mouth's end is met by the leg, run on out of the piece. */
function legMet(path: Path, mouth: Point, into: Point, allowance: number): LegMet | undefined {
	const start = pathStart(path);
	const further = 2 * allowance + 1;
	const long = [line(along(start, startTangent(path), -further), start), ...path];
	const met = lineCrossings(long, mouth, along(mouth, into, -1), measured);
	if (met.length === 0) return undefined;
	const nearest = met.reduce((near, one) => (Math.abs(one.s - further) < Math.abs(near.s - further) ? one : near));
	const trimmed = nearest.s - further;
	if (trimmed > pathLength(path) - joined) return undefined;
	if (trimmed > measured) {
		const beyond = portion(path, trimmed, pathLength(path));
		return { point: pathStart(beyond), trimmed, runOn: [], beyond };
	}
	if (trimmed > -measured) return { point: start, trimmed: 0, runOn: [], beyond: path };
	const runOn = [line(start, nearest.point)];
	return { point: nearest.point, trimmed: 0, runOn, beyond: [...reversedPath(runOn), ...path] };
}

/** The stretches of an edge between its mouths to be shaped. */
export function betweenMouths(path: Path, mouths: readonly Mouth[]): Path[] {
	const bounds = [0, ...mouths.flatMap(({ from, to }) => [from, to]), pathLength(path)];
	return Array.from({ length: mouths.length + 1 }, (_, i) =>
		mouths.length === 0 ? path : portion(path, bounds[2 * i], bounds[2 * i + 1])
	);
}
