import type { Unit } from '$lib/measure/units.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Alteration, Observation } from '$lib/server/journal/records.ts';
import { alterationTitle } from '$lib/ui/fitting/words/alteration.ts';

/** How an alteration that was changed elsewhere meanwhile stands now, in words. */
export function standsNow(
	journal: Journal,
	{ garment, versions }: GarmentPage,
	{ intent, act, number, state, note }: Alteration,
	unit: Unit
): string {
	const { draft } = journal.version(garment.id, versions[versions.length - 1]!.number)!;
	const title = alterationTitle(draft, intent, unit, act);
	const said = state === 'withdrawn' ? `alteration ${number} was left out elsewhere (${title})` : title;
	return note === '' ? said : `${said}; “${note}”`;
}

/** The same of an observation. */
export function seenNow({ letter, what, note }: Observation): string {
	return `${letter}, ${what}${note === '' ? '' : `; “${note}”`}`;
}

/** Of an alteration that this form is about, and that is in the fitting no more. */
export const gone = {
	'': 'The alteration that this form is about is not in this fitting any more: it was undone. Load the page again to see what is.'
};
