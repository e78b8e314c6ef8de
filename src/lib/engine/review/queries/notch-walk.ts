import { findSeam } from '../../draft/find.ts';
import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import { walkOf } from '../base-of.ts';
import { beyondMeant } from '../beyond-meant.ts';
import { moveNotchTo } from '../settle-notch.ts';
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
			const [least, most] = [Math.min(...meant), Math.max(...meant)];
			if (Math.abs(beyondMeant(notch.difference, least, most)) <= bands.notchWalk.silent + measured) return [];
			const nearest = Math.min(most, Math.max(least, notch.difference));
			return [
				{
					code: 'notch-walk',
					severity: 'warning',
					where: notch.a,
					figure: notch.difference,
					sentence: `${findSeam(draft, walked.seam)?.name ?? walked.seam}: two notches miss each other by ${inches(notch.difference)} when the seam is walked.`,
					settle: [
						...moveNotchTo('notch-walk', draft, walked.seam, 'b', notch.b, notch.atA + nearest),
						...moveNotchTo('notch-walk', draft, walked.seam, 'a', notch.a, notch.atB - nearest)
					]
				}
			];
		});
	});

function baseDifference(base: SeamWalk | undefined, notch: NotchWalk): number {
	return base?.notches.find((one) => undividedName(one.a) === undividedName(notch.a))?.difference ?? 0;
}
