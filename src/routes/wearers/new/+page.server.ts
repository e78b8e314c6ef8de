import { formFault, notKept, readForm, text, typedIn } from '$lib/server/http/form.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

const newWearer = z.object({
	name: text({ needed: 'Give the wearer a name: initials are enough.', max: 200 }),
	foundation: text({ max: 200 }),
	note: text({ max: 20_000 })
});

export const load: PageServerLoad = () => {
	const head: HeadData = { crumbs: [{ name: 'Workroom', href: '/' }, { name: 'A new wearer' }] };
	return { head };
};

export const actions: Actions = { default: add };

async function add({ locals: { journal }, request }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(newWearer, typed);
	if ('fault' in read) return formFault(read.fault);
	const { foundation, ...fields } = read.value;
	const kept = journal.together(() => {
		const wearer = journal.addWearer(fields);
		if (!wearer.ok || foundation === '') return wearer;
		const worn = journal.addFoundation(wearer.value.id, { name: foundation });
		return worn.ok || worn.stale ? wearer : worn;
	});
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/wearers/${kept.value.id}`);
}
