import { formFault, notKept, optionalDay, readForm, revision, text, typedIn } from '$lib/server/http/form.ts';
import { foundGarment } from '$lib/server/http/found.ts';
import { easePresets } from '$lib/measure/ease-ranges.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

const details = z.object({
	revision,
	name: text({ needed: 'Give the garment a name, for example “Governess jacket”.', max: 200 }),
	madeFor: text(),
	neededOn: optionalDay.transform((day) => day ?? null),
	cloth: text(),
	easePreset: text().transform((id) => id || null),
	sheet: text().transform((id) => id || null),
	note: text({ max: 20_000 })
});

export const load: PageServerLoad = ({ locals: { journal }, params }) => {
	const page = foundGarment(journal, params.id);
	const { garment, foundations, sheets, wearer } = page;
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: garment.name, href: `/garments/${garment.id}` },
			{ name: 'Details' }
		]
	};
	return {
		head,
		garment,
		wearer: { id: wearer.id, name: wearer.name },
		presets: [
			{ value: '', label: 'No ease asked for' },
			...easePresets.map(({ id, name }) => ({ value: id, label: name }))
		],
		sheets: [
			{ value: '', label: 'the latest, whichever that is' },
			...sheets.map(({ id, date, foundation }) => ({
				value: id,
				label: `${dayWords(date, 'whole')}, over ${foundations.find((one) => one.id === foundation)?.name ?? '…'}`
			}))
		]
	};
};

export const actions: Actions = { default: revise };

async function revise({ locals: { journal }, params, request }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(details, typed);
	if ('fault' in read) return formFault(read.fault);
	const { revision: drawnFrom, ...change } = read.value;
	const kept = journal.reviseGarment(params.id, drawnFrom, change);
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/garments/${params.id}`);
}
