import type { Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Version } from '$lib/server/journal/records.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { atStart } from '$lib/ui/fitting/casing.ts';
import { alterationTitle, alterationWords } from '$lib/ui/fitting/words/alteration.ts';
import { fittingName, stationNotes } from '$lib/ui/garment/station-words.ts';
import { saidOn } from '$lib/ui/version/said-on.ts';

/** What made a version: the fitting that was carried with its alterations, what was taken back out, or where the draft is from. */
export function madeBy(page: GarmentPage, version: Version, before: Draft | undefined, unit: Unit) {
	const day = dayWords(localDay(new Date(version.createdAt)));
	if (version.reason === 'base' || !before) {
		const [from] = stationNotes({ kind: 'version', version }, unit);
		const said = version.sourceName === '' || version.sourceName.toLowerCase() === from.toLowerCase();
		const name = said ? '' : `, ${version.sourceName}`;
		return {
			caption: `${from}${name}, ${day}`,
			words: `${atStart(from)}${name}.`,
			href: undefined,
			link: undefined,
			alterations: []
		};
	}
	if (version.reason === 'withdrawn') {
		const found = alterationOf(page, version.withdrew);
		const what = found
			? `alteration ${found.alteration.number} of ${fittingName(found.fitting).toLowerCase()}`
			: 'an alteration';
		return {
			caption: `made on ${day} without ${what}`,
			words: `${atStart(what)} was taken back out, and everything else carried anew from the draft.`,
			href: found && `/garments/${page.garment.id}/fittings/${found.fitting.id}`,
			link: found && fittingName(found.fitting).toLowerCase(),
			alterations: found
				? [rowOf(page, found.alteration.id, before, before, unit, 'withdrawn')].filter((row) => row !== undefined)
				: []
		};
	}
	const carried = page.fittings.find(({ fitting }) => fitting.id === version.fitting);
	const name = carried ? fittingName(carried.fitting).toLowerCase() : 'a fitting';
	const fittedOn = carried ? `, ${dayWords(carried.fitting.date)}` : '';
	return {
		caption: `carried from ${name} on ${day}`,
		words: `${atStart(name)}${fittedOn}${carried?.fitting.pinnedBy ? `, pinned by ${carried.fitting.pinnedBy}` : ''}.`,
		href: carried && `/garments/${page.garment.id}/fittings/${carried.fitting.id}`,
		link: name,
		alterations: version.steps
			.map(({ alteration }) => rowOf(page, alteration, before, version.draft, unit, 'standing'))
			.filter((row) => row !== undefined)
	};
}

function alterationOf({ fittings }: GarmentPage, id: string | null) {
	for (const one of fittings) {
		const alteration = one.alterations.find((each) => each.id === id);
		if (alteration) return { ...one, alteration };
	}
	return undefined;
}

function rowOf(
	page: GarmentPage,
	id: string,
	before: Draft,
	after: Draft,
	unit: Unit,
	state: 'standing' | 'withdrawn'
) {
	const found = alterationOf(page, id);
	if (!found) return undefined;
	const { alteration, observations } = found;
	const draft = saidOn(before, after, alteration.intent);
	const { subject } = alterationWords(draft, alteration.intent, unit);
	const title = alterationTitle(draft, alteration.intent, unit, alteration.act);
	const seen = observations.find((one) => one.id === alteration.answers);
	return {
		id,
		number: alteration.number,
		state,
		subject,
		did: title.startsWith(`${subject}, `) ? title.slice(subject.length + 2) : title,
		note: alteration.note,
		...(seen && { seen: { letter: seen.letter, what: seen.what } })
	};
}
