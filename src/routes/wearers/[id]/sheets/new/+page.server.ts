import { formFault, notKept, typedIn } from '$lib/server/http/form.ts';
import { foundWearer } from '$lib/server/http/found.ts';
import { localDay } from '$lib/server/journal/store.ts';
import type { Unit } from '$lib/measure/units.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { redirect } from '@sveltejs/kit';
import { foundationOptions, measureGroups, unitWords } from '../measure-fields.ts';
import { readSheet } from '../read-sheet.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent }) => {
	const { unit } = await parent();
	const page = foundWearer(journal, params.id);
	const { wearer, foundations, sheets } = page;
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: wearer.name, href: `/wearers/${wearer.id}` },
			{ name: 'A new measurement sheet' }
		]
	};
	return {
		head,
		wearer: { id: wearer.id, name: wearer.name },
		groups: measureGroups({}, unit, sheets[0]),
		foundations: foundationOptions(foundations),
		unitWords: unitWords(unit),
		fresh: {
			date: localDay(new Date()),
			foundation: sheets[0]?.foundation ?? foundations[0]?.id ?? 'new'
		}
	};
};

export const actions: Actions = { default: add };

async function add({ locals: { journal }, params, request, cookies }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const unit: Unit = cookies.get(unitCookie) === 'cm' ? 'cm' : 'in';
	const read = readSheet(typed, unit);
	if ('fault' in read) return formFault(read.fault);
	const { sheet, foundation } = read.value;
	const kept = journal.together<unknown, unknown>(() => {
		if ('id' in foundation) return journal.addSheet(params.id, { ...sheet, foundation: foundation.id });
		const added = journal.addFoundation(params.id, foundation);
		return added.ok ? journal.addSheet(params.id, { ...sheet, foundation: added.value.id }) : added;
	});
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/wearers/${params.id}`);
}
