import { formFault, notKept, readForm, revision, typedIn } from '$lib/server/http/form.ts';
import { foundGarment, foundToile } from '$lib/server/http/found.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { Toile } from '$lib/server/journal/records.ts';
import type { Unit } from '$lib/measure/units.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { allowanceRows } from '$lib/ui/toile/allowance-rows.ts';
import { toileAllowances } from '$lib/ui/toile/toile-allowances.ts';
import type { AllowancesByEdge } from '$lib/ui/allowances/usual-allowances.ts';
import { fail, redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { allowanceFields, readAllowances, readToile } from '../../read-toile.ts';
import { presetWords, toileScene } from '../../toile-scene.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent }) => {
	const { unit } = await parent();
	const page = foundGarment(journal, params.id);
	const toile = foundToile(page, params.toile);
	const { draft } = journal.version(params.id, toile.cutFrom)!;
	const name = `Toile ${toile.number}`;
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: page.garment.name, href: `/garments/${params.id}` },
			{ name, href: `/garments/${params.id}/toiles/${toile.id}` },
			{ name: 'Details' }
		]
	};
	return {
		head,
		name,
		garment: { id: params.id },
		toile: { id: toile.id, revision: toile.revision },
		rows: allowanceRows(draft),
		usual: presetWords(unit),
		fields: toileFields(toile, unit),
		scene: toileScene(draft, setOf(toile), unit)
	};
};

export const actions: Actions = { fill, show, keep };

/** Puts the usual allowances into the fields; nothing is written. */
async function fill({ locals, params, request, cookies }: RequestEvent) {
	const { typed, draft, unit } = await asked(locals.journal, params, request, cookies.get(unitCookie));
	const usual = toileAllowances(draft);
	const others = Object.entries(typed).filter(([name]) => !name.startsWith('allowance'));
	const filled = { ...Object.fromEntries(others), ...allowanceFields(usual, unit) };
	return { typed: filled, problems: {}, scene: toileScene(draft, usual, unit) };
}

/** Draws the cutting line as the fields say it; nothing is written. */
async function show({ locals, params, request, cookies }: RequestEvent) {
	const { typed, toile, draft, unit } = await asked(locals.journal, params, request, cookies.get(unitCookie));
	const { set, problems } = readAllowances(typed, draft, unit, setOf(toile));
	const shown = { typed, problems, ...(set && { scene: toileScene(draft, set, unit) }) };
	return Object.keys(problems).length > 0 ? fail(400, shown) : shown;
}

async function keep({ locals: { journal }, params, request, cookies }: RequestEvent) {
	const { typed, toile, draft, unit } = await asked(journal, params, request, cookies.get(unitCookie));
	const drawnFrom = readForm(z.object({ revision }), typed);
	if ('fault' in drawnFrom) return formFault(drawnFrom.fault);
	const read = readToile(typed, draft, unit, setOf(toile));
	if ('fault' in read) return formFault(read.fault);
	const { cloth, note, allowance, allowances } = read.value;
	const kept = journal.reviseToile(toile.id, drawnFrom.value.revision, { cloth, note, allowance, allowances });
	if (kept.ok) redirect(303, `/garments/${params.id}/toiles/${toile.id}`);
	const fault = notKept(kept, typed);
	return kept.stale
		? fail(fault.status, {
				...fault.data,
				now: { revision: kept.current.revision, fields: toileFields(kept.current, unit) }
			})
		: fault;
}

/** What was typed, and the toile that it was typed for. */
async function asked(
	journal: Journal,
	params: { readonly id: string; readonly toile: string },
	request: Request,
	cookie: string | undefined
) {
	const toile = foundToile(foundGarment(journal, params.id), params.toile);
	const { draft } = journal.version(params.id, toile.cutFrom)!;
	const unit: Unit = cookie === 'cm' ? 'cm' : 'in';
	return { typed: typedIn(await request.formData()), toile, draft, unit };
}

const setOf = ({ allowance, allowances }: Toile): AllowancesByEdge => ({ default: allowance, edges: allowances });

const toileFields = (toile: Toile, unit: Unit): Readonly<Record<string, string>> => ({
	...allowanceFields(setOf(toile), unit),
	cloth: toile.cloth,
	note: toile.note
});
