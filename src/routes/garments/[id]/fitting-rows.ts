import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Alteration, Fitting, Version } from '$lib/server/journal/records.ts';
import type { Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import { dayNear } from '$lib/ui/garment/day-near.ts';
import { movesAlong } from '$lib/ui/garment/moves-along.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { alterationWords, greatestAmount } from '$lib/ui/fitting/alteration-words.ts';
import { inSentence } from '$lib/ui/fitting/feature-names.ts';

/** What each fitting did, the latest first: its alterations with the greatest amount of each. */
export function fittingRows(page: GarmentPage, versions: readonly Version[], today: string, unit: Unit) {
	return page.fittings
		.map(({ fitting, alterations }) => ({
			id: fitting.id,
			name: fittingName(fitting),
			when: dayNear(fitting.date, today, 'plain'),
			open: fitting.closedAt === null,
			alterations: alterations.map((alteration) => alterationRow(alteration, carriedOnto(fitting, versions), unit))
		}))
		.reverse();
}

/** The draft that a fitting's alterations were, or would be, carried to. */
function carriedOnto({ carriedInto, closedAt, on }: Fitting, versions: readonly Version[]): Draft {
	const number = carriedInto !== null ? carriedInto - 1 : closedAt === null ? versions.length - 1 : on;
	return versions[number]!.draft;
}

function alterationRow(alteration: Alteration, draft: Draft, unit: Unit) {
	const { id, number, state, intent, reason, withdrawal } = alteration;
	const { subject, sides, amounts } = alterationWords(draft, intent, unit);
	const most = greatestAmount(amounts);
	const place = most && most.place !== '' ? `, ${inSentence(most.place)}` : '';
	const mark: 'not-read' | 'withdrawn' | 'standing' =
		state === 'not-read' ? 'not-read' : state === 'withdrawn' || withdrawal ? 'withdrawn' : 'standing';
	return {
		id,
		number,
		mark,
		what: `${subject}${place}`,
		note: [most && most.way === undefined ? most.word : '', noteOf(alteration, reason, sides)]
			.filter(Boolean)
			.join(', '),
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
