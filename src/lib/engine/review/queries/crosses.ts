import { signedArea } from '../../geometry/area.ts';
import { nameOf } from '../../draft/find.ts';
import { outlineOf } from '../../draft/outline.ts';
import { outlineCrossing } from '../../draft/outline-crossing.ts';
import { inSentence } from '../words.ts';
import type { Piece } from '../../draft/types.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

/** A piece's outline crosses itself, or has been turned inside out: it cannot be cut, and the version cannot be accepted. */
export const crosses: Inquiry = ({ draft }) => draft.pieces.flatMap(crossesOf);

function crossesOf(piece: Piece): readonly Query[] {
	const crossing = outlineCrossing(piece);
	const name = inSentence(piece.name);
	if (crossing) {
		const [one, other] = crossing;
		const sentence =
			one === other
				? `The ${name} cannot be cut: its ${inSentence(one.name)} crosses itself.`
				: `The ${name} cannot be cut: its ${inSentence(one.name)} crosses its ${inSentence(other.name)}.`;
		return [{ code: 'crosses', severity: 'error', where: nameOf(piece, one.id), sentence, settle: [] }];
	}
	if (signedArea(outlineOf(piece)) > 0) return [];
	const sentence = `The ${name} cannot be cut: its outline has been turned inside out and nothing of it is left.`;
	return [{ code: 'crosses', severity: 'error', where: nameOf(piece, piece.edges[0].id), sentence, settle: [] }];
}
