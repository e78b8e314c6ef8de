import { inches } from '../../draft/say.ts';
import { edgeInSentence } from '../words.ts';
import { clothUsed } from '../cloth-used.ts';
import { giveToOtherSide } from '../give-to-other-side.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

/**
 * An edge was let out farther than its allowance holds, the seam to be kept left in. Figure: by how much too far, mm. A toile can
 * be patched, so there it is a question; on cut cloth it is an error.
 */
export const letOutNoCloth: Inquiry = ({ draft, options }) => {
	const { toile } = options;
	if (!toile) return [];
	const used = clothUsed(draft, toile);
	return used.flatMap((edge): Query[] => {
		if (edge.short <= 0) return [];
		const named = edgeInSentence(edge.piece, edge.edge);
		const [asked, there] = [inches(edge.outward), inches(edge.room)];
		const holds = edge.room === 0 ? 'has no cloth to spare' : `holds ${there}`;
		const amount = asked === there ? `a little over ${asked}` : asked;
		const onToile = (toile.cut ?? 'toile') === 'toile';
		return [
			{
				code: 'let-out-no-cloth',
				severity: onToile ? 'warning' : 'error',
				where: edge.name,
				figure: edge.short,
				sentence: `The ${named} is let out ${amount}, and its allowance ${holds}. ${onToile ? 'Patched with a strip?' : 'The cloth is cut: it cannot be let out so far.'}`,
				settle: giveToOtherSide('let-out-no-cloth', draft, edge, used)
			}
		];
	});
};
