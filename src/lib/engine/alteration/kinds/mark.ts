/** Notches, the bust point, buttons and buttonholes: adds a mark, moves it, takes it off. */
import { z } from 'zod';
import { findPiece, nameOf } from '../../draft/find.ts';
import type { EdgePlace, InnerPoint, MarkKind } from '../../draft/types.ts';
import { amount, edgePlace, feature, id, innerPoint, on, place } from '../fields.ts';
import type { Kind } from '../kind.ts';
import { moveMark, noMark, ownId, removeMark, setButtonholes, setMark, setNotch, type Where } from '../mark-acts.ts';
import { mirroredInnerPoint, mirroredPlace } from '../mirrored-place.ts';
import type { Buttonholes } from '../place-buttonholes.ts';
import { isRefused } from '../refusal.ts';
import { partSides, reachedPieces } from '../sides.ts';
import type { AlterationBase, Outcome } from '../types.ts';

export interface MarkAlteration extends AlterationBase {
	readonly kind: 'mark';
	readonly piece: string;
	/** Exactly one of these. A mark or notch that is there by that id is set anew. */
	readonly set?: { readonly id: string; readonly kind: MarkKind; readonly at: InnerPoint; readonly to?: InnerPoint };
	readonly notch?: { readonly id: string; readonly at: EdgePlace; readonly mate?: string };
	readonly move?: { readonly id: string; readonly to: EdgePlace | InnerPoint };
	readonly remove?: string;
	/** Marks called `id-1`, `id-2` … from the first; those that are there by these names make room. */
	readonly buttonholes?: Buttonholes & { readonly id: string };
}

const acts = ['set', 'notch', 'move', 'remove', 'buttonholes'] as const;

/** The file form. */
export function markSchema(): z.ZodType<MarkAlteration> {
	const markId = z
		.string()
		.max(80)
		.regex(/^[A-Za-z0-9][A-Za-z0-9._-]*$/, 'is a short name of letters, digits and hyphens, like bust-point');
	const size = amount.gt(0, 'is more than 0');
	return z
		.strictObject({
			id,
			kind: z.literal('mark'),
			on,
			piece: z.string().min(1),
			set: z
				.strictObject({
					id: markId,
					kind: z.enum(['bust-point', 'button', 'buttonhole', 'point']),
					at: innerPoint,
					to: innerPoint.optional()
				})
				.refine(({ kind, to }) => to === undefined || kind === 'buttonhole', {
					path: ['to'],
					message: 'is the other end of a buttonhole: no other mark has one'
				})
				.optional(),
			notch: z.strictObject({ id: markId, at: edgePlace, mate: feature.optional() }).optional(),
			move: z.strictObject({ id: markId, to: z.union([edgePlace, innerPoint]) }).optional(),
			remove: markId.optional(),
			buttonholes: z
				.strictObject({
					id: markId.default('buttonhole'),
					edge: feature,
					first: place,
					last: place,
					fullest: place.optional(),
					count: z.number().int().min(2, 'is 2 or more').max(100).optional(),
					spacing: size.optional(),
					button: z.strictObject({ diameter: size, thickness: amount.min(0) }).optional(),
					direction: z.enum(['across', 'along']),
					rule: z.enum(['diameter-and-thickness', 'worked', 'flat']).default('diameter-and-thickness'),
					tape: z.enum(['inch', 'metric']).default('inch')
				})
				.refine(({ count, spacing }) => count === undefined || spacing === undefined, {
					path: ['spacing'],
					message: 'or "count": how many or how far apart, one of the two'
				})
				.optional()
		})
		.refine((alteration) => acts.filter((act) => alteration[act] !== undefined).length === 1, {
			message: `One of ${acts.join(', ')} says what is done to the mark`
		});
}

export const mark: Kind<MarkAlteration> = {
	kind: 'mark',
	isRead: ({ buttonholes }) =>
		!buttonholes || (!!buttonholes.button && (buttonholes.count ?? buttonholes.spacing) !== undefined),
	// A mark has no amount that could be zero.
	isNothing: () => false,
	names: (alteration) => [alteration.piece],
	mirrored: ({ set, notch, move, buttonholes, ...alteration }) => ({
		...alteration,
		...(set && {
			set: { ...set, at: mirroredInnerPoint(set.at), ...(set.to && { to: mirroredInnerPoint(set.to) }) }
		}),
		...(notch && { notch: { ...notch, at: mirroredPlace(notch.at) } }),
		...(move && { move: { ...move, to: isOnEdge(move.to) ? mirroredPlace(move.to) : mirroredInnerPoint(move.to) } }),
		...(buttonholes && {
			buttonholes: {
				...buttonholes,
				first: mirroredPlace(buttonholes.first),
				last: mirroredPlace(buttonholes.last),
				...(buttonholes.fullest && { fullest: mirroredPlace(buttonholes.fullest) })
			}
		})
	}),
	carry(draft, alteration) {
		const reached = reachedPieces(draft, alteration.piece, alteration.on);
		if (isRefused(reached)) return reached;
		const there = alteration.move?.id ?? alteration.remove;
		const done = new Set<string>();
		let result: Exclude<Outcome, { refused: unknown }> = { draft: reached.draft, touched: [], remarks: [] };
		for (const pieceId of reached.pieces)
			for (const side of partSides(findPiece(result.draft, pieceId)!, alteration.on)) {
				const where: Where = { draft: result.draft, piece: findPiece(result.draft, pieceId)!, side };
				if (there !== undefined) {
					// Only where it is; what lies on the middle of an opened piece is one mark for both sides.
					const own = ownId(where, there);
					if (own === undefined || done.has(nameOf(pieceId, own))) continue;
					done.add(nameOf(pieceId, own));
				}
				const changed = act(alteration, where);
				if (isRefused(changed)) return changed;
				result = {
					draft: changed.draft,
					touched: [...result.touched, ...changed.touched],
					remarks: [...result.remarks, ...changed.remarks]
				};
			}
		if (there !== undefined && done.size === 0) return noMark(findPiece(reached.draft, reached.pieces[0])!, there);
		return result;
	}
};

function act({ set, notch, move, remove, buttonholes }: MarkAlteration, where: Where): Outcome {
	if (set) return setMark(where, set);
	if (notch) return setNotch(where, notch);
	if (move)
		return isOnEdge(move.to)
			? moveMark(where, move.id, move.to, undefined)
			: moveMark(where, move.id, undefined, move.to);
	if (buttonholes) return setButtonholes(where, buttonholes);
	return removeMark(where, remove!);
}

function isOnEdge(to: EdgePlace | InnerPoint): to is EdgePlace {
	return 'edge' in to;
}
