interface Place {
	readonly a: number;
	readonly b: number;
	readonly chosen?: boolean;
}

export interface SeamStraight {
	readonly height: number;
	/** Both new lines. */
	readonly lines: string;
	/** Between each new line and the basting, where cloth goes, and where it comes. */
	readonly taken: string;
	readonly added: string;
	readonly hatch: string;
	readonly zigzag: string;
	readonly pins: readonly {
		readonly y: number;
		readonly chosen: boolean;
		/** Something was pinned here. */
		readonly across: boolean;
		readonly shaft: string;
	}[];
}

const middle = 52;
/** The greatest amount is drawn this wide, px, and at least as if it were 1/4 in. */
const widest = 20;
const widestAt = 6.35;
const every = 4.6;

/**
 * A seam laid straight and upright, its places `row` px apart: side a's new line on the left of the basting and side b's on the
 * right, as far off as they moved. Between places the lines run smoothly, level at each, as an amount does along a seam.
 */
export function seamStraight(places: readonly Place[], row: number): SeamStraight {
	const height = row * places.length;
	const most = Math.max(widestAt, ...places.flatMap(({ a, b }) => [Math.abs(a), Math.abs(b)]));
	const top = row / 2;
	const foot = height - row / 2;
	const at = (y: number, side: 'a' | 'b') => (amountAt(places, row, y, side) / most) * widest;
	const steps = Math.max(1, Math.ceil((foot - top) / 3));
	const ys = Array.from({ length: steps + 1 }, (_, i) => top + ((foot - top) * i) / steps);
	const x = (y: number, side: 'a' | 'b') => middle + (side === 'a' ? -1 : 1) * Math.abs(at(y, side));
	const lineOf = (side: 'a' | 'b') => ys.map((y, i) => `${i === 0 ? 'M' : 'L'}${px(x(y, side))} ${px(y)}`).join('');
	const areas = (keep: (amount: number) => boolean) =>
		(['a', 'b'] as const)
			.map((side) => ys.filter((y) => keep(at(y, side))).map((y) => `${px(x(y, side))} ${px(y)}`))
			.filter((points) => points.length > 1)
			.map((points) => {
				const [first, last] = [points[0], points[points.length - 1]].map((point) => point.split(' ')[1]);
				return `M${middle} ${first}L${points.join('L')}L${middle} ${last}Z`;
			})
			.join('');
	const strokes = { hatch: '', zigzag: '' };
	for (let y = top + every / 2; y < foot; y += every) {
		for (const side of ['a', 'b'] as const) {
			const amount = at(y, side);
			const out = side === 'a' ? -1 : 1;
			if (amount < -1)
				strokes.hatch += `M${middle} ${px(y)}L${px(x(y, side) + 2 * out)} ${px(y - out * 0.28 * Math.abs(amount))}`;
			if (amount > 1)
				strokes.zigzag += `M${middle} ${px(y)}L${px(x(y, side))} ${px(y + every / 2)}L${middle} ${px(y + every)}`;
		}
	}
	return {
		height,
		lines: lineOf('a') + lineOf('b'),
		taken: areas((amount) => amount < 0),
		added: areas((amount) => amount > 0),
		...strokes,
		pins: places.map(({ a, b, chosen = false }, i) => {
			const y = top + i * row;
			const [left, right] = [x(y, 'a'), x(y, 'b')];
			return {
				y,
				chosen,
				across: a !== 0 || b !== 0,
				shaft: `M${px(left - 16)} ${y + 3}L${px(left - 3)} ${y + 1}M${px(right + 3)} ${y - 1}L88 ${y - 4}`
			};
		})
	};
}

function amountAt(places: readonly Place[], row: number, y: number, side: 'a' | 'b'): number {
	const along = Math.max(0, Math.min(places.length - 1, (y - row / 2) / row));
	const i = Math.min(places.length - 2, Math.floor(along));
	if (i < 0) return places[0]?.[side] ?? 0;
	const t = along - i;
	return places[i][side] + (places[i + 1][side] - places[i][side]) * t * t * (3 - 2 * t);
}

const px = (value: number): string => String(Math.round(value * 10) / 10);
