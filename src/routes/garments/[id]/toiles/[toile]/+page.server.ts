import { choice, formFault, notKept, optionalDay, readForm, revision, text, typedIn } from '$lib/server/http/form.ts';
import { foundGarment, foundToile } from '$lib/server/http/found.ts';
import { toileStates } from '$lib/server/journal/records.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { cuttingLines } from '$lib/engine/index.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { cutPaths } from '$lib/ui/drawing/cut-paths.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { allowanceRows } from '$lib/ui/toile/allowance-rows.ts';
import { canBeTriedOn, nextState, otherAllowances, stateInWords, toileStateWords } from '$lib/ui/toile/toile-words.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent }) => {
	const { unit } = await parent();
	const page = foundGarment(journal, params.id);
	const toile = foundToile(page, params.toile);
	const { garment } = page;
	const cutFrom = journal.version(garment.id, toile.cutFrom)!.draft;
	const sewnOn = journal.version(garment.id, toile.stitchedTo)!.draft;
	const cut = cuttingLines(cutFrom, { default: toile.allowance, edges: toile.allowances });
	const later = page.versions.filter(({ number }) => number > toile.stitchedTo);
	const name = `Toile ${toile.number}`;
	const head: HeadData = {
		crumbs: [{ name: 'Workroom', href: '/' }, { name: garment.name, href: `/garments/${garment.id}` }, { name }],
		links: [{ name: 'Details', href: `/garments/${garment.id}/toiles/${toile.id}/details` }]
	};
	return {
		head,
		name,
		garment: { id: garment.id, name: garment.name },
		toile: {
			id: toile.id,
			revision: toile.revision,
			cloth: toile.cloth,
			note: toile.note,
			cutFrom: toile.cutFrom,
			stitchedTo: toile.stitchedTo,
			state: stateInWords(toile.state, toile.stitchedTo)
		},
		triedOn: canBeTriedOn(toile.state),
		scene: layTable(sewnOn, {
			unit,
			material: 'calico',
			cut: cutPaths(cut),
			...(toile.stitchedTo !== toile.cutFrom && { before: cutFrom })
		}),
		allowance: toile.allowance,
		others: otherAllowances(allowanceRows(cutFrom), toile.allowance, toile.allowances),
		history: toile.states.map(({ state, date, note, stitchedTo }) => ({
			what: stateInWords(state, stitchedTo),
			day: dayWords(date),
			note
		})),
		fittings: page.fittings
			.filter(({ fitting }) => fitting.toile === toile.id)
			.map(({ fitting }) => ({ id: fitting.id, name: fittingName(fitting), day: dayWords(fitting.date) })),
		states: toileStates
			.filter((state) => state !== 'restitched' || later.length > 0)
			.map((state) => ({ value: state, label: `${toileStateWords[state].name}: ${toileStateWords[state].meaning}` })),
		next: nextState(toile.state) === 'restitched' && later.length === 0 ? 'scrap' : nextState(toile.state),
		later: later.map(({ number }) => ({ value: String(number), label: `version ${number}` })).reverse(),
		today: localDay(new Date())
	};
};

export const actions: Actions = { move };

const step = z.object({
	revision,
	state: choice(toileStates, 'Choose what became of it.'),
	date: optionalDay,
	note: text({ max: 20_000 }),
	stitchedTo: text().transform((number) => (/^\d{1,6}$/.test(number) ? Number(number) : undefined))
});

async function move({ locals: { journal }, params, request }: RequestEvent) {
	const typed = typedIn(await request.formData());
	const read = readForm(step, typed);
	if ('fault' in read) return formFault(read.fault);
	const { revision: drawnFrom, state, stitchedTo, ...when } = read.value;
	const kept = journal.moveToile(params.toile, drawnFrom, {
		...when,
		state,
		...(state === 'restitched' && { stitchedTo })
	});
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/garments/${params.id}/toiles/${params.toile}`);
}
