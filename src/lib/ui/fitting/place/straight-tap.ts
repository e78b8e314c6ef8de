import type { PlaceRow } from '../hand.ts';

/** A tap this near the middle of a row, in rows, means its place. */
const within = 0.3;

/**
 * What a tap on the seam laid straight means, in rows from the middle of the first: the place of a row, or a place between two,
 * mm from the start of the seam. Undefined where there is no row.
 */
export function straightTap(
	rows: readonly Pick<PlaceRow, 'key' | 'at'>[],
	along: number
): { readonly key: string } | { readonly at: number } | undefined {
	const nearest = rows[Math.round(along)];
	const [one, other] = [rows[Math.floor(along)]?.at, rows[Math.ceil(along)]?.at];
	if (Math.abs(along - Math.round(along)) < within || one === undefined || other === undefined)
		return nearest && { key: nearest.key };
	return { at: one + (other - one) * (along - Math.floor(along)) };
}
