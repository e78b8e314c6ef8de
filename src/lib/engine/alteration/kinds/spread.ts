/** Slash and open, or pin a fold across: cuts each piece from one place to another and moves the part without `keep`. */
import { z } from 'zod';
import { findPiece, splitName } from '../../draft/find.ts';
import { floorToTape, inchesBelow } from '../../draft/say.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import type { Draft } from '../../draft/types.ts';
import { amount, edgePlace, feature, id, on } from '../fields.ts';
import { placeOnPart } from '../inner-point-on-side.ts';
import type { Kind } from '../kind.ts';
import { mirroredPlace } from '../mirrored-place.ts';
import { isRefused, refused } from '../refusal.ts';
import { partSides, reachedPieces } from '../sides.ts';
import { slash, type CutEnd, type Slash } from '../slash.ts';
import type { AlterationBase, On, Outcome, Remark } from '../types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

export interface SpreadAlteration extends AlterationBase {
	readonly kind: 'spread';
	readonly cuts: readonly Slash[];
}

/** The file form. */
export function spreadSchema(): z.ZodType<SpreadAlteration> {
	const cutEnd: z.ZodType<CutEnd> = z.union([edgePlace, z.strictObject({ dart: feature })]);
	return z.strictObject({
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
	});
}

export const spread: Kind<SpreadAlteration> = {
	kind: 'spread',
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
		const outcome = cutAll(draft, alteration);
		return isRefused(outcome) && outcome.refused.code === 'fold-runs-off'
			? withTheMost(draft, alteration, outcome)
			: outcome;
	}
};

function cutAll(draft: Draft, alteration: SpreadAlteration): Outcome {
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

/** Halvings in search of the most that can be folded away: a thousandth of what was asked. */
const halvings = 10;

/** The refusal of a fold that would use up an edge, with the most of it that would not. */
function withTheMost(draft: Draft, alteration: SpreadAlteration, { refused: refusal }: Refused): Outcome {
	const deepest = Math.max(
		...alteration.cuts.flatMap(({ gapFrom = 0, gapTo = 0 }) => [Math.abs(gapFrom), Math.abs(gapTo)])
	);
	const scaled = (mm: number) => spread.scaled!(alteration, mm / deepest);
	let [works, fails] = [0, deepest];
	for (let i = 0; i < halvings; i++) {
		const middle = (works + fails) / 2;
		if (isRefused(cutAll(draft, scaled(middle)))) fails = middle;
		else works = middle;
	}
	const most = floorToTape(works);
	if (most === 0) return { refused: refusal };
	return refused('fold-runs-off', `${refusal.sentence} At most ${inchesBelow(most)} can be folded away there.`, [
		scaled(most)
	]);
}

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
		const end = (one: CutEnd): CutEnd =>
			'dart' in one ? { dart: name(one.dart) } : { ...placeOnPart(name(one.edge), one), edge: name(one.edge) };
		return { ...cut, piece: pieceId, from: end(cut.from), to: end(cut.to), keep: name(cut.keep) };
	});
}
