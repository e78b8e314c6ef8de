/**
 * Slash for a fuller bust, or lap for a smaller one: the part beyond the lines from base to bust point to hinge turns about the
 * hinge until the point has parted by the gap, its lower half stays parallel to what is kept, and the angle between the two
 * becomes a dart. The hinge's edge keeps its length. A negative gap laps and undoes it, on the spread draft with the moved point.
 * Cut lines: The Dressmaker (Butterick, 2nd ed. c. 1916), small and full bust in a close lining.
 */
import { z } from 'zod';
import { joined } from '../../geometry/accuracy.ts';
import { distance } from '../../geometry/point.ts';
import { dartLegs } from '../../draft/dart-legs.ts';
import { findPiece } from '../../draft/find.ts';
import { freeId } from '../../draft/free-id.ts';
import { floorToTape, inchesBelow } from '../../draft/say.ts';
import type { Dart, Draft, EdgePlace, InnerPoint, Piece } from '../../draft/types.ts';
import { bentFold, remarksOf } from '../after-cut.ts';
import { bustLines } from '../bust-lines.ts';
import { bustMove, bustPlan, movedMouth } from '../bust-plan.ts';
import { amount, edgePlace, id, innerPoint, on } from '../fields.ts';
import type { Kind } from '../kind.ts';
import { mirroredInnerPoint, mirroredPlace } from '../mirrored-place.ts';
import { bridgeBetween, reassemble } from '../reassemble.ts';
import { isRefused, refused } from '../refusal.ts';
import { partSides, reachedPieces } from '../sides.ts';
import type { AlterationBase, Outcome, Remark } from '../types.ts';

export interface BustSpreadAlteration extends AlterationBase {
	readonly kind: 'bust-spread';
	readonly piece: string;
	readonly point: InnerPoint;
	/** On the waist or hem edge. */
	readonly base: EdgePlace;
	/** On the armhole edge. */
	readonly hinge: EdgePlace;
	/** On the side edge, where the dart opens. */
	readonly dart: EdgePlace;
	/** Where the kept part is cut towards the point, so that its centre is lengthened with the rest. */
	readonly centre?: EdgePlace;
	/** How far the point parts, at right angles to the base line, mm; negative laps. */
	readonly gap?: number;
}

/** The file form. */
export const bustSpreadSchema = (): z.ZodType<BustSpreadAlteration> =>
	z.strictObject({
		id,
		kind: z.literal('bust-spread'),
		on,
		piece: z.string().min(1),
		point: innerPoint,
		base: edgePlace,
		hinge: edgePlace,
		dart: edgePlace,
		centre: edgePlace.optional(),
		gap: amount.optional()
	});

export const bustSpread: Kind<BustSpreadAlteration> = {
	kind: 'bust-spread',
	isRead: ({ gap }) => gap !== undefined,
	isNothing: ({ gap }) => gap === 0,
	names: ({ piece }) => [piece],
	scaled: (alteration, factor) => ({ ...alteration, gap: (alteration.gap ?? 0) * factor }),
	mirrored: (alteration) => ({
		...alteration,
		point: mirroredInnerPoint(alteration.point),
		base: mirroredPlace(alteration.base),
		hinge: mirroredPlace(alteration.hinge),
		dart: mirroredPlace(alteration.dart),
		...(alteration.centre && { centre: mirroredPlace(alteration.centre) })
	}),
	carry(draft, alteration) {
		const nothing = bustSpread.isNothing(alteration);
		const reached = reachedPieces(draft, alteration.piece, nothing ? 'both' : alteration.on);
		if (isRefused(reached)) return reached;
		let result = reached.draft;
		const touched: { feature: string; greatestMove: number }[] = [];
		const remarks: Remark[] = [];
		for (const pieceId of reached.pieces)
			for (const side of partSides(findPiece(result, pieceId)!, alteration.on)) {
				const opened = openBust(result, pieceId, side, alteration);
				if (isRefused(opened)) return opened;
				result = opened.draft;
				touched.push(...opened.touched);
				remarks.push(...opened.remarks);
			}
		return nothing ? { draft, touched: [], remarks: [] } : { draft: result, touched, remarks };
	}
};

function openBust(
	draft: Draft,
	pieceId: string,
	side: 'left' | 'right' | undefined,
	alteration: BustSpreadAlteration
): Outcome {
	const piece = findPiece(draft, pieceId)!;
	const lines = bustLines(draft, piece, side, alteration);
	if (isRefused(lines)) return lines;
	if (bustSpread.isNothing(alteration)) return { draft, touched: [], remarks: [] };
	const { present } = lines;
	const gap = alteration.gap!;
	const move = bustMove(piece, lines, gap, present ? dartLegs(piece, present).angle : 0);
	if ('greatest' in move) return refusedMove(alteration, move.greatest, present);
	const plan = bustPlan(piece, lines, move, gap);
	if (!plan)
		return refused(
			'fold-runs-off',
			`The lap would use up an edge of ${piece.name}. Lap less, or place it farther from the corner.`
		);
	const made = reassemble(piece, plan.cuts, plan.fates, plan.regions);
	if (isRefused(made)) return made;
	const lost = made.cutMouths.filter((dart) => dart.id !== present?.id);
	if (lost.length > 0)
		return refused(
			'slash-through-mouth',
			`The cut runs through the mouth of ${lost[0].name}. Cut beside it, or close the dart first.`
		);
	const bent = bentFold(made.piece);
	if (bent)
		return refused(
			'fold-bends',
			`${bent.name} of ${piece.name} is cut on the fold and would no longer be straight. Draw the base line from the point along the fold, or leave the centre as it is.`
		);
	const edge = piece.edges[lines.dart[0].edge];
	const opened = bridgeBetween(made, edge.id, ...movedMouth(piece, lines, move));
	const dart: Dart | undefined = opened && {
		...(present ?? {
			id: freeId(piece, side ? `${alteration.id}@${side}` : alteration.id),
			name: `${edge.name} dart`,
			widths: []
		}),
		edge: edge.id,
		from: opened.from,
		to: opened.to,
		point: move.point
	};
	const bridges = made.bridges.filter((bridge) => bridge !== opened);
	const altered: Piece = {
		...made.piece,
		darts: dart ? [...made.piece.darts, dart] : made.piece.darts,
		marks: made.piece.marks.map((mark, i) =>
			distance(piece.marks[i].at, lines.point) <= joined ? { ...mark, at: move.point } : mark
		)
	};
	const edges = [lines.base, lines.dart[0], lines.hinge, ...(lines.centre ? [lines.centre] : [])].map(
		(at) => piece.edges[at.edge].id
	);
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? altered : one)) },
		touched: [...new Set([...edges, ...(dart ? [dart.id] : [])])].map((one) => ({
			feature: `${piece.id}/${one}`,
			greatestMove: Math.abs(gap)
		})),
		remarks: remarksOf(piece, made.lostNotches, bridges)
	};
}

function refusedMove(alteration: BustSpreadAlteration, greatest: number, present: Dart | undefined): Outcome {
	const works = floorToTape(greatest);
	const settle = works === 0 ? [] : [{ ...alteration, gap: works } as BustSpreadAlteration];
	if (alteration.gap! > 0)
		return refused(
			'hinge-level',
			`The hinge lies too level with the bust point for this: turned about it, the point parts by ${inchesBelow(greatest)} at most. Place the hinge higher, or open less.`,
			settle
		);
	if (!present)
		return refused(
			'no-dart',
			'A lap closes a dart at that place, and there is none. Pin out a dart there first, as far as the bust point.',
			settle
		);
	return refused(
		'dart-too-narrow',
		`${present.name} closes with this, and is wide enough for ${inchesBelow(greatest)} at most.`,
		settle
	);
}
