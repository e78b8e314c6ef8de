import { notKept, revision, typedIn, type Typed } from '$lib/server/http/form.ts';
import type { Query } from '$lib/engine/index.ts';
import { easeTable } from '$lib/engine/index.ts';
import { inUnit } from '$lib/measure/in-unit.ts';
import { formatLength } from '$lib/measure/format-length.ts';
import { findEasePreset } from '$lib/measure/ease-ranges.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import { pinsMissing } from '$lib/measure/cautions.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { GarmentPage, Preview } from '$lib/server/journal/pages.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { alterationTitle } from '$lib/ui/fitting/words/alteration.ts';
import { effectOf } from '$lib/ui/fitting/carried/effect.ts';
import { keptView } from '$lib/ui/fitting/view/kept-view.ts';
import { inHand } from '$lib/ui/fitting/view/in-hand.ts';
import { sideShown, tableScene } from '$lib/ui/fitting/view/scenes.ts';
import { addressOf, field } from '$lib/ui/fitting/typed.ts';
import { counted } from '$lib/ui/garment/counted.ts';
import { easeRows } from '$lib/ui/garment/ease-rows.ts';
import { saidInTwo } from '$lib/ui/garment/said-in-two.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { letterOf } from '$lib/ui/version/query-rows.ts';
import { versionInSentence } from '$lib/ui/version/version-name.ts';
import { error, fail, redirect } from '@sveltejs/kit';
import { foundFitting } from '../found-fitting.ts';
import { groundOf } from '../ground-of.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, url, parent }) => {
	const { unit } = await parent();
	const { page, contents } = foundFitting(journal, params);
	const { fitting, alterations, observations } = contents;
	const back = `/garments/${page.garment.id}/fittings/${fitting.id}`;
	if (fitting.closedAt !== null) redirect(303, back);
	const asked: Typed = Object.fromEntries([...url.searchParams].filter(([name]) => !name.startsWith('/')));
	const preview = journal.previewFitting(fitting.id)!;
	const held = inHand(keptView(groundOf(journal, page, contents, preview, unit)), {});
	if ('notThere' in held) error(404, held.notThere);
	const side = sideShown(asked);
	const name = fittingName(fitting);
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: page.garment.name, href: `/garments/${page.garment.id}` },
			{ name, href: back },
			{ name: 'Carry to paper' }
		],
		sides: sidesOf(side)
	};
	const numberOf = new Map(alterations.map((one) => [one.id, one]));
	return {
		head,
		name,
		back,
		onto: versionInSentence(preview.onto),
		makes: `version ${preview.onto + 1}`,
		side,
		sides: sidesOf(side).map((one) => ({ ...one, name: `${one.name} side` })),
		wholeRevision: fitting.wholeRevision,
		scene: tableScene(held, side),
		steps: held.carried.map((one) => {
			const record = numberOf.get(one.alteration.id)!;
			const effect = one.step && effectOf([one], preview.before, { unit, measured: record.measured });
			return {
				id: record.id,
				number: record.number,
				revision: record.revision,
				mark: record.state === 'not-read' ? ('not-read' as const) : ('standing' as const),
				title: alterationTitle(one.before, one.alteration, unit, record.act),
				sum: effect?.sum,
				does: effect
					? [...effect.mates.filter((sentence) => !/walks as it did/.test(sentence)), ...effect.neighbours]
					: [],
				settles: record.settles && inUnit(record.settles.sentence, unit),
				waits: one.unplaced && {
					sentence: inUnit(one.unplaced.sentence, unit),
					notRead: one.unplaced.why === 'not-read'
				}
			};
		}),
		queries: preview.queries
			.filter(({ code }) => !waitsItself.includes(code))
			.map((query, i) => queryRow(query, i, preview, unit)),
		hindrances: preview.hindrances.map((sentence) => inUnit(sentence, unit)),
		ease: easeOf(page, preview),
		minded: [
			...openObservations(observations.filter(({ stillOpen, alterations: by }) => stillOpen && by.length === 0).length),
			...pinsOf(fitting.pinsIn, fitting.pinsOut)
		],
		typed: asked
	};
};

/** Alterations that wait say so themselves, in their own row. */
const waitsItself = ['unplaced', 'not-read', 'no-place', 'no-join', 'too-tight'];

const sidesOf = (side: string) =>
	(['right', 'left'] as const).map((one) => ({
		name: one === 'right' ? 'Right' : 'Left',
		side: one,
		href: `?side=${one}`,
		here: one === side
	}));

function queryRow({ code, severity, where, figure, sentence, settle }: Query, i: number, preview: Preview, unit: Unit) {
	return {
		key: `${code}.${where}`,
		letter: letterOf(i),
		code,
		where,
		severity,
		...saidInTwo(sentence, unit),
		...(figure !== undefined && { figure: figureWords(code, figure, unit) }),
		ways: settle.map((way) => alterationTitle(preview.after, way, unit))
	};
}

function figureWords(code: string, figure: number, unit: Unit): string {
	if (code === 'seam-corner') return `${Math.round(Math.abs(figure))}°`;
	return formatLength(figure, unit, { denominator: 16, sign: 'never' }).text;
}

function easeOf({ garment, sheet, foundations }: GarmentPage, { before, after, onto }: Preview) {
	if (!sheet) return undefined;
	const measures = measuresByLevel(sheet.measures);
	const preset = garment.easePreset === null ? undefined : findEasePreset(garment.easePreset);
	const over = foundations.find(({ id }) => id === sheet.foundation)?.name;
	return {
		rows: easeRows(easeTable(after, measures), easeTable(before, measures), preset).rows,
		before: versionInSentence(onto),
		words: `Body as measured on ${dayWords(sheet.date)}${over ? ` over ${over}` : ''}.`
	};
}

const openObservations = (count: number): readonly string[] =>
	count === 0 ? [] : [`${counted(count, 'observation is', 'observations are')} not answered: they stay open.`];

function pinsOf(pinsIn: number | null, pinsOut: number | null): readonly string[] {
	const missing = pinsIn !== null && pinsOut !== null ? pinsMissing(pinsIn, pinsOut) : undefined;
	return missing === undefined ? [] : [`Pins: ${missing}`];
}

export const actions: Actions = { carry, settle, leaveOut };

/** Makes the next version; queries that are ticked are left as they are, and so are waiting alterations that may wait. */
async function carry({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const { page, contents } = foundFitting(journal, params);
	const form = await request.formData();
	const typed = typedIn(form);
	const drawn = revision.safeParse(typed.wholeRevision);
	const names = (prefix: string) =>
		Object.keys(typed)
			.filter((name) => name.startsWith(`${prefix}.`))
			.map((name) => name.slice(prefix.length + 1));
	const left = names('left').map((key) => {
		const [code, ...where] = key.split('.');
		return { code: code!, where: where.join('.'), note: field(typed, `note.${key}`) };
	});
	const carried = journal.carryToPaper(contents.fitting.id, drawn.success ? drawn.data : -1, {
		left,
		waiting: names('wait')
	});
	if (carried.ok) redirect(303, `/garments/${page.garment.id}/versions/${carried.value.number}`);
	const { status, data } = notKept(carried, typed);
	// How it stands now is the page itself, drawn anew; with it goes what the form was drawn from.
	return fail(status, {
		typed: data.typed,
		problems: data.problems,
		...(carried.stale && { drawn: field(typed, 'drawn').split('\n').filter(Boolean) })
	});
}

/** Settles a query by one of the alterations that it offers; what was typed of the others stays in the address. */
async function settle({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const { contents } = foundFitting(journal, params);
	const typed = typedIn(await request.formData());
	const [, key = '', way = ''] = /^(.+)#(\d{1,3})$/.exec(field(typed, 'settle')) ?? [];
	const query = journal
		.previewFitting(contents.fitting.id)!
		.queries.find(({ code, where }) => `${code}.${where}` === key);
	const intent = query?.settle[Number(way)];
	if (!query || !intent)
		return fail(409, {
			typed,
			problems: { '': 'That is not asked any more, or not to be settled so. The queries as they are now are below.' }
		});
	const { code, where, sentence } = query;
	const added = journal.addAlteration(contents.fitting.id, {
		intent: { ...intent },
		settles: { code, where, sentence }
	});
	if (!added.ok) {
		const { status, data } = notKept(added, typed);
		return fail(status, { typed: data.typed, problems: { '': Object.values(data.problems).join(' ') } });
	}
	const stays = Object.fromEntries(Object.entries(typed).filter(([name]) => /^(left|note|wait)\./.test(name)));
	redirect(303, `/garments/${params.id}/fittings/${params.fitting}/carry${addressOf(stays)}#queries`);
}

/** Leaves out an alteration that is not read, or found no place. */
async function leaveOut({ locals: { journal }, params, request }: Parameters<Actions[string]>[0]) {
	const { contents } = foundFitting(journal, params);
	const typed = typedIn(await request.formData());
	const [id = '', drawn = ''] = field(typed, 'leave').split('#');
	if (!contents.alterations.some((one) => one.id === id))
		return fail(404, { typed, problems: { '': 'There is no alteration by that name in this fitting.' } });
	const left = journal.leaveOut(id, Number(drawn));
	if (!left.ok) {
		const { status, data } = notKept(left, typed);
		return fail(status, { typed: data.typed, problems: data.problems });
	}
	redirect(303, `/garments/${params.id}/fittings/${params.fitting}/carry`);
}
