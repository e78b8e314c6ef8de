/** Fold the dart as pressed, redraw the edge, cut, unfold: its legs come out alike and its mouth has the shape to be folded. */
import { z } from 'zod';
import { findDart, findFoldDart } from '../../draft/find.ts';
import type { Draft } from '../../draft/types.ts';
import { feature, id, on } from '../fields.ts';
import type { Kind } from '../kind.ts';
import { isRefused, refused } from '../refusal.ts';
import { dartIds, reachedFeatures } from '../sides.ts';
import { trueMouth } from '../true-mouth.ts';
import type { AlterationBase, Outcome } from '../types.ts';

export interface TrueDartAlteration extends AlterationBase {
	readonly kind: 'true-dart';
	readonly dart: string;
	/** How far beyond the mouth, on either side, the edge is redrawn, mm. */
	readonly reach: number;
}

/** The file form. */
export const trueDartSchema = (): z.ZodType<TrueDartAlteration> =>
	z.strictObject({
		id,
		kind: z.literal('true-dart'),
		on,
		dart: feature,
		reach: z.number().min(1, 'is how far the edge is redrawn on either side: at least 1 mm').max(1000)
	});

export const trueDart: Kind<TrueDartAlteration> = {
	kind: 'true-dart',
	isRead: () => true,
	// Whether there is anything to true is the draft's to say.
	isNothing: () => false,
	names: (alteration) => [alteration.dart],
	mirrored: (alteration) => alteration,
	carry(draft, alteration) {
		const reached = reachedFeatures(draft, alteration.dart, alteration.on, dartIds);
		if (isRefused(reached)) return reached;
		let result = reached.draft;
		const touched: { feature: string; greatestMove: number }[] = [];
		for (const name of reached.names) {
			const trued = trueOne(result, name, alteration.reach);
			if (isRefused(trued)) return trued;
			result = trued.draft;
			touched.push(...trued.touched);
		}
		return { draft: touched.length > 0 ? result : draft, touched, remarks: [] };
	}
};

function trueOne(draft: Draft, name: string, reach: number): Outcome {
	const fold = findFoldDart(draft, name);
	if (fold)
		return refused(
			'no-mouth',
			`${fold.foldDart.name} of ${fold.piece.name} opens on no edge, so there is no mouth to true. Set its widths instead.`
		);
	const { piece, dart, edge } = findDart(draft, name)!;
	const trued = trueMouth(piece, edge, dart, reach);
	if (!trued) return { draft, touched: [], remarks: [] };
	if (isRefused(trued)) return trued;
	const on = (one: { readonly edge: string }) => one.edge === edge.id;
	const { carried } = trued;
	const altered = {
		...piece,
		edges: piece.edges.map((one) => (one === edge ? { ...edge, path: trued.path } : one)),
		darts: piece.darts.map((one) => {
			if (one === dart) return trued.dart;
			return on(one) ? { ...one, from: carried(one.from), to: carried(one.to) } : one;
		}),
		notches: piece.notches.map((notch) => (on(notch) ? { ...notch, at: carried(notch.at) } : notch)),
		pleats: piece.pleats.map((pleat) =>
			on(pleat) ? { ...pleat, from: carried(pleat.from), to: carried(pleat.to) } : pleat
		)
	};
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? altered : one)) },
		touched: [
			{ feature: name, greatestMove: trued.greatestMove },
			{ feature: `${piece.id}/${edge.id}`, greatestMove: trued.greatestMove }
		],
		remarks: []
	};
}
