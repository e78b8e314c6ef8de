import type { Draft } from '../engine.ts';
import type { Problem } from './answer.ts';
import type { Allowances } from './records.ts';
import { checkLength, problemsOf } from './soundness.ts';

/** Widest seam allowance that is taken, in mm: a hem of a foot. */
const widest = 305;

/** The problems of allowances on the edges of a draft. None may be negative, and each edge must be one of the draft's. */
export function checkAllowances(
	draft: Draft,
	allowance: number | undefined,
	allowances: Allowances | undefined
): Problem[] {
	const edges = new Set(draft.pieces.flatMap((piece) => piece.edges.map((edge) => `${piece.id}/${edge.id}`)));
	return problemsOf(
		checkLength('allowance', allowance, 0, widest),
		...Object.entries(allowances ?? {}).map(([edge, mm]) =>
			edges.has(edge)
				? checkLength(`allowances.${edge}`, mm, 0, widest)
				: { field: `allowances.${edge}`, sentence: `This draft has no edge called ${edge}.` }
		)
	);
}
