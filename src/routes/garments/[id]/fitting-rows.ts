import type { GarmentPage, Preview } from '$lib/server/journal/pages.ts';
import type { Alteration, Fitting, Version } from '$lib/server/journal/records.ts';
import { findDart, findFoldDart } from '$lib/engine/index.ts';
import type { Draft } from '$lib/engine/index.ts';
import { inUnit } from '$lib/measure/in-unit.ts';
import type { Unit } from '$lib/measure/units.ts';
import { dayNear } from '$lib/ui/garment/day-near.ts';
import { movesAlong } from '$lib/ui/garment/moves-along.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { alterationWords, greatestAmount } from '$lib/ui/fitting/words/alteration.ts';
import { inSentence } from '$lib/ui/fitting/casing.ts';

/** What each fitting did, the latest first: its alterations with the greatest amount of each. */
export function fittingRows(
	page: GarmentPage,
	versions: readonly Version[],
	previews: ReadonlyMap<string, Preview>,
	today: string,
	unit: Unit
) {
	return page.fittings
		.map(({ fitting, alterations }) => ({
			id: fitting.id,
			name: fittingName(fitting),
			when: dayNear(fitting.date, today, 'plain'),
			open: fitting.closedAt === null,
			alterations: alterations.map((alteration) =>
				alterationRow(
					alteration,
					toldAgainst(alteration, draftsOf(fitting, versions, previews)),
					noPlaceYet(alteration, previews.get(fitting.id), unit),
					unit
				)
			)
		}))
		.reverse();
}

/** The drafts that a fitting's alterations were, or would be, carried from and to. */
function draftsOf(
	{ id, carriedInto, on }: Fitting,
	versions: readonly Version[],
	previews: ReadonlyMap<string, Preview>
): readonly [before: Draft, after: Draft] {
	const preview = previews.get(id);
	if (preview) return [preview.before, preview.after];
	return carriedInto === null
		? [versions[on]!.draft, versions[on]!.draft]
		: [versions[carriedInto - 1]!.draft, versions[carriedInto]!.draft];
}

/** The draft to look an alteration's things up in: the one before, unless its dart was made at the same fitting. */
function toldAgainst({ intent }: Alteration, [before, after]: readonly [Draft, Draft]): Draft {
	const dart = 'dart' in intent && typeof intent.dart === 'string' ? intent.dart : undefined;
	return dart === undefined || findDart(before, dart) || findFoldDart(before, dart) ? before : after;
}

/** Why an alteration of an open fitting would find no place, if it were carried now. */
function noPlaceYet({ id, state }: Alteration, preview: Preview | undefined, unit: Unit) {
	if (state !== 'standing') return undefined;
	const waits = preview?.unplaced.find(({ alteration }) => alteration === id);
	return waits && inUnit(waits.sentence, unit);
}

function alterationRow(alteration: Alteration, draft: Draft, noPlace: string | undefined, unit: Unit) {
	const { id, number, state, intent, reason, withdrawal } = alteration;
	const { subject, done, sides, amounts } = alterationWords(draft, intent, unit);
	const most = greatestAmount(amounts);
	// What moved no line has no amount to stand at the right: its words do.
	const said = most === undefined ? done : most.way === undefined ? most.word : undefined;
	const place = most && most.place !== '' ? `, ${inSentence(most.place)}` : '';
	const mark: 'not-read' | 'withdrawn' | 'standing' =
		state === 'not-read' ? 'not-read' : state === 'withdrawn' || withdrawal ? 'withdrawn' : 'standing';
	return {
		id,
		number,
		mark,
		what: `${subject}${place}`,
		note: [said, noPlace ?? noteOf(alteration, inUnit(reason, unit), sides)].filter(Boolean).join('; '),
		most: most && { way: most.way, word: most.word, mm: most.mm },
		moves: mark === 'standing' ? movesAlong(draft, intent) : undefined
	};
}

function noteOf({ state, withdrawal, note }: Alteration, reason: string, sides: string | undefined): string {
	if (state === 'not-read') return 'pinned, not read yet';
	if (withdrawal) return `taken back out${withdrawal.note === '' ? '' : `: ${withdrawal.note}`}`;
	if (state === 'withdrawn') return 'left out';
	if (state === 'unplaced') return `waits for a place: ${reason}`;
	return sides && /only$/.test(sides) ? sides : note;
}
