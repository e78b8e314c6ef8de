import { formFault, notKept, readForm, revision, text, typedIn } from '$lib/server/http/form.ts';
import { foundWearer } from '$lib/server/http/found.ts';
import { counted } from '$lib/ui/garment/counted.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = ({ locals: { journal }, params }) => {
	const page = foundWearer(journal, params.id);
	const { wearer, sheets, garments } = page;
	if (wearer.forgottenAt) redirect(303, `/wearers/${wearer.id}`);
	const head: HeadData = {
		crumbs: [{ name: 'Workroom', href: '/' }, { name: wearer.name, href: `/wearers/${wearer.id}` }, { name: 'Forget' }]
	};
	return {
		head,
		wearer,
		sheets: counted(sheets.length, 'measurement sheet', 'measurement sheets'),
		garments: garments.map(({ name, number }) => ({ name, number }))
	};
};

export const actions: Actions = { default: forget };

async function forget({ locals: { journal }, params, request }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const { name } = foundWearer(journal, params.id).wearer;
	const asked = z.object({
		revision,
		name: text().refine((written) => written === name, `Write the name as it stands here: ${name}.`)
	});
	const read = readForm(asked, typed);
	if ('fault' in read) return formFault(read.fault);
	const kept = journal.forgetWearer(params.id, read.value.revision);
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/wearers/${params.id}`);
}
