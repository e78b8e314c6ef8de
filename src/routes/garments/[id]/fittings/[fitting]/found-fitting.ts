import { foundGarment } from '$lib/server/http/found.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { FittingWithContents, GarmentPage } from '$lib/server/journal/pages.ts';
import { error } from '@sveltejs/kit';

/** The garment and the fitting of an address; 404 with a sentence if the journal has not both. */
export function foundFitting(
	journal: Journal,
	params: { readonly id?: string; readonly fitting?: string }
): { readonly page: GarmentPage; readonly contents: FittingWithContents } {
	const page = foundGarment(journal, params.id ?? '');
	const contents = page.fittings.find(({ fitting }) => fitting.id === params.fitting);
	if (contents) return { page, contents };
	const begun =
		page.fittings.length === 0 ? 'None has been begun yet.' : 'Its page lists every fitting and all table work.';
	return error(404, `${page.garment.name} has no fitting by that name. ${begun}`);
}
