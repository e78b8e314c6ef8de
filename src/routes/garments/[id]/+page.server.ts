import { formFault, notKept, readForm, text, typedIn } from '$lib/server/http/form.ts';
import { foundGarment } from '$lib/server/http/found.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { GarmentPage, Preview } from '$lib/server/journal/pages.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { counted } from '$lib/ui/garment/counted.ts';
import { nextAct } from '$lib/ui/garment/next-act.ts';
import { saidInTwo } from '$lib/ui/garment/said-in-two.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { easeNow } from './ease.ts';
import { fittingRows } from './fitting-rows.ts';
import { garmentStages } from './stages.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent }) => {
	const { unit } = await parent();
	const page = foundGarment(journal, params.id);
	const { garment, wearer, open, settled } = page;
	const versions = page.versions.map(({ number }) => journal.version(garment.id, number)!);
	const latest = versions[versions.length - 1]!;
	const previews = openPreviews(journal, page);
	const inHand = [...previews.values()].find(({ steps }) => steps.length > 0);
	const today = localDay(new Date());
	const head: HeadData = {
		crumbs: [{ name: 'Workroom', href: '/' }, { name: garment.name }],
		links: [
			...(versions.length > 1 ? [{ name: 'Compare versions', href: `/garments/${garment.id}/compare` }] : []),
			{ name: 'Lining', href: `/garments/${garment.id}/lining` },
			{ name: 'Details', href: `/garments/${garment.id}/details` }
		]
	};
	return {
		head,
		id: garment.id,
		name: garment.name,
		wearer: { id: wearer.id, name: wearer.name },
		cloth: garment.cloth,
		madeFor: garment.madeFor,
		neededOn: garment.neededOn && dayWords(garment.neededOn),
		wornUnder: wornUnder(page),
		note: garment.note,
		latest: latest.number,
		stages: garmentStages({ page, versions, previews, today, unit }),
		next: nextAct(garment.id, page.waiting[0], latest.number),
		ease: easeNow(page, versions, inHand),
		open: {
			words: openWords(page),
			queries: open.queries.map(({ sentence, severity }, i) => ({
				letter: letterOf(i),
				severity,
				...saidInTwo(sentence, unit)
			})),
			observations: open.observations.map((observation) => ({
				id: observation.id,
				letter: observation.letter,
				what: observation.what,
				where: observation.where.words,
				note: `${fittingOf(page, observation.fitting)}, ${observation.alterations.length > 0 ? 'answered by an alteration, and still there' : 'not answered by an alteration yet'}`
			})),
			unplaced: open.unplaced.map(({ id, revision, number, fitting, reason }) => ({
				id,
				revision,
				number,
				fitting: fittingOf(page, fitting),
				reason
			}))
		},
		settled: settled.map(({ id, sentence, version, how, note, alteration }) => ({
			id,
			...saidInTwo(sentence, unit),
			version: versions.find((one) => one.id === version)!.number,
			how: how === 'altered' ? settledBy(page, alteration) : note === '' ? 'left as it is' : note
		})),
		fittings: fittingRows(page, versions, previews, today, unit),
		notes: page.notes.map(({ id, text: words, at, feature }) => ({
			id,
			words,
			feature: feature?.replaceAll('-', ' ').replace('/', ', '),
			day: dayWords(localDay(new Date(at)))
		}))
	};
};

export const actions: Actions = { note: addNote, leaveOut };

async function addNote({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const typed = typedIn(await request.formData());
	const read = readForm(z.object({ note: text({ needed: 'Write the note here first.' }) }), typed);
	if ('fault' in read) return formFault(read.fault);
	const kept = journal.addNote({ garment: params.id, text: read.value.note });
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/garments/${params.id}#notes`);
}

async function leaveOut({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const typed = typedIn(await request.formData());
	const read = readForm(z.object({ alteration: text({ needed: 'Say which alteration to leave out.' }) }), typed);
	if ('fault' in read) return formFault(read.fault);
	const kept = journal.leaveOutWaiting(read.value.alteration);
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/garments/${params.id}#open`);
}

function openPreviews(journal: Journal, { fittings }: GarmentPage): ReadonlyMap<string, Preview> {
	const open = fittings.filter(({ fitting }) => fitting.closedAt === null);
	return new Map(
		open.flatMap(({ fitting }) => {
			const preview = journal.previewFitting(fitting.id);
			return preview ? [[fitting.id, preview] as const] : [];
		})
	);
}

/** What was worn under it at the last fitting that says so, else at the last measuring. */
function wornUnder({ fittings, foundations, sheet }: GarmentPage): string | undefined {
	const last = fittings.findLast(({ fitting }) => fitting.foundation !== null)?.fitting.foundation;
	return foundations.find(({ id }) => id === (last ?? sheet?.foundation))?.name;
}

function fittingOf({ fittings }: GarmentPage, id: string): string {
	const found = fittings.find(({ fitting }) => fitting.id === id);
	return found ? fittingName(found.fitting).toLowerCase() : '';
}

function settledBy({ fittings }: GarmentPage, id: string | null): string {
	for (const { fitting, alterations } of fittings) {
		const number = alterations.find((one) => one.id === id)?.number;
		if (number !== undefined) return `settled by alteration ${number} of ${fittingName(fitting).toLowerCase()}`;
	}
	return 'settled by an alteration';
}

function openWords({ open: { queries, observations, unplaced } }: GarmentPage): string {
	return [
		...(queries.length > 0 ? [counted(queries.length, 'query', 'queries')] : []),
		...(observations.length > 0 ? [counted(observations.length, 'observation', 'observations')] : []),
		...(unplaced.length > 0 ? [counted(unplaced.length, 'alteration', 'alterations')] : [])
	].join(', ');
}

/** A, B … Z, then 27 and on. */
const letterOf = (index: number) => (index < 26 ? String.fromCharCode(65 + index) : String(index + 1));
