import type { cuttingLines } from '../engine/index.ts';

/** A piece ready to cut, as the engine gives it. */
export type CutPiece = ReturnType<typeof cuttingLines>[number];
export type CutNotch = CutPiece['notches'][number];
