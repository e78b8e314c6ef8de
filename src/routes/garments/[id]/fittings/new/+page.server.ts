import { formFault, notKept, typedIn } from '$lib/server/http/form.ts';
import { foundGarment } from '$lib/server/http/found.ts';
import type { Answer } from '$lib/server/journal/answer.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { redirect } from '@sveltejs/kit';
import { lastFitting } from '../[fitting]/notes.ts';
import { freshFields, offeredFields } from '../fitting-fields.ts';
import { readFitting, type FittingTyped } from '../read-fitting.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals: { journal }, params, url }) => {
	const page = foundGarment(journal, params.id);
	const kind = url.searchParams.get('kind') === 'table' ? 'table' : 'fitting';
	const now = new Date();
	const date = localDay(now);
	const last = lastFitting(page, '', date);
	const draft = journal.version(page.garment.id, page.versions[page.versions.length - 1]!.number)!.draft;
	const number =
		1 + Math.max(0, ...page.fittings.filter(({ fitting }) => fitting.kind === kind).map((one) => one.fitting.number));
	const name = fittingName({ kind, number });
	const here = `/garments/${page.garment.id}`;
	const head: HeadData = {
		crumbs: [{ name: 'Workroom', href: '/' }, { name: page.garment.name, href: here }, { name }]
	};
	const from = `${String(now.getHours()).padStart(2, '0')}:${String(now.getMinutes()).padStart(2, '0')}`;
	const toile = url.searchParams.get('toile') ?? '';
	return {
		head,
		name,
		kind,
		garment: page.garment.id,
		wearer: page.wearer.name,
		kinds: (['fitting', 'table'] as const).map((one) => ({
			name: one === 'fitting' ? 'On the body' : 'At the table',
			href: `${here}/fittings/new?${new URLSearchParams({ kind: one, ...(toile && { toile }) }).toString()}`,
			here: one === kind
		})),
		offered: offeredFields(page, draft, last),
		fresh: freshFields(page, last, draft, { kind, toile, date, from: kind === 'fitting' ? from : '' })
	};
};

export const actions: Actions = { default: begin };

async function begin({ locals: { journal }, params, request, cookies }: Parameters<Actions[string]>[0]) {
	const page = foundGarment(journal, params.id!);
	const typed = typedIn(await request.formData());
	const read = readFitting(typed, cookies.get(unitCookie) === 'cm' ? 'cm' : 'in');
	if ('fault' in read) return formFault(read.fault);
	const begun = journal.together(() => begunOver(journal, page.garment.id, page.wearer.id, read.value));
	if (!begun.ok) return notKept(begun, typed);
	redirect(303, `/garments/${page.garment.id}/fittings/${begun.value.id}`);
}

/** The fitting, over something that is worn for the first time if that was written. */
function begunOver(
	journal: Journal,
	garment: string,
	wearer: string,
	{ kind, fields, newFoundation }: FittingTyped
): Answer<Fitting> {
	if (newFoundation === '') return journal.addFitting(garment, { kind, ...fields });
	const foundation = journal.addFoundation(wearer, { name: newFoundation });
	if (foundation.ok) return journal.addFitting(garment, { kind, ...fields, foundation: foundation.value.id });
	if (foundation.stale) throw new Error('What is worn under it cannot be stale before it is kept.');
	return { ...foundation, problems: foundation.problems.map(({ sentence }) => ({ field: 'newFoundation', sentence })) };
}
