import { seamRun } from './engine.ts';
import type { Draft } from './engine.ts';
import type { Cuts } from './snips.ts';

/**
 * How many cuts mark each notch (named whole): one, two, three and one again in the order in which a seam's side a meets them,
 * a notch and its mate alike, as they are cut and printed. A notch that no seam meets has one. Common practice, no source.
 */
export function notchCuts(draft: Draft): ReadonlyMap<string, Cuts> {
	const cuts = new Map<string, Cuts>();
	const namedBy = matesByName(draft);
	for (const seam of draft.seams) {
		const met = seamRun(draft, seam, 'a').flatMap(({ piece, edge, reversed }) => {
			const along = piece.notches.filter((notch) => notch.edge === edge.id).sort((a, b) => a.at - b.at);
			if (reversed) along.reverse();
			return along.map((notch) => ({ name: `${piece.id}/${notch.id}`, mate: notch.mate }));
		});
		met.forEach(({ name, mate = namedBy.get(name) }, i) => {
			const count = ((i % 3) + 1) as Cuts;
			cuts.set(name, count);
			if (mate !== undefined) cuts.set(mate, count);
		});
	}
	return cuts;
}

/** The notch that names a notch as its mate. */
function matesByName(draft: Draft): ReadonlyMap<string, string> {
	return new Map(
		draft.pieces.flatMap((piece) =>
			piece.notches.flatMap(({ id, mate }) => (mate === undefined ? [] : [[mate, `${piece.id}/${id}`] as const]))
		)
	);
}
