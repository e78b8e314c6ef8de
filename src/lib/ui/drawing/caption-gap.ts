import type { Clearance } from './clearance.ts';

/** The px of free table that a caption needs: always as many, or by its lines, the heading first, which wrap where it is narrow. */
export type Caption = number | readonly string[];

const parts = 20;
/** A caption is at least this wide, in twentieths. */
const narrowest = 4;
const widest = 8;
/** Width of a letter on the whole and height of a line, px, with a tenth for a drawing that is shown smaller than it is. */
const heading = { letter: 14.5, line: 32 } as const;
const plain = { letter: 8, line: 23 } as const;
/** Round the words, px. */
const padding = { across: 18, down: 26 } as const;

/**
 * The widest free stretch of table at the top of a drawing that a caption fits into, in twentieths of its width (the leftmost
 * of equals): the gap above the side back. Nothing if there is none 4 twentieths wide: then it stands over the drawing.
 */
export function captionGap(
	clear: Clearance,
	width: number,
	caption: Caption
): { readonly at: number; readonly wide: number } | undefined {
	const part = width / parts;
	const free = (at: number, depth: number) =>
		clear.under({ left: at * part - 6, top: 0, right: (at + 1) * part + 6, bottom: depth }) === 0;
	for (let wide = widest; wide >= narrowest; wide--) {
		const depth = depthOf(caption, wide * part);
		const taken = Array.from({ length: parts }, (_, at) => !free(at, depth));
		for (let at = 1; at < 15 && at + wide <= parts; at++)
			if (!taken.slice(at, at + wide).includes(true)) return { at, wide };
	}
	return undefined;
}

function depthOf(caption: Caption, wide: number): number {
	if (typeof caption === 'number') return caption;
	return caption.reduce<number>((sum, words, i) => {
		const { letter, line } = i === 0 ? heading : plain;
		return sum + Math.ceil((words.length * letter) / (wide - padding.across)) * line;
	}, padding.down);
}
