import { formFault, notKept, typedIn } from '$lib/server/http/form.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { cuttingLines } from '$lib/engine/index.ts';
import type { Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { allowanceRows } from '$lib/ui/toile/allowance-rows.ts';
import { shownAllowance } from '$lib/ui/toile/toile-words.ts';
import { usualAllowances, type AllowancesSet } from '$lib/ui/toile/usual-allowances.ts';
import { inch } from '$lib/measure/units.ts';
import { error, fail, redirect } from '@sveltejs/kit';
import { allowanceFields, readAllowances, readToile } from '../read-toile.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent, url }) => {
	const { unit } = await parent();
	const page = journal.garment(params.id);
	if (!page) error(404, 'There is no garment here by that name. The workroom lists every one that is in the journal.');
	const { garment, versions, toiles } = page;
	const latest = versions[versions.length - 1]!.number;
	const asked = url.searchParams.get('version');
	const number = asked === null ? latest : /^\d{1,6}$/.test(asked) ? Number(asked) : -1;
	const version = journal.version(garment.id, number);
	if (!version) error(404, `There is no version ${asked} of this garment. Its latest is version ${latest}.`);
	const usual = usualAllowances(version.draft);
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
		usual: usualWords(unit),
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
	const usual = usualAllowances(draft);
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
	const number = /^\d{1,6}$/.test(typed.cutFrom ?? '') ? Number(typed.cutFrom) : -1;
	const version = journal.version(garment, number);
	if (!version) error(404, 'There is no such version of this garment. Its page shows all of them.');
	const unit: Unit = cookie === 'cm' ? 'cm' : 'in';
	return { typed, number, draft: version.draft, unit };
}

function toileScene(draft: Draft, allowances: AllowancesSet, unit: Unit) {
	return layTable(draft, { unit, material: 'calico', cut: cuttingLines(draft, allowances) });
}

const usualWords = (unit: Unit) =>
	`${shownAllowance(inch, unit)} long seams, ${shownAllowance(inch / 4, unit)} neck and armhole`;
