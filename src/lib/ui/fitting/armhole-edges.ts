import { seamRun } from '../../engine/index.ts';
import type { Draft } from '../../engine/index.ts';

/** Both sides of every seam that sets a limb into the body: chalked anew as a neck is. */
export function armholeEdges(draft: Draft): ReadonlySet<string> {
	return new Set(
		draft.seams.flatMap((seam) => {
			if (seam.b === 'mirror') return [];
			const sides = (['a', 'b'] as const).map((side) => seamRun(draft, seam, side));
			const [a, b] = sides.map((run) => run.every(({ piece }) => piece.limb));
			return a === b ? [] : sides.flat().map(({ name }) => name);
		})
	);
}
