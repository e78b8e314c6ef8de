import { formFault, notKept, readForm, revision, typedIn, type FormFault } from '$lib/server/http/form.ts';
import { largestPhoto } from '$lib/server/photos/sentences.ts';
import { keepPhoto } from '$lib/server/photos/keep-photo.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { cautionsFor } from '$lib/measure/cautions.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { fail, redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { photosHead, photosHere } from './photos-here.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

/** Said with the questions about photographs. */
const besides = [
	'The telephone may keep a copy of its own: look there as well if it is to be gone.',
	'Photograph the cloth and the fit; the face can stay out of the picture.'
];

export const load: PageServerLoad = async ({ locals: { journal }, params, parent, url }) => {
	const { unit } = await parent();
	const here = photosHere(journal, params, unit);
	const { page, contents, kept, shown, name, at } = here;
	const { consent } = kept;
	return {
		head: photosHead(here),
		name,
		at,
		said: captionOf(page.garment.name, contents.fitting.date),
		open: contents.fitting.closedAt === null,
		forgotten: page.wearer.forgottenAt !== null,
		photos: shown,
		consent,
		saidOn: consent.date && dayWords(consent.date, 'whole'),
		today: localDay(new Date()),
		agreed: consent.taking && consent.keeping,
		asking: url.searchParams.has('ask'),
		cautions: [...cautionsFor('photo'), ...besides],
		largest: largestPhoto
	};
};

const captionOf = (garment: string, date: string) => `${garment}, ${dayWords(date, 'weekday')}`;

export const actions: Actions = { consent, add };

const ticked = z
	.string()
	.optional()
	.transform((value) => value === 'yes');
const asked = z.object({
	revision,
	taking: ticked,
	keeping: ticked,
	showing: ticked,
	date: z.iso.date('Write the day as year, month, day, such as 2026-03-10.')
});

/** Notes what the wearer said. */
async function consent({ locals: { journal }, params, request, url }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(asked, typed);
	if ('fault' in read) return formFault(read.fault);
	const { revision: drawnFrom, ...said } = read.value;
	const kept = journal.noteConsent(params.fitting, drawnFrom, said);
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, url.pathname);
}

/** Keeps every picture of a plain form, one after another; those that were not taken are named with the reason. */
async function add({ locals: { journal }, params, request, url }: RequestEvent) {
	const form = await request.formData();
	const files = form.getAll('photo').filter((entry) => entry instanceof File && entry.name !== '') as File[];
	if (files.length === 0) return fail(400, fault({ photo: 'Choose a picture first; several at once are fine.' }));
	const problems: string[] = [];
	let status = 400;
	for (const file of files) {
		const answer = await keepPhoto(journal, params.fitting, file.stream(), {
			mirrored: form.get('mirrored') === 'yes'
		});
		if ('sentence' in answer) {
			status = answer.status;
			problems.push(`${file.name}: ${answer.sentence}`);
		} else if (!answer.ok) return notKept(answer, {});
	}
	if (problems.length > 0) return fail(status, fault({ photo: problems.join(' ') }));
	redirect(303, url.pathname);
}

const fault = (problems: FormFault['problems']): FormFault => ({ typed: {}, problems });
