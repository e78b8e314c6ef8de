/**
 * Where a piece is cut for a fuller or smaller bust, and how its parts move.
 *
 * Lines run from the bust point P to the base B, to the hinge H and to the dart's place D. The upper part of what lies beyond
 * (between the lines to H and D) turns about H until P has parted by the gap, measured at right angles to the base line; the
 * lower part (between the lines to D and B) follows P without turning, so that its base line stays parallel to the one that is
 * kept, the gap away. Seen from H, P has swung by β below the level at right angles to the base line; with r from H to P it parts
 * by |r| (cos β − cos β′).
 */
import { joined, measured } from '../geometry/accuracy.ts';
import { movePoint, rotation, translation } from '../geometry/motion.ts';
import { pointAt } from '../geometry/path.ts';
import { line } from '../geometry/segment.ts';
import { add, distance, dot, norm, outward, scale, subtract, unit } from '../geometry/point.ts';
import type { Motion, Path, Point } from '../geometry/types.ts';
import { closedRegion, type OutlinePlace } from '../draft/outline-stretch.ts';
import type { Piece } from '../draft/types.ts';
import type { BustLines } from './bust-lines.ts';
import { inOutlineOrder, type Fate, type Region } from './reassemble.ts';
import { trimmedAt } from './slash-plan.ts';

/** How the point moves, and with it everything beyond the lines. */
export interface BustMove {
	/** The turn of the upper part about the hinge. */
	readonly upper: Motion;
	/** Where the bust point comes to lie. */
	readonly point: Point;
	/** Unit vectors: down the base line from the point, and square to it away from the kept part. */
	readonly down: Point;
	readonly away: Point;
	/** How far the point comes down along the base line, mm; negative up. */
	readonly lowers: number;
}

/** Farther than this no part is turned, radians. */
const widestTurn = Math.PI / 3;

/**
 * The move that parts the point by `gap` mm. If there is none, the greatest gap of that sign for which there is one: 0 for a hinge
 * that lies no higher than the point. A dart of `angle` radians may close.
 */
export function bustMove(
	piece: Piece,
	lines: BustLines,
	gap: number,
	angle: number
): BustMove | { readonly greatest: number } {
	const hinge = placeOn(piece, lines.hinge);
	const down = unit(subtract(placeOn(piece, lines.base), lines.point));
	const away = scale(outward(down), lines.clockwise ? 1 : -1);
	const r = subtract(lines.point, hinge);
	const size = norm(r);
	// How far down the point has swung below the level of the hinge: it parts as long as it swings from 0 to half a turn.
	const swung = Math.atan2(dot(r, down), -dot(r, away));
	const parted = (to: number) => size * (Math.cos(swung) - Math.cos(to));
	const most = gap > 0 ? Math.min(swung + widestTurn, Math.PI) : Math.max(swung - Math.min(angle, widestTurn), 0);
	if (!(swung > 0) || Math.abs(gap) > Math.abs(parted(most)) + measured)
		return { greatest: swung > 0 ? parted(most) : 0 };
	const opens = Math.acos(Math.min(1, Math.max(-1, Math.cos(swung) - gap / size))) - swung;
	const upper = rotation(lines.clockwise ? -opens : opens, hinge);
	const point = movePoint(upper, lines.point);
	return { upper, point, down, away, lowers: dot(subtract(point, lines.point), down) };
}

/** Where the two leg ends of the dart come to lie, clockwise. */
export function movedMouth(piece: Piece, lines: BustLines, move: BustMove): readonly [Point, Point] {
	const [first, second] = lines.dart.map((at) => placeOn(piece, at));
	const lowered = (point: Point) => add(point, subtract(move.point, lines.point));
	return lines.clockwise
		? [movePoint(move.upper, first), lowered(second)]
		: [lowered(first), movePoint(move.upper, second)];
}

/** Stretches of the outline and regions of the cloth with what becomes of them, ready to be put together again. */
export interface BustPlan {
	readonly cuts: readonly OutlinePlace[];
	readonly fates: readonly Fate[];
	readonly regions: readonly Region[];
}

/** The plan, or undefined where a lap would use up an edge. */
export function bustPlan(piece: Piece, lines: BustLines, move: BustMove, gap: number): BustPlan | undefined {
	const { point, hinge, base, centre, clockwise } = lines;
	const shift = subtract(move.point, point);
	const lower = translation(shift[0], shift[1]);
	const sunk = scale(move.down, centre ? move.lowers : 0);
	const centrePart: Fate = centre ? translation(sunk[0], sunk[1]) : 'kept';
	const [nearHinge, nearBase] = clockwise ? lines.dart : [lines.dart[1], lines.dart[0]];
	const on = clockwise ? 'on' : 'back';
	// Cloth of the kept part over which the lower part comes to lie, and of the upper kept part over which the centre comes to lie.
	const lap = scale(move.away, gap);
	const baseTrim = gap < -joined ? trimmedAt(piece, base, shifted(piece, base, point, lap), on, norm(shift)) : base;
	const centreTrim =
		centre && move.lowers < -joined
			? trimmedAt(piece, centre, shifted(piece, centre, point, sunk), on, -move.lowers)
			: centre;
	if (!baseTrim || (centre && !centreTrim)) return undefined;
	const walk: [OutlinePlace, Fate][] = [
		[hinge, move.upper],
		[nearHinge, 'dropped'],
		[nearBase, lower],
		[base, 'dropped'],
		[baseTrim, centrePart]
	];
	if (centre) walk.push([centre, 'dropped'], [centreTrim!, 'kept']);
	const region = (from: OutlinePlace, to: OutlinePlace, through: readonly Point[]): Path =>
		clockwise ? closedRegion(piece, from, to, through) : closedRegion(piece, to, from, [...through].reverse());
	const regions: Region[] = [];
	const cutAway = (from: OutlinePlace, to: OutlinePlace, through: readonly Point[]) => {
		if (distance(placeOn(piece, from), placeOn(piece, to)) > joined)
			regions.push({ outline: region(from, to, through), fate: 'dropped' });
	};
	cutAway(nearHinge, nearBase, [point]);
	cutAway(base, baseTrim, [add(point, lap), point]);
	if (centre) cutAway(centre, centreTrim!, [add(point, sunk), point]);
	if (gap < -joined) {
		const wedge = [placeOn(piece, hinge), point, move.point];
		regions.push({ outline: wedge.map((from, i) => line(from, wedge[(i + 1) % 3])), fate: 'dropped' });
	}
	regions.push({ outline: region(hinge, nearHinge, [point]), fate: move.upper });
	regions.push({ outline: region(nearBase, base, [point]), fate: lower });
	if (centre) regions.push({ outline: region(baseTrim, centre, [point]), fate: centrePart as Motion });
	const cuts = walk.map(([at]) => at);
	const fates = walk.map(([, fate]) => fate);
	return {
		...inOutlineOrder(
			clockwise ? cuts : [...cuts].reverse(),
			clockwise ? fates : [...fates.slice(0, -1).reverse(), fates[fates.length - 1]]
		),
		regions
	};
}

function placeOn(piece: Piece, at: OutlinePlace): Point {
	return pointAt(piece.edges[at.edge].path, at.s);
}

/** The line from a place to the point, shifted. */
function shifted(piece: Piece, at: OutlinePlace, point: Point, by: Point): readonly [Point, Point] {
	return [add(placeOn(piece, at), by), add(point, by)];
}
