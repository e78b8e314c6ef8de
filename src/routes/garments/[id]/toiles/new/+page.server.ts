import { formFault, notKept, typedIn } from '$lib/server/http/form.ts';
import { foundGarment, foundVersion } from '$lib/server/http/found.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import { localDay } from '$lib/server/journal/store.ts';
import type { Unit } from '$lib/measure/units.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { allowanceRows } from '$lib/ui/toile/allowance-rows.ts';
import { toileAllowances } from '$lib/ui/toile/toile-allowances.ts';
import { fail, redirect } from '@sveltejs/kit';
import { allowanceFields, readAllowances, readToile } from '../read-toile.ts';
import { presetWords, toileScene } from '../toile-scene.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent, url }) => {
	const { unit } = await parent();
	const page = foundGarment(journal, params.id);
	const { garment, versions, toiles } = page;
	const latest = versions[versions.length - 1]!.number;
	const version = foundVersion(journal, page, url.searchParams.get('version') ?? String(latest));
	const { number } = version;
	const usual = toileAllowances(version.draft);
	const name = `Toile ${toiles.length + 1}`;
	const head: HeadData = {
		crumbs: [{ name: 'Workroom', href: '/' }, { name: garment.name, href: `/garments/${garment.id}` }, { name }]
	};
	return {
		head,
		name,
		garment: { id: garment.id, name: garment.name },
		number,
		versions: versions
			.map(({ number: one }) => ({
				name: one === 0 ? 'Draft' : `Version ${one}`,
				href: `/garments/${garment.id}/toiles/new?version=${one}`,
				here: one === number
			}))
			.reverse(),
		rows: allowanceRows(version.draft),
		usual: presetWords(unit),
		fresh: {
			...allowanceFields(usual, unit),
			cloth: toiles[toiles.length - 1]?.cloth ?? '',
			date: localDay(new Date())
		},
		scene: toileScene(version.draft, usual, unit)
	};
};

export const actions: Actions = { fill, show, keep };

/** Puts the usual allowances into the fields; nothing is written. */
async function fill({ locals, params, request, cookies }: RequestEvent) {
	const { typed, draft, unit } = await asked(locals.journal, params.id, request, cookies.get(unitCookie));
	const usual = toileAllowances(draft);
	const others = Object.entries(typed).filter(([name]) => !name.startsWith('allowance'));
	return {
		typed: { ...Object.fromEntries(others), ...allowanceFields(usual, unit) },
		problems: {},
		scene: toileScene(draft, usual, unit)
	};
}

/** Draws the cutting line as the fields say it; nothing is written. */
async function show({ locals, params, request, cookies }: RequestEvent) {
	const { typed, draft, unit } = await asked(locals.journal, params.id, request, cookies.get(unitCookie));
	const { set, problems } = readAllowances(typed, draft, unit);
	const shown = { typed, problems, ...(set && { scene: toileScene(draft, set, unit) }) };
	return Object.keys(problems).length > 0 ? fail(400, shown) : shown;
}

async function keep({ locals: { journal }, params, request, cookies }: RequestEvent) {
	const { typed, number, draft, unit } = await asked(journal, params.id, request, cookies.get(unitCookie));
	const read = readToile(typed, draft, unit);
	if ('fault' in read) return formFault(read.fault);
	const kept = journal.addToile(params.id, { ...read.value, cutFrom: number });
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/garments/${params.id}/toiles/${kept.value.id}`);
}

/** What was typed, and the version that it was typed for. */
async function asked(journal: Journal, garment: string, request: Request, cookie: string | undefined) {
	const typed = typedIn(await request.formData());
	const { number, draft } = foundVersion(journal, foundGarment(journal, garment), typed.cutFrom ?? '');
	const unit: Unit = cookie === 'cm' ? 'cm' : 'in';
	return { typed, number, draft, unit };
}
