import { findPlace, findPlaceOnSeam, findSeam, pathLength, seamRun, stitchedLength } from '../../engine/index.ts';
import type { Alteration, Draft } from '../../engine/index.ts';
import { edgeOf } from '../fitting/feature-names.ts';
import type { MoveAlong } from '../laid-straight.ts';

/**
 * The moves of an alteration along its seam or edge, from its start (0) to its end (1), mm, cloth added positive: for the
 * little picture of the line laid straight. Of a seam's two layers their mean, or side a's where the seam was only moved.
 * Undefined for one that moved no line, is not read, or whose places are not on this draft any more.
 */
export function movesAlong(draft: Draft, intent: Alteration): readonly MoveAlong[] | undefined {
	if (intent.kind === 'seam') {
		const seam = findSeam(draft, intent.seam);
		if (!seam) return undefined;
		const whole = seamRun(draft, seam, 'a').reduce(
			(sum, { piece, edge }) => sum + stitchedLength(draft, `${piece.id}/${edge.id}`),
			0
		);
		return placed(intent.pins, ({ at, a = 0, b }) => {
			const place = findPlaceOnSeam(draft, seam.id, 'a', at);
			if ('problem' in place) return undefined;
			const other = seam.b === 'mirror' ? a : (b ?? 0);
			return { at: place.stitchedOnSeam / whole, move: Math.abs(a + other) < 1e-9 ? a : (a + other) / 2 };
		});
	}
	if (intent.kind === 'edge') {
		const found = edgeOf(draft, intent.edge);
		if (!found) return undefined;
		const whole = pathLength(found.edge.path);
		return placed(intent.pins, ({ at, move = 0 }) => {
			const place = findPlace(draft, `${found.piece.id}/${found.edge.id}`, at);
			return 'problem' in place ? undefined : { at: place.s / whole, move };
		});
	}
	return undefined;
}

function placed<Pin extends object>(
	pins: readonly Pin[],
	moveOf: (pin: Pin) => MoveAlong | undefined
): readonly MoveAlong[] | undefined {
	const moves = pins.map(moveOf).filter((move) => move !== undefined);
	return moves.length === pins.length && moves.some(({ move }) => move !== 0) ? moves : undefined;
}
