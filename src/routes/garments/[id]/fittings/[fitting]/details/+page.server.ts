import { notKept, revision, typedIn } from '$lib/server/http/form.ts';
import type { Answer } from '$lib/server/journal/answer.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { fail, redirect } from '@sveltejs/kit';
import { fieldsOfFitting, offeredFields } from '../../fitting-fields.ts';
import { readFitting } from '../../read-fitting.ts';
import { foundFitting } from '../found-fitting.ts';
import { lastFitting } from '../notes.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent }) => {
	const { unit } = await parent();
	const { page, contents } = foundFitting(journal, params);
	const { fitting } = contents;
	const name = fittingName(fitting);
	const here = `/garments/${page.garment.id}`;
	const draft = journal.version(page.garment.id, fitting.on)!.draft;
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: page.garment.name, href: here },
			{ name, href: `${here}/fittings/${fitting.id}` },
			{ name: 'Details' }
		]
	};
	return {
		head,
		name,
		back: `${here}/fittings/${fitting.id}`,
		kind: fitting.kind,
		closed: fitting.closedAt !== null,
		revision: fitting.revision,
		offered: offeredFields(page, draft, lastFitting(page, fitting.id, fitting.date)),
		fields: fieldsOfFitting(fitting, draft, unit)
	};
};

export const actions: Actions = { default: keep };

async function keep({ locals: { journal }, params, request, cookies }: Parameters<Actions[string]>[0]) {
	const { page, contents } = foundFitting(journal, params);
	const typed = typedIn(await request.formData());
	const unit = cookies.get(unitCookie) === 'cm' ? 'cm' : 'in';
	const read = readFitting({ ...typed, kind: contents.fitting.kind }, unit);
	if ('fault' in read) return fail(400, { ...read.fault, now: undefined });
	const drawn = revision.safeParse(typed.revision);
	const { fields, newFoundation } = read.value;
	const kept = journal.together((): Answer<Fitting> => {
		const foundation =
			newFoundation === '' ? undefined : journal.addFoundation(page.wearer.id, { name: newFoundation });
		const own = foundation?.ok ? { foundation: foundation.value.id } : {};
		return journal.reviseFitting(contents.fitting.id, drawn.success ? drawn.data : -1, { ...fields, ...own });
	});
	if (kept.ok) redirect(303, `/garments/${page.garment.id}/fittings/${contents.fitting.id}`);
	const { status, data } = notKept(kept, typed);
	const draft = journal.version(page.garment.id, contents.fitting.on)!.draft;
	return fail(status, {
		typed: data.typed,
		problems: data.problems,
		...(kept.stale
			? { now: fieldsOfFitting(kept.current, draft, unit), revision: kept.current.revision }
			: { now: undefined })
	});
}
