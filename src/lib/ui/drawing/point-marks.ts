import { minus, outOf, plus, times, unit } from './vectors.ts';
import type { MarkKind, Point } from './engine.ts';

/** A marked point, or two for a mark that has a length, px. */
export interface PlacedMark {
	readonly kind: MarkKind;
	readonly at: Point;
	/** The other end of a buttonhole. */
	readonly to?: Point;
}

/** px to either side of the point, of a buttonhole whose other end is not said. */
const shown = 7;
/** Half a buttonhole's bar at each end, px. */
const bar = 2.5;

const cross = ([x, y]: Point, reach: number) => `M${x - reach} ${y}H${x + reach}M${x} ${y - reach}V${y + reach}`;
const ring = ([x, y]: Point, r: number) => `M${x + r} ${y}a${r} ${r} 0 1 0 ${-2 * r} 0a${r} ${r} 0 1 0 ${2 * r} 0Z`;
const line = (from: Point, to: Point) => `M${text(from)}L${text(to)}`;

/** Marked points, by form: px about the point. */
const forms: Readonly<Record<MarkKind, (mark: PlacedMark) => string>> = {
	'bust-point': ({ at }) => cross(at, 6.5) + ring(at, 3.6),
	button: ({ at }) => ring(at, 4) + cross(at, 1.5),
	buttonhole: ({ at, to }) => slit(to ? at : [at[0] - shown, at[1]], to ?? [at[0] + shown, at[1]]),
	point: ({ at }) => cross(at, 3.5)
};

/** From end to end, true to the drawing's scale, with a bar across each. */
function slit(from: Point, to: Point): string {
	const across = times(outOf(unit(minus(to, from)), false), bar);
	const ends = [from, to].map((end) => line(plus(end, across), minus(end, across)));
	return line(from, to) + ends.join('');
}

export function pointMark({ kind, at, to }: PlacedMark): string {
	return forms[kind]({ kind, at: tenths(at), ...(to && { to: tenths(to) }) });
}

const tenth = (px: number) => Math.round(px * 10) / 10;
const tenths = ([x, y]: Point): Point => [tenth(x), tenth(y)];
const text = (point: Point) => tenths(point).join(' ');
