import { formFault, notKept, readForm, revision, text, typedIn, type FormFault } from '$lib/server/http/form.ts';
import { turnPhoto } from '$lib/server/photos/keep-photo.ts';
import {
	directions,
	nudged,
	sizesShown,
	tapped,
	type PhotoPoint,
	type ShownSize
} from '$lib/ui/fitting/photos/photo-points.ts';
import { nextToMark } from '$lib/ui/fitting/photos/photos.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { error, fail, redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { photoHere, photosHead } from '../photos-here.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent, url }) => {
	const { unit } = await parent();
	const here = photoHere(journal, params, unit);
	const { page, contents, photo, print, name, at, marks, kept, shown } = here;
	return {
		head: photosHead(here, print.name),
		at,
		name,
		garment: page.garment.name,
		open: contents.fitting.closedAt === null,
		photo: print,
		sizes: sizesShown(photo),
		taken: photo.takenAt && `taken ${dayWords(photo.takenAt)}, ${photo.takenAt.slice(11, 16)}`,
		mayShow: photo.showing !== null && kept.consent.showing,
		showing: { chosen: photo.showing !== null, agreed: kept.consent.showing },
		marks,
		next: nextToMark(marks, shown),
		inHand: print.pins.find(({ id }) => id === url.searchParams.get('pin'))?.id
	};
};

export const actions: Actions = { place, pin, move, takeOut, photo: revise, turn, remove };

/** What a form chose for a pin to mark, as the journal is asked for it. */
const marking = z
	.string()
	.default('')
	.transform((value) => {
		const [kind, id] = value.split(' ');
		return {
			alteration: kind === 'alteration' && id ? id : null,
			observation: kind === 'observation' && id ? id : null
		};
	});
const pinId = z.string('Choose the pin again.');

/** Puts in a pin where the picture was tapped; an image button sends the point in pixels of the size that was shown. */
async function place({ locals: { journal }, params, request, cookies, url }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const { photo } = photoHere(journal, params, unitOf(cookies));
	const point = (['narrow', 'wide'] as const).map((size) => pointIn(typed, size)).find((found) => found !== undefined);
	if (!point) return formFault({ typed, problems: { '': 'Tap the picture where the pin belongs.' } });
	const answer = journal.addPhotoPin(photo.id, {
		...tapped(photo, point.size, point.pixel),
		...marking.parse(typed.marks)
	});
	if (!answer.ok) return notKept(answer, typed);
	redirect(303, `${url.pathname}?pin=${answer.value.id}`);
}

function pointIn(typed: FormFault['typed'], size: ShownSize): { size: ShownSize; pixel: PhotoPoint } | undefined {
	const [x, y] = [typed[`${size}.x`], typed[`${size}.y`]];
	if (x === undefined || y === undefined || !/^\d{1,5}$/.test(x) || !/^\d{1,5}$/.test(y)) return undefined;
	return { size, pixel: { x: Number(x), y: Number(y) } };
}

/** What a pin marks, and its note. */
async function pin({ locals: { journal }, request, url }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(z.object({ pin: pinId, revision, marks: marking, note: text({ max: 20_000 }) }), typed);
	if ('fault' in read) return formFault(read.fault);
	const { pin: id, revision: drawnFrom, marks, note } = read.value;
	const answer = journal.revisePhotoPin(id, drawnFrom, { ...marks, note });
	if (!answer.ok) return notKept(answer, typed);
	redirect(303, url.pathname);
}

const part = z.coerce.number().min(0).max(1);

/** Moves a pin: to a point that the page worked out, or a step in one of four directions. */
async function move({ locals: { journal }, params, request, cookies, url }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const asked = z.object({
		pin: pinId,
		revision,
		x: part.optional(),
		y: part.optional(),
		way: z.enum(directions).optional()
	});
	const read = readForm(asked, typed);
	if ('fault' in read) return formFault(read.fault);
	const { pin: id, revision: drawnFrom, x, y, way } = read.value;
	const { photo } = photoHere(journal, params, unitOf(cookies));
	const from = photo.pins.find((one) => one.id === id);
	if (!from) return fail(404, { typed, problems: { '': 'This pin has been taken out.' } } satisfies FormFault);
	const to = way ? nudged(from, way, photo, true) : { x: x ?? from.x, y: y ?? from.y };
	const answer = journal.revisePhotoPin(id, drawnFrom, to);
	if (!answer.ok) return notKept(answer, typed);
	if (way) redirect(303, `${url.pathname}?pin=${id}`);
	return { moved: id };
}

async function takeOut({ locals: { journal }, request, url }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(z.object({ pin: pinId, revision }), typed);
	if ('fault' in read) return formFault(read.fault);
	const answer = journal.removePhotoPin(read.value.pin, read.value.revision);
	if (!answer.ok) return notKept(answer, typed);
	redirect(303, url.pathname);
}

/** The photo's own note, and whether it may be shown. */
async function revise({ locals: { journal }, params, request, url }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const asked = z.object({ revision, note: text({ max: 20_000 }), showing: z.enum(['yes', 'no']).optional() });
	const read = readForm(asked, typed);
	if ('fault' in read) return formFault(read.fault);
	const { revision: drawnFrom, note, showing } = read.value;
	const answer = journal.revisePhoto(params.photo, drawnFrom, { note, showing: showing && showing === 'yes' });
	if (!answer.ok) return notKept(answer, typed);
	redirect(303, url.pathname);
}

async function turn({ locals: { journal }, params, request, cookies, url }: RequestEvent) {
	const { typed, drawnFrom } = await drawn(request);
	const { photo, contents } = photoHere(journal, params, unitOf(cookies));
	if (contents.fitting.closedAt !== null) error(409, 'The fitting is closed, and its photos are not changed any more.');
	const answer = await turnPhoto(journal, photo, drawnFrom);
	if (!answer.ok) return notKept(answer, typed);
	redirect(303, url.pathname);
}

async function remove({ locals: { journal }, params, request, cookies }: RequestEvent) {
	const { typed, drawnFrom } = await drawn(request);
	const { at } = photoHere(journal, params, unitOf(cookies));
	const answer = journal.removePhoto(params.photo, drawnFrom);
	if (!answer.ok) return notKept(answer, typed);
	redirect(303, at);
}

async function drawn(request: Request) {
	const typed = typedIn(await request.formData());
	return { typed, drawnFrom: revision.parse(typed.revision) };
}

const unitOf = (cookies: RequestEvent['cookies']) => (cookies.get(unitCookie) === 'cm' ? 'cm' : 'in');
