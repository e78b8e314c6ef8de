/** Walk and correct: one side of a seam, or both, made longer or shorter until they are the same, less the meant fullness. */
import { z } from 'zod';
import { measured } from '../../geometry/accuracy.ts';
import { divide } from '../../draft/divide.ts';
import { findPiece, findSeam, nameOf, splitName } from '../../draft/find.ts';
import { findPlaceOnSeam } from '../../draft/place.ts';
import { runLength, seamRun, sideOf, type SeamEdge, type SeamSide } from '../../draft/seam.ts';
import { sideOfName } from '../../draft/undivided-name.ts';
import type { Draft, Place, Seam } from '../../draft/types.ts';
import { id, on, place } from '../fields.ts';
import type { Kind } from '../kind.ts';
import { endAt, moveLineAtEnd, spreadAcross } from '../lengthen-across.ts';
import { lengthenEnd } from '../lengthen-end.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { reachedSeams } from '../sides.ts';
import type { AlterationBase, On, Outcome, Remark } from '../types.ts';

export interface TrueSeamAlteration extends AlterationBase {
	readonly kind: 'true-seam';
	readonly seam: string;
	/** At that end of the seam, where the edge beside it follows, or … */
	readonly end?: 'start' | 'finish';
	/** … at a place along it, right across the piece. */
	readonly at?: Place;
	/** The side that changes; `half`: both share the difference. */
	readonly take: 'a' | 'b' | 'half';
}

type Refused = Extract<Outcome, { refused: unknown }>;
type Carried = Exclude<Outcome, { refused: unknown }>;

/** A difference up to this is none, mm. */
const settled = 0.1 * measured;

/** The file form. */
export const trueSeamSchema = (): z.ZodType<TrueSeamAlteration> =>
	z
		.strictObject({
			id,
			kind: z.literal('true-seam'),
			on,
			seam: z.string().min(1),
			end: z.enum(['start', 'finish']).optional(),
			at: place.optional(),
			take: z.enum(['a', 'b', 'half'])
		})
		.refine(({ end, at }) => (end === undefined) !== (at === undefined), {
			path: ['end'],
			message: 'says where: either an end of the seam, or "at" with a place along it'
		});

export const trueSeam: Kind<TrueSeamAlteration> = {
	kind: 'true-seam',
	isRead: () => true,
	// Whether the sides differ is the draft's to say.
	isNothing: () => false,
	names: (alteration) => [alteration.seam],
	mirrored: (alteration) => alteration,
	carry(draft, alteration) {
		const reached = reachedSeams(draft, alteration.seam, alteration.on);
		if (isRefused(reached)) return reached;
		const ids = reached.seams.map(({ seam }) => seam.id);
		const apart = (one: Draft) => ids.map((id) => difference(one, id));
		if (apart(reached.draft).every((one) => Math.abs(one) <= settled))
			return placeProblem(reached.draft, ids, alteration) ?? { draft, touched: [], remarks: [] };
		let result = withOwnPieces(reached.draft, ids, alteration.take, alteration.on);
		const touched = new Map<string, number>();
		const remarks: Remark[] = [];
		for (const id of ids)
			for (const side of alteration.take === 'half' ? (['a', 'b'] as const) : [alteration.take]) {
				const now = difference(result, id);
				if (Math.abs(now) <= settled) continue;
				const wanted = alteration.take === 'half' && side === 'a' ? now / 2 : 0;
				const corrected = correct(result, id, side, wanted, alteration);
				if (isRefused(corrected)) return corrected;
				result = corrected.draft;
				for (const one of corrected.touched)
					touched.set(one.feature, Math.max(one.greatestMove, touched.get(one.feature) ?? 0));
				remarks.push(...corrected.remarks);
			}
		return {
			draft: result,
			touched: [...touched].map(([feature, greatestMove]) => ({ feature, greatestMove })),
			remarks
		};
	}
};

/** b − a − fullness, mm. A centre seam is as long as its own mirror image. */
function difference(draft: Draft, seamId: string): number {
	const seam = findSeam(draft, seamId)!;
	return seam.b === 'mirror' ? 0 : runLength(draft, seam.b) - runLength(draft, seam.a) - seam.ease;
}

function placeProblem(draft: Draft, ids: readonly string[], { at }: TrueSeamAlteration): Refused | undefined {
	for (const id of at ? ids : [])
		for (const side of ['a', 'b'] as const) {
			const found = findPlaceOnSeam(draft, id, side, at!);
			if ('problem' in found) return noPlace(found.problem, at);
		}
	return undefined;
}

/**
 * The draft with pieces divided that are to change for one side of the wearer only: those still whole beside a seam that is
 * divided, if one side was asked for or if the two sides want unlike amounts.
 */
function withOwnPieces(draft: Draft, ids: readonly string[], take: TrueSeamAlteration['take'], on: On): Draft {
	const amounts = new Map<string, number[]>();
	for (const id of ids) {
		if (!sideOfName(id)) continue;
		const seam = findSeam(draft, id)!;
		const now = difference(draft, id);
		for (const side of ['a', 'b'] as const) {
			if (take !== 'half' && take !== side) continue;
			for (const { edge } of sideOf(seam, side)) {
				const { piece } = splitName(edge);
				if (sideOfName(edge) || findPiece(draft, piece)!.cut === 'single') continue;
				amounts.set(piece, [...(amounts.get(piece) ?? []), side === 'a' ? now : -now]);
			}
		}
	}
	const unlike = [...amounts].filter(([, list]) => on !== 'both' || Math.max(...list) - Math.min(...list) > settled);
	return unlike.length > 0
		? divide(
				draft,
				unlike.map(([piece]) => piece)
			)
		: draft;
}

const rounds = 12;

/**
 * The draft with one side of the seam changed until the difference is what is wanted. The length let in is found by the secant
 * method, always from the draft given: a straight end or an even opening is right at once, where lines are cut back at a slant or
 * the change reaches the seam's other side as well it takes a few rounds.
 */
function correct(
	draft: Draft,
	seamId: string,
	side: SeamSide,
	wanted: number,
	alteration: TrueSeamAlteration
): Carried | Refused {
	const sign = side === 'a' ? 1 : -1;
	const before = difference(draft, seamId);
	let by = sign * (before - wanted);
	let last: { readonly by: number; readonly missing: number } = { by: 0, missing: by };
	for (let round = 0; round < rounds; round++) {
		const tried = changed(draft, findSeam(draft, seamId)!, side, by, alteration);
		if (isRefused(tried)) return tried;
		const missing = sign * (difference(tried.draft, seamId) - wanted);
		if (Math.abs(missing) <= settled) return { ...tried, touched: changedEdges(draft, tried.draft, by) };
		const slope = (last.missing - missing) / (by - last.by);
		if (!(Math.abs(slope) > 0.05)) break;
		const next = by + missing / slope;
		last = { by, missing };
		by = next;
	}
	return refused(
		'not-settled',
		`The two sides of ${findSeam(draft, seamId)!.name} cannot be brought to one length there: what one gains, the other gains too. Correct it at the other end.`
	);
}

function changed(draft: Draft, seam: Seam, side: SeamSide, by: number, alteration: TrueSeamAlteration): Outcome {
	const run = seamRun(draft, seam, side);
	if (alteration.end) {
		const { piece, edge, end } = outermost(run, alteration.end);
		const made = lengthenEnd(piece, edge, end, by);
		if (isRefused(made)) {
			const { end: _, ...rest } = alteration;
			const evenly = { ...rest, at: { end: alteration.end } };
			return made.refused.code === 'fold-fixed' ? { refused: { ...made.refused, settle: [evenly] } } : made;
		}
		return {
			draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? made.piece : one)) },
			touched: [],
			remarks: made.remarks
		};
	}
	const at = alteration.at!;
	const found = findPlaceOnSeam(draft, seam.id, side, at);
	if ('problem' in found) return noPlace(found.problem, at);
	const last = run[run.length - 1];
	const seamEnd = endAt(found.stitchedOnSeam, last.startsAt + last.length);
	if (seamEnd) {
		const { piece, edge, end } = outermost(run, seamEnd);
		return moveLineAtEnd(draft, piece, edge, end, by);
	}
	const { piece, edge } = run.find(({ name }) => name === found.edge)!;
	return spreadAcross(draft, piece, edge, found.s, by);
}

/** The edge of a run at one end of its seam, and which of the edge's own ends that is. */
function outermost(run: readonly SeamEdge[], end: 'start' | 'finish'): SeamEdge & { readonly end: 'start' | 'finish' } {
	const edge = end === 'start' ? run[0] : run[run.length - 1];
	return { ...edge, end: (end === 'start') !== edge.reversed ? 'start' : 'finish' };
}

/** The edges that are not what they were. */
function changedEdges(before: Draft, after: Draft, by: number): { feature: string; greatestMove: number }[] {
	return after.pieces.flatMap((piece) => {
		const was = findPiece(before, piece.id)!;
		if (was === piece) return [];
		return piece.edges.flatMap((edge, i) =>
			edge === was.edges[i] ? [] : [{ feature: nameOf(piece, edge.id), greatestMove: Math.abs(by) }]
		);
	});
}
