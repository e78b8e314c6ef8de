import type { GarmentPage, FittingWithContents } from '$lib/server/journal/pages.ts';
import type { Observation, SeenAt } from '$lib/server/journal/records.ts';
import type { Draft } from '$lib/engine/index.ts';
import { dartName, edgeName, pieceName, seamOf } from '$lib/ui/fitting/feature-names.ts';
import { observationGroups, observations } from '$lib/measure/observations.ts';
import { usualCures } from '$lib/ui/fitting/usual-cures.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { lastFitting } from './notes.ts';

/** What is usually seen, group by group, to choose from. */
export function listedToSee() {
	return observationGroups.map((group) => ({
		group,
		seen: observations.filter((one) => one.group === group).map(({ key, what }) => ({ key, what }))
	}));
}

/** What was seen at this fitting, with the alterations that answer it. */
export function seenRows({ alterations, observations }: FittingWithContents, draft: Draft, side: string) {
	return observations.map((one) => ({
		id: one.id,
		revision: one.revision,
		letter: one.letter,
		what: one.what,
		where: seenWhere(one.where, draft),
		seenAt: one.where,
		howBad: one.howBad,
		posture: one.posture,
		state: one.state,
		answeredBy: one.answeredBy,
		note: one.note,
		closed: !one.stillOpen,
		usually: one.stillOpen
			? usualCures(draft, { id: one.id, what: one.what, feature: one.where.feature }, side)
			: undefined,
		by: alterations
			.filter(({ id, state }) => one.alterations.includes(id) && state !== 'withdrawn')
			.map(({ number }) => number)
	}));
}

/** “front armhole, both sides: in front of it” */
export function seenWhere({ piece, feature, side, words }: SeenAt, draft: Draft): string {
	const place =
		feature !== undefined ? featureName(draft, feature) : piece === undefined ? '' : pieceName(draft, piece);
	const sides = side === undefined ? '' : side === 'both' ? 'both sides' : `${side} side`;
	return [place, sides, words].filter(Boolean).join(', ');
}

function featureName(draft: Draft, feature: string): string {
	if (!feature.includes('/')) return seamOf(draft, feature)?.name ?? feature;
	const dart = dartName(draft, feature);
	return draft.pieces.some((piece) => piece.darts.some(({ id }) => `${piece.id}/${id}` === feature))
		? dart
		: edgeName(draft, feature);
}

/** What the last fitting left: asked again at this one, until it is said what became of it. */
export function askedAgain(page: GarmentPage, { fitting }: FittingWithContents, draft: Draft) {
	if (fitting.kind === 'table') return undefined;
	const last = lastFitting(page, fitting.id, fitting.date);
	const seen = page.fittings.find((one) => one.fitting.id === last?.id)?.observations ?? [];
	if (!last || seen.length === 0) return undefined;
	return {
		fitting: fittingName(last),
		observations: seen.map((one) => ({
			id: one.id,
			letter: one.letter,
			what: one.what,
			where: seenWhere(one.where, draft),
			verdict: verdictAt(one, fitting.id)
		}))
	};
}

function verdictAt({ verdicts }: Observation, fitting: string) {
	return verdicts.filter((one) => one.fitting === fitting).at(-1)?.verdict;
}

/** What can be answered: this fitting's observations, and those of earlier ones that are still open. */
export function answerable(page: GarmentPage, { fitting, observations }: FittingWithContents) {
	const earlier = page.open.observations.filter((one) => one.fitting !== fitting.id);
	const nameOf = (id: string) => fittingName(page.fittings.find((one) => one.fitting.id === id)!.fitting);
	return [
		{ value: '', label: 'none' },
		...observations.map(({ id, letter, what }) => ({ value: id, label: `${letter}: ${what}` })),
		...earlier.map(({ id, letter, what, fitting: of }) => ({ value: id, label: `${nameOf(of)}, ${letter}: ${what}` }))
	];
}
