import { cuttingLines } from '$lib/engine/index.ts';
import { formFault, lengthIn, notKept, readForm, revision, text, typedIn } from '$lib/server/http/form.ts';
import { foundGarment, foundVersion } from '$lib/server/http/found.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { formatLength } from '$lib/measure/format-length.ts';
import { allowanceGroups, allowanceLines, allowanceOf, allowancesByEdge } from '$lib/ui/allowances/allowance-groups.ts';
import { allowancesToCut } from '$lib/ui/allowances/allowances-to-cut.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { cutPaths } from '$lib/ui/drawing/cut-paths.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { versionInSentence, versionName } from '$lib/ui/version/version-name.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { toileAsLining } from './toile-as-lining.ts';
import type { Actions, PageServerLoad } from './$types';

/** The widest allowance that is taken, mm: a hem of a foot. */
const widest = 304.8;

export const load: PageServerLoad = async ({ locals: { journal }, params, url, parent }) => {
	const { unit } = await parent();
	const page = foundGarment(journal, params.id);
	const { garment, lining } = page;
	const last = page.versions.length - 1;
	const version = foundVersion(journal, page, url.searchParams.get('version') ?? String(lining?.version ?? last));
	const isChosen = lining?.version === version.number;
	const { draft, number } = version;
	const allowances = allowancesToCut(version, lining);
	const groups = allowanceGroups(draft);
	const here = `/garments/${garment.id}/lining`;
	const cut = cuttingLines(draft, allowances);
	const toile = toileAsLining({
		journal,
		page,
		version,
		allowances,
		groups,
		cut,
		asked: url.searchParams.get('toile'),
		unit
	});
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: garment.name, href: `/garments/${garment.id}` },
			{ name: 'Lining' }
		],
		links: [{ name: versionName(number), href: `/garments/${garment.id}/versions/${number}` }]
	};
	return {
		head,
		here,
		garment: garment.id,
		number,
		name: versionInSentence(number),
		isChosen,
		revision: lining?.revision ?? 0,
		chosen: lining && {
			version: lining.version,
			name: versionInSentence(lining.version),
			cloth: lining.cloth,
			note: lining.note,
			on: dayWords(localDay(new Date(lining.chosenAt)))
		},
		versions: page.versions.map((one) => ({
			name: versionName(one.number),
			href: `${here}?version=${one.number}`,
			here: one.number === number
		})),
		queries: version.unsettled.filter(({ severity }) => severity !== 'note').length,
		groups: groups.map((group) => ({
			key: group.key,
			name: group.name,
			value: asTyped(allowanceOf(group, allowances), unit)
		})),
		lines: allowanceLines(groups, allowances),
		toile,
		scene:
			toile?.scene ??
			layTable(draft, {
				unit,
				cut: cutPaths(cut),
				caption: 60
			}),
		files: `/garments/${garment.id}/versions/${number}`
	};
};

export const actions: Actions = { choose };

async function choose({ locals: { journal }, params, request, cookies }: Parameters<Actions[string]>[0]) {
	const unit = cookies.get(unitCookie) === 'cm' ? 'cm' : 'in';
	const typed = typedIn(await request.formData());
	const page = foundGarment(journal, params.id!);
	const version = foundVersion(journal, page, typed['version'] ?? '');
	const groups = allowanceGroups(version.draft);
	const lengths = z.object(Object.fromEntries(groups.map(({ key }) => [key, lengthIn(unit, { max: widest })])));
	const fields = z.object({ revision, cloth: text({ max: 200 }), note: text({ max: 2000 }) });
	const [read, sizes] = [readForm(fields, typed), readForm(lengths, typed)];
	if ('fault' in read || 'fault' in sizes)
		return formFault({
			typed,
			problems: {
				...('fault' in read && read.fault.problems),
				...('fault' in sizes && sizes.fault.problems)
			}
		});
	const { default: allowance, edges } = allowancesByEdge(groups, sizes.value);
	const { revision: drawnFrom, cloth, note } = read.value;
	const kept = journal.chooseLining(params.id!, drawnFrom, {
		...{ version: version.number, cloth, note, allowance, allowances: edges }
	});
	if (!kept.ok) return notKept(kept, typed);
	redirect(303, `/garments/${params.id}/lining`);
}

/** A length as one would type it, exact: in inches where sixteenths say all of it, else in mm. */
function asTyped(mm: number, unit: 'in' | 'cm'): string {
	const { text: words, parts } = formatLength(mm, unit, { denominator: 16, mark: unit === 'cm' });
	return parts.about ? `${Number(mm.toFixed(3))} mm` : words;
}
