import { listed } from '../words.ts';
import type { Inquiry } from '../inquiry.ts';

/** The fittings that are carried together were not made over the same things. No alteration settles that: only a fitting does. */
export const foundationDiffers: Inquiry = ({ draft, options }) => {
	const worn = [...new Set((options.foundations ?? []).map((name) => name.trim()))];
	if (worn.length < 2) return [];
	return [
		{
			code: 'foundation-differs',
			severity: 'warning',
			where: draft.name,
			sentence: `These fittings were made over different things (${listed(worn)}). A fit holds only over what it was fitted on: try it on once more.`,
			settle: []
		}
	];
};
