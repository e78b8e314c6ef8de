import { compare } from '$lib/engine/index.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import { formFault, notKept, readForm, revision, text, typedIn } from '$lib/server/http/form.ts';
import { foundGarment, foundVersion } from '$lib/server/http/found.ts';
import { anchorsOf, laidOn } from '$lib/ui/compare/laid-on.ts';
import { isChanged, roundChanges } from '$lib/ui/compare/round-changes.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { versionInSentence, versionName } from '$lib/ui/version/version-name.ts';
import { redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { lookAddress, type Look } from './look.ts';
import { movedTables } from './moved.ts';
import { storyOf } from './story.ts';
import { withdrawalOf } from './withdrawal.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, url, parent }) => {
	const { unit } = await parent();
	const page = foundGarment(journal, params.id);
	const { garment } = page;
	const last = page.versions.length - 1;
	const asked = (name: string, otherwise: number) =>
		foundVersion(journal, page, url.searchParams.get(name) ?? String(otherwise));
	const [from, to] = [asked('from', 0), asked('to', last)].sort((a, b) => a.number - b.number);
	const versions = page.versions.slice(0, to.number + 1).map(({ number }) => journal.version(garment.id, number)!);

	const anchors = anchorsOf(from.draft, to.draft);
	const on = anchors.find(({ id }) => id === url.searchParams.get('on')) ?? anchors[0];
	const before = laidOn(from.draft, to.draft, on.id);
	const comparison = compare(before, to.draft);
	const look: Look = { from: from.number, to: to.number, on: on.id };
	const moved = movedTables({ page, from, to, before, comparison, versions, look, unit });
	const chosen = moved.find(url.searchParams);
	const rounds = roundChanges(from.draft, to.draft, page.sheet ? measuresByLevel(page.sheet.measures) : {});
	const story = chosen && storyOf(page, versions, chosen, unit);
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: garment.name, href: `/garments/${garment.id}` },
			{ name: 'Compare' }
		],
		links: [{ name: versionName(to.number), href: `/garments/${garment.id}/versions/${to.number}` }]
	};
	const address = (change: Partial<Look>) =>
		lookAddress(garment.id, { ...look, ...(chosen && { line: chosen.line }), ...change });
	return {
		head,
		garment: garment.id,
		look,
		same: from.number === to.number,
		title: `${versionName(from.number)}, and ${versionInSentence(to.number)}`,
		names: { from: versionInSentence(from.number), to: versionInSentence(to.number) },
		scene: layTable(to.draft, {
			unit,
			before,
			anchor: on.id,
			caption: 84,
			...(chosen && { selected: chosen.features })
		}),
		laidOn: on.name,
		self: address({}).replace(/^[^?]*/, ''),
		links: moved.links,
		froms: page.versions
			.filter(({ number }) => number < last || last === 0)
			.map(({ number }) => ({
				name: versionName(number),
				number,
				href: address({ from: number, to: Math.max(to.number, Math.min(last, number + 1)) }),
				here: number === from.number
			})),
		tos: page.versions
			.filter(({ number }) => number > 0)
			.map(({ number }) => ({
				name: versionName(number),
				number,
				href: address({ to: number, from: Math.min(from.number, number - 1) }),
				here: number === to.number
			})),
		anchors: anchors.map(({ id, name }) => ({ name, href: address({ on: id }), here: id === on.id })),
		body: moved.body,
		limbs: moved.limbs,
		others: moved.others,
		unmoved: moved.unmoved,
		rounds: rounds.map((row) => ({ ...row, changed: isChanged(row) })),
		measured: page.sheet !== null,
		chosen: chosen && { name: chosen.name, line: chosen.line },
		story,
		withdrawal: story && withdrawalOf(journal, page, story.standing, url.searchParams.get('out'), address({}), unit)
	};
};

export const actions: Actions = { withdraw };

async function withdraw({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const typed = typedIn(await request.formData());
	const page = foundGarment(journal, params.id!);
	const read = readForm(
		z.object({
			alteration: text({ needed: 'Say which alteration is taken back out.' }),
			latest: revision,
			note: text({ max: 2000 })
		}),
		typed
	);
	if ('fault' in read) return formFault(read.fault);
	const { alteration, latest, note } = read.value;
	if (!page.fittings.some(({ alterations }) => alterations.some(({ id }) => id === alteration)))
		return notKept(
			{ ok: false, stale: false, code: 'unknown', problems: [{ sentence: 'This garment has no such alteration.' }] },
			typed
		);
	const kept = journal.withdraw(alteration, latest, note);
	if (!kept.ok) return notKept(kept.stale ? { ...kept, current: { number: kept.current.number } } : kept, typed);
	redirect(303, `/garments/${params.id}/versions/${kept.value.number}`);
}
