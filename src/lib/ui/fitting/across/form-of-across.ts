import { undividedName } from '../../../engine/index.ts';
import type { Alteration, Draft } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { findAct } from '../acts.ts';
import { keptEdge, staying } from './cuts-across.ts';
import { fieldReader } from '../form/form-parts.ts';
import type { Recorded } from '../form/form-of-alteration.ts';
import { lineOfCuts } from './line-of-cuts.ts';
import { crossedBy } from './lines-across.ts';
import { readAcross } from './read-across.ts';
import { lengthTyped, type Typed } from '../typed.ts';

type Spread = Extract<Alteration, { kind: 'spread' }>;

/** Amounts and offsets nearer than this are the same, mm. */
const same = 0.01;

/** The fields of a fold or a slash across; undefined where they would not say the same alteration again. */
export function spreadFields(draft: Draft, intent: Spread, recorded: Recorded, unit: Unit): Typed | undefined {
	const found = lineOfCuts(draft, intent.cuts);
	if (!found) return undefined;
	const { line, height } = found;
	const [first, last] = [intent.cuts[0], intent.cuts[intent.cuts.length - 1]];
	const read = intent.cuts.some(({ gapFrom, gapTo }) => gapFrom !== undefined || gapTo !== undefined);
	const around = line.run.ring && intent.cuts.length === 2;
	const [begins, finishes] = [first.gapFrom ?? 0, (around ? first : last).gapTo ?? 0];
	const kept = findAct(recorded.act)?.key;
	const sum = begins + finishes;
	const act = sum < 0 ? 'folded-across' : sum > 0 ? 'slashed' : kept === 'slashed' ? 'slashed' : 'folded-across';
	const measured = act === 'folded-across' && recorded.measured === 'one-layer' ? 'one-layer' : 'whole-fold';
	const typed = (mm: number) => lengthTyped(Math.abs(mm) / (measured === 'one-layer' ? 2 : 1), unit);
	const pieces = crossedBy(line, height);
	const one = pieces.find(({ id }) => id === undividedName(first.piece));
	const stays = one && staying.find((part) => keptEdge(one, part) === undividedName(first.keep));
	const fields: Typed = {
		act,
		across: line.id,
		sides: intent.on,
		ticked: 'yes',
		...Object.fromEntries(intent.cuts.map(({ piece }) => [`piece.${undividedName(piece)}`, 'yes'])),
		...(!line.fixed && {
			off: lengthTyped(Math.abs(Math.abs(height) < same ? 0 : height), unit),
			offWay: height < -same ? 'below' : 'above'
		}),
		...(act === 'folded-across' && { measured }),
		shape: Math.abs(begins - finishes) < same ? 'even' : 'wedge',
		...(read && { first: typed(begins), ...(Math.abs(begins - finishes) >= same && { last: typed(finishes) }) }),
		...(stays && { stays })
	};
	const again = readAcross(
		findAct(act)!,
		{ of: 'across', id: line.id },
		fieldReader(draft, unit, read ? fields : { ...fields, read: 'later' })
	);
	return again?.intents.length === 1 && alike(again.intents[0], plain(intent)) ? fields : undefined;
}

const plain = ({ kind, on, cuts }: Spread) => ({ kind, on, cuts });

function alike(one: unknown, other: unknown): boolean {
	if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other) < same;
	if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return one === other;
	const [names, others] = [one, other].map((of) => Object.keys(of).filter((name) => !isNothing(of, name)));
	return (
		names.length === others.length &&
		names.every((name) => alike((one as Record<string, unknown>)[name], (other as Record<string, unknown>)[name]))
	);
}

/** An offset of nothing is as good as none. */
const isNothing = (of: object, name: string) => {
	const value = (of as Record<string, unknown>)[name];
	return value === undefined || (name === 'offset' && Math.abs(value as number) < same);
};
