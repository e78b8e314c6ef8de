import { formFault, notKept, readForm, revision, typedIn } from '$lib/server/http/form.ts';
import type { MeasurementSheet } from '$lib/server/journal/records.ts';
import type { Unit } from '$lib/measure/units.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { error, fail, redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { foundationOptions, measureGroups, sheetFields, unitWords } from '../measure-fields.ts';
import { readSheet } from '../read-sheet.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent }) => {
	const { unit } = await parent();
	const page = journal.wearer(params.id);
	const sheet = page?.sheets.find(({ id }) => id === params.sheet);
	if (!page || !sheet) error(404, 'There is no measurement sheet here by that name. The wearer’s page lists them all.');
	const { wearer, foundations, sheets } = page;
	const before = sheets[sheets.indexOf(sheet) + 1];
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: wearer.name, href: `/wearers/${wearer.id}` },
			{ name: `Measures of ${dayWords(sheet.date)}` }
		]
	};
	return {
		head,
		wearer: { id: wearer.id, name: wearer.name },
		day: dayWords(sheet.date, 'whole'),
		revision: sheet.revision,
		groups: measureGroups(sheet.measures, unit, before),
		foundations: foundationOptions(foundations),
		unitWords: unitWords(unit),
		fields: sheetFields(sheet, unit)
	};
};

export const actions: Actions = { default: revise };

async function revise({ locals: { journal }, params, request, cookies }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const unit: Unit = cookies.get(unitCookie) === 'cm' ? 'cm' : 'in';
	const before = journal.wearer(params.id)?.sheets.find(({ id }) => id === params.sheet);
	if (!before) error(404, 'There is no measurement sheet here by that name. The wearer’s page lists them all.');
	const drawnFrom = readForm(z.object({ revision }), typed);
	if ('fault' in drawnFrom) return formFault(drawnFrom.fault);
	const read = readSheet(typed, unit, before);
	if ('fault' in read) return formFault(read.fault);
	const { sheet, foundation } = read.value;
	const kept = journal.together<unknown, MeasurementSheet>(() => {
		const revised = (id: string) =>
			journal.reviseSheet(params.sheet, drawnFrom.value.revision, { ...sheet, foundation: id });
		if ('id' in foundation) return revised(foundation.id);
		const added = journal.addFoundation(params.id, foundation);
		return added.ok || added.stale ? revised(added.ok ? added.value.id : added.current.id) : added;
	});
	if (kept.ok) redirect(303, `/wearers/${params.id}`);
	const fault = notKept(kept, typed);
	return kept.stale
		? fail(fault.status, {
				...fault.data,
				now: { revision: kept.current.revision, fields: sheetFields(kept.current, unit) }
			})
		: fault;
}
