/** Turns the end of a line about the point where it ends, fading to nothing along it: how a corner is smoothed away. */
import { fitted, joined, measured } from '../geometry/accuracy.ts';
import type { MovedEdge } from '../geometry/move-outline.ts';
import { nearestOn } from '../geometry/nearest.ts';
import type { Amount } from '../geometry/amount.ts';
import { movedPoint } from '../geometry/moved-curve.ts';
import { offsetStretch } from '../geometry/offset.ts';
import { roomFor } from '../geometry/room-for.ts';
import { cornersOf } from '../geometry/joints.ts';
import { joinedPaths, pathLength, portion, reversedPath } from '../geometry/path.ts';
import type { Path } from '../geometry/types.ts';
import type { Edge, Piece } from '../draft/types.ts';

/** The share of `fitted` that one turn may use up, and how many times that a drawn line may miss the exact one by. */
const accuracy = fitted / 10;
const drawable = 4;

/**
 * The line of a clockwise outline with its tangent at one end turned by `angle` (radians, positive outward, away from the
 * cloth), its end kept to the bit. At x mm from the end it moves outward by tan(angle) · x · (1 − x/reach)², at most 4/27 of
 * tan(angle) · reach; beyond the reach nothing moves. Undefined where the line is too hollow for that. The stretch must be
 * smooth: see `smoothReach`.
 */
export function turnedEnd(path: Path, end: 'start' | 'finish', angle: number, reach: number): MovedEdge | undefined {
	const length = pathLength(path);
	// The end looked at as a start; outward of a reversed line is inward.
	const own = end === 'start' ? path : reversedPath(path);
	const steep = Math.tan(angle) * (end === 'start' ? 1 : -1);
	const left = (x: number) => 1 - x / reach;
	const amount: Amount = {
		value: (x) => steep * x * left(x) * left(x),
		slope: (x) => steep * left(x) * (1 - (3 * x) / reach)
	};
	const stretch = portion(own, 0, reach);
	// The amount rises to a third of the reach and falls from there.
	const greatest = (Math.abs(steep) * reach * 4) / 27;
	if (roomFor(stretch, amount, greatest) <= 1) return undefined;
	const { path: turned, deviation } = offsetStretch(stretch, 0, pathLength(stretch), amount, [reach / 3], accuracy);
	if (deviation > drawable * accuracy) return undefined;
	const whole = reach < length - joined ? joinedPaths(turned, portion(own, reach, length)) : turned;
	const newLength = pathLength(whole);
	const onOwn = (x: number) =>
		x >= reach ? newLength - (length - x) : nearestOn(turned, movedPoint(stretch, amount, x), measured).s;
	return {
		path: end === 'start' ? whole : reversedPath(whole),
		carried: (s) => (end === 'start' ? onOwn(s) : newLength - onOwn(length - s))
	};
}

/** How much of the reach asked for an edge has at one end, mm, before a corner of it, the mouth of a dart or its other end. */
export function smoothReach(piece: Piece, edge: Edge, from: number, way: 'back' | 'on', asked: number): number {
	const stops = [0, pathLength(edge.path), ...cornersOf(edge.path), ...mouthEnds(piece, edge)];
	let reach = asked;
	for (const stop of stops) {
		const ahead = way === 'on' ? stop - from : from - stop;
		if (ahead > joined) reach = Math.min(reach, ahead);
	}
	return reach;
}

function mouthEnds(piece: Piece, edge: Edge): number[] {
	return piece.darts.flatMap((dart) => (dart.edge === edge.id ? [dart.from, dart.to] : []));
}
