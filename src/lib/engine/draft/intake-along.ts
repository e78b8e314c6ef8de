import type { Path, Point } from '../geometry/types.ts';
import type { Dart, FoldDart, Piece } from './types.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { lineCrossings } from '../geometry/crossings.ts';
import { add, outward, scale, subtract, unit } from '../geometry/point.ts';
import { dartLegs, foldDartLegs } from './dart-legs.ts';

/** Where a line runs inside a dart from one leg to the other: mm along it from its first point, `begin` < `end`. */
export interface Stretch {
	readonly begin: number;
	readonly end: number;
}

/**
 * The width that a dart takes along the infinite line through p and q, in mm: 0 where the line misses it. Only what lies
 * between the two legs counts: a balance line that runs in at the mouth and on to the point, down the middle of a bust dart,
 * loses nothing when the dart is closed.
 */
export function intakeAlong(piece: Piece, dart: Dart | FoldDart, p: Point, q: Point): number {
	return intakeStretches(piece, dart, p, q).reduce((sum, stretch) => sum + stretch.end - stretch.begin, 0);
}

/** The stretches themselves, in order along the line. */
export function intakeStretches(piece: Piece, dart: Dart | FoldDart, p: Point, q: Point): Stretch[] {
	const [one, other] = legsOf(piece, dart);
	const onOne = distinct(lineCrossings(one, p, q, measured).map((crossing) => crossing.u));
	if (onOne.length === 0) return [];
	const onOther = distinct(lineCrossings(other, p, q, measured).map((crossing) => crossing.u));
	// Where the legs come together the line meets both at once and passes between them by no width.
	const apart = (from: readonly number[]) => (u: number) => from.every((tip) => Math.abs(u - tip) > joined);
	const met = [
		...onOne.filter(apart(onOther)).map((u) => ({ u, leg: one })),
		...onOther.filter(apart(onOne)).map((u) => ({ u, leg: other }))
	].sort((a, b) => a.u - b.u);
	const along = unit(subtract(q, p));
	const stretches: Stretch[] = [];
	for (let i = 0; i + 1 < met.length; i++) {
		const [begin, end] = [met[i], met[i + 1]];
		if (begin.leg === end.leg || end.u - begin.u <= measured) continue;
		// Met once each, the legs cannot have the outside of the dart between them.
		if (met.length > 2 && !isBetween(one, other, add(p, scale(along, (begin.u + end.u) / 2)))) continue;
		stretches.push({ begin: begin.u, end: end.u });
	}
	return stretches;
}

function legsOf(piece: Piece, dart: Dart | FoldDart): readonly [Path, Path] {
	if ('edge' in dart) {
		const legs = dartLegs(piece, dart);
		return [legs.from, legs.to];
	}
	const legs = foldDartLegs(dart);
	return [legs.left, legs.right];
}

/** Rising, and those within `joined` of each other once: a line through a corner of a leg meets both lines there. */
function distinct(places: readonly number[]): number[] {
	if (places.length < 2) return [...places];
	return [...places].sort((a, b) => a - b).filter((u, i, all) => i === 0 || u - all[i - 1] > joined);
}

/** Whether a point lies between two legs that end at one point: square to the way from their middle to that point, one is met on either side. */
function isBetween(one: Path, other: Path, point: Point): boolean {
	const tip = one[one.length - 1].to;
	const start: Point = [(one[0].from[0] + other[0].from[0]) / 2, (one[0].from[1] + other[0].from[1]) / 2];
	const across = add(point, outward(unit(subtract(tip, start))));
	const toOne = lineCrossings(one, point, across, measured);
	const toOther = lineCrossings(other, point, across, measured);
	return toOne.some((a) => toOther.some((b) => a.u * b.u <= 0));
}
