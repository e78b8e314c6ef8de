/** Finds the lines along which a piece is cut for the bust, and looks whether they can be cut. */
import { joined, measured } from '../geometry/accuracy.ts';
import { contains } from '../geometry/contains.ts';
import { crossings } from '../geometry/crossings.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { pointAt, straight } from '../geometry/path.ts';
import { distance } from '../geometry/point.ts';
import type { Point } from '../geometry/types.ts';
import { findEdge } from '../draft/find.ts';
import { outlineOf } from '../draft/outline.ts';
import { isBetween, type OutlinePlace } from '../draft/outline-stretch.ts';
import { findInnerPoint, findPlace } from '../draft/place.ts';
import { sideOfName } from '../draft/undivided-name.ts';
import type { Dart, Draft, EdgePlace, InnerPoint, Piece } from '../draft/types.ts';
import { onSide, placeOnSide } from './inner-point-on-side.ts';
import { isRefused, noPlace, refused } from './refusal.ts';
import type { Outcome } from './types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

export interface BustLines {
	readonly point: Point;
	readonly base: OutlinePlace;
	readonly hinge: OutlinePlace;
	/** Where the dart opens: the two ends of the mouth that is there, clockwise, else one place twice. */
	readonly dart: readonly [OutlinePlace, OutlinePlace];
	/** The dart that opens there already. */
	readonly present?: Dart;
	/** Where the kept part is cut towards the point, if its centre is to be lengthened. */
	readonly centre?: OutlinePlace;
	/** Whether hinge, dart, base and centre follow one another clockwise. */
	readonly clockwise: boolean;
}

/** How the places are named on the undivided draft. */
export interface NamedBustLines {
	readonly point: InnerPoint;
	readonly base: EdgePlace;
	readonly hinge: EdgePlace;
	readonly dart: EdgePlace;
	readonly centre?: EdgePlace;
}

/** A dart that ends this near to the bust point is aimed at it, mm. */
const aimed = 0.01;

/**
 * The lines as found on one part of a piece. Refused: a place that is not there or not on this piece, places that do not follow
 * one another round it, a line that leaves the cloth, a dart there that is shaped or points elsewhere.
 */
export function bustLines(
	draft: Draft,
	piece: Piece,
	side: 'left' | 'right' | undefined,
	named: NamedBustLines
): BustLines | Refused {
	const pieceSide = sideOfName(piece.id);
	const inner = findInnerPoint(draft, piece.id, onSide(named.point, pieceSide, side));
	if ('problem' in inner) return noPlace(inner.problem);
	const { point } = inner;
	const onPiece = (place: EdgePlace): OutlinePlace | Refused => {
		const own = placeOnSide(place, pieceSide, side);
		const found = findPlace(draft, own.edge, own);
		if ('problem' in found) return noPlace(found.problem, place);
		const edge = findEdge(draft, own.edge)!;
		return edge.piece === piece
			? { edge: edge.index, s: found.s }
			: noPlace(`${own.edge} is not an edge of ${piece.name}, so it cannot be cut there.`, place);
	};
	const base = onPiece(named.base);
	if (isRefused(base)) return base;
	const hinge = onPiece(named.hinge);
	if (isRefused(hinge)) return hinge;
	const dart = onPiece(named.dart);
	if (isRefused(dart)) return dart;
	const centre = named.centre && onPiece(named.centre);
	if (centre && isRefused(centre)) return centre;
	const outline = outlineOf(piece);
	if (!contains(outline, point) || nearestOn(outline, point, measured).distance < 1)
		return refused(
			'point-outside',
			`The bust point lies on the edge of ${piece.name} or beyond it. Place it inside the piece.`
		);
	const clockwise = isBetween(dart, hinge, base);
	const [after, before] = clockwise ? [base, hinge] : [hinge, base];
	const places = [hinge, dart, base, ...(centre ? [centre] : [])].map((at) => pointAt(piece.edges[at.edge].path, at.s));
	const apart = places.every((a, i) => places.every((b, j) => i === j || distance(a, b) >= 1));
	if (!apart || (!clockwise && !isBetween(dart, base, hinge)) || (centre && !isBetween(centre, after, before)))
		return refused(
			'bust-places',
			`Hinge, dart, base and centre follow one another round ${piece.name}: armhole, side, waist or hem, front. Place them so, each by itself.`
		);
	const leaves = places.some((end) =>
		crossings(straight(point, end), outline, measured).some((met) => distance(met.point, end) > 1e-3)
	);
	if (leaves)
		return refused(
			'slash-leaves',
			`A line from the bust point would run out of ${piece.name} on its way. Choose places that see the point.`
		);
	const edgeId = piece.edges[dart.edge].id;
	const present = piece.darts.find(
		(one) => one.edge === edgeId && dart.s >= one.from - joined && dart.s <= one.to + joined
	);
	if (present && present.widths.length > 0)
		return refused(
			'dart-shaped',
			`${present.name} has shaped legs, and only straight ones open or close exactly. Take its shape out first.`
		);
	if (present && distance(present.point, point) > aimed)
		return refused(
			'dart-elsewhere',
			`${present.name} opens there already, and does not end at the bust point. Lengthen it to the point first, and shorten it again afterwards.`
		);
	const mouth = present ? [present.from, present.to] : [dart.s, dart.s];
	return {
		point,
		base,
		hinge,
		dart: [
			{ edge: dart.edge, s: mouth[0] },
			{ edge: dart.edge, s: mouth[1] }
		],
		...(present && { present }),
		...(centre && { centre }),
		clockwise
	};
}
