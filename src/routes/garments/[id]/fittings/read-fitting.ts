import {
	choice,
	optionalLengthIn,
	optionalTime,
	readForm,
	text,
	type FormFault,
	type Typed
} from '$lib/server/http/form.ts';
import type { FittingFields } from '$lib/server/journal/changes.ts';
import { triedOn } from '$lib/server/journal/records.ts';
import type { Unit } from '$lib/measure/units.ts';
import { z } from 'zod';

/** The measures of the wearer that are checked before pinning, by their names, and those of the toile as it was sewn. */
export const checked = ['bust', 'waist', 'hip', 'back-waist-length'] as const;
export const sewn = ['bust', 'waist', 'neck', 'armhole'] as const;
/** What is said of the toile by a tick. */
export const ticks = ['bones', 'waistTape', 'edgesClipped', 'washed'] as const;

export interface FittingTyped {
	readonly kind: 'fitting' | 'table';
	readonly fields: FittingFields;
	/** Something worn under it that the wearer has not had yet. */
	readonly newFoundation: string;
}

const day = z
	.string()
	.default('')
	.transform((value) => value.trim())
	.pipe(z.iso.date('Write the day as year, month, day, such as 2026-03-10.'));

const orNull = <const T extends readonly [string, ...string[]]>(values: T, sentence: string) =>
	z
		.string()
		.default('')
		.transform((value) => value.trim())
		.pipe(z.union([z.literal(''), choice(values, sentence)], sentence))
		.transform((value): T[number] | null => (value === '' ? null : (value as T[number])));

/** Measures are named with a point, which is no field inside another. */
const measured = (typed: Typed): Typed => Object.fromEntries(measureNames.map((name) => [name, typed[name] ?? '']));

function said(unit: Unit) {
	const short = optionalLengthIn(unit, { max: 500 });
	return z.object({
		kind: choice(['fitting', 'table'], 'Say whether it is a fitting or table work.'),
		date: day,
		from: optionalTime.transform((time) => time ?? null),
		to: optionalTime.transform((time) => time ?? null),
		tried: orNull(
			triedOn,
			'Say what is tried on: a toile, the lining basted, the body flat-lined, or the finished garment.'
		),
		toile: text().transform((id) => id || null),
		foundation: text().transform((id) => id || null),
		newFoundation: text({ max: 300 }),
		worn: orNull(['outside', 'inside'], 'Say whether it is worn with its seams outside or inside.'),
		sewnHow: orNull(['basted', 'long-stitch', 'pinned'], 'Say how it is put together.'),
		closing: orNull(['edge-to-edge', 'lapped', 'lacing-gap'], 'Say how it closes.'),
		closingWidth: short,
		give: text({ max: 500 }),
		pieces: text(),
		readFrom: orNull(
			['traced-line', 'stitching'],
			'Say whether the pins are read from the traced line or the stitching.'
		),
		shoes: text({ max: 300 }),
		heel: optionalLengthIn(unit, { max: 300 }),
		pinnedBy: text({ max: 200 }),
		note: text({ max: 20_000 }),
		bring: text({ max: 2000 })
	});
}

const measureNames = [...checked.map((name) => `check.${name}`), ...sewn.map((name) => `asSewn.${name}`)];

/** Reads what was noted of a fitting or of table work; a sentence for each field that is wrong. */
export function readFitting(
	typed: Typed,
	unit: Unit
): { readonly value: FittingTyped } | { readonly fault: FormFault } {
	const read = readForm(said(unit), typed);
	const length = optionalLengthIn(unit, { max: 5000 });
	const measures = readForm(z.object(Object.fromEntries(measureNames.map((name) => [name, length]))), measured(typed));
	if ('fault' in read || 'fault' in measures) {
		const problems = {
			...('fault' in read && read.fault.problems),
			...('fault' in measures && measures.fault.problems)
		};
		return { fault: { typed, problems } };
	}
	const { value } = read;
	const lengths = (prefix: string, names: readonly string[]) =>
		Object.fromEntries(
			names.flatMap((name) => {
				const mm = measures.value[`${prefix}.${name}`];
				return typeof mm === 'number' ? [[name, mm]] : [];
			})
		);
	const pieces = value.pieces.split(' ').filter(Boolean);
	const off = pieces.filter((id) => (typed[`on.${id}`] ?? '') === '');
	const body = value.kind === 'fitting';
	return {
		value: {
			kind: value.kind,
			newFoundation: body ? value.newFoundation : '',
			fields: {
				date: value.date,
				from: value.from,
				to: value.to,
				toile: value.toile,
				note: value.note,
				bring: value.bring,
				pinnedBy: value.pinnedBy,
				tried: body ? value.tried : null,
				foundation: body ? value.foundation : null,
				worn: body ? value.worn : null,
				stateOfToile: body
					? {
							...(off.length > 0 && { piecesOff: off }),
							...(value.sewnHow && { sewn: value.sewnHow }),
							...(value.closing && { closing: value.closing }),
							...(value.closingWidth !== undefined && { closingWidth: value.closingWidth }),
							...Object.fromEntries(ticks.filter((name) => (typed[name] ?? '') !== '').map((name) => [name, true])),
							...(value.give !== '' && { give: value.give })
						}
					: {},
				asSewn: body ? { ...lengths('asSewn', sewn), ...(value.readFrom && { readFrom: value.readFrom }) } : {},
				checkMeasures: body ? lengths('check', checked) : {},
				shoes: body ? value.shoes : '',
				heel: body ? (value.heel ?? null) : null
			}
		}
	};
}
