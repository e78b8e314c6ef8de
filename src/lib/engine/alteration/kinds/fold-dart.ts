/** Pin out a fold inside a piece: a double-pointed dart between two points, widest somewhere between them. */
import { z } from 'zod';
import { crossings } from '../../geometry/crossings.ts';
import { contains } from '../../geometry/contains.ts';
import { joined, measured } from '../../geometry/accuracy.ts';
import { distance } from '../../geometry/point.ts';
import { foldDartLegs } from '../../draft/dart-legs.ts';
import { findPiece } from '../../draft/find.ts';
import { freeId } from '../../draft/free-id.ts';
import { outlineOf } from '../../draft/outline.ts';
import { findInnerPoint } from '../../draft/place.ts';
import { sideOfName } from '../../draft/undivided-name.ts';
import type { Draft, FoldDart, InnerPoint } from '../../draft/types.ts';
import { amount, id, innerPoint, on } from '../fields.ts';
import { onSide } from '../inner-point-on-side.ts';
import type { Kind } from '../kind.ts';
import { mirroredInnerPoint } from '../mirrored-place.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { partSides, reachedPieces } from '../sides.ts';
import type { AlterationBase, Outcome } from '../types.ts';

export interface FoldDartAlteration extends AlterationBase {
	readonly kind: 'fold-dart';
	readonly piece: string;
	readonly ends: readonly [InnerPoint, InnerPoint];
	/** `at` as a fraction from the first end; `intake` the whole width there, mm. */
	readonly widest: { readonly at: number; readonly intake?: number };
}

/** The file form. */
export const foldDartSchema = (): z.ZodType<FoldDartAlteration> =>
	z.strictObject({
		id,
		kind: z.literal('fold-dart'),
		on,
		piece: z.string().min(1),
		ends: z.tuple([innerPoint, innerPoint]),
		widest: z.strictObject({
			at: z
				.number()
				.gt(0, 'lies between the two points: more than 0')
				.lt(1, 'lies between the two points: less than 1'),
			intake: amount.min(0, 'is the width of the fold: it cannot be less than 0').optional()
		})
	});

export const foldDart: Kind<FoldDartAlteration> = {
	kind: 'fold-dart',
	isRead: ({ widest }) => widest.intake !== undefined,
	isNothing: ({ widest }) => widest.intake === 0,
	names: (alteration) => [alteration.piece],
	scaled: (alteration, factor) => ({
		...alteration,
		widest: { ...alteration.widest, intake: (alteration.widest.intake ?? 0) * factor }
	}),
	mirrored: (alteration) => ({
		...alteration,
		ends: [mirroredInnerPoint(alteration.ends[0]), mirroredInnerPoint(alteration.ends[1])]
	}),
	carry(draft, alteration) {
		const nothing = foldDart.isNothing(alteration);
		const reached = reachedPieces(draft, alteration.piece, nothing ? 'both' : alteration.on);
		if (isRefused(reached)) return reached;
		let result = reached.draft;
		const touched: { feature: string; greatestMove: number }[] = [];
		for (const pieceId of reached.pieces)
			for (const side of partSides(findPiece(result, pieceId)!, alteration.on)) {
				const added = addFoldDart(result, pieceId, side, alteration);
				if (isRefused(added)) return added;
				result = added.draft;
				touched.push(...added.touched);
			}
		return nothing ? { draft, touched: [], remarks: [] } : { draft: result, touched, remarks: [] };
	}
};

function addFoldDart(
	draft: Draft,
	pieceId: string,
	side: 'left' | 'right' | undefined,
	alteration: FoldDartAlteration
): Outcome {
	const piece = findPiece(draft, pieceId)!;
	const [first, second] = alteration.ends.map((end) =>
		findInnerPoint(draft, pieceId, onSide(end, sideOfName(pieceId), side))
	);
	if ('problem' in first) return noPlace(first.problem);
	if ('problem' in second) return noPlace(second.problem);
	if (foldDart.isNothing(alteration)) return { draft, touched: [], remarks: [] };
	if (distance(first.point, second.point) < 1)
		return refused('fold-short', 'The two points of the fold are one place. Give it a length.');
	const { at, intake = 0 } = alteration.widest;
	if (intake <= joined)
		return refused('fold-narrow', 'A fold so narrow cannot be drawn. Give it a width, or leave it out.');
	const wanted = side ? `${alteration.id}@${side}` : alteration.id;
	const added: FoldDart = {
		id: freeId(piece, wanted),
		name: 'Fold',
		ends: [first.point, second.point],
		widest: { at, intake },
		widths: []
	};
	const outline = outlineOf(piece);
	const legs = foldDartLegs(added);
	const leaves = [legs.left, legs.right].some((leg) => crossings(leg, outline, measured).length > 0);
	if (leaves || !contains(outline, first.point) || !contains(outline, second.point))
		return refused(
			'fold-leaves',
			`The fold runs out of ${piece.name}. Keep both points and its width inside the piece; a dart that opens on an edge is a new dart.`
		);
	const altered = { ...piece, foldDarts: [...piece.foldDarts, added] };
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? altered : one)) },
		touched: [{ feature: `${piece.id}/${added.id}`, greatestMove: intake / 2 }],
		remarks: []
	};
}
