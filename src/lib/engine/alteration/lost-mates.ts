import { findNotch } from '../draft/find.ts';
import type { Draft, Notch } from '../draft/types.ts';

/** Notches whose mate was trimmed off, or taken off one side, stand alone. */
export function withoutLostMates(draft: Draft): Draft {
	const isLost = (notch: Notch) => notch.mate !== undefined && !findNotch(draft, notch.mate);
	if (!draft.pieces.some((piece) => piece.notches.some(isLost))) return draft;
	const alone = ({ mate: _, ...notch }: Notch): Notch => notch;
	return {
		...draft,
		pieces: draft.pieces.map((piece) =>
			piece.notches.some(isLost)
				? { ...piece, notches: piece.notches.map((notch) => (isLost(notch) ? alone(notch) : notch)) }
				: piece
		)
	};
}
