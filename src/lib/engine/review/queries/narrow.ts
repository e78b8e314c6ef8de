import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { seamsOf } from '../../draft/seam.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import { clothUsed, type ClothUsed } from '../cloth-used.ts';
import { giveToOtherSide } from '../give-to-other-side.ts';
import { edgeInSentence } from '../words.ts';
import type { Inquiry, Inspection } from '../inquiry.ts';
import type { Query } from '../types.ts';

/**
 * A let-out leaves less allowance than this place wants: more at a boned seam, in cloth that frays and at a closing than in plain
 * lining. Figure: what is left, mm. What was cut narrower than that to begin with is not asked about.
 */
export const narrow: Inquiry = (inspection) => {
	const { toile } = inspection.options;
	if (!toile) return [];
	const used = clothUsed(inspection.draft, toile);
	return used.flatMap((edge): Query[] => {
		const wanted = wantedAt(inspection, edge);
		const left = edge.allowance - edge.outward - (toile.clipped ?? 0);
		if (edge.short > 0 || edge.outward <= measured || edge.allowance < wanted || left >= wanted - measured) return [];
		return [
			{
				code: 'narrow',
				severity: 'warning',
				where: edge.name,
				figure: left,
				sentence: `The ${edgeInSentence(edge.piece, edge.edge)} has ${inches(left)} left to sew; ${inches(wanted)} is wanted there.`,
				settle: giveToOtherSide('narrow', inspection.draft, { ...edge, short: wanted - left }, used)
			}
		];
	});
};

function wantedAt({ draft, options, bands }: Inspection, { name, edge }: ClothUsed): number {
	const { toile } = options;
	if (edge.kind === 'open' && edge.lap !== 0) return bands.left.closing;
	const boned = seamsOf(draft, name).some(({ seam }) => toile?.boned?.includes(undividedName(seam.id)));
	return boned || toile?.frays ? bands.left.boned : bands.left.plain;
}
