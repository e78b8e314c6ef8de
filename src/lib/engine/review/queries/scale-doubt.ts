import { inches } from '../../draft/say.ts';
import { easeTable } from '../ease-table.ts';
import type { Inquiry } from '../inquiry.ts';

/** What a wrong enlargement makes of a garment: as many times too large or too small. */
const slips: readonly (readonly [factor: number, said: string])[] = [
	[1 / 8, 'an eighth of it'],
	[1 / 4, 'a quarter of it'],
	[1 / 2.54, 'as if its centimetres had been read as inches the wrong way round'],
	[1 / 2, 'half of it'],
	[2, 'twice as much'],
	[2.54, 'as if its inches had been centimetres'],
	[4, 'four times as much'],
	[8, 'eight times as much']
];

/** How near to a slip every round must come: fit and ease are some way off the body themselves. */
const near = 0.12;

/**
 * Every round of the garment that can be held against the body is wrong by the same plain factor: a drawing was enlarged by the
 * wrong scale. Figure: garment less body at the first of them, mm. No alteration settles it: the draft is to be brought in again.
 */
export const scaleDoubt: Inquiry = ({ draft, options }) => {
	const rows = easeTable(draft, options.measures ?? {}).filter(
		(row) => row.limb === undefined && row.body !== undefined
	);
	if (rows.length === 0) return [];
	const slip = slips.find(([factor]) =>
		rows.every(({ garment, body = 0 }) => Math.abs(garment / (body * factor) - 1) <= near)
	);
	// A full skirt is twice the hip by intent; nothing is meant to be half of the body.
	if (!slip || (slip[0] > 1 && rows.length < 2)) return [];
	const [{ level, garment, body = 0 }] = rows;
	return [
		{
			code: 'scale-doubt',
			severity: 'warning',
			where: level,
			figure: garment - body,
			sentence: `At the ${level} the pieces measure ${inches(garment)} for a body of ${inches(body)}: ${slip[1]}. Was the drawing enlarged by the wrong scale?`,
			settle: []
		}
	];
};
