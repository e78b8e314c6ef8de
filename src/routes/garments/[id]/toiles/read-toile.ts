import { lengthIn, optionalDay, readForm, text, type FormFault, type Typed } from '$lib/server/http/form.ts';
import type { Allowances, Day } from '$lib/server/journal/records.ts';
import type { Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import { allowanceRows } from '$lib/ui/toile/allowance-rows.ts';
import { shownAllowance } from '$lib/ui/toile/toile-words.ts';
import type { AllowancesByEdge } from '$lib/ui/allowances/usual-allowances.ts';
import { z } from 'zod';
import { fieldOf } from './field-names.ts';

/** A toile as its form says it. */
export interface ToileTyped {
	readonly cloth: string;
	readonly note: string;
	readonly date?: Day;
	readonly allowance: number;
	readonly allowances: Allowances;
}

const fields = z.object({ cloth: text({ max: 2000 }), note: text({ max: 20_000 }), date: optionalDay });

/** The widest allowance that is asked for, mm: a hem of a foot. */
const widest = 304.8;

/**
 * Reads a toile's form: its allowance for all edges and those of single edges, where they are not left empty, with a
 * sentence for each that cannot be read or is below nothing. A field that still says what it was drawn with keeps the exact
 * length of `before`.
 */
export function readToile(
	typed: Typed,
	draft: Draft,
	unit: Unit,
	before?: AllowancesByEdge
): { readonly value: ToileTyped } | { readonly fault: FormFault } {
	const read = readForm(fields, typed);
	const { set, problems: wrong } = readAllowances(typed, draft, unit, before);
	const problems = { ...('fault' in read ? read.fault.problems : {}), ...wrong };
	if ('fault' in read || set === undefined || Object.keys(problems).length > 0) return { fault: { typed, problems } };
	return { value: { ...read.value, allowance: set.default, allowances: set.edges } };
}

/** The allowances alone; what cannot be read is left out, so that the rest can still be drawn. */
export function readAllowances(
	typed: Typed,
	draft: Draft,
	unit: Unit,
	before?: AllowancesByEdge
): { readonly set?: AllowancesByEdge; readonly problems: Readonly<Record<string, string>> } {
	const problems: Record<string, string> = {};
	const read = (field: string, was: number | undefined): number | undefined => {
		const words = typed[field]?.trim() ?? '';
		if (was !== undefined && words === shownAllowance(was, unit)) return was;
		const length = lengthIn(unit, { max: widest }).safeParse(words);
		if (length.success) return length.data;
		problems[field] = length.error.issues[0]!.message;
		return undefined;
	};
	const usual = read('allowance', before?.default);
	const edges: Record<string, number> = {};
	for (const row of allowanceRows(draft))
		for (const { edge } of row.edges) {
			if ((typed[fieldOf(edge)]?.trim() ?? '') === '') continue;
			const mm = read(fieldOf(edge), before?.edges[edge]);
			if (mm !== undefined) edges[edge] = mm;
		}
	return usual === undefined ? { problems } : { set: { default: usual, edges }, problems };
}

/** The fields of some allowances, as the form shows them. */
export function allowanceFields(set: AllowancesByEdge, unit: Unit): Typed {
	const edges = Object.entries(set.edges).map(([edge, mm]) => [fieldOf(edge), shownAllowance(mm, unit)] as const);
	return { allowance: shownAllowance(set.default, unit), ...Object.fromEntries(edges) };
}
