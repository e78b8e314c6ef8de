import { findNotch } from '../draft/find.ts';
import type { Draft, Notch } from '../draft/types.ts';

/** Notches whose mate was trimmed off, or taken off one side, stand alone. All mates of the draft `before` were there. */
export function withoutLostMates(before: Draft, draft: Draft): Draft {
	if (hasAllNotchesOf(before, draft)) return draft;
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

/** Whether every notch is where it was among its piece's. */
function hasAllNotchesOf(before: Draft, draft: Draft): boolean {
	if (before.pieces.length !== draft.pieces.length) return false;
	return draft.pieces.every((piece, i) => {
		const was = before.pieces[i];
		if (piece.notches === was.notches) return piece.id === was.id;
		return (
			piece.id === was.id &&
			piece.notches.length === was.notches.length &&
			piece.notches.every(({ id, mate }, k) => id === was.notches[k].id && mate === was.notches[k].mate)
		);
	});
}
