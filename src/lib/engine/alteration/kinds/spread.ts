/** Slash and open, or pin a fold across: cuts each piece from one place to another and moves the part without `keep`. */
import { z } from 'zod';
import { dartLegs } from '../../draft/dart-legs.ts';
import { findDart, findEdge, findPiece, splitName } from '../../draft/find.ts';
import { closedRegion, stretchPaths, type OutlinePlace } from '../../draft/outline-stretch.ts';
import { findPlace } from '../../draft/place.ts';
import { inches } from '../../draft/say.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import type { Draft, EdgePlace, Piece } from '../../draft/types.ts';
import { crossings, lineCrossings } from '../../geometry/crossings.ts';
import { joined, measured } from '../../geometry/accuracy.ts';
import { compose, movePoint, reflection } from '../../geometry/motion.ts';
import { add, cross, distance, mirrored, outward, scale, subtract, unit } from '../../geometry/point.ts';
import { joinedPaths, pathEnd, pathLength, pathStart, pointAt, straight } from '../../geometry/path.ts';
import type { Motion, Path, Point } from '../../geometry/types.ts';
import { amount, edgePlace, feature, id, mirroredPlace, on } from '../fields.ts';
import type { Kind } from '../kind.ts';
import { bridgeBetween, inOutlineOrder, reassemble, type Fate, type Reassembled, type Region } from '../reassemble.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { partSides, reachedPieces } from '../sides.ts';
import type { AlterationBase, On, Outcome, Remark } from '../types.ts';

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

export interface SpreadAlteration extends AlterationBase {
	readonly kind: 'spread';
	readonly cuts: readonly Slash[];
}

type Refused = Extract<Outcome, { refused: unknown }>;

const cutEnd: z.ZodType<CutEnd> = z.union([edgePlace, z.strictObject({ dart: feature })]);

export const spread: Kind<SpreadAlteration> = {
	kind: 'spread',
	schema: z.strictObject({
		id,
		kind: z.literal('spread'),
		on,
		cuts: z
			.array(
				z.strictObject({
					piece: z.string().min(1),
					from: cutEnd,
					to: cutEnd,
					gapFrom: amount.optional(),
					gapTo: amount.optional(),
					keep: feature
				})
			)
			.min(1)
	}),
	isRead: ({ cuts }) => cuts.some((cut) => cut.gapFrom !== undefined || cut.gapTo !== undefined),
	isNothing: ({ cuts }) => cuts.every((cut) => !cut.gapFrom && !cut.gapTo),
	names: ({ cuts }) => cuts.map((cut) => cut.piece),
	scaled: (alteration, factor) => ({
		...alteration,
		cuts: alteration.cuts.map((cut) => ({
			...cut,
			...(cut.gapFrom === undefined ? {} : { gapFrom: cut.gapFrom * factor }),
			...(cut.gapTo === undefined ? {} : { gapTo: cut.gapTo * factor })
		}))
	}),
	mirrored: (alteration) => ({
		...alteration,
		cuts: alteration.cuts.map((cut) => ({ ...cut, from: mirroredEnd(cut.from), to: mirroredEnd(cut.to) }))
	}),
	carry(draft, alteration) {
		let result = draft;
		const touched: { feature: string; greatestMove: number }[] = [];
		const remarks: Remark[] = [];
		const nothing = spread.isNothing(alteration);
		for (const cut of alteration.cuts) {
			const reached = reachedPieces(result, cut.piece, nothing ? 'both' : alteration.on);
			if (isRefused(reached)) return reached;
			result = reached.draft;
			for (const pieceId of reached.pieces) {
				for (const part of cutsOnPart(result, pieceId, cut, alteration.on)) {
					const opened = slash(result, pieceId, part);
					if (isRefused(opened)) return opened;
					result = opened.draft;
					touched.push(...opened.touched);
					remarks.push(...opened.remarks);
				}
			}
		}
		return nothing ? { draft, touched: [], remarks: [] } : { draft: result, touched, remarks };
	}
};

function mirroredEnd(end: CutEnd): CutEnd {
	return 'dart' in end ? end : mirroredPlace(end);
}

/** The cut in the names of one part: an opened fold piece has its edges twice, and is cut on the sides asked for. */
function cutsOnPart(draft: Draft, pieceId: string, cut: Slash, on: On): Slash[] {
	const piece = findPiece(draft, pieceId)!;
	const sides = partSides(piece, on);
	return sides.map((side) => {
		const name = (whole: string): string => {
			const { id: bare } = splitName(whole);
			const own = side && piece.edges.some((edge) => edge.id === `${undividedName(bare)}@${side}`);
			return `${pieceId}/${own || (side && piece.darts.some((dart) => dart.id === `${bare}@${side}`)) ? `${undividedName(bare)}@${side}` : bare}`;
		};
		const end = (one: CutEnd): CutEnd => ('dart' in one ? { dart: name(one.dart) } : { ...one, edge: name(one.edge) });
		return { ...cut, piece: pieceId, from: end(cut.from), to: end(cut.to), keep: name(cut.keep) };
	});
}

/** A cut's end as found: on the outline, or at a dart's point with that dart's mouth. */
interface FoundEnd {
	readonly point: Point;
	readonly gap: number;
	/** Where the outline is left when the moved part comes after it, and when it comes before it. */
	readonly leave: OutlinePlace;
	readonly enter: OutlinePlace;
	readonly dart?: string;
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

/** Whether a place lies on the outline between two others, going clockwise. */
function isBetween(at: OutlinePlace, after: OutlinePlace, before: OutlinePlace): boolean {
	const order = (a: OutlinePlace, b: OutlinePlace) => a.edge - b.edge || a.s - b.s;
	if (order(after, before) <= 0) return order(at, after) >= 0 && order(at, before) <= 0;
	return order(at, after) >= 0 || order(at, before) <= 0;
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

/** A fold that is no longer one straight line. */
function bentFold(piece: Piece): Piece['edges'][number] | undefined {
	return piece.edges.find((edge) => {
		if (edge.kind !== 'fold') return false;
		const [a, b] = [pathStart(edge.path), pathEnd(edge.path)];
		return edge.path.some(({ to }) => Math.abs(cross(subtract(b, a), subtract(to, a))) > joined * distance(a, b));
	});
}

interface Plan {
	readonly cuts: readonly OutlinePlace[];
	readonly fates: readonly Fate[];
	readonly regions: readonly Region[];
}

function openPlan(piece: Piece, first: FoundEnd, second: FoundEnd, motion: Motion): Plan {
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
function foldPlan(
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

/** Where a trimming line meets the outline near a cut's end, going back or on from it along the outline. */
function trimAt(piece: Piece, end: FoundEnd, a: Point, b: Point, way: 'back' | 'on'): OutlinePlace | undefined {
	if (end.gap === 0) return way === 'back' ? end.enter : end.leave;
	const edge = way === 'back' ? end.enter : end.leave;
	const found = lineCrossings(piece.edges[edge.edge].path, a, b, measured)
		.map(({ s }) => s)
		.filter((s) => (way === 'back' ? s <= edge.s + measured : s >= edge.s - measured))
		.sort((x, y) => Math.abs(x - edge.s) - Math.abs(y - edge.s));
	return found.length > 0 && Math.abs(found[0] - edge.s) < 4 * Math.abs(end.gap) + 1
		? { edge: edge.edge, s: found[0] }
		: undefined;
}

function chain(points: readonly Point[]): Path[] {
	return points
		.slice(1)
		.flatMap((point, i) => (distance(points[i], point) > joined ? [straight(points[i], point)] : []));
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

function remarksOf(
	piece: Piece,
	lostNotches: readonly string[],
	bridges: readonly { edge: string; from: number; to: number }[]
): Remark[] {
	return [
		...lostNotches.map((notch) => ({
			code: 'notch-lost',
			where: `${piece.id}/${notch}`,
			sentence: `A notch of ${piece.name} lay in the cloth that was folded away. Mark it again where the pieces meet.`
		})),
		...bridges.map((bridge) => ({
			code: 'bridge',
			where: `${piece.id}/${bridge.edge}`,
			figure: bridge.to - bridge.from,
			sentence: `${edgeName(piece, bridge.edge)} of ${piece.name} was bridged straight for ${inches(bridge.to - bridge.from)} where it was cut. Smooth it there.`
		}))
	];
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

function edgeName(piece: Piece, id: string): string {
	return piece.edges.find((edge) => edge.id === id)?.name ?? id;
}
