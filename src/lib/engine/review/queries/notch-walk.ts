import { findSeam } from '../../draft/find.ts';
import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import { walkOf } from '../base-of.ts';
import { walk, type NotchWalk, type SeamWalk } from '../walk.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

/**
 * Two mated notches do not meet when the seam is walked. Figure: how much farther from the seam's start the one on side b lies, mm.
 * Between nothing and the fullness of the seam (meant, found, or in the base draft) they may lie anywhere: the cloth is
 * eased there.
 */
export const notchWalk: Inquiry = ({ draft, options, bands }) =>
	walk(draft).flatMap((walked) => {
		const base = walkOf(options.base, walked.seam);
		return walked.notches.flatMap((notch): Query[] => {
			const meant = [0, walked.ease, walked.difference + walked.ease, baseDifference(base, notch)];
			const least = Math.min(...meant) - bands.notchWalk.silent - measured;
			const most = Math.max(...meant) + bands.notchWalk.silent + measured;
			if (notch.difference >= least && notch.difference <= most) return [];
			return [
				{
					code: 'notch-walk',
					severity: 'warning',
					where: notch.a,
					figure: notch.difference,
					sentence: `${findSeam(draft, walked.seam)?.name ?? walked.seam}: two notches miss each other by ${inches(notch.difference)} when the seam is walked.`,
					settle: []
				}
			];
		});
	});

function baseDifference(base: SeamWalk | undefined, notch: NotchWalk): number {
	return base?.notches.find((one) => undividedName(one.a) === undividedName(notch.a))?.difference ?? 0;
}
