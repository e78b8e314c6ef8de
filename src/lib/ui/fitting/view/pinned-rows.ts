import { inUnit } from '../../../measure/in-unit.ts';
import { findAct } from '../acts.ts';
import type { GroundAlteration } from '../ground.ts';
import { alterationWords, greatestAmount } from '../words/alteration.ts';
import type { InHand } from './in-hand.ts';

export type PinnedRow = ReturnType<typeof pinnedRows>[number];

/** Everything pinned so far, in the order of carrying; those that were left out stay in their place. */
export function pinnedRows({ kept, carried }: InHand) {
	const { alterations, ground } = kept;
	return alterations.map((one, i) => {
		const placed = carried.find(({ alteration }) => alteration.id === one.id);
		const { subject, done, sides, amounts } = alterationWords(placed?.before ?? ground.base, one.intent, ground.unit);
		const most = greatestAmount(amounts);
		const refused =
			placed?.unplaced && placed.unplaced.why !== 'not-read'
				? inUnit(placed.unplaced.sentence, ground.unit)
				: undefined;
		return {
			id: one.id,
			revision: one.revision,
			number: one.number,
			mark: markOf(one),
			subject,
			done: done ?? `${findAct(one.act)?.done ?? 'pinned'}, not read yet`,
			sides,
			most: most?.way
				? { way: most.way, word: most.word, mm: Math.max(Math.abs(most.mm), Math.abs(most.other ?? 0)) }
				: undefined,
			note: one.note,
			answers: one.answers === null ? undefined : ground.letters[one.answers],
			settles: one.settles === undefined ? undefined : inUnit(one.settles, ground.unit),
			...(refused !== undefined && { refused }),
			...(one.notSent && { notSent: true }),
			up: i > 0 ? i : undefined,
			down: i < alterations.length - 1 ? i + 2 : undefined
		};
	});
}

function markOf({ state, takenOut }: GroundAlteration): 'standing' | 'not-read' | 'withdrawn' {
	if (state === 'withdrawn' || takenOut) return 'withdrawn';
	return state === 'not-read' ? 'not-read' : 'standing';
}
