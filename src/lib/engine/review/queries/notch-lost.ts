import { findNotch, nameOf } from '../../draft/find.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import { edgeInSentence } from '../words.ts';
import { edgeOf } from '../../draft/find.ts';
import type { Draft } from '../../draft/types.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

/**
 * A notch was trimmed off with its corner: as the carry remarked, and wherever a notch is left whose fellow, which the base
 * draft had, is gone.
 */
export const notchLost: Inquiry = ({ draft, options }) => {
	const remarked = (options.remarks ?? []).filter(
		({ code, where }) => code === 'notch-lost' && !findNotch(draft, where)
	);
	const told = new Set(remarked.map(({ where }) => undividedName(where)));
	return [
		...remarked.map(({ code, where, sentence }): Query => ({ code, severity: 'warning', where, sentence, settle: [] })),
		...alone(draft, options.before ?? options.base)
			.filter(({ mate }) => !told.has(mate))
			.map(({ query }) => query)
	];
};

function alone(draft: Draft, before: Draft | undefined): { readonly mate: string; readonly query: Query }[] {
	return draft.pieces.flatMap((piece) =>
		piece.notches.flatMap((notch) => {
			const mate = notch.mate && undividedName(notch.mate);
			const edge = edgeOf(piece, notch.edge);
			if (!mate || !edge || !before || !findNotch(before, mate)) return [];
			const kept = draft.pieces.some((other) =>
				other.notches.some((one) => undividedName(nameOf(other, one.id)) === mate)
			);
			if (kept) return [];
			const sentence = `A notch on the ${edgeInSentence(piece, edge)} has lost the one that it meets. Mark that one again, or take this one off.`;
			return [
				{
					mate,
					query: { code: 'notch-lost', severity: 'warning', where: nameOf(piece, notch.id), sentence, settle: [] }
				}
			];
		})
	);
}
