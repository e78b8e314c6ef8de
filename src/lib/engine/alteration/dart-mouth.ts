/** Finds where a dart's legs come out on an edge. */
import { crossings, lineCrossings } from '../geometry/crossings.ts';
import { distance, rotate } from '../geometry/point.ts';
import { pointAt } from '../geometry/path.ts';
import { measured } from '../geometry/accuracy.ts';
import type { Dart, Piece } from '../draft/types.ts';
import { dartLegs } from '../draft/dart-legs.ts';
import type { Path, Point } from '../geometry/types.ts';

export interface Mouth {
	readonly from: number;
	readonly to: number;
}

const widestHalfAngle = Math.PI / 3;

/**
 * The mouth `intake` mm wide (straight, between leg ends) of a dart whose legs leave `point` at equal angles beyond two
 * directions that come out at `from` and `to` on the edge; the same place for both is a new dart. Undefined if a leg leaves
 * the edge before the mouth is wide enough.
 *
 * The angle is found by the method of false position with bisection (width grows with the angle), to 1e-9 mm.
 */
export function mouthOfWidth(edge: Path, point: Point, from: number, to: number, intake: number): Mouth | undefined {
	const a = pointAt(edge, from);
	const b = pointAt(edge, to);
	// On a clockwise outline with y down, seen from the point, the mouth runs clockwise: positive angles open it both ways.
	const at = (angle: number): { mouth: Mouth; width: number } | undefined => {
		const start = legEnd(edge, point, rotate(a, -angle, point), from);
		const end = legEnd(edge, point, rotate(b, angle, point), to);
		if (start === undefined || end === undefined) return undefined;
		return {
			mouth: { from: start, to: end },
			width: Math.sign(end - start) * distance(pointAt(edge, start), pointAt(edge, end))
		};
	};
	const wanted = intake;
	let low = -widestHalfAngle;
	let high = widestHalfAngle;
	const present = at(0);
	if (!present) return undefined;
	const mean = (distance(a, point) + distance(b, point)) / 2;
	let angle = mean > 0 ? Math.asin(Math.max(-1, Math.min(1, (wanted - present.width) / (2 * mean)))) : 0;
	for (let i = 0; i < 80; i++) {
		const found = at(angle);
		if (!found) {
			if (angle > 0) high = angle;
			else low = angle;
			angle = (low + high) / 2;
			if (high - low < 1e-12) return undefined;
			continue;
		}
		const miss = wanted - found.width;
		if (Math.abs(miss) < 1e-9) return found.mouth;
		if (miss > 0) low = angle;
		else high = angle;
		if (high - low < 1e-13) return Math.abs(miss) < measured ? found.mouth : undefined;
		const step = angle + miss / (2 * mean);
		angle = step > low && step < high && i < 40 ? step : (low + high) / 2;
	}
	return undefined;
}

function legEnd(edge: Path, point: Point, toward: Point, expected: number): number | undefined {
	let nearest: number | undefined;
	for (const { s, u } of lineCrossings(edge, point, toward, measured))
		if (u > 0 && (nearest === undefined || Math.abs(s - expected) < Math.abs(nearest - expected))) nearest = s;
	return nearest;
}

/** Whether a new dart's legs would cross, or its mouth overlap, another dart of the piece. */
export function crossesOtherDart(piece: Piece, dart: Dart): Dart | undefined {
	const legs = dartLegs(piece, dart);
	return piece.darts.find((other) => {
		if (other.id === dart.id) return false;
		if (other.edge === dart.edge && other.from < dart.to - measured && dart.from < other.to - measured) return true;
		const others = dartLegs(piece, other);
		return [legs.from, legs.to].some((leg) =>
			[others.from, others.to].some((otherLeg) =>
				crossings(leg, otherLeg, measured).some(({ point }) => apartFromPoints(point, dart, other))
			)
		);
	});
}

function apartFromPoints(point: Point, one: Dart, other: Dart): boolean {
	return distance(point, one.point) > 1e-3 && distance(point, other.point) > 1e-3;
}
