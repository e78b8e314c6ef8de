/** Cuts one piece from one place to another and moves one of the parts: slashed and opened, or folded across. */
import { joined, measured } from '../geometry/accuracy.ts';
import { crossings } from '../geometry/crossings.ts';
import { compose, movePoint, reflection } from '../geometry/motion.ts';
import { joinedPaths, pathLength, pointAt, straight } from '../geometry/path.ts';
import { add, distance, outward, scale, subtract, unit } from '../geometry/point.ts';
import type { Motion, Point } from '../geometry/types.ts';
import { dartLegs } from '../draft/dart-legs.ts';
import { findDart, findEdge, findPiece } from '../draft/find.ts';
import { isBetween, type OutlinePlace } from '../draft/outline-stretch.ts';
import { findPlace } from '../draft/place.ts';
import { inches } from '../draft/say.ts';
import type { Draft, EdgePlace, Piece } from '../draft/types.ts';
import { bridgeBetween, reassemble, type Reassembled } from './reassemble.ts';
import { isRefused, noPlace, refused } from './refusal.ts';
import { bentFold, remarksOf } from './after-cut.ts';
import { foldPlan, openPlan, type FoundEnd } from './slash-plan.ts';
import type { Outcome, Remark } from './types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

export type CutEnd = EdgePlace | { readonly dart: string };

export interface Slash {
	readonly piece: string;
	readonly from: CutEnd;
	readonly to: CutEnd;
	/** Opening at each end, mm; negative where cloth is folded away. */
	readonly gapFrom?: number;
	readonly gapTo?: number;
	/** An edge of the part that stays. */
	readonly keep: string;
}

/** One cut of one piece, everything named as that piece has it (`back@left`, `front/neck@right`); touched and remarks as of the kind. */
export function slash(draft: Draft, pieceId: string, cut: Slash): Outcome {
	const piece = findPiece(draft, pieceId)!;
	const from = findEnd(draft, piece, cut.from, cut.gapFrom ?? 0);
	if (isRefused(from)) return from;
	const to = findEnd(draft, piece, cut.to, cut.gapTo ?? 0);
	if (isRefused(to)) return to;
	if (from.dart && to.dart)
		return refused(
			'slash-inside',
			'A slash from dart to dart leaves two parts that hang together nowhere. Let one end come out on an edge.'
		);
	const keep = findEdge(draft, cut.keep);
	if (!keep || keep.piece !== piece) return noPlace(`There is no edge ${cut.keep} to keep in place.`);
	if (distance(from.point, to.point) < 1)
		return refused('slash-short', 'The slash begins and ends at one place. Let it run from one edge to another.');
	const inside = crossings(
		straight(from.point, to.point),
		joinedPaths(...piece.edges.map((edge) => edge.path)),
		measured
	).filter(({ point }) => distance(point, from.point) > 1e-3 && distance(point, to.point) > 1e-3);
	if (inside.length > 0)
		return refused(
			'slash-leaves',
			`The slash would run out of ${piece.name} on its way. Cut it where a straight line stays inside the piece.`
		);
	for (const end of [from, to])
		if (!end.dart && end.leave.edge === keep.index && isInner(piece, end.leave))
			return refused(
				'keep-cut',
				`${keep.edge.name} of ${piece.name} is cut by this slash, so it cannot be the edge that stays. Name another.`
			);
	if (from.gap === 0 && to.gap === 0) return { draft, touched: [], remarks: [] };
	const middleOfKeep = { edge: keep.index, s: pathLength(keep.edge.path) / 2 };
	const keptAfterTo = isBetween(middleOfKeep, to.leave, from.enter);
	const [first, second] = keptAfterTo ? [from, to] : [to, from];
	return open(draft, piece, first, second);
}

function findEnd(draft: Draft, piece: Piece, end: CutEnd, gap: number): FoundEnd | Refused {
	if ('dart' in end) {
		const found = findDart(draft, end.dart);
		if (!found || found.piece !== piece) return noPlace(`There is no dart ${end.dart} for the slash to run to.`);
		if (gap !== 0)
			return refused(
				'dart-gap',
				`The slash ends at the point of ${found.dart.name}: nothing opens there. Give 0 at that end.`
			);
		const edge = piece.edges.indexOf(found.edge);
		return {
			point: found.dart.point,
			gap: 0,
			leave: { edge, s: found.dart.to },
			enter: { edge, s: found.dart.from },
			dart: found.dart.id
		};
	}
	const found = findPlace(draft, end.edge, end);
	if ('problem' in found) return noPlace(found.problem, end);
	const edge = findEdge(draft, end.edge);
	if (!edge || edge.piece !== piece)
		return noPlace(`${end.edge} is not an edge of ${piece.name}, so the slash cannot end there.`, end);
	const at = { edge: edge.index, s: found.s };
	return { point: pointAt(edge.edge.path, found.s), gap, leave: at, enter: at };
}

function isInner(piece: Piece, at: OutlinePlace): boolean {
	return at.s > joined && at.s < pathLength(piece.edges[at.edge].path) - joined;
}

/** Moves the part that lies clockwise from `first` to `second`. */
function open(draft: Draft, piece: Piece, first: FoundEnd, second: FoundEnd): Outcome {
	const toward = outward(unit(subtract(second.point, first.point)));
	const middle = (end: FoundEnd): Point => add(end.point, scale(toward, end.gap / 2));
	const [m1, m2] = [middle(first), middle(second)];
	const motion = compose(reflection(first.point, second.point), reflection(m1, m2));
	const overlaps = first.gap < 0 || second.gap < 0;
	if (overlaps && (first.gap > 0 || second.gap > 0))
		return refused('gap-signs', 'A slash opens or is folded, not both. Give two alterations.');
	const plan = overlaps ? foldPlan(piece, first, second, m1, m2, motion) : openPlan(piece, first, second, motion);
	if (isRefused(plan)) return plan;
	const made = reassemble(piece, plan.cuts, plan.fates, plan.regions);
	if (isRefused(made)) return made;
	const lost = made.cutMouths.filter((dart) => dart.id !== first.dart && dart.id !== second.dart);
	if (lost.length > 0)
		return refused(
			'slash-through-mouth',
			`The slash runs through the mouth of ${lost[0].name}. Cut beside it, or close the dart first.`
		);
	const bent = bentFold(made.piece);
	if (bent)
		return refused(
			'fold-bends',
			`${bent.name} of ${piece.name} is cut on the fold and would no longer be straight. Open or fold it evenly and square to the fold there, or let the slash end elsewhere.`
		);
	const altered = first.dart
		? withTurnedDart(piece, made, first, motion, 'to')
		: withTurnedDart(piece, made, second, motion, 'from');
	const touched = [...new Set(made.bridges.map((bridge) => bridge.edge))].map((edge) => ({
		feature: `${piece.id}/${edge}`,
		greatestMove: Math.max(Math.abs(first.gap), Math.abs(second.gap))
	}));
	for (const edge of [first.leave.edge, second.leave.edge])
		if (!touched.some((one) => one.feature === `${piece.id}/${piece.edges[edge].id}`))
			touched.push({
				feature: `${piece.id}/${piece.edges[edge].id}`,
				greatestMove: Math.max(Math.abs(first.gap), Math.abs(second.gap))
			});
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? altered : one)) },
		touched,
		remarks: [...remarksOf(piece, made.lostNotches, made.bridges), ...shortOpenings(piece, first, second, motion)]
	};
}

/** The dart at whose point the slash ends takes up the angle: its mouth is the bridge between its leg ends. */
function withTurnedDart(
	before: Piece,
	made: Reassembled,
	end: FoundEnd,
	motion: Motion,
	movedLeg: 'from' | 'to'
): Piece {
	const dart = before.darts.find((one) => one.id === end.dart);
	if (!dart) return made.piece;
	const { mouthFrom, mouthTo } = dartLegs(before, dart);
	const start = movedLeg === 'from' ? movePoint(motion, mouthFrom) : mouthFrom;
	const finish = movedLeg === 'to' ? movePoint(motion, mouthTo) : mouthTo;
	const mouth = bridgeBetween(made, dart.edge, start, finish);
	return mouth
		? { ...made.piece, darts: [...made.piece.darts, { ...dart, from: mouth.from, to: mouth.to }] }
		: made.piece;
}

function shortOpenings(piece: Piece, first: FoundEnd, second: FoundEnd, motion: Motion): Remark[] {
	return [first, second].flatMap((end) => {
		const opening = distance(end.point, movePoint(motion, end.point));
		const short = Math.abs(end.gap) - opening;
		if (short <= 25.4 / 16) return [];
		return [
			{
				code: 'gap-short',
				where: piece.id,
				figure: short,
				sentence: `The slash opens ${inches(opening)} there, not ${inches(end.gap)}: its two ends were asked to open so unlike that the part turns.`
			}
		];
	});
}
