import type { AllowanceRow } from '$lib/ui/toile/allowance-rows.ts';

/** The field of one edge's allowance. */
export const fieldOf = (edge: string) => `allowances.${edge}`;

/** What the fields of a toile's form are called: those of allowances by their seam and piece, `Side seam, front`. */
export function fieldNames(rows: readonly AllowanceRow[]): Readonly<Record<string, string>> {
	const edges = rows.flatMap(({ name, edges }) =>
		edges.map(({ edge, label }) => [fieldOf(edge), `${name}, ${label.toLowerCase()}`] as const)
	);
	return { cloth: 'Cloth', date: 'Cut on', note: 'Note', allowance: 'on every edge', ...Object.fromEntries(edges) };
}
