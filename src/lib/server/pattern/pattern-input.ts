import type { PatternSheetInput } from '../../output/pattern-input.ts';
import type { GarmentPage } from '../journal/pages.ts';
import type { Version } from '../journal/records.ts';
import { localDay } from '../journal/store.ts';

/** Everything that a printed version says of its garment; dated with the day that the version was made. */
export function patternInput(
	page: Pick<GarmentPage, 'garment' | 'wearer' | 'foundations' | 'fittings' | 'sheet' | 'lining'>,
	version: Version,
	how: Pick<PatternSheetInput, 'allowances' | 'lines' | 'unit'>
): PatternSheetInput {
	const { garment, wearer, lining } = page;
	const wornUnder = wornUnderName(page, version);
	return {
		draft: version.draft,
		...how,
		title: {
			garment: garment.name,
			wearer: wearer.name,
			version: version.number,
			...(wornUnder !== undefined && { wornUnder }),
			date: localDay(new Date(version.createdAt)),
			lining: lining?.version === version.number
		}
	};
}

/** What a version holds over: worn at the fitting that it was carried from, or else when the wearer was measured. */
export function wornUnderName(
	{ foundations, fittings, sheet }: Pick<GarmentPage, 'foundations' | 'fittings' | 'sheet'>,
	version: Pick<Version, 'fitting'>
): string | undefined {
	const fitting = fittings.find((one) => one.fitting.id === version.fitting)?.fitting;
	const id = fitting?.foundation ?? sheet?.foundation;
	return foundations.find((foundation) => foundation.id === id)?.name;
}
