import { cuttingLines } from '$lib/engine/index.ts';
import { formFault, notKept, readForm, text, typedIn } from '$lib/server/http/form.ts';
import { foundGarment, foundVersion } from '$lib/server/http/found.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { patternInput, wornUnderName } from '$lib/server/pattern/pattern-input.ts';
import { sheetMap } from '$lib/server/pattern/sheet-map.ts';
import { allowancesToCut } from '$lib/ui/allowances/allowances-to-cut.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { cutPaths } from '$lib/ui/drawing/cut-paths.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import { counted } from '$lib/ui/garment/counted.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { changedPieces } from '$lib/ui/version/changed-pieces.ts';
import { checkRows } from '$lib/ui/version/check-rows.ts';
import { queryRows } from '$lib/ui/version/query-rows.ts';
import { settleWords } from '$lib/ui/version/settle-words.ts';
import { versionName } from '$lib/ui/version/version-name.ts';
import { walkRows } from '$lib/ui/version/walk-rows.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { easeOfVersion } from './ease.ts';
import { madeBy } from './made-by.ts';
import { settleAtTheTable } from './settle.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, url, parent }) => {
	const { unit } = await parent();
	const page = foundGarment(journal, params.id);
	const version = foundVersion(journal, page, params.n);
	const { garment } = page;
	const { draft, number } = version;
	const here = `/garments/${garment.id}/versions/${number}`;
	const before = number === 0 ? undefined : journal.version(garment.id, number - 1);
	const changed = before && changedPieces(before.draft, draft);
	const onlyChanged = changed !== undefined && changed.length > 0 && url.searchParams.get('pieces') === 'changed';
	const allowances = allowancesToCut(version, page.lining);
	const queries = queryRows(version.queries, version.settlements, unit);
	const open = version.unsettled.map(({ where }) => where);
	const walks = walkRows(draft, unit, open);
	const darts = draft.pieces.reduce((sum, piece) => sum + piece.darts.length, 0);
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: garment.name, href: `/garments/${garment.id}` },
			{ name: versionName(number) }
		],
		links: before
			? [
					{
						name: `Compare with ${versionName(number - 1).toLowerCase()}`,
						href: `/garments/${garment.id}/compare?from=${number - 1}&to=${number}`
					}
				]
			: []
	};
	return {
		head,
		here,
		garment: garment.id,
		number,
		name: versionName(number),
		latest: number === page.versions.length - 1,
		wornUnder: wornUnderName(page, version),
		made: madeBy(page, version, before?.draft, unit),
		scene: layTable(draft, {
			unit,
			cut: cutPaths(cuttingLines(draft, allowances)),
			caption: 84,
			...(onlyChanged && { pieces: changed, before: before!.draft })
		}),
		onlyChanged,
		anyChanged: changed !== undefined && changed.length > 0,
		versions: page.versions.map((one) => ({
			name: one.number === 0 ? 'Draft' : String(one.number),
			href: `/garments/${garment.id}/versions/${one.number}`,
			here: one.number === number
		})),
		walks,
		together: [
			counted(walks.length, 'seam', 'seams'),
			...(darts > 0 ? [counted(darts, 'dart', 'darts')] : []),
			'every corner tried'
		].join(', '),
		checks: checkRows(draft, version.queries, unit),
		queries: queries.map(({ settled, ways, ...row }) => ({
			...row,
			ways: ways.map((way) => settleWords(draft, row, way, unit)),
			...(settled && {
				settled: {
					note: settled.note,
					how: settledWords(page, settled.how, settled.alteration, settled.at)
				}
			})
		})),
		ease: easeOfVersion(page, version, before),
		sheets: sheetMap(patternInput(page, version, { allowances, lines: 'with allowances', unit }), 'A4'),
		usualSeam: allowances.default,
		isLining: page.lining?.version === number
	};
};

export const actions: Actions = { leave, settle };

async function leave({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const typed = typedIn(await request.formData());
	const version = foundVersion(journal, foundGarment(journal, params.id!), params.n!);
	const read = readForm(
		z.object({
			code: text({ needed: 'Say which query is left.' }),
			where: text({ needed: 'Say which query is left.' }),
			note: text({ max: 2000 })
		}),
		typed
	);
	if ('fault' in read) return formFault(read.fault);
	const kept = journal.settleQuery(version.id, read.value);
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/garments/${params.id}/versions/${version.number}#queries`);
}

async function settle({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const typed = typedIn(await request.formData());
	const page = foundGarment(journal, params.id!);
	const version = foundVersion(journal, page, params.n!);
	const read = readForm(
		z.object({
			code: text({ needed: 'Say which query is to be settled.' }),
			where: text({ needed: 'Say which query is to be settled.' }),
			way: z.coerce.number('Choose one of the ways that are offered.').int().min(0).max(50)
		}),
		typed
	);
	if ('fault' in read) return formFault(read.fault);
	const kept = settleAtTheTable(journal, page, version, read.value, localDay(new Date()));
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/garments/${params.id}/fittings/${kept.value.fitting}`);
}

function settledWords(
	{ fittings }: ReturnType<typeof foundGarment>,
	how: 'left' | 'altered',
	alteration: string | null,
	at: string
): string {
	const day = dayWords(localDay(new Date(at)));
	if (how === 'left') return `Left as it is on ${day}.`;
	const number = fittings.flatMap((one) => one.alterations).find(({ id }) => id === alteration)?.number;
	return number === undefined ? `Settled by an alteration on ${day}.` : `Settled by alteration ${number} on ${day}.`;
}
