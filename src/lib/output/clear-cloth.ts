import type { Point } from '../engine/index.ts';

/**
 * Where words can stand on a piece without lying on a line: the cloth in squares of 1 mm, each clear or taken. Distances are
 * kept to within one square, which only moves words, never a line.
 */
export interface ClearCloth {
	readonly left: number;
	readonly top: number;
	readonly columns: number;
	readonly rows: number;
	/** Row by row; 1 where something is drawn or the cloth ends. */
	readonly taken: Uint8Array;
}

/** A rectangle on the paper: its middle, its size in mm, and degrees clockwise. */
export interface Rectangle {
	readonly middle: Point;
	readonly width: number;
	readonly height: number;
	readonly turn: number;
}

const square = 1;

/** The cloth inside a closed outline (a polyline in mm), all clear. */
export function clearCloth(outline: readonly Point[]): ClearCloth {
	const xs = outline.map(([x]) => x);
	const ys = outline.map(([, y]) => y);
	const left = Math.min(...xs) - square;
	const top = Math.min(...ys) - square;
	const columns = Math.ceil((Math.max(...xs) - left) / square) + 1;
	const rows = Math.ceil((Math.max(...ys) - top) / square) + 1;
	const taken = new Uint8Array(columns * rows).fill(1);
	for (let row = 0; row < rows; row++) {
		const y = top + (row + 0.5) * square;
		const crossings: number[] = [];
		outline.forEach((from, i) => {
			const to = outline[(i + 1) % outline.length];
			if (from[1] <= y !== to[1] <= y)
				crossings.push(from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0]));
		});
		crossings.sort((a, b) => a - b);
		for (let i = 0; i + 1 < crossings.length; i += 2) {
			const first = Math.max(0, Math.ceil((crossings[i] - left) / square - 0.5));
			const last = Math.min(columns - 1, Math.floor((crossings[i + 1] - left) / square - 0.5));
			if (first <= last) taken.fill(0, row * columns + first, row * columns + last + 1);
		}
	}
	return { left, top, columns, rows, taken };
}

/** The same cloth with the squares taken whose middles lie within `margin` mm of one of the lines. */
export function withLines(cloth: ClearCloth, lines: readonly (readonly Point[])[], margin: number): ClearCloth {
	const taken = cloth.taken.slice();
	const reach = margin / square;
	const take = ([x, y]: Point) => {
		const column = (x - cloth.left) / square - 0.5;
		const row = (y - cloth.top) / square - 0.5;
		for (let r = Math.max(0, Math.ceil(row - reach)); r <= Math.min(cloth.rows - 1, row + reach); r++) {
			const half = Math.sqrt(Math.max(0, reach * reach - (r - row) * (r - row)));
			const first = Math.max(0, Math.ceil(column - half));
			const last = Math.min(cloth.columns - 1, Math.floor(column + half));
			if (first <= last) taken.fill(1, r * cloth.columns + first, r * cloth.columns + last + 1);
		}
	};
	for (const line of lines) {
		line.slice(1).forEach((to, i) => {
			const from = line[i];
			const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1])));
			for (let k = 0; k <= steps; k++) {
				take([from[0] + ((to[0] - from[0]) * k) / steps, from[1] + ((to[1] - from[1]) * k) / steps]);
			}
		});
	}
	return { ...cloth, taken };
}

/** The same cloth with a rectangle taken. */
export function withRectangle(cloth: ClearCloth, rectangle: Rectangle): ClearCloth {
	const taken = cloth.taken.slice();
	for (const index of squaresUnder(cloth, rectangle)) if (index !== undefined) taken[index] = 1;
	return { ...cloth, taken };
}

/** How much of a rectangle lies on something drawn or off the cloth: 0 where it is all clear, 1 where none is. */
export function shareTaken(cloth: ClearCloth, rectangle: Rectangle): number {
	const squares = squaresUnder(cloth, rectangle);
	return squares.filter((index) => index === undefined || cloth.taken[index] === 1).length / squares.length;
}

function squaresUnder(cloth: ClearCloth, { middle, width, height, turn }: Rectangle): (number | undefined)[] {
	const angle = (turn * Math.PI) / 180;
	const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
	const across = Math.max(1, Math.ceil(width / (square * 0.7)));
	const down = Math.max(1, Math.ceil(height / (square * 0.7)));
	const found: (number | undefined)[] = [];
	for (let i = 0; i <= across; i++) {
		for (let j = 0; j <= down; j++) {
			const [u, v] = [(i / across - 0.5) * width, (j / down - 0.5) * height];
			const column = Math.floor((middle[0] + u * cos - v * sin - cloth.left) / square);
			const row = Math.floor((middle[1] + u * sin + v * cos - cloth.top) / square);
			const inside = column >= 0 && row >= 0 && column < cloth.columns && row < cloth.rows;
			found.push(inside ? row * cloth.columns + column : undefined);
		}
	}
	return found;
}

/**
 * The middle of a clear level rectangle: with the first of the `margins` (mm left free all round) that fits anywhere, as
 * near to a wished-for point as can be. Nothing if it does not fit at all.
 */
export function clearPlace(
	cloth: ClearCloth,
	width: number,
	height: number,
	margins: readonly number[],
	near: Point
): Point | undefined {
	const sums = summedTaken(cloth);
	for (const margin of margins) {
		const place = nearestClear(cloth, sums, width + 2 * margin, height + 2 * margin, near);
		if (place) return place;
	}
	return undefined;
}

/** How many squares are taken above and to the left of each corner of the grid (a summed area table: Crow, 1984). */
function summedTaken({ taken, columns, rows }: ClearCloth): Uint32Array {
	const sums = new Uint32Array((columns + 1) * (rows + 1));
	for (let r = 0; r < rows; r++) {
		let row = 0;
		for (let c = 0; c < columns; c++) {
			row += taken[r * columns + c];
			sums[(r + 1) * (columns + 1) + c + 1] = sums[r * (columns + 1) + c + 1] + row;
		}
	}
	return sums;
}

function nearestClear(
	cloth: ClearCloth,
	sums: Uint32Array,
	width: number,
	height: number,
	near: Point
): Point | undefined {
	const across = Math.ceil(width / square);
	const down = Math.ceil(height / square);
	const stride = cloth.columns + 1;
	let best: Point | undefined;
	let least = Infinity;
	for (let r = 0; r + down <= cloth.rows; r++) {
		for (let c = 0; c + across <= cloth.columns; c++) {
			const above = r * stride + c;
			const below = (r + down) * stride + c;
			if (sums[below + across] - sums[below] - sums[above + across] + sums[above] > 0) continue;
			const middle: Point = [cloth.left + (c + across / 2) * square, cloth.top + (r + down / 2) * square];
			const away = Math.hypot(middle[0] - near[0], middle[1] - near[1]);
			if (away < least) {
				least = away;
				best = middle;
			}
		}
	}
	return best;
}
