import { notKept, optionalDay, readForm, text, typedIn, type FormFault, type Typed } from '$lib/server/http/form.ts';
import type { Answer } from '$lib/server/journal/answer.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { Garment } from '$lib/server/journal/records.ts';
import { easePresets } from '$lib/measure/ease-ranges.ts';
import type { Unit } from '$lib/measure/units.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { fail, redirect } from '@sveltejs/kit';
import { z } from 'zod';
import { readDraft, type DraftRead } from './read-draft.ts';
import { showDraft, type DraftShown } from './show-draft.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

/** The choice of the wearer that adds one. */
const someoneNew = 'new';

const newGarment = z
	.object({
		wearer: text({ needed: 'Choose the wearer, or add one.' }),
		newWearer: text({ max: 200 }),
		name: text({ needed: 'Give the garment a name, for example “Governess jacket”.', max: 200 }),
		madeFor: text(),
		neededOn: optionalDay,
		cloth: text(),
		easePreset: text()
	})
	.refine(({ wearer, newWearer }) => wearer !== someoneNew || newWearer !== '', {
		path: ['newWearer'],
		message: 'Give the wearer a name: initials are enough.'
	});

export const load: PageServerLoad = ({ locals: { journal }, url }) => {
	const { wearers, garments } = journal.workroom();
	const head: HeadData = { crumbs: [{ name: 'Workroom', href: '/' }, { name: 'A new garment' }] };
	const known = wearers.filter(({ wearer }) => wearer.forgottenAt === null);
	return {
		head,
		wearers: [
			{ value: '', label: 'Choose the wearer' },
			...known.map(({ wearer }) => ({ value: wearer.id, label: wearer.name })),
			{ value: someoneNew, label: 'Someone new, named below' }
		],
		versions: garments.flatMap(({ garment, life }) =>
			life
				.flatMap((station) => (station.kind === 'version' ? [station.version.number] : []))
				.reverse()
				.map((number) => ({
					value: `${garment.id}/${number}`,
					label: `${garment.name}, ${number === 0 ? 'draft' : `version ${number}`}`
				}))
		),
		presets: [
			{ value: '', label: 'No ease asked for' },
			...easePresets.map(({ id, name }) => ({ value: id, label: name }))
		],
		asked: {
			wearer: url.searchParams.get('wearer') ?? (known.length === 0 ? someoneNew : ''),
			version: url.searchParams.get('version') ?? ''
		}
	};
};

export const actions: Actions = { show, keep };

/** What the page shows again: as every form's fault, with the draft as it was read or everything that is wrong in it. */
export interface NewGarmentShown extends FormFault {
	readonly shown?: DraftShown;
	readonly draftProblems?: readonly { readonly path: string; readonly message: string }[];
}

interface Begun {
	readonly garment: Garment;
}

/** Reads the draft and shows it; nothing is written. */
async function show({ locals, request, cookies }: RequestEvent) {
	return shownIn(await request.formData(), locals.journal, unitOf(cookies.get(unitCookie)));
}

async function shownIn(form: FormData, journal: Journal, unit: Unit) {
	const typed = typedShort(form);
	const read = await readDraft(form, journal);
	if (!('draft' in read)) return draftRefused(read, typed);
	const shown = showDraft(read, sheetOf(journal, typed.wearer), unit);
	const named = { ...typed, name: typed.name?.trim() ? typed.name : read.draft.name };
	return { typed: named, problems: {}, shown } satisfies NewGarmentShown;
}

/** Keeps the draft that was shown; another one is shown first. */
async function keep({ locals: { journal }, request, cookies }: RequestEvent) {
	const form = await request.formData();
	const unit = unitOf(cookies.get(unitCookie));
	if (form.get('from') !== 'shown') return shownIn(form, journal, unit);
	const typed = typedShort(form);
	const draft = await readDraft(form, journal);
	if (!('draft' in draft)) return draftRefused(draft, typed);
	const shown = showDraft(draft, sheetOf(journal, typed.wearer), unit);
	const read = readForm(newGarment, typed);
	if ('fault' in read) return fail(400, { ...read.fault, shown } satisfies NewGarmentShown);
	const { wearer, newWearer, easePreset, ...fields } = read.value;
	const kept = journal.together<Begun, unknown>(() => {
		const worn = wearer === someoneNew ? added(journal.addWearer({ name: newWearer })) : wearer;
		if (typeof worn !== 'string') return worn;
		return journal.addGarment({
			...fields,
			wearer: worn,
			easePreset: easePreset || null,
			draft: shown.text,
			source: draft.source,
			sourceName: draft.sourceName
		});
	});
	if (!kept.ok) {
		const fault = notKept(kept, typed);
		return fail(fault.status, { ...fault.data, shown } as NewGarmentShown);
	}
	redirect(303, `/garments/${kept.value.garment.id}`);
}

/** The new wearer's id, or why there is none. */
function added<T extends { readonly id: string }>(answer: Answer<T>) {
	return answer.ok ? answer.value.id : answer;
}

function draftRefused(read: Exclude<DraftRead, { draft: unknown }>, typed: Typed) {
	const { status, field, sentence, problems } = read;
	return fail(status, { typed, problems: { [field]: sentence }, draftProblems: problems } satisfies NewGarmentShown);
}

/** What was typed, but for a text that is too long to be sent back, and the draft that the form carries along. */
function typedShort(form: FormData): Typed {
	const { shown: _shown, text: pasted, ...typed } = typedIn(form);
	return pasted !== undefined && pasted.length <= longestReturned ? { ...typed, text: pasted } : typed;
}

const longestReturned = 5 * 1024 * 1024;

const unitOf = (cookie: string | undefined): Unit => (cookie === 'cm' ? 'cm' : 'in');

const sheetOf = (journal: Journal, wearer: string | undefined) =>
	wearer === undefined || wearer === someoneNew ? undefined : journal.wearer(wearer)?.sheets[0];
