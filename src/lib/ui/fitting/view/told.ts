import { easeTable, undividedName } from '../../../engine/index.ts';
import type { Draft } from '../../../engine/index.ts';
import { findEasePreset } from '../../../measure/ease-ranges.ts';
import { inUnit } from '../../../measure/in-unit.ts';
import { easeRows } from '../../garment/ease-rows.ts';
import { letterOf } from '../../version/query-rows.ts';
import { earlierWork } from '../carried/earlier.ts';
import { effectOf, sumOf, targetOfIntent } from '../carried/effect.ts';
import type { FittingGround } from '../ground.ts';
import { field } from '../typed.ts';
import { alterationTitle } from '../words/alteration.ts';
import type { InHand } from './in-hand.ts';

/** Everything under “What it does”. */
export type ToldOfHand = NonNullable<ReturnType<typeof toldOf>>;

/** What the alteration in the hand, or the one just kept, does. */
export function toldOf(held: InHand) {
	const { focus, kept } = held;
	const { ground } = kept;
	const { unit } = ground;
	const [first] = focus;
	if (!first) return undefined;
	const last = focus[focus.length - 1]!;
	const effect = effectOf(focus, ground.base, saying(held));
	return {
		title: alterationTitle(first.before, first.alteration, unit, recordOf(held)?.act),
		notRead: focus.some(({ unplaced }) => unplaced?.why === 'not-read'),
		effect,
		ease: ground.body && easeTold(ground.body, ground, first.before, last.after, effect.levels),
		round: ground.body ? [] : effect.levels,
		queries: queriesTold(held, effect.levels),
		earlier: earlierWork(first.before, first.alteration, ground.earlier, unit)
	};
}

/** What was told, with the sum of the amount as it is now: all that is said in the frame of a step. */
export function toldStepped(told: ToldOfHand | undefined, held: InHand): ToldOfHand | undefined {
	const [first] = held.focus;
	if (!told || !first) return undefined;
	const { sum: _, fold: __, at: ___, ...rest } = told.effect;
	return { ...told, effect: { ...rest, ...sumOf(first, saying(held)) } };
}

const recordOf = ({ focus, kept }: InHand) => kept.alterations.find(({ id }) => id === focus[0]?.alteration.id);

/** How its amount is said: as it was measured, and at the chosen place. */
function saying(held: InHand) {
	const { read, typed, kept } = held;
	const measured = read && 'read' in read ? read.read.measured : (recordOf(held)?.measured ?? null);
	return { unit: kept.ground.unit, measured, here: field(typed, 'here') };
}

/** Those about what it touched. */
function queriesTold({ focus, kept, queries }: InHand, levels: readonly string[]) {
	const { unit } = kept.ground;
	const target = targetOfIntent(focus[0].alteration);
	const touched = new Set(
		focus.flatMap(({ step }) => step?.touched.map(({ feature }) => undividedName(feature)) ?? [])
	);
	return queries()
		.filter(
			({ code, where }) =>
				!['unplaced', 'not-read'].includes(code) &&
				(touched.has(undividedName(where)) ||
					undividedName(where) === target ||
					(code === 'waist-under-body' && levels.includes(where)))
		)
		.map(({ sentence, severity }, i) => ({ letter: letterOf(i), sentence: inUnit(sentence, unit), severity }));
}

function easeTold(
	{ measures, words }: NonNullable<FittingGround['body']>,
	{ easePreset }: FittingGround,
	before: Draft,
	after: Draft,
	levels: readonly string[]
) {
	const [was, is] = [before, after].map((draft) =>
		easeTable(draft, measures).filter(({ level }) => levels.includes(level))
	);
	return { ...easeRows(is!, was, easePreset === undefined ? undefined : findEasePreset(easePreset)), words };
}
