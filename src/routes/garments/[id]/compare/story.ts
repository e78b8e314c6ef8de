import type { Unit } from '$lib/measure/units.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Alteration, Fitting, Observation, Settlement, Version } from '$lib/server/journal/records.ts';
import { localDay } from '$lib/server/journal/store.ts';
import { easeWords, roundChanges, roundWords } from '$lib/ui/compare/round-changes.ts';
import { touchedBy } from '$lib/ui/compare/touched-by.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { alterationTitle } from '$lib/ui/fitting/words/alteration.ts';
import { atStart } from '$lib/ui/fitting/casing.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { saidInTwo } from '$lib/ui/garment/said-in-two.ts';
import { letterOf } from '$lib/ui/version/query-rows.ts';
import { saidOn } from '$lib/ui/version/said-on.ts';
import { versionName } from '$lib/ui/version/version-name.ts';
import type { ChosenLine } from './moved.ts';

interface Pinned {
	readonly alteration: Alteration;
	readonly fitting: Fitting;
}

export type StoryEntry =
	| {
			readonly kind: 'observation';
			readonly letter: string;
			readonly closed: boolean;
			readonly what: string;
			readonly note: string;
	  }
	| {
			readonly kind: 'alteration';
			readonly number: number;
			readonly state: 'standing' | 'withdrawn';
			readonly title: string;
			readonly note: string;
			readonly said: string;
	  }
	| {
			readonly kind: 'query';
			readonly letter: string;
			readonly settled: boolean;
			readonly title: string;
			readonly note: string;
	  }
	| {
			readonly kind: 'version';
			readonly number: number;
			readonly href: string;
			readonly title: string;
			readonly note: string;
	  };

/** Everything that led to a line as it is: what was seen, what was altered, what was asked, and which versions came of it. */
export function storyOf(page: GarmentPage, versions: readonly Version[], chosen: ChosenLine, unit: Unit) {
	const touches = touchedBy(versions, chosen.features);
	const entries = versions.flatMap((version, i) => {
		const before = versions[i - 1];
		if (!before) return [];
		const pinned = touches
			.filter((touch) => touch.version === version.number)
			.flatMap(({ alteration }) => pinnedOf(page, alteration));
		const takenOut = touches.some(({ alteration }) => alteration === version.withdrew)
			? pinnedOf(page, version.withdrew!)
			: [];
		const asked = queriesOf(version, chosen, pinned, unit);
		if (pinned.length + takenOut.length + asked.length === 0) return [];
		return [
			...pinned.flatMap((one) => alterationEntries(page, one, before, version, unit)),
			...takenOut.map((one) => takenOutEntry(one, before, version, unit)),
			...asked,
			versionEntry(page, version, before, unit)
		];
	});
	const standing = touches.map(({ alteration }) => alteration);
	return { entries, standing };
}

function pinnedOf({ fittings }: GarmentPage, id: string): readonly Pinned[] {
	return fittings.flatMap(({ fitting, alterations }) =>
		alterations.filter((alteration) => alteration.id === id).map((alteration) => ({ alteration, fitting }))
	);
}

function alterationEntries(
	page: GarmentPage,
	{ alteration, fitting }: Pinned,
	before: Version,
	version: Version,
	unit: Unit
): StoryEntry[] {
	const seen = page.fittings.flatMap(({ observations }) => observations).find(({ id }) => id === alteration.answers);
	return [
		...(seen ? [observationEntry(page, seen)] : []),
		{
			kind: 'alteration',
			number: alteration.number,
			state: alteration.withdrawal ? 'withdrawn' : 'standing',
			title: alterationTitle(
				saidOn(before.draft, version.draft, alteration.intent),
				alteration.intent,
				unit,
				alteration.act
			),
			note: `${fittingName(fitting)}, ${dayWords(fitting.date)}${alteration.readings.pinnedOn ? `; pinned on ${sideWords[alteration.readings.pinnedOn]}` : ''}`,
			said: alteration.note
		}
	];
}

const sideWords = { right: 'the right side', left: 'the left side', both: 'both sides' } as const;

function observationEntry({ fittings, foundations }: GarmentPage, seen: Observation): StoryEntry {
	const fitting = fittings.find((one) => one.fitting.id === seen.fitting)?.fitting;
	const over = foundations.find(({ id }) => id === fitting?.foundation)?.name;
	return {
		kind: 'observation',
		letter: seen.letter,
		closed: !seen.stillOpen,
		what: seen.what,
		note: fitting
			? `seen at ${fittingName(fitting).toLowerCase()}, ${dayWords(fitting.date)}${over ? `, over ${over}` : ''}`
			: ''
	};
}

function takenOutEntry({ alteration, fitting }: Pinned, before: Version, version: Version, unit: Unit): StoryEntry {
	return {
		kind: 'alteration',
		number: alteration.number,
		state: 'withdrawn',
		title: `${alterationTitle(before.draft, alteration.intent, unit, alteration.act)}: taken back out`,
		note: `of ${fittingName(fitting).toLowerCase()}; ${dayWords(localDay(new Date(version.createdAt)))}`,
		said: alteration.withdrawal?.note ?? ''
	};
}

/** What was asked of the line in a version: the queries that name it, and those that one of its alterations settled. */
function queriesOf(
	version: Version,
	{ line, features }: ChosenLine,
	pinned: readonly Pinned[],
	unit: Unit
): StoryEntry[] {
	const named = new Set([line.feature, ...features]);
	const ids = new Set(pinned.map(({ alteration }) => alteration.id));
	const settled = version.settlements
		.filter(({ where, alteration }) => named.has(where) || (alteration !== null && ids.has(alteration)))
		.map((one) => ({ sentence: one.sentence, settled: one as Settlement | undefined }));
	const open = version.unsettled
		.filter(({ where }) => named.has(where))
		.map(({ sentence }) => ({ sentence, settled: undefined }));
	return [...open, ...settled].map(({ sentence, settled: how }, i): StoryEntry => {
		const { head, rest } = saidInTwo(sentence, unit);
		const words = rest ? `${head}: ${rest}` : head;
		return {
			kind: 'query',
			letter: letterOf(i),
			settled: how !== undefined,
			title: words,
			note: how ? settledWords(how) : 'not settled yet'
		};
	});
}

function settledWords({ how, note, at }: Settlement): string {
	const day = dayWords(localDay(new Date(at)));
	const done = how === 'left' ? `left as it is, ${day}` : `settled by an alteration, ${day}`;
	return note === '' ? done : `${done}: ${note}`;
}

function versionEntry({ garment, sheet }: GarmentPage, version: Version, before: Version, unit: Unit): StoryEntry {
	const changes = roundChanges(before.draft, version.draft, sheet ? measuresByLevel(sheet.measures) : {});
	return {
		kind: 'version',
		number: version.number,
		href: `/garments/${garment.id}/versions/${version.number}`,
		title: `${versionName(version.number)}: ${roundWords(changes, unit)}`,
		note: atStart(easeWords(changes, unit))
	};
}
