/**
 * Forms as they come in: what was typed is kept word for word, read through zod, and given back with a sentence for each
 * field that is wrong. Nothing here knows a page.
 */
import { fail } from '@sveltejs/kit';
import { z } from 'zod';
import { parseLength, type LengthOptions } from '../../measure/parse-length.ts';
import type { Unit } from '../../measure/units.ts';
import type { Refusal, Stale } from '../journal/answer.ts';

/** Every text field of a form by its name, as typed. Files are not among them. */
export type Typed = Readonly<Record<string, string>>;

/** What a page needs to show a form again: what was typed, and what would be right. */
export interface FormFault<Current = unknown> {
	readonly typed: Typed;
	/** Sentences by field; those about the whole form under the empty name. */
	readonly problems: Readonly<Record<string, string>>;
	/** The record as it stands now, if it was changed since the form was drawn. */
	readonly current?: Current;
}

/** The text fields of a request's form. Of a name that occurs more than once the last counts; `form.getAll` has them all. */
export function typedIn(form: FormData): Typed {
	const typed: Record<string, string> = {};
	for (const [name, value] of form) if (typeof value === 'string') typed[name] = value;
	return typed;
}

/** The values of a form as its schema reads them, or what is wrong with each field. */
export function readForm<T>(schema: z.ZodType<T>, typed: Typed): { readonly value: T } | { readonly fault: FormFault } {
	const read = schema.safeParse(typed);
	if (read.success) return { value: read.data };
	const problems: Record<string, string> = {};
	for (const issue of read.error.issues) {
		const field = issue.path.map(String).join('.');
		problems[field] ??= issue.message;
	}
	return { fault: { typed, problems } };
}

/** Answers a form that was wrong: 400, with what was typed. */
export function formFault(fault: FormFault) {
	return fail(400, fault);
}

/**
 * Answers a form whose writing the journal did not keep: 404 for an unknown record, 409 for a closed or changed one, 400 for
 * what was asked wrongly. Nothing was written; what was typed is kept.
 */
export function notKept<Current>(answer: Refusal | Stale<Current>, typed: Typed) {
	if (answer.stale) {
		const changed =
			'This was changed elsewhere since the form was drawn. Both are shown: put in what holds, and save again.';
		return fail(409, { typed, problems: { '': changed }, current: answer.current } as FormFault<Current>);
	}
	const problems: Record<string, string> = {};
	for (const { field = '', sentence } of answer.problems)
		problems[field] = problems[field] ? `${problems[field]} ${sentence}` : sentence;
	const status = { unknown: 404, closed: 409, refused: 400 }[answer.code];
	return fail(status, { typed, problems } as FormFault<Current>);
}

/** A line or lines of text, trimmed; empty unless said to be needed, with the sentence that asks for it. */
export function text(options: { needed?: string; max?: number } = {}) {
	const { needed, max = 4000 } = options;
	const trimmed = z
		.string()
		.default('')
		.transform((value) => value.trim())
		.pipe(z.string().max(max, `That is longer than ${max} letters. Shorten it.`));
	return needed ? trimmed.refine((value) => value !== '', needed) : trimmed;
}

/** A length in mm, typed in any of the tape's forms; bare numbers are in the reader's unit. */
export function lengthIn(unit: Unit, options: LengthOptions = {}) {
	return z
		.string()
		.default('')
		.transform((value, context): number => {
			const read = parseLength(value, unit, options);
			if ('mm' in read) return read.mm;
			context.addIssue({ code: 'custom', message: read.problem });
			return z.NEVER;
		});
}

/** As lengthIn, but may be left empty. */
export function optionalLengthIn(unit: Unit, options: LengthOptions = {}) {
	return z
		.string()
		.default('')
		.transform((value, context): number | undefined => {
			if (value.trim() === '') return undefined;
			const read = parseLength(value, unit, options);
			if ('mm' in read) return read.mm;
			context.addIssue({ code: 'custom', message: read.problem });
			return z.NEVER;
		});
}

/** A day as a date field sends it; undefined if left empty. */
export const optionalDay = z
	.string()
	.default('')
	.transform((value) => value.trim() || undefined)
	.pipe(z.iso.date('Write the day as year, month, day, such as 2026-03-10.').optional());

/** A time of day as a time field sends it; undefined if left empty. */
export const optionalTime = z
	.string()
	.default('')
	.transform((value) => value.trim().slice(0, 5) || undefined)
	.pipe(
		z
			.string()
			.regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'Write the time as hours and minutes, such as 14:30.')
			.optional()
	);

/** The revision a form was drawn from, carried as a hidden field. */
export const revision = z.coerce.number('The form has lost its place. Load the page again.').int().min(0);

/** One of a list of choices. */
export function choice<const T extends readonly [string, ...string[]]>(values: T, sentence: string) {
	return z.enum(values, sentence);
}
