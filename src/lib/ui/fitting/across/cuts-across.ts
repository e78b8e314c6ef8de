import { heightAbove, outlineOf, pathBox, pathLength, undividedName } from '../../../engine/index.ts';
import type { Draft, EdgePlace } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { inch } from '../../../measure/units.ts';
import { endInSentence, type Crossed, type LineBeside } from './lines-across.ts';

/** What a line across comes to: which edges stay, and how much every piece gets at either end. */

export const staying = ['above', 'below'] as const;
export type Staying = (typeof staying)[number];

/** Amounts at the first and at the last end of a line, mm. */
export type Ends = readonly [first: number, last: number];

/**
 * How far from the line handbooks fold: 2 1/2″ above the waist (The Dressmaker, part 4); 2″ above is in use too (Watson, Textiles
 * and Clothing, 1907), here for the other lines.
 */
export function usualOff({ level, fixed }: LineBeside, unit: Unit): number {
	if (fixed) return 0;
	const mm = level === 'waist' ? 2.5 * inch : 2 * inch;
	return unit === 'in' ? mm : Math.round(mm / 5) * 5;
}

/** How far the pieces of a line reach above or below it, mm, rounded down to half an inch or a centimetre's half. */
export function reach({ level, run }: LineBeside, way: 'above' | 'below'): number {
	const heights = run.pieces.flatMap(({ piece }) => {
		const { left, right, top, bottom } = pathBox(outlineOf(piece));
		return [left, right].flatMap((x) => [top, bottom].map((y) => heightAbove(piece, level, [x, y]) ?? 0));
	});
	const most = way === 'above' ? Math.max(...heights) : -Math.min(...heights);
	return Math.max(0, Math.floor(most / (inch / 2)) * (inch / 2));
}

/** A line round a limb has no ends, but between two pieces it has two seams, and one piece of it has two edges. */
export function canBeWedge({ run }: LineBeside, pieces: readonly Crossed[]): boolean {
	return !run.ring || run.pieces.length === 2 || pieces.length < run.pieces.length;
}

/** The part with the grain lines stays if nothing else is said; where there is none, the bigger part. */
export function usuallyStays(pieces: readonly Crossed[], { level }: LineBeside): Staying {
	const above = pieces.filter(({ piece, height }) => {
		const { left, right, top, bottom } = pathBox(outlineOf(piece));
		const [[x0, y0], [x1, y1]] = piece.grain ?? [
			[left, top],
			[right, bottom]
		];
		return (heightAbove(piece, level, [(x0 + x1) / 2, (y0 + y1) / 2]) ?? 0) > height;
	});
	return above.length * 2 > pieces.length ? 'above' : 'below';
}

/** The longest edge of the part that stays, whole name; the outline runs clockwise, from the left end over the top to the right. */
export function keptEdge({ piece, id, from, to, forward }: Crossed, stays: Staying): string | undefined {
	const index = (one: Crossed['from']) => piece.edges.indexOf(one.edge);
	const [left, right] = forward ? [index(from), index(to)] : [index(to), index(from)];
	const [start, end] = stays === 'above' ? [left, right] : [right, left];
	const count = piece.edges.length;
	const between = Array.from(
		{ length: (end - start + count - 1) % count },
		(_, i) => piece.edges[(start + 1 + i) % count]
	);
	const longest = between.reduce<(typeof between)[number] | undefined>(
		(most, one) => (!most || pathLength(one.path) > pathLength(most.path) ? one : most),
		undefined
	);
	return longest && `${id}/${undividedName(longest.id)}`;
}

interface Cut {
	readonly piece: string;
	readonly from: EdgePlace;
	readonly to: EdgePlace;
	readonly gapFrom?: number;
	readonly gapTo?: number;
	readonly keep: string;
}

/**
 * One cut a piece. What lies between the two ends fades straight, by the widths of the pieces, so that both layers of every seam
 * get the same. A piece that gets nothing is not cut.
 */
export function cutsOf(
	line: LineBeside,
	pieces: readonly Crossed[],
	keep: readonly string[],
	ends: Ends | undefined
): readonly Cut[] {
	const gaps = ends && fading(line, pieces, ends);
	return pieces.flatMap(({ id, from, to }, i) => {
		const cut = { piece: id, from: from.place, to: to.place };
		if (!gaps) return [{ ...cut, keep: keep[i] }];
		const [gapFrom, gapTo] = gaps[i];
		return gapFrom === 0 && gapTo === 0 ? [] : [{ ...cut, gapFrom, gapTo, keep: keep[i] }];
	});
}

function fading({ run }: LineBeside, pieces: readonly Crossed[], [first, last]: Ends): readonly Ends[] {
	if (run.ring && pieces.length === 2)
		return [
			[first, last],
			[last, first]
		];
	const whole = pieces.reduce((sum, { width }) => sum + width, 0);
	const at = (part: number) => (part === whole ? last : first + ((last - first) * part) / whole || 0);
	let before = 0;
	return pieces.map(({ width }, i) => {
		const from = at(before);
		before = i === pieces.length - 1 ? whole : before + width;
		return [from, at(before)];
	});
}

/** “the centre-back seam” and “the front edge”: where a fold begins and ends; round two pieces, the two seams between them. */
export function endsInSentence(
	draft: Draft,
	{ run }: LineBeside,
	pieces: readonly Crossed[]
): readonly [string, string] {
	const [first, last] = [pieces[0], pieces[run.ring && pieces.length === 2 ? 0 : pieces.length - 1]];
	return [endInSentence(draft, first.from.place.edge), endInSentence(draft, last.to.place.edge)];
}
