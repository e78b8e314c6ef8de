/** Where a piece is cut when it is slashed and opened, or folded across, and what becomes of each stretch of its outline. */
import { joined, measured } from '../geometry/accuracy.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { joinedPaths, pointAt, straight } from '../geometry/path.ts';
import { distance, mirrored } from '../geometry/point.ts';
import type { Motion, Path, Point } from '../geometry/types.ts';
import { closedRegion, stretchPaths, type OutlinePlace } from '../draft/outline-stretch.ts';
import type { Piece } from '../draft/types.ts';
import { inOutlineOrder, type Fate, type Region } from './reassemble.ts';
import { refused } from './refusal.ts';
import type { Outcome } from './types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

/** A cut's end as found: on the outline, or at a dart's point with that dart's mouth. */
export interface FoundEnd {
	readonly point: Point;
	readonly gap: number;
	/** Where the outline is left when the moved part comes after it, and when it comes before it. */
	readonly leave: OutlinePlace;
	readonly enter: OutlinePlace;
	readonly dart?: string;
}

export interface Plan {
	readonly cuts: readonly OutlinePlace[];
	readonly fates: readonly Fate[];
	readonly regions: readonly Region[];
}

/** The part that lies clockwise from `first` to `second` moves; nothing is cut away but the mouths of darts that the slash ends at. */
export function openPlan(piece: Piece, first: FoundEnd, second: FoundEnd, motion: Motion): Plan {
	const region = closedRegion(piece, first.leave, second.enter, [second.point, first.point]);
	const cuts: OutlinePlace[] = [];
	const fates: Fate[] = [];
	const push = (at: OutlinePlace, fate: Fate) => {
		cuts.push(at);
		fates.push(fate);
	};
	if (first.dart) push(first.enter, 'dropped');
	push(first.leave, motion);
	if (second.dart) push(second.enter, 'dropped');
	push(second.leave, 'kept');
	return { ...inOutlineOrder(cuts, fates), regions: [{ outline: region, fate: motion }] };
}

/** A fold: both parts are trimmed at the middle line, the moved one before it moves at that line's image in the cut. */
export function foldPlan(
	piece: Piece,
	first: FoundEnd,
	second: FoundEnd,
	m1: Point,
	m2: Point,
	motion: Motion
): Plan | Refused {
	const image1 = mirrored(m1, first.point, second.point);
	const image2 = mirrored(m2, first.point, second.point);
	const keptFirst = trimAt(piece, first, m1, m2, 'back');
	const movedFirst = trimAt(piece, first, image1, image2, 'on');
	const movedSecond = trimAt(piece, second, image1, image2, 'back');
	const keptSecond = trimAt(piece, second, m1, m2, 'on');
	if (!keptFirst || !movedFirst || !movedSecond || !keptSecond)
		return refused(
			'fold-runs-off',
			`The fold would use up an edge of ${piece.name}. Fold away less, or place it farther from the corner.`
		);
	const at = (one: OutlinePlace) => pointAt(piece.edges[one.edge].path, one.s);
	const turns = (end: FoundEnd): Point[] => (end.dart ? [end.point] : []);
	const moved = closedRegion(piece, movedFirst, movedSecond, [...turns(second), ...turns(first)]);
	const strip = joinedPaths(
		...stretchPaths(piece, keptFirst, movedFirst),
		...chain([at(movedFirst), ...turns(first), ...turns(second), at(movedSecond)]),
		...stretchPaths(piece, movedSecond, keptSecond),
		...chain([at(keptSecond), ...turns(second), ...turns(first), at(keptFirst)])
	);
	return {
		...inOutlineOrder([keptFirst, movedFirst, movedSecond, keptSecond], ['dropped', motion, 'dropped', 'kept']),
		regions: [
			{ outline: moved, fate: motion },
			{ outline: strip, fate: 'dropped' }
		]
	};
}

function trimAt(piece: Piece, end: FoundEnd, a: Point, b: Point, way: 'back' | 'on'): OutlinePlace | undefined {
	const at = way === 'back' ? end.enter : end.leave;
	return end.gap === 0 ? at : trimmedAt(piece, at, [a, b], way, Math.abs(end.gap));
}

/**
 * Where the edge of a place meets a trimming line that lies `amount` mm away, going back or on from the place; undefined if that is
 * nowhere on this edge within four times the amount and 1 mm.
 */
export function trimmedAt(
	piece: Piece,
	at: OutlinePlace,
	[a, b]: readonly [Point, Point],
	way: 'back' | 'on',
	amount: number
): OutlinePlace | undefined {
	const found = lineCrossings(piece.edges[at.edge].path, a, b, measured)
		.map(({ s }) => s)
		.filter((s) => (way === 'back' ? s <= at.s + measured : s >= at.s - measured))
		.sort((x, y) => Math.abs(x - at.s) - Math.abs(y - at.s));
	if (found.length === 0 || Math.abs(found[0] - at.s) >= 4 * amount + 1) return undefined;
	return { edge: at.edge, s: way === 'back' ? Math.min(found[0], at.s) : Math.max(found[0], at.s) };
}

function chain(points: readonly Point[]): Path[] {
	return points
		.slice(1)
		.flatMap((point, i) => (distance(points[i], point) > joined ? [straight(points[i], point)] : []));
}
