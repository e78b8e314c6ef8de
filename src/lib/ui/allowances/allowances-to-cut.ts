import type { Draft } from '../../engine/index.ts';
import { usualAllowances } from './usual-allowances.ts';
import type { AllowancesByEdge } from './usual-allowances.ts';

/** The final allowances of the lining, if this is the version that was chosen for it; else what is usual. */
export function allowancesToCut(
	version: { readonly number: number; readonly draft: Draft },
	lining: {
		readonly version: number;
		readonly allowance: number;
		readonly allowances: Readonly<Record<string, number>>;
	} | null
): AllowancesByEdge {
	if (lining?.version === version.number) return { default: lining.allowance, edges: lining.allowances };
	return usualAllowances(version.draft);
}
