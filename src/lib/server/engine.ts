/**
 * The engine as the journal uses it: one place to see what the records depend on.
 */
export type { Draft } from '../engine/draft/types.ts';
export type { AlterationBase, Step, Unplaced } from '../engine/alteration/types.ts';
export type { Query } from '../engine/review/types.ts';
