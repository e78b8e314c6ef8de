import { nameOf } from '../draft/find.ts';
import { toStitched } from '../draft/length.ts';
import { mateOnSeam, seamRun } from '../draft/seam.ts';
import type { Draft } from '../draft/types.ts';

/**
 * How many cuts mark each notch (named whole): one, two, three and one again in the order in which a seam's side a meets them, a
 * notch and the one that it meets alike, so that what is sewn together is marked together.
 */
export function notchCounts(draft: Draft): ReadonlyMap<string, 1 | 2 | 3> {
	const counts = new Map<string, 1 | 2 | 3>();
	for (const seam of draft.seams) {
		const met = seamRun(draft, seam, 'a').flatMap(({ piece, edge, reversed, startsAt, length }) =>
			piece.notches
				.filter((notch) => notch.edge === edge.id)
				.map((notch) => {
					const along = toStitched(piece, edge, notch.at);
					return { name: nameOf(piece, notch.id), at: startsAt + (reversed ? length - along : along) };
				})
		);
		met.sort((a, b) => a.at - b.at);
		met.forEach(({ name }, i) => {
			const count = ((i % 3) + 1) as 1 | 2 | 3;
			counts.set(name, count);
			const mate = mateOnSeam(draft, seam, 'a', name);
			if (mate !== undefined) counts.set(mate, count);
		});
	}
	return counts;
}
