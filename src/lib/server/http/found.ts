import { error } from '@sveltejs/kit';
import type { Journal } from '../journal/journal.ts';
import type { GarmentPage, WearerPage } from '../journal/pages.ts';
import type { Toile, Version } from '../journal/records.ts';

/** The garment of an address; 404 with a sentence if the journal has none by that name. */
export function foundGarment(journal: Journal, id: string): GarmentPage {
	const page = journal.garment(id);
	if (!page) error(404, 'There is no garment here by that name. The workroom lists them all.');
	return page;
}

/** The version of an address, `2`; 404 with a sentence that says which there are. */
export function foundVersion(journal: Journal, page: GarmentPage, number: string): Version {
	const version = /^(0|[1-9]\d{0,5})$/.test(number) ? journal.version(page.garment.id, Number(number)) : undefined;
	if (version) return version;
	const last = page.versions.length - 1;
	const there = last === 0 ? 'only its draft, version 0' : `versions 0 to ${last}; 0 is the draft`;
	return error(404, `${page.garment.name} has no version “${number.slice(0, 20)}”. It has ${there}.`);
}

/** The toile of an address; 404 with a sentence if the garment has none by that name. */
export function foundToile({ toiles }: Pick<GarmentPage, 'toiles'>, id: string): Toile {
	const toile = toiles.find((one) => one.id === id);
	if (!toile) error(404, 'There is no toile here by that name. The garment’s page shows every one that was cut.');
	return toile;
}

/** The wearer of an address; 404 with a sentence if the journal has none by that name. */
export function foundWearer(journal: Journal, id: string): WearerPage {
	const page = journal.wearer(id);
	if (!page) error(404, 'There is no wearer here by that name. The workroom lists everyone who is in the journal.');
	return page;
}
