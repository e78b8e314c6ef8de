import { formatLength } from '../../measure/format-length.ts';
import type { Unit } from '../../measure/units.ts';
import type { AllowanceRow } from './allowance-rows.ts';

/** The states that a toile goes through, in order, as they are said of it, with what each means. */
export const toileStateWords = {
	cut: { name: 'Cut', meaning: 'cut out, its lines traced' },
	'put-together': { name: 'Put together', meaning: 'basted or sewn in a long stitch' },
	fitted: { name: 'Fitted', meaning: 'tried on and pinned' },
	marked: { name: 'Marked', meaning: 'the pins traced through on both layers' },
	'taken-apart': { name: 'Taken apart', meaning: 'unpicked and pressed flat' },
	restitched: { name: 'Restitched', meaning: 'sewn again on the lines of a later version' },
	lining: { name: 'Lining', meaning: 'it became the lining' },
	scrap: { name: 'Scrap', meaning: 'done with' }
} as const;

export type ToileStateSaid = keyof typeof toileStateWords;

/** “Restitched on the lines of version 2”; “Taken apart”. */
export function stateInWords(state: ToileStateSaid, stitchedTo: number): string {
	const { name } = toileStateWords[state];
	if (state !== 'restitched') return name;
	return `${name} on the lines of ${stitchedTo === 0 ? 'the draft' : `version ${stitchedTo}`}`;
}

/** What usually comes next; the toile may go to any other state too. */
export function nextState(state: ToileStateSaid): ToileStateSaid {
	const after: Readonly<Record<ToileStateSaid, ToileStateSaid>> = {
		cut: 'put-together',
		'put-together': 'fitted',
		fitted: 'marked',
		marked: 'taken-apart',
		'taken-apart': 'restitched',
		restitched: 'fitted',
		lining: 'lining',
		scrap: 'scrap'
	};
	return after[state];
}

/** Whether it can be tried on as it is. */
export function canBeTriedOn(state: ToileStateSaid): boolean {
	return state === 'cut' || state === 'put-together' || state === 'restitched';
}

/** One allowance that differs from the usual one, and where: “1/4″” at “Neck, armhole seam (Back, Front)”. */
export interface OtherAllowance {
	readonly mm: number;
	readonly where: string;
}

/** The allowances that differ from the default, the widest first, each with all its places: whole rows by their name. */
export function otherAllowances(
	rows: readonly AllowanceRow[],
	usual: number,
	edges: Readonly<Record<string, number>>
): readonly OtherAllowance[] {
	const places = new Map<number, string[]>();
	for (const row of rows) {
		const amounts = new Map<number, string[]>();
		for (const { edge, label } of row.edges) {
			const mm = edges[edge];
			if (mm === undefined || mm === usual) continue;
			amounts.set(mm, [...(amounts.get(mm) ?? []), label]);
		}
		for (const [mm, labels] of amounts) {
			const where = labels.length === row.edges.length ? row.name : `${row.name} (${labels.join(', ')})`;
			places.set(mm, [...(places.get(mm) ?? []), where]);
		}
	}
	return [...places].sort(([a], [b]) => b - a).map(([mm, where]) => ({ mm, where: where.join('; ') }));
}

/** An allowance as its field shows it: in sixteenths, or whole millimetres. */
export function shownAllowance(mm: number, unit: Unit): string {
	return formatLength(mm, unit, { denominator: unit === 'in' ? 16 : 8 }).text;
}
