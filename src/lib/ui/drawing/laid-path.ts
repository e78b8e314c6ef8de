import { movePath, remembered } from './engine.ts';
import type { Motion, Path } from './engine.ts';
import { pathText } from './path-text.ts';

/** A path where it lies in the drawing, px, and its text. */
export interface LaidPath {
	readonly path: Path;
	readonly text: string;
}

const known = remembered((_: Path) => new WeakMap<Motion, LaidPath>());

/** A path of the draft, mm, laid by a motion: under a stepped pin most lines of a piece are laid as they were the step before. */
export function laidPath(path: Path, motion: Motion): LaidPath {
	const found = known(path).get(motion);
	if (found) return found;
	const moved = movePath(motion, path);
	const laid = { path: moved, text: pathText(moved) };
	known(path).set(motion, laid);
	return laid;
}
