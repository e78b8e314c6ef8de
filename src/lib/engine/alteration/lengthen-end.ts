/**
 * Makes an edge longer or shorter at one of its ends: it runs straight on along its end tangent, or is cut back. The corner that
 * it shares with its neighbour moves with it, and the neighbour's points follow, fading to nothing.
 */
import { fitted, joined, measured } from '../geometry/accuracy.ts';
import { fitCurve } from '../geometry/fit.ts';
import type { MovedEdge } from '../geometry/move-outline.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { cornersOf } from '../geometry/joints.ts';
import {
	endTangent,
	joinedPaths,
	pathEnd,
	pathLength,
	pathStart,
	pointAt,
	portion,
	reversedPath,
	straight,
	tangentAt
} from '../geometry/path.ts';
import { add, cross, distance, dot, norm, scale, subtract, unit } from '../geometry/point.ts';
import { derivativeOn, line, segmentPortion } from '../geometry/segment.ts';
import type { Path, Point } from '../geometry/types.ts';
import { inchesBelow } from '../draft/say.ts';
import type { Edge, Piece } from '../draft/types.ts';
import { refused, type Refusal } from './refusal.ts';
import { edgeInWords, rideEdges, sentenceCase, type RiddenPiece } from './ride-edges.ts';

/** How far along a neighbour a moved corner is followed, mm. */
const followed = 150;

/** The share of `fitted` that one change may use up, and how many times that a drawn line may miss the exact one by. */
const accuracy = fitted / 10;
const drawable = 4;

/** So much of an edge must be left, mm. */
const leastLeft = 1;

/**
 * The piece with the edge `by` mm longer at that end (shorter if negative), by stitched length, exactly. The neighbour's points
 * follow by 1 − (3t² − 2t³) of the corner's move, over 150 mm or its whole length; a fold moves along itself only. Refused: a
 * mouth or pleat in what is cut back, an edge used up, a fold that would leave its line, a neighbour too short to follow.
 */
export function lengthenEnd(
	piece: Piece,
	edge: Edge,
	end: 'start' | 'finish',
	by: number
): RiddenPiece | { readonly refused: Refusal } {
	const index = piece.edges.indexOf(edge);
	const count = piece.edges.length;
	const atFinish = end === 'finish';
	const besideIndex = (index + (atFinish ? 1 : count - 1)) % count;
	const beside = piece.edges[besideIndex];
	const length = pathLength(edge.path);
	if (-by > length - leastLeft || cutsMouth(piece, edge, end, -by))
		return refused(
			'end-used-up',
			`Cutting ${edgeInWords(piece, edge.id)} back that far would run into a dart or use it up. Take it from the other side, or let it out at another place.`
		);
	// Both lines are looked at as running away from the change: the edge up to the corner, its neighbour from it.
	const oriented = (path: Path) => (atFinish ? path : reversedPath(path));
	const longer = lengthened(oriented(edge.path), by);
	const corner = pathEnd(longer);
	const move = subtract(corner, pathStart(oriented(beside.path)));
	const followed = follow(piece, beside, oriented(beside.path), corner, move, Math.abs(by));
	if ('refused' in followed) return followed;
	const lines: MovedEdge[] = piece.edges.map(({ path }) => ({ path, carried: (s) => s }));
	lines[index] = {
		path: oriented(longer),
		carried(s) {
			const at = atFinish ? s : s + by;
			const left = length + by;
			return at < -measured || at > left + measured ? undefined : Math.min(Math.max(at, 0), left);
		}
	};
	const besideLength = pathLength(beside.path);
	const newLength = pathLength(followed.path);
	lines[besideIndex] = {
		path: oriented(followed.path),
		carried(s) {
			const at = followed.carried(atFinish ? s : besideLength - s);
			return atFinish ? at : newLength - at;
		}
	};
	return rideEdges(
		piece,
		lines,
		piece.edges.map((_, i) => i === besideIndex)
	);
}

function cutsMouth(piece: Piece, edge: Edge, end: 'start' | 'finish', cut: number): boolean {
	const length = pathLength(edge.path);
	return (
		cut > 0 &&
		[...piece.darts, ...piece.pleats].some(
			(one) => one.edge === edge.id && (end === 'finish' ? one.to > length - cut + joined : one.from < cut - joined)
		)
	);
}

/** Up to this a curve is run on along itself rather than by a sliver of a straight line: the two differ by less than a rounding. */
const sliver = 1e-3;

function lengthened(path: Path, by: number): Path {
	const length = pathLength(path);
	if (by < 0) return portion(path, 0, length + by);
	const last = path[path.length - 1];
	const end = pathEnd(path);
	const onward = add(end, scale(endTangent(path), by));
	if (last.kind === 'line') return [...path.slice(0, -1), line(last.from, onward)];
	const speed = norm(derivativeOn(last, 1));
	if (by < sliver && speed > 1) return [...path.slice(0, -1), segmentPortion(last, 0, 1 + by / speed)];
	return [...path, line(end, onward)];
}

interface Followed {
	readonly path: Path;
	/** Arc length on the new line of what was at s on the old one. */
	carried(s: number): number;
}

/** The neighbour, which starts at the moved corner, with its start moved and its points following. */
function follow(
	piece: Piece,
	edge: Edge,
	path: Path,
	corner: Point,
	move: Point,
	asked: number
): Followed | { readonly refused: Refusal } {
	const length = pathLength(path);
	if (edge.kind === 'fold') {
		const far = pathEnd(path);
		const along = unit(subtract(far, pathStart(path)));
		if (Math.abs(cross(along, move)) > joined || dot(along, move) > length - leastLeft)
			return refused(
				'fold-fixed',
				`${edge.name} of ${piece.name} is cut on the fold and moves along itself only. Let the length in or out at that end by moving the fold evenly.`
			);
		return { path: straight(corner, far), carried: (s) => (s * distance(corner, far)) / length };
	}
	const reach = Math.min(followed, length);
	const steepest = steepestFollowing(path, move, reach);
	if (steepest >= 0.9 || norm(move) > reach) {
		const works = Math.min(0.9 / steepest, reach / norm(move));
		return refused(
			'too-tight',
			`${sentenceCase(edgeInWords(piece, edge.id))} cannot follow the corner that far. At most ${inchesBelow(asked * works)} works there.`
		);
	}
	const share = (s: number) => {
		const t = Math.min(1, s / reach);
		return { value: 1 - t * t * (3 - 2 * t), slope: (-6 * t * (1 - t)) / reach };
	};
	const moved = (s: number): Point => add(pointAt(path, s), scale(move, share(s).value));
	const corners = cornersOf(path).filter((s) => s > joined && s < reach - joined);
	const drawn = fitCurve(
		{
			pointAt: (s) => (s <= 0 ? corner : moved(s)),
			tangentAt: (s, side) => unit(add(tangentAt(path, s, side), scale(move, share(s).slope)))
		},
		[0, ...corners, reach],
		accuracy
	);
	if (drawn.deviation > drawable * accuracy)
		return refused(
			'too-tight',
			`${sentenceCase(edgeInWords(piece, edge.id))} bends too sharply there to follow the corner. Correct the seam at its other end, or at a place along it.`
		);
	const whole = reach < length - joined ? joinedPaths(drawn.path, portion(path, reach, length)) : drawn.path;
	const newLength = pathLength(whole);
	return {
		path: whole,
		carried: (s) => (s >= reach ? newLength - (length - s) : nearestOn(whole, moved(s), measured).s)
	};
}

const samples = 24;

/** How much of its forward run the line loses where it is pushed together most: at 1 it would stand still. */
function steepestFollowing(path: Path, move: Point, reach: number): number {
	let steepest = 0;
	for (let i = 1; i < samples; i++) {
		const t = i / samples;
		const slope = (6 * t * (1 - t)) / reach;
		steepest = Math.max(steepest, slope * dot(tangentAt(path, t * reach), move));
	}
	return steepest;
}
