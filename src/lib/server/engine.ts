import type { AlterationBase, Step, Unplaced } from '../engine/alteration/types.ts';
import type { Draft } from '../engine/draft/types.ts';
import type { Query } from '../engine/review/types.ts';

export type { AlterationBase, Draft, Query, Step, Unplaced };

export interface Engine {
	parseDraft(json: unknown): Draft;
	formatDraft(draft: Draft): unknown;
	parseAlteration(json: unknown): AlterationBase;
	carry(
		draft: Draft,
		alterations: readonly AlterationBase[],
		options?: object
	): { draft: Draft; applied: readonly Step[]; unplaced: readonly Unplaced[]; queries: readonly Query[] };
	check(draft: Draft, options?: object): readonly Query[];
}
