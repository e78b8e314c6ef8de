import { garmentRounds } from '$lib/engine/index.ts';
import type { Draft } from '$lib/engine/index.ts';
import { formatLength } from '$lib/measure/format-length.ts';
import { findBodyMeasure } from '$lib/measure/names.ts';
import type { Unit } from '$lib/measure/units.ts';
import { inch } from '$lib/measure/units.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { inSentence } from '$lib/ui/fitting/casing.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';

/** What is to be minded at this fitting: what was worn, measures of the day, the toile as it was sewn. A sentence each. */
export function fittingNotes(page: GarmentPage, fitting: Fitting, onBody: Draft, unit: Unit): readonly string[] {
	return [
		...wornNotes(page, fitting),
		...insideOut(fitting),
		...measureNotes(page, fitting, unit),
		...sewnNotes(fitting, onBody, unit)
	];
}

function wornNotes(page: GarmentPage, { id, kind, foundation, date }: Fitting): readonly string[] {
	if (kind === 'table') return [];
	const nameOf = (one: string | null) => page.foundations.find((known) => known.id === one)?.name;
	const worn = nameOf(foundation);
	if (worn === undefined) return ['What was worn under it is not noted: a fit holds only over what it was fitted on.'];
	const last = lastFitting(page, id, date);
	const before = last && nameOf(last.foundation);
	const { sheet } = page;
	return [
		...(last && before !== undefined && last.foundation !== foundation
			? [
					`At ${fittingName(last).toLowerCase()} ${before} was worn under it, now ${worn}. What fitted then need not fit now: read each pin for itself.`
				]
			: []),
		...(sheet && sheet.foundation !== foundation
			? [
					`Ease is reckoned from the measures of ${dayWords(sheet.date)}, taken over ${nameOf(sheet.foundation)}. Over ${worn} the body measures differently, so the ease below is not this fitting’s: measure again over it.`
				]
			: [])
	];
}

/** The fitting before this one. */
export function lastFitting(page: GarmentPage, id: string, date: string): Fitting | undefined {
	return page.fittings
		.map(({ fitting }) => fitting)
		.filter((one) => one.kind === 'fitting' && one.id !== id && one.date <= date && one.closedAt !== null)
		.at(-1);
}

function insideOut({ worn }: Fitting): readonly string[] {
	return worn === 'inside'
		? [
				'Worn inside out: the pieces cut as the left lie on the wearer’s right, and the lap is the other way. Right and left here are always the wearer’s.'
			]
		: [];
}

/** Measures of the day this far from the sheet ask for measuring again, mm. */
const offBy = inch / 2;

function measureNotes({ sheet }: GarmentPage, { checkMeasures }: Fitting, unit: Unit): readonly string[] {
	if (!sheet) return [];
	return Object.entries(checkMeasures).flatMap(([key, mm]) => {
		const known = sheet.measures[key];
		if (known === undefined || Math.abs(known - mm) <= offBy) return [];
		const name = findBodyMeasure(key)?.name ?? key;
		return [
			`${name} ${say(mm, unit)} today, ${say(known, unit)} on the sheet of ${dayWords(sheet.date)}: measure again before cutting.`
		];
	});
}

/** A toile sewn this far from its lines is told, mm: 1/8 in. */
const sewnOff = inch / 8;

function sewnNotes({ asSewn }: Fitting, onBody: Draft, unit: Unit): readonly string[] {
	const rounds = garmentRounds(onBody).filter(({ limb }) => !limb);
	const off = (['bust', 'waist'] as const).flatMap((level) => {
		const [sewn, drawn] = [asSewn[level], rounds.find((one) => one.level === level)?.round];
		if (sewn === undefined || drawn === undefined || Math.abs(sewn - drawn) < sewnOff) return [];
		return [`${say(sewn - drawn, unit)} ${sewn < drawn ? 'smaller' : 'larger'} at the ${level}`];
	});
	if (off.length === 0) return [];
	const from =
		asSewn.readFrom === 'stitching'
			? 'The pins are read from the stitching.'
			: asSewn.readFrom === 'traced-line'
				? 'The pins are read from the traced line.'
				: 'Say whether the pins are read from the traced line or from the stitching.';
	return [`The toile is sewn ${off.join(' and ')} than it was drawn. ${from}`];
}

const say = (mm: number, unit: Unit) => formatLength(mm, unit, { sign: 'never' }).text;

/** “chemise, corset laced to 25″” in a sentence. */
export const wornName = (page: GarmentPage, { foundation }: Fitting): string | undefined => {
	const name = page.foundations.find(({ id }) => id === foundation)?.name;
	return name === undefined ? undefined : inSentence(name);
};
