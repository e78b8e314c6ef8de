import { cuttingLines } from '$lib/engine/index.ts';
import { notKept, readForm, formFault, revision, text, typedIn } from '$lib/server/http/form.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import { carryEach, pinsOfCarried } from '$lib/ui/fitting/carry-each.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { queryRows } from '$lib/ui/version/query-rows.ts';
import { settleWords } from '$lib/ui/version/settle-words.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { foundFitting } from '../found-fitting.ts';
import { pinnedRows } from '../lists.ts';
import { leftIn } from './left-in.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, parent }) => {
	const { unit } = await parent();
	const { page, contents } = foundFitting(journal, params);
	const { fitting, alterations } = contents;
	const here = `/garments/${page.garment.id}/fittings/${fitting.id}`;
	if (fitting.closedAt !== null) redirect(303, here);
	const preview = journal.previewFitting(fitting.id)!;
	const kept = alterations.filter(({ state }) => state !== 'withdrawn');
	const carried = carryEach(
		preview.before,
		kept.map(({ intent }) => intent)
	);
	const numberOf = (id: string) => alterations.find((one) => one.id === id)?.number ?? 0;
	const name = fittingName(fitting);
	const toile = page.toiles.find(({ id }) => id === fitting.toile);
	const cutFrom = toile && journal.version(page.garment.id, toile.cutFrom)?.draft;
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: page.garment.name, href: `/garments/${page.garment.id}` },
			{ name, href: here },
			{ name: 'Carry to paper' }
		]
	};
	return {
		head,
		here,
		name,
		into: preview.onto + 1,
		wholeRevision: preview.fitting.wholeRevision,
		scene: layTable(preview.after, {
			unit,
			before: preview.before,
			pins: pinsOfCarried(carried, numberOf),
			caption: 120,
			...(cutFrom && toile && { cut: cuttingLines(cutFrom, { default: toile.allowance, edges: toile.allowances }) })
		}),
		pinned: pinnedRows(contents, carried, preview.before, unit).filter(({ mark }) => mark !== 'withdrawn'),
		waiting: preview.unplaced
			.filter(({ why }) => why !== 'not-read')
			.map(({ alteration, sentence }) => ({ id: alteration, number: numberOf(alteration), sentence })),
		hindrances: preview.hindrances,
		queries: queryRows(preview.queries, []).map(({ ways, ...row }) => ({
			...row,
			key: `${row.code} ${row.where}`,
			ways: ways.map((way) => settleWords(preview.after, row, way, unit))
		}))
	};
};

/** Takes one of the ways that a query offers, as one more alteration of this fitting. */
async function settle({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const typed = typedIn(await request.formData());
	const { contents } = foundFitting(journal, params);
	const read = readForm(
		z.object({
			code: text({ needed: 'Say which query is to be settled.' }),
			where: text({ needed: 'Say which query is to be settled.' }),
			way: z.coerce.number('Choose one of the ways that are offered.').int().min(0).max(50)
		}),
		typed
	);
	if ('fault' in read) return formFault(read.fault);
	const { code, where, way } = read.value;
	const query = journal
		.previewFitting(contents.fitting.id)
		?.queries.find((one) => one.code === code && one.where === where);
	const offered = query?.settle[way];
	if (!query || !offered)
		return formFault({ typed, problems: { '': 'This query is not asked any more. Look at the queries again.' } });
	const { id: _, ...intent } = offered;
	const answer = journal.addAlteration(contents.fitting.id, {
		intent,
		act: 'settled',
		settles: { code, where, sentence: query.sentence }
	});
	if (!answer.ok) return notKept(answer, typed);
	redirect(303, `/garments/${params.id}/fittings/${params.fitting}/carry#queries`);
}

/** Carries to paper: the next version, with the queries that are left on purpose, and why. */
async function carry({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const form = await request.formData();
	const typed = typedIn(form);
	const { contents } = foundFitting(journal, params);
	const read = readForm(z.object({ wholeRevision: revision }), typed);
	if ('fault' in read) return formFault(read.fault);
	const answer = journal.carryToPaper(contents.fitting.id, read.value.wholeRevision, {
		left: leftIn(form),
		waiting: form.getAll('waiting').map(String)
	});
	if (!answer.ok) return notKept(answer.stale ? { ...answer, current: undefined } : answer, typed);
	redirect(303, `/garments/${params.id}/versions/${answer.value.number}`);
}

export const actions: Actions = { settle, carry };
