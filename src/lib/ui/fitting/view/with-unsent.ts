import { inUnit } from '../form/in-unit.ts';
import { asAlterations, readAlteration } from '../form/read-alteration.ts';
import type { FittingGround, GroundAlteration } from '../ground.ts';
import { field, type Typed } from '../typed.ts';
import { draftBefore } from './in-hand.ts';
import { keptView } from './kept-view.ts';

/** A form of the fitting page that the journal has not received yet. */
export interface UnsentForm {
	/** The address that it is sent to; `?/keep` and the like say what it asks. */
	readonly action: string;
	readonly fields: Typed;
}

/** What is kept, as it will be once the forms are received: kept ones that they change, and new ones that wait. */
export interface WithUnsent {
	readonly ground: FittingGround;
	readonly waiting: readonly GroundAlteration[];
}

/**
 * The ground with the forms that were not received yet, in order. What a form says is read against all that comes before it, as the
 * journal will read it; one that cannot be read so waits unseen until it is answered.
 */
export function withUnsent(ground: FittingGround, forms: readonly UnsentForm[]): WithUnsent {
	return forms.reduce<WithUnsent>(withOne, { ground, waiting: [] });
}

function withOne(all: WithUnsent, { action, fields }: UnsentForm): WithUnsent {
	const asks = /\?\/(\w+)/.exec(action)?.[1];
	const id = field(fields, 'alteration');
	if (asks === 'leaveOut') return changed(all, id, { state: 'withdrawn' });
	if (asks === 'takeUp') return changed(all, id, { state: 'standing' });
	if (asks !== 'keep') return all;
	const { ground, waiting } = all;
	const read = readAlteration(
		draftBefore(keptView(ground, waiting), id || undefined),
		inUnit(fields, ground.unit),
		ground.unit
	);
	if ('problems' in read) return all;
	const { act, measured, readings, note, answers } = read.read;
	const said = { act, measured, readings, note, answers, state: 'standing' } as const;
	const intents = asAlterations(read.read.intents);
	const [first, second] = intents;
	if (id !== '') return changed(all, id, { ...said, intent: { ...first!, id } });
	const last = Math.max(0, ...[...ground.alterations, ...waiting].map(({ number }) => number));
	const added = [first!, ...(second ? [second] : [])].map((intent, index): GroundAlteration => {
		const name = (n: number) => `unsent-${waiting.length + n}`;
		const number = last + 1 + index;
		return {
			...{ ...said, id: name(index), revision: 0, number, position: number, takenOut: false, notSent: true },
			...{ intent: { ...intent, id: name(index) }, pairedWith: index === 0 ? null : name(0) }
		};
	});
	return { ground, waiting: [...waiting, ...added] };
}

function changed({ ground, waiting }: WithUnsent, id: string, change: Partial<GroundAlteration>): WithUnsent {
	const alterations = ground.alterations.map((one) => (one.id === id ? { ...one, ...change, notSent: true } : one));
	return { ground: { ...ground, alterations }, waiting };
}
