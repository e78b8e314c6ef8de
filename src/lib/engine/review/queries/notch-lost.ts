import { findNotch, nameOf, splitName } from '../../draft/find.ts';
import { sideOfName, undividedName } from '../../draft/undivided-name.ts';
import { settleLostNotch } from '../settle-notch.ts';
import { walk } from '../walk.ts';
import { edgeInSentence } from '../words.ts';
import type { Draft, Piece } from '../../draft/types.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

/**
 * A notch was trimmed off with its corner: as the carry remarked, and wherever one notch is left of two that met in the version
 * before. Where: the lost notch, or the one that is left.
 */
export const notchLost: Inquiry = ({ draft, options }) => {
	const remarked = (options.remarks ?? []).filter(({ code, where }) => code === 'notch-lost' && isLost(draft, where));
	const told = new Set(remarked.map(({ where }) => where));
	const pairs = leftAlone(draft, options.before ?? options.base);
	return [
		...remarked.map(({ code, where, sentence }): Query => {
			const pair = pairs.find(({ lost }) => lost === where || undividedName(lost) === where);
			const settle = pair ? settleLostNotch(code, draft, pair.lost, pair.left) : [];
			return { code, severity: 'warning', where, sentence, settle };
		}),
		...pairs
			.filter(({ lost }) => !told.has(lost) && !told.has(undividedName(lost)))
			.map(({ lost, left }) => query(draft, lost, left))
	];
};

/** The pieces that a notch of an earlier version would now be on: the piece itself, or its halves. */
function piecesFor(draft: Draft, notch: string): readonly Piece[] {
	const { piece } = splitName(notch);
	const own = draft.pieces.filter(({ id }) => id === piece);
	return own.length > 0 ? own : draft.pieces.filter(({ id }) => undividedName(id) === undividedName(piece));
}

function has({ notches }: Piece, notch: string): boolean {
	const { id } = splitName(notch);
	return notches.some((one) => one.id === id || undividedName(one.id) === undividedName(id));
}

function isLost(draft: Draft, notch: string): boolean {
	return piecesFor(draft, notch).some((piece) => !has(piece, notch));
}

/** Of each two notches that met before: the one that is left, where the other is lost. */
function leftAlone(draft: Draft, before: Draft | undefined): { readonly lost: string; readonly left: string }[] {
	if (!before) return [];
	return walk(before).flatMap(({ notches }) =>
		notches.flatMap(({ a, b }) => [...bereft(draft, a, b), ...bereft(draft, b, a)])
	);
}

function bereft(draft: Draft, notch: string, mate: string): { readonly lost: string; readonly left: string }[] {
	return piecesFor(draft, notch)
		.filter((piece) => !has(piece, notch))
		.flatMap((piece) => {
			const side = sideOfName(piece.id);
			const beside = piecesFor(draft, mate).filter(({ id }) => !side || (sideOfName(id) ?? side) === side);
			const left = beside.flatMap((other) =>
				other.notches
					.filter(({ id }) => undividedName(id) === undividedName(splitName(mate).id))
					.map(({ id }) => nameOf(other, id))
			);
			return left.slice(0, 1).map((one) => ({ lost: nameOf(piece, splitName(notch).id), left: one }));
		});
}

function query(draft: Draft, lost: string, where: string): Query {
	const found = findNotch(draft, where);
	const named = found ? edgeInSentence(found.piece, found.edge) : where;
	const sentence = `A notch on the ${named} has lost the one that it meets. Mark that one again, or take this one off.`;
	const settle = settleLostNotch('notch-lost', draft, lost, where);
	return { code: 'notch-lost', severity: 'warning', where, sentence, settle };
}
