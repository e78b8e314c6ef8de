import { formFault, notKept, readForm, revision, text, typedIn } from '$lib/server/http/form.ts';
import { foundWearer } from '$lib/server/http/found.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { measurementAgeReminder } from '$lib/measure/measurement-age.ts';
import { askAbout } from '$lib/measure/plausibility.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { garmentsOnTable } from '$lib/ui/drawing/garments-on-table.ts';
import { counted } from '$lib/ui/garment/counted.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { stageNow } from '$lib/ui/stage-now.ts';
import { tableCaption } from '$lib/ui/workroom/table-caption.ts';
import { sheetRows } from '$lib/ui/wearer/sheet-rows.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent }) => {
	const { unit } = await parent();
	const page = foundWearer(journal, params.id);
	const { wearer, foundations, sheets, notes, entries } = page;
	const garments = journal.workroom().garments.filter(({ wearer: of }) => of.id === wearer.id);
	const { scale, scenes } = garmentsOnTable(
		garments.map(({ draft, latest }) => ({ draft, material: latest.number === 0 ? 'paper' : 'white' })),
		unit
	);
	const caption = tableCaption(garments.map(({ garment }) => garment.madeFor));
	const foundationName = (id: string) => foundations.find((one) => one.id === id)?.name ?? '';
	const [latest] = sheets;
	const head: HeadData = { crumbs: [{ name: 'Workroom', href: '/' }, { name: wearer.name }] };
	return {
		head,
		wearer,
		caption,
		scale,
		garments: garments.map(({ garment, life, latest: version }, i) => {
			const { done, toCome, words } = stageNow(life, version);
			const made = caption.madeFor === undefined ? garment.madeFor : '';
			return {
				name: garment.name,
				href: `/garments/${garment.id}`,
				wearer: made,
				done,
				toCome,
				said: words,
				scene: scenes[i]!
			};
		}),
		asks: latest ? askAbout(latest.measures, unit).map(({ sentence }) => sentence) : [],
		reminder: latest && measurementAgeReminder(latest.date, localDay(new Date())),
		latest: latest?.id,
		sheets: sheets.map(({ id, date, foundation, takenBy, note }) => ({
			id,
			day: dayWords(date, 'whole'),
			over: foundationName(foundation),
			takenBy,
			note
		})),
		rows: sheetRows(sheets),
		foundations: foundations.map(({ id, revision: revised, name, note }) => ({
			id,
			revision: revised,
			name,
			note,
			sheets: counted(sheets.filter((sheet) => sheet.foundation === id).length, 'sheet', 'sheets')
		})),
		notes: notes.map(({ id, text: words, at }) => ({ id, words, day: dayWords(localDay(new Date(at))) })),
		forgotten: wearer.forgottenAt && {
			day: dayWords(localDay(new Date(wearer.forgottenAt)), 'whole'),
			entry: entries.find(({ what }) => what === 'forgot-wearer')?.sentence
		}
	};
};

export const actions: Actions = { revise, addFoundation, reviseFoundation, note };

const wearerDetails = z.object({
	revision,
	name: text({ needed: 'Give the wearer a name: initials are enough.', max: 200 }),
	note: text({ max: 20_000 })
});

async function revise({ locals: { journal }, params, request }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(wearerDetails, typed);
	if ('fault' in read) return formFault(read.fault);
	const { revision: drawnFrom, ...change } = read.value;
	const kept = journal.reviseWearer(params.id, drawnFrom, change);
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/wearers/${params.id}`);
}

const foundationDetails = z.object({
	name: text({ needed: 'Name what is worn under it, for example “chemise, corset laced to 25¾″”.', max: 200 }),
	note: text({ max: 20_000 })
});

async function addFoundation({ locals: { journal }, params, request }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(foundationDetails, typed);
	if ('fault' in read) return formFault(read.fault);
	const kept = journal.addFoundation(params.id, read.value);
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/wearers/${params.id}#worn-under-it`);
}

async function reviseFoundation({ locals: { journal }, params, request }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(foundationDetails.extend({ revision, foundation: text() }), typed);
	if ('fault' in read) return formFault(read.fault);
	const { revision: drawnFrom, foundation, ...change } = read.value;
	const kept = journal.reviseFoundation(foundation, drawnFrom, change);
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/wearers/${params.id}#worn-under-it`);
}

async function note({ locals: { journal }, params, request }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(z.object({ note: text({ needed: 'Write the note here first.', max: 20_000 }) }), typed);
	if ('fault' in read) return formFault(read.fault);
	const kept = journal.addNote({ wearer: params.id, text: read.value.note });
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/wearers/${params.id}#notes`);
}
