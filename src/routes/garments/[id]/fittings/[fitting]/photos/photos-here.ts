import type { Journal } from '$lib/server/journal/journal.ts';
import type { FittingWithContents, GarmentPage } from '$lib/server/journal/pages.ts';
import type { Photo, PhotosOfFitting } from '$lib/server/journal/records.ts';
import type { Unit } from '$lib/measure/units.ts';
import { alterationTitle } from '$lib/ui/fitting/words/alteration.ts';
import { inSentence } from '$lib/ui/fitting/casing.ts';
import { photoMarks, photoShown, type PhotoMark, type PhotoShown } from '$lib/ui/fitting/photos/photos.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { error } from '@sveltejs/kit';
import { foundFitting } from '../found-fitting.ts';

/** The photos of the fitting of an address, with what pins on them can mark. 404 with a sentence where there is none. */
export interface PhotosHere {
	readonly page: GarmentPage;
	readonly contents: FittingWithContents;
	readonly name: string;
	/** Address of the photos. */
	readonly at: string;
	readonly kept: PhotosOfFitting;
	readonly shown: readonly PhotoShown[];
	readonly marks: readonly PhotoMark[];
}

export function photosHere(
	journal: Journal,
	params: { readonly id: string; readonly fitting: string },
	unit: Unit
): PhotosHere {
	const { page, contents } = foundFitting(journal, params);
	const { fitting, alterations } = contents;
	const at = `/garments/${page.garment.id}/fittings/${fitting.id}/photos`;
	const onto = fitting.carriedInto === null ? page.versions.length - 1 : fitting.carriedInto - 1;
	const { draft } = journal.version(page.garment.id, onto)!;
	const earlier = page.open.observations.filter((one) => one.fitting !== fitting.id);
	const marks = photoMarks(
		alterations
			.filter(({ state }) => state !== 'withdrawn')
			.map(({ id, number, intent, act }) => ({
				...{ id, number },
				words: inSentence(alterationTitle(draft, intent, unit, act))
			})),
		[...contents.observations, ...earlier].map(({ id, letter, what, fitting: of }) => ({
			...{ id, letter },
			words: inSentence(what),
			earlier: of !== fitting.id
		}))
	);
	const kept = journal.photosOf(fitting.id)!;
	const shown = kept.photos.map((photo) => photoShown(photo, at, marks));
	return { page, contents, name: fittingName(fitting), at, kept, shown, marks };
}

/** The photo of an address; 404 with a sentence if the fitting has none by that name. */
export function photoHere(
	journal: Journal,
	params: { readonly id: string; readonly fitting: string; readonly photo: string },
	unit: Unit
): PhotosHere & { readonly photo: Photo; readonly print: PhotoShown } {
	const here = photosHere(journal, params, unit);
	const index = here.kept.photos.findIndex(({ id }) => id === params.photo);
	if (index < 0) error(404, `${here.name} has no photo by that name. Its photos are all on one page.`);
	return { ...here, photo: here.kept.photos[index]!, print: here.shown[index]! };
}

/** Head of a page of photos; `photo` where it is of one. */
export function photosHead({ page, name, at }: PhotosHere, photo?: string): HeadData {
	return {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: page.garment.name, href: `/garments/${page.garment.id}` },
			{ name, href: at.slice(0, -'/photos'.length) },
			...(photo === undefined ? [{ name: 'Photos' }] : [{ name: 'Photos', href: at }, { name: photo }])
		],
		dim: true
	};
}
