/**
 * Move a dart to another edge, whole or in part: cut along its legs and along the new line to its point, and turn the part
 * between about the point by a share of the dart's angle. Angles add; widths do not.
 */
import { z } from 'zod';
import { crossings } from '../../geometry/crossings.ts';
import { contains } from '../../geometry/contains.ts';
import { joined, measured } from '../../geometry/accuracy.ts';
import { movePoint, rotation } from '../../geometry/motion.ts';
import { distance, midpoint } from '../../geometry/point.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { pointAt, straight } from '../../geometry/path.ts';
import { signedArea } from '../../geometry/area.ts';
import type { Motion, Path } from '../../geometry/types.ts';
import { dartLegs } from '../../draft/dart-legs.ts';
import { findDart, findEdge } from '../../draft/find.ts';
import { freeId } from '../../draft/free-id.ts';
import { outlineOf } from '../../draft/outline.ts';
import { closedRegion, type OutlinePlace } from '../../draft/outline-stretch.ts';
import { findPlace } from '../../draft/place.ts';
import { inches } from '../../draft/say.ts';
import { sideOfName, undividedName } from '../../draft/undivided-name.ts';
import type { Dart, Draft, Piece, Place } from '../../draft/types.ts';
import { feature, id, on, place } from '../fields.ts';
import { placeOnPart } from '../inner-point-on-side.ts';
import type { Kind } from '../kind.ts';
import { mirroredPlace } from '../mirrored-place.ts';
import { bridgeBetween, inOutlineOrder, reassemble, type Fate } from '../reassemble.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { dartIds, reachedFeatures } from '../sides.ts';
import type { AlterationBase, Outcome, Remark } from '../types.ts';
import { onFold } from './dart.ts';

export interface DartSwingAlteration extends AlterationBase {
	readonly kind: 'dart-swing';
	readonly dart: string;
	/** The edge that it is to open on, and where. */
	readonly edge: string;
	readonly at: Place;
	/** How much of the dart's angle goes there: more than 0, up to 1. */
	readonly share?: number;
}

/** The file form. */
export const dartSwingSchema = (): z.ZodType<DartSwingAlteration> =>
	z.strictObject({
		id,
		kind: z.literal('dart-swing'),
		on,
		dart: feature,
		edge: feature,
		at: place,
		share: z
			.number()
			.min(0, 'is a share of the dart: from 0 to 1')
			.max(1, 'is a share of the dart: from 0 to 1')
			.optional()
	});

export const dartSwing: Kind<DartSwingAlteration> = {
	kind: 'dart-swing',
	isRead: ({ share }) => share !== undefined,
	isNothing: ({ share }) => share === 0,
	names: (alteration) => [alteration.dart, alteration.edge],
	scaled: (alteration, factor) => ({ ...alteration, share: Math.min(1, (alteration.share ?? 0) * factor) }),
	mirrored: (alteration) => ({ ...alteration, at: mirroredPlace(alteration.at) }),
	carry(draft, alteration) {
		const nothing = dartSwing.isNothing(alteration);
		const reached = reachedFeatures(draft, alteration.dart, nothing ? 'both' : alteration.on, dartIds);
		if (isRefused(reached)) return reached;
		let result = reached.draft;
		const touched: { feature: string; greatestMove: number }[] = [];
		const remarks: Remark[] = [];
		for (const name of reached.names) {
			const swung = swing(result, name, alteration);
			if (isRefused(swung)) return swung;
			result = swung.draft;
			touched.push(...swung.touched);
			remarks.push(...swung.remarks);
		}
		return nothing ? { draft, touched: [], remarks: [] } : { draft: result, touched, remarks };
	}
};

function swing(draft: Draft, name: string, alteration: DartSwingAlteration): Outcome {
	const found = findDart(draft, name);
	if (!found)
		return refused(
			'fold-dart-swing',
			'A fold inside a piece opens on no edge, so it cannot be swung. Make it a dart first.'
		);
	const { piece, dart, edge } = found;
	const target = edgeOnPart(draft, piece, dart, alteration.edge);
	if (!target) return noPlace(`There is no edge ${alteration.edge} on ${piece.name} for the dart to open on.`);
	if (piece.edges[target.index].kind === 'fold') return refused('dart-on-fold', onFold(piece.name));
	const at = findPlace(draft, target.name, placeOnPart(target.name, alteration.at));
	if ('problem' in at) return noPlace(at.problem, alteration.at);
	if (dartSwing.isNothing(alteration)) return { draft, touched: [], remarks: [] };
	if (dart.widths.length > 0)
		return refused(
			'dart-shaped',
			`${dart.name} has shaped legs, and only straight ones swing exactly. Swing a straight dart, and shape it where it comes to lie.`
		);
	const opening: OutlinePlace = { edge: target.index, s: at.s };
	const from: OutlinePlace = { edge: piece.edges.indexOf(edge), s: dart.from };
	const to: OutlinePlace = { edge: piece.edges.indexOf(edge), s: dart.to };
	const openingAt = pointAt(target.path, at.s);
	const line = straight(dart.point, openingAt);
	const legs = dartLegs(piece, dart);
	if (opening.edge === to.edge && opening.s > dart.from - joined && opening.s < dart.to + joined)
		return refused('swing-in-mouth', `The new place lies in the mouth of ${dart.name} itself. Give a place beside it.`);
	const blocked = blockedBy(piece, dart, line);
	if (blocked) return refused('swing-blocked', blocked);
	const afterTo = closedRegion(piece, to, opening, [dart.point]);
	const beforeFrom = closedRegion(piece, opening, from, [dart.point]);
	const turnAfter = staysWith(piece, beforeFrom, afterTo) === 'first';
	// What would be left of a dart that is too narrow to be drawn goes along.
	const isWhole = (1 - alteration.share!) * legs.intake <= joined;
	const share = isWhole ? 1 : alteration.share!;
	// Seen from the point the mouth runs clockwise, from → to: the part after `to` closes it by turning back.
	const motion: Motion = rotation((turnAfter ? -1 : 1) * share * legs.angle, dart.point);
	const fates: Fate[] = ['dropped', turnAfter ? motion : 'kept', turnAfter ? 'kept' : motion];
	const ordered = inOutlineOrder([from, to, opening], fates);
	const made = reassemble(piece, ordered.cuts, ordered.fates, [
		{ outline: turnAfter ? afterTo : beforeFrom, fate: motion },
		{ outline: closedRegion(piece, from, to, [dart.point]), fate: 'dropped' }
	]);
	if (isRefused(made)) return made;
	const others = made.cutMouths.filter((one) => one.id !== dart.id);
	if (others.length > 0)
		return refused(
			'slash-through-mouth',
			`The new line runs through the mouth of ${others[0].name}. Open the dart beside it.`
		);
	const moved = (point: typeof openingAt) => movePoint(motion, point);
	if (distance(openingAt, moved(openingAt)) <= joined)
		return refused(
			'swing-too-little',
			`So small a share of ${dart.name} opens nothing there. Give a larger share, or a place farther from its point.`
		);
	const newMouth = turnAfter
		? bridgeBetween(made, target.id, moved(openingAt), openingAt)
		: bridgeBetween(made, target.id, openingAt, moved(openingAt));
	const oldStart = turnAfter ? legs.mouthFrom : moved(legs.mouthFrom);
	const oldFinish = turnAfter ? moved(legs.mouthTo) : legs.mouthTo;
	const oldMouth = bridgeBetween(made, edge.id, oldStart, oldFinish);
	if (!newMouth) throw new Error(`The swung dart ${name} opened nowhere.`);
	const whole = isWhole || !oldMouth;
	const side = sideOfName(dart.id);
	const swung: Dart = {
		...dart,
		id: whole ? dart.id : freeId(piece, side ? `${alteration.id}@${side}` : alteration.id),
		edge: target.id,
		from: newMouth.from,
		to: newMouth.to
	};
	const remaining: Dart[] = whole ? [] : [{ ...dart, from: oldMouth.from, to: oldMouth.to }];
	const altered = { ...made.piece, darts: [...made.piece.darts, ...remaining, swung] };
	const width = distance(oldStart, oldFinish);
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? altered : one)) },
		touched: [
			{ feature: `${piece.id}/${swung.id}`, greatestMove: newMouth.to - newMouth.from },
			{ feature: `${piece.id}/${edge.id}`, greatestMove: 0 }
		],
		remarks: [
			...made.lostNotches.map((notch) => ({
				code: 'notch-lost',
				where: `${piece.id}/${notch}`,
				sentence: `A notch of ${piece.name} lay in the mouth of ${dart.name}. Mark it again.`
			})),
			...(whole && width > joined
				? [
						{
							code: 'bridge',
							where: `${piece.id}/${edge.id}`,
							figure: width,
							sentence: `The legs of ${dart.name} were ${inches(width)} unlike, so ${edge.name} has a step where it was closed. True the dart before it is swung, or smooth the edge there.`
						}
					]
				: [])
		]
	};
}

/** The edge asked for, on the part that holds the dart. */
function edgeOnPart(draft: Draft, piece: Piece, dart: Dart, name: string) {
	const bare = undividedName(name);
	const [pieceName, edgeId] = bare.split('/');
	if (undividedName(piece.id) !== pieceName) return undefined;
	const side = sideOfName(name) ?? sideOfName(dart.id);
	for (const id of [side && `${edgeId}@${side}`, edgeId]) {
		const found = id && findEdge(draft, `${piece.id}/${id}`);
		if (found) return { name: `${piece.id}/${id}`, id: found.edge.id, index: found.index, path: found.edge.path };
	}
	return undefined;
}

function blockedBy(piece: Piece, dart: Dart, line: Path): string | undefined {
	const [start, end] = [line[0].from, line[0].to];
	const between = (path: Path) =>
		crossings(line, path, measured).some(({ point }) => distance(point, start) > 1e-3 && distance(point, end) > 1e-3);
	const middle = midpoint(start, end);
	const alongEdge = nearestOn(outlineOf(piece), middle, measured).distance <= joined;
	if (alongEdge || between(outlineOf(piece)) || !contains(outlineOf(piece), middle))
		return `The new line would run out of ${piece.name} on its way to the point of ${dart.name}. Choose a place that sees the point.`;
	const other = piece.darts.find(
		(one) => one.id !== dart.id && [dartLegs(piece, one).from, dartLegs(piece, one).to].some(between)
	);
	if (other) return `The new line would cross ${other.name}. Choose a place on this side of it.`;
	return undefined;
}

/** Which of two parts stays: the one with the fold, else with the grain line's middle, else the larger. */
function staysWith(piece: Piece, first: Path, second: Path): 'first' | 'second' {
	const fold = piece.edges.find((edge) => edge.kind === 'fold');
	const sign = fold ? besideMiddle(fold.path) : piece.grain && midpoint(piece.grain[0], piece.grain[1]);
	if (sign && contains(first, sign)) return 'first';
	if (sign && contains(second, sign)) return 'second';
	return Math.abs(signedArea(first)) >= Math.abs(signedArea(second)) ? 'first' : 'second';
}

/** A point just inside the piece beside the middle of its fold. */
function besideMiddle(fold: Path) {
	const middle = midpoint(fold[0].from, fold[fold.length - 1].to);
	const along = distance(fold[0].from, fold[fold.length - 1].to);
	const tangent = [
		(fold[fold.length - 1].to[0] - fold[0].from[0]) / along,
		(fold[fold.length - 1].to[1] - fold[0].from[1]) / along
	];
	// Inward is to the right of travel on a clockwise outline with y down.
	return [middle[0] - tangent[1] * 0.01, middle[1] + tangent[0] * 0.01] as const;
}
