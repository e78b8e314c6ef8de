import type { MarkKind, Point } from './engine.ts';

type Form = (at: Point) => string;

const cross = ([x, y]: Point, reach: number) => `M${x - reach} ${y}H${x + reach}M${x} ${y - reach}V${y + reach}`;
const ring = ([x, y]: Point, r: number) => `M${x + r} ${y}a${r} ${r} 0 1 0 ${-2 * r} 0a${r} ${r} 0 1 0 ${2 * r} 0Z`;

/** Marked points, by form: px about the point. */
const forms: Readonly<Record<MarkKind, Form>> = {
	'bust-point': (at) => cross(at, 6.5) + ring(at, 3.6),
	button: (at) => ring(at, 4) + cross(at, 1.5),
	buttonhole: ([x, y]) => `M${x - 7} ${y}H${x + 7}M${x - 7} ${y - 2.5}v5M${x + 7} ${y - 2.5}v5`,
	point: (at) => cross(at, 3.5)
};

export function pointMark(kind: MarkKind, [x, y]: Point): string {
	return forms[kind]([Math.round(x * 10) / 10, Math.round(y * 10) / 10]);
}
