import { undividedName } from '../../engine/index.ts';
import type { Draft, Seam } from '../../engine/index.ts';
import type { AllowancesByEdge } from './usual-allowances.ts';

/** Edges that have one allowance, said once: both sides of a seam, or all necks, all hems. */
export interface AllowanceGroup {
	/** `seam.side`, `edge.neck`: also the name of its field. */
	readonly key: string;
	readonly name: string;
	/** Whole names. */
	readonly edges: readonly string[];
}

/** Every edge that is not a fold, in groups: the seams in the order of the draft, then what no seam joins, by its name. */
export function allowanceGroups(draft: Draft): readonly AllowanceGroup[] {
	const groups = new Map<string, { name: string; edges: string[] }>();
	const met = new Set<string>();
	const add = (key: string, name: string, edge: string) => {
		if (met.has(edge)) return;
		met.add(edge);
		const group = groups.get(key) ?? { name, edges: [] };
		group.edges.push(edge);
		groups.set(key, group);
	};
	for (const seam of draft.seams)
		for (const edge of edgesOf(seam)) add(`seam.${undividedName(seam.id)}`, seam.name, edge);
	for (const piece of draft.pieces)
		for (const edge of piece.edges)
			if (edge.kind !== 'fold') add(`edge.${undividedName(edge.id)}`, edge.name, `${piece.id}/${edge.id}`);
	return [...groups].map(([key, group]) => ({ key, ...group }));
}

const edgesOf = ({ a, b }: Seam) => [...a, ...(b === 'mirror' ? [] : b)].map(({ edge }) => edge);

/** The allowance of a group: of all its edges, or the greatest where somebody gave them unlike ones. */
export function allowanceOf({ edges }: AllowanceGroup, allowances: AllowancesByEdge): number {
	return Math.max(
		...edges.map((edge) => allowances.edges[edge] ?? allowances.edges[undividedName(edge)] ?? allowances.default)
	);
}

/** The allowances of groups, by edge: the one that most edges have is the default. */
export function allowancesByEdge(
	groups: readonly AllowanceGroup[],
	lengths: Readonly<Record<string, number>>
): AllowancesByEdge {
	const counts = new Map<number, number>();
	for (const { key, edges } of groups) counts.set(lengths[key], (counts.get(lengths[key]) ?? 0) + edges.length);
	const [[most]] = [...counts].sort(([, a], [, b]) => b - a);
	const differing = groups.filter(({ key }) => lengths[key] !== most);
	return {
		default: most,
		edges: Object.fromEntries(differing.flatMap(({ key, edges }) => edges.map((edge) => [edge, lengths[key]])))
	};
}

/** Groups that have the same allowance, the largest first: “Side seam, shoulder seam: 3/4″”. */
export function allowanceLines(
	groups: readonly AllowanceGroup[],
	allowances: AllowancesByEdge
): readonly { readonly names: readonly string[]; readonly mm: number }[] {
	const lines = new Map<number, string[]>();
	for (const group of groups) {
		const mm = allowanceOf(group, allowances);
		lines.set(mm, [...(lines.get(mm) ?? []), group.name]);
	}
	return [...lines].sort(([a], [b]) => b - a).map(([mm, names]) => ({ mm, names }));
}
