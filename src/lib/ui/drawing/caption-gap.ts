import type { Clearance } from './clearance.ts';

const parts = 20;
/** A caption is at least this wide, in twentieths. */
const narrowest = 4;
const widest = 8;

/**
 * The widest free stretch of table at the top of a drawing, `height` px deep, in twentieths of its width (the leftmost of
 * equals): the gap above the side back. Nothing if there is none 4 twentieths wide.
 */
export function captionGap(
	clear: Clearance,
	width: number,
	height: number
): { readonly at: number; readonly wide: number } | undefined {
	const part = width / parts;
	const taken = Array.from({ length: parts }, (_, i) => {
		return clear.under({ left: i * part - 6, top: 0, right: (i + 1) * part + 6, bottom: height }) > 0;
	});
	let best: { at: number; wide: number } | undefined;
	for (let at = 1; at < 15; at++) {
		let wide = 0;
		while (at + wide < parts && wide < widest && !taken[at + wide]) wide++;
		if (wide >= narrowest && (!best || wide > best.wide)) best = { at, wide };
	}
	return best;
}
