import { signedArea } from '../../geometry/area.ts';
import { measured } from '../../geometry/accuracy.ts';
import { nameOf } from '../../draft/find.ts';
import { outlineOf } from '../../draft/outline.ts';
import { pathLength } from '../../geometry/path.ts';
import { remembered } from '../../draft/memo.ts';
import { selfCrossings } from '../../geometry/self-crossing.ts';
import { inSentence } from '../words.ts';
import type { Edge, Piece } from '../../draft/types.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

/** A piece's outline crosses itself, or has been turned inside out: it cannot be cut, and the version cannot be accepted. */
export const crosses: Inquiry = ({ draft }) => draft.pieces.flatMap(crossesOf);

const crossesOf = remembered((piece: Piece): readonly Query[] => {
	const outline = outlineOf(piece);
	const name = inSentence(piece.name);
	const found = selfCrossings(outline, measured);
	if (found.length > 0) {
		const [one, other] = [edgeAt(piece, found[0].s1), edgeAt(piece, found[0].s2)];
		const sentence =
			one === other
				? `The ${name} cannot be cut: its ${inSentence(one.name)} crosses itself.`
				: `The ${name} cannot be cut: its ${inSentence(one.name)} crosses its ${inSentence(other.name)}.`;
		return [{ code: 'crosses', severity: 'error', where: nameOf(piece, one.id), sentence, settle: [] }];
	}
	if (signedArea(outline) > 0) return [];
	const sentence = `The ${name} cannot be cut: its outline has been turned inside out and nothing of it is left.`;
	return [{ code: 'crosses', severity: 'error', where: nameOf(piece, piece.edges[0].id), sentence, settle: [] }];
});

function edgeAt(piece: Piece, s: number): Edge {
	let walked = 0;
	for (const edge of piece.edges) {
		walked += pathLength(edge.path);
		if (s < walked) return edge;
	}
	return piece.edges[piece.edges.length - 1];
}
