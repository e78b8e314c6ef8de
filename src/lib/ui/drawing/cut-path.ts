import type { Path } from './engine.ts';

/** A piece's cut outline in the piece's own mm. */
export interface CutPath {
	readonly piece: string;
	readonly outline: Path;
}
