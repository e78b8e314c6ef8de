import type { Draft } from '../../engine/index.ts';
import { inch } from '../../measure/units.ts';

/** Allowances as the journal and the engine take them: mm, one for all edges and those of single edges by whole name. */
export interface AllowancesSet {
	readonly default: number;
	readonly edges: Readonly<Record<string, number>>;
}

/**
 * The allowances of a fitting toile by common practice: 1″ on the long seams, so that they can be let out, and 1/4″ round
 * neck and armhole, where more would keep the cloth from lying. An edge is known by its name; the head of a sleeve is not
 * among them, for it is pinned in.
 */
export function usualAllowances(draft: Draft): AllowancesSet {
	const close = draft.pieces.flatMap((piece) =>
		piece.edges
			.filter(({ id, name, kind }) => kind !== 'fold' && /neck|armhole|armscye/i.test(`${id} ${name}`))
			.map(({ id }) => [`${piece.id}/${id}`, inch / 4] as const)
	);
	return { default: inch, edges: Object.fromEntries(close) };
}
